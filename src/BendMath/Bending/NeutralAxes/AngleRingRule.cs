using BendMath.Evidence;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Bending.NeutralAxes;

/// <summary>
/// The handbook rule for the length of an equal angle bent to a ring. It knows neither material nor radius;
/// <see cref="FinishedRing.BlankLengthFor(Angle)"/> is the answer of the mechanics, and the two differ by several percent of a small ring.
/// Stateless and thread-safe.
/// </summary>
public static class AngleRingRule
{
    /// <summary>Distance from the heel face to the fiber the rule takes to keep its length.</summary>
    /// <param name="leg">Length of each leg, greater than the thickness.</param>
    /// <param name="thickness">Thickness of both legs, greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A dimension is not positive and finite, or the leg is not longer than the
    /// thickness.</exception>
    /// <remarks>
    /// Equation: n = leg/6 + t/2, measured from the heel face toward the toe of the radial leg.
    /// Range: the handbook prints constants for equal angles of 2 to 8 in legs, 1/4 to 1 in thick, and gives no range of diameters; the
    /// closed form is inferred from the constants and reproduces them to 0.002 in.
    /// Source: <see cref="Sources.MachinerysHandbookAngleRings"/>
    /// </remarks>
    public static Length FiberFromHeel(Length leg, Length thickness) => Length.FromMeters(Fiber(leg, thickness));

    /// <summary>Length of straight angle for a full ring.</summary>
    /// <param name="heelDiameter">Diameter of the heel face: the inside face with the flange out, the outside face with the flange in.
    /// Greater than zero; with the flange in greater than two legs.</param>
    /// <param name="leg">Length of each leg, greater than the thickness.</param>
    /// <param name="thickness">Thickness of both legs, greater than zero.</param>
    /// <param name="flange">Which way the radial leg stands.</param>
    /// <exception cref="ArgumentOutOfRangeException">A dimension is outside its range, or the direction is not a defined value.</exception>
    /// <remarks>
    /// Equation: L = π·D ± π·(leg/3 + t), plus with the flange out, minus with the flange in.
    /// Range: as <see cref="FiberFromHeel"/>; a full ring, without ends to trim.
    /// Source: <see cref="Sources.MachinerysHandbookAngleRings"/>
    /// </remarks>
    public static Length BlankLength(Length heelDiameter, Length leg, Length thickness, FlangeDirection flange)
    {
        double diameter = Guard.Positive(heelDiameter, nameof(heelDiameter));
        double fiber = Fiber(leg, thickness);
        if (Guard.Defined(flange, nameof(flange)) == FlangeDirection.Out)
        {
            return Length.FromMeters(Math.PI * (diameter + 2 * fiber));
        }

        double legs = 2 * leg.Meters;
        return diameter > legs
            ? Length.FromMeters(Math.PI * (diameter - 2 * fiber))
            : throw Guard.Fault(nameof(heelDiameter), heelDiameter,
                $"must with the flange in be greater than two legs, {Guard.MillimetersText(legs)}");
    }

    private static double Fiber(Length leg, Length thickness)
    {
        double t = Guard.Positive(thickness, nameof(thickness));
        double length = Guard.Positive(leg, nameof(leg));
        return length > t
            ? length / 6 + t / 2
            : throw Guard.Fault(nameof(leg), leg, $"must be longer than the thickness, {Guard.MillimetersText(t)}");
    }
}
