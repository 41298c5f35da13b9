using BendMath.Guards;
using BendMath.Numerics.Geometry;
using BendMath.Stock.Geometry;
using UnitsNet;

namespace BendMath;

/// <summary>
/// Bars by their size in the plane of the ring and along its axis, for a caller who knows how the bar lies and need not care which shape
/// that makes: an equal angle or an unequal one, a square or a flat, the easy way or the hard way. Stateless and thread-safe.
/// </summary>
public static class OrientedBars
{
    /// <summary>
    /// An angle: an <see cref="EqualAngle"/> where both legs are the same to a picometer, otherwise an <see cref="UnequalAngle"/>.
    /// </summary>
    /// <param name="radialLeg">Length of the leg in the plane of the ring, measured outside; greater than the thickness and both fillets
    /// together.</param>
    /// <param name="axialLeg">Length of the leg along the axis of the ring, measured outside; greater than the thickness and both fillets
    /// together.</param>
    /// <param name="thickness">Thickness of both legs, greater than zero.</param>
    /// <param name="fillets">Root and toe radii; <see cref="AngleFillets.Sharp"/> for none. The toe radius may not exceed the
    /// thickness.</param>
    /// <param name="direction">Which way the radial leg stands.</param>
    /// <exception cref="ArgumentNullException">The fillets are null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A dimension is outside its range, or the direction is not a defined value.</exception>
    public static OrientedSection Angle(Length radialLeg, Length axialLeg, Length thickness, AngleFillets fillets,
        FlangeDirection direction)
    {
        Guard.NotNull(fillets, nameof(fillets));
        double radial = Guard.Positive(radialLeg, nameof(radialLeg));
        double axial = Guard.Positive(axialLeg, nameof(axialLeg));
        double t = Guard.Positive(thickness, nameof(thickness));
        AngleOutline.Check(radialLeg, radial, nameof(radialLeg), t, fillets);
        AngleOutline.Check(axialLeg, axial, nameof(axialLeg), t, fillets);
        bool isOut = Guard.Defined(direction, nameof(direction)) == FlangeDirection.Out;
        if (IsSame(radial, axial))
        {
            EqualAngle equal = new(radialLeg, thickness, fillets);
            return isOut ? equal.FlangeOut : equal.FlangeIn;
        }

        if (radial > axial)
        {
            UnequalAngle upright = new(radialLeg, axialLeg, thickness, fillets);
            return isOut ? upright.LongLegOut : upright.LongLegIn;
        }

        UnequalAngle angle = new(axialLeg, radialLeg, thickness, fillets);
        return isOut ? angle.ShortLegOut : angle.ShortLegIn;
    }

    /// <summary>
    /// A flat with sharp corners: a <see cref="SquareBar"/> where both dimensions are the same to a picometer, otherwise a
    /// <see cref="FlatBar"/> the easy way or the hard way.
    /// </summary>
    /// <param name="radial">Dimension in the plane of the ring, greater than zero.</param>
    /// <param name="axial">Dimension along the axis of the ring, greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A dimension is not positive and finite.</exception>
    public static OrientedSection Flat(Length radial, Length axial) => Flat(radial, axial, Length.Zero);

    /// <summary>
    /// A flat with rounded corners: a <see cref="SquareBar"/> where both dimensions are the same to a picometer, otherwise a
    /// <see cref="FlatBar"/> the easy way or the hard way.
    /// </summary>
    /// <param name="radial">Dimension in the plane of the ring, greater than zero.</param>
    /// <param name="axial">Dimension along the axis of the ring, greater than zero.</param>
    /// <param name="cornerRadius">Radius of the corners, zero or more and not greater than half the smaller dimension.</param>
    /// <exception cref="ArgumentOutOfRangeException">A dimension is outside its range.</exception>
    public static OrientedSection Flat(Length radial, Length axial, Length cornerRadius)
    {
        double r = Guard.Positive(radial, nameof(radial));
        double a = Guard.Positive(axial, nameof(axial));
        double smaller = Math.Min(r, a);
        if (2 * Guard.NonNegative(cornerRadius, nameof(cornerRadius)) > smaller)
        {
            throw Guard.Fault(nameof(cornerRadius), cornerRadius,
                $"must not be greater than half the smaller dimension, {Guard.MillimetersText(smaller / 2)}");
        }

        return IsSame(r, a) ? new SquareBar(radial, cornerRadius).Section
            : r < a ? new FlatBar(axial, radial, cornerRadius).EasyWay
            : new FlatBar(radial, axial, cornerRadius).HardWay;
    }

    /// <summary>
    /// A tube: a <see cref="SquareTube"/> where both dimensions are the same to a picometer, otherwise a <see cref="RectangularTube"/> the
    /// easy way or the hard way.
    /// </summary>
    /// <param name="radial">Outside dimension in the plane of the ring, greater than zero.</param>
    /// <param name="axial">Outside dimension along the axis of the ring, greater than zero.</param>
    /// <param name="wall">Wall thickness, greater than zero and less than half the smaller dimension.</param>
    /// <param name="corners">Corner radii; <see cref="CornerRadii.Sharp"/> for none. They must fit and leave a wall in the corners.</param>
    /// <exception cref="ArgumentNullException">The corners are null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A dimension is outside its range.</exception>
    public static OrientedSection Tube(Length radial, Length axial, Length wall, CornerRadii corners)
    {
        double r = Guard.Positive(radial, nameof(radial));
        double a = Guard.Positive(axial, nameof(axial));
        BoxOutline.Check(Math.Min(r, a), r < a ? nameof(radial) : nameof(axial), wall, Guard.Positive(wall, nameof(wall)),
            Guard.NotNull(corners, nameof(corners)));
        return IsSame(r, a) ? new SquareTube(radial, wall, corners).Section
            : r < a ? new RectangularTube(axial, radial, wall, corners).EasyWay
            : new RectangularTube(radial, axial, wall, corners).HardWay;
    }

    private static bool IsSame(double one, double other) => Picometers.Of(one) == Picometers.Of(other);
}
