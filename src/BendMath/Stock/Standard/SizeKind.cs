namespace BendMath.Stock.Standard;

/// <summary>The shape of a standard size, named after the stock it gives.</summary>
internal enum SizeKind
{
    /// <summary>Angle with equal legs, <see cref="BendMath.EqualAngle"/>.</summary>
    EqualAngle,

    /// <summary>Angle with unequal legs, <see cref="BendMath.UnequalAngle"/>.</summary>
    UnequalAngle,

    /// <summary>Round tube or pipe, <see cref="BendMath.RoundTube"/>.</summary>
    RoundTube,

    /// <summary>Square tube, <see cref="BendMath.SquareTube"/>.</summary>
    SquareTube,

    /// <summary>Rectangular tube, <see cref="BendMath.RectangularTube"/>.</summary>
    RectangularTube,

    /// <summary>Solid round bar, <see cref="BendMath.RoundBar"/>.</summary>
    RoundBar,

    /// <summary>Solid square bar, <see cref="BendMath.SquareBar"/>.</summary>
    SquareBar,

    /// <summary>Flat bar, <see cref="BendMath.FlatBar"/>.</summary>
    FlatBar,
}
