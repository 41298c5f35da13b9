using BendMath.Guards;
using BendMath.Layout.BentBars;
using UnitsNet;

namespace BendMath;

/// <content>
/// Points of the straight bar and of the finished ring, each from the other: for holes and marks made before bending.
/// </content>
public sealed partial class DevelopedLayout
{
    /// <summary>Where a point of the straight bar comes to lie on the ring.</summary>
    /// <param name="along">From the start of the blank, between the marks of the arc.</param>
    /// <param name="fromInside">From the inside face, between zero and the depth of the bar.</param>
    /// <param name="axial">Along the axis of the ring, between zero and the width of the bar.</param>
    /// <exception cref="ArgumentOutOfRangeException">The point does not lie on the ring.</exception>
    public RingPlace PlaceFromBar(Length along, Length fromInside, Length axial)
    {
        double s = Guard.Place(along, nameof(along)) - Ends.StartMeters;
        double developed = DevelopedLength.Meters;
        double slack = 1e-12 * Blank;
        return s >= -slack && s <= developed + slack
            ? At(Math.Min(Math.Max(s, 0), developed) * Ring.TotalCurvature, fromInside, axial)
            : throw Guard.Fault(nameof(along), along,
                $"must lie between the marks of the arc, {Guard.MillimetersText(Ends.StartMeters)} "
                    + $"and {Guard.MillimetersText(Ends.StartMeters + developed)}");
    }

    /// <summary>Where on the straight bar to mark a point wanted at an angle of the ring.</summary>
    /// <param name="angle">From the start of the arc, between zero and its turn.</param>
    /// <param name="fromInside">From the inside face, between zero and the depth of the bar.</param>
    /// <param name="axial">Along the axis of the ring, between zero and the width of the bar.</param>
    /// <exception cref="ArgumentOutOfRangeException">The point does not lie on the ring.</exception>
    public RingPlace PlaceFromAngle(Angle angle, Length fromInside, Length axial)
    {
        double theta = Guard.NonNegative(angle, nameof(angle));
        return theta <= Arc.Radians * (1 + 1e-12)
            ? At(Math.Min(theta, Arc.Radians), fromInside, axial)
            : throw Guard.Fault(nameof(angle), angle, $"must not be greater than the turn of the arc, {Guard.Text(Arc.Turn)}");
    }

    /// <summary>Where on the straight bar to mark a point wanted at a length along a face of the ring.</summary>
    /// <param name="line">The line of the ring the tape follows.</param>
    /// <param name="length">Length along that line from the start of the arc.</param>
    /// <param name="fromInside">From the inside face, between zero and the depth of the bar.</param>
    /// <param name="axial">Along the axis of the ring, between zero and the width of the bar.</param>
    /// <exception cref="ArgumentOutOfRangeException">The line is not a defined value or the point does not lie on the ring.</exception>
    public RingPlace PlaceFromFace(RadiusReference line, Length length, Length fromInside, Length axial)
    {
        double radius = Ring.RadiusTo(Guard.Defined(line, nameof(line))).Meters;
        double theta = Guard.Place(length, nameof(length)) / radius;
        return theta <= Arc.Radians * (1 + 1e-12)
            ? At(Math.Min(theta, Arc.Radians), fromInside, axial)
            : throw Guard.Fault(nameof(length), length, $"must not be beyond the arc there, {Guard.MillimetersText(Arc.Radians * radius)}");
    }

    private RingPlace At(double angle, Length fromInside, Length axial)
    {
        double y = Section.LevelOf(fromInside, nameof(fromInside));
        double width = Section.Properties.Width.Meters;
        double z = Guard.Place(axial, nameof(axial));
        return z <= width * (1 + 1e-12)
            ? new(this, Ends.StartMeters + angle / Ring.TotalCurvature, y, Math.Min(z, width), angle)
            : throw Guard.Fault(nameof(axial), axial, $"must not be greater than the width of the section, {Guard.MillimetersText(width)}");
    }
}
