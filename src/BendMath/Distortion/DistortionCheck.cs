namespace BendMath.Distortion;

/// <summary>What a <see cref="DistortionReport"/> checks.</summary>
public enum DistortionCheck
{
    /// <summary>The depth of the bar over the loaded inside radius.</summary>
    LegToRadius,

    /// <summary>Strain of the outside face against the elongation of the material.</summary>
    OuterFiber,

    /// <summary>Buckling of the compressed free edge of a leg in the plane of the ring.</summary>
    FreeEdge,

    /// <summary>Change of the angle between the legs.</summary>
    LegAngle,

    /// <summary>Lateral buckling between sideways supports.</summary>
    RollOver,

    /// <summary>Twist of bars that are no stiffer one way than the other.</summary>
    Twist,

    /// <summary>Lean of the section of a released ring.</summary>
    Dish,

    /// <summary>Radius of a round tube in diameters.</summary>
    TubeRatio,

    /// <summary>Thinning of the outside wall of a tube.</summary>
    TubeWall,

    /// <summary>Flattening of a round tube.</summary>
    TubeOvality,

    /// <summary>Wrinkles on the inside of a round tube.</summary>
    TubeWrinkling,

    /// <summary>Sinking of the flat walls of a tube.</summary>
    WallSinking,

    /// <summary>Wrinkles of the inside wall of a tube with flat walls.</summary>
    WallWrinkling,

    /// <summary>Wall of pipe to order so that enough is left.</summary>
    PipeWall,

    /// <summary>Thickness of a flat at its inside and outside edge, bent the hard way.</summary>
    Keystoning,

    /// <summary>A rule of a code on strain or radius, see <see cref="BendMath.Distortion.StrainRule"/>.</summary>
    StrainRule,
}
