using MathNet.Numerics.Integration;
using UnitsNet;

namespace BendMath.Tests.Sections;

/// <summary>
/// Source: definitions of the moments and of Z = ∫|y − y_p| dA, integrated over chords by Gauss–Legendre quadrature (MathNet.Numerics), for
/// a flat with half-round edges and an eccentric hole. A chord at y = r·sin u is smooth in u.
/// </summary>
public sealed class DrawnBarByChordsTests
{
    private const double Tolerance = 1e-10;

    private const double Long = 40;

    private const double Radius = 5;

    private const double Hole = 2;

    private const double HoleX = 12;

    [Fact]
    public void Figures_of_the_lying_bar_are_those_of_its_chords()
    {
        SectionProperties p = Drawn.Bar(Drawn.Slot(), Drawn.Circle(HoleX, Radius, Hole)).AsDrawn.Properties;
        double area = Sum((_, chord) => chord, (_, chord) => chord);
        double mean = Sum((_, chord) => chord * (Long / 2 + Radius), (_, chord) => chord * (HoleX + Radius)) / area;
        double second = Sum((y, chord) => chord * y * y, (y, chord) => chord * y * y);
        double radial = Sum(
            (_, chord) => Math.Pow(chord, 3) / 12 + chord * Math.Pow(Long / 2 + Radius - mean, 2),
            (_, chord) => Math.Pow(chord, 3) / 12 + chord * Math.Pow(HoleX + Radius - mean, 2));
        double plastic = Sum((y, chord) => chord * Math.Abs(y), (y, chord) => chord * Math.Abs(y));
        Near(area, p.Area.SquareMillimeters);
        Near(Radius, p.CentroidFromInside.Millimeters);
        Near(mean, p.CentroidAxial.Millimeters);
        Near(second, p.SecondMomentAboutBendingAxis.MillimetersToTheFourth);
        Near(radial, p.SecondMomentAboutRadialAxis.MillimetersToTheFourth);
        Near(plastic, p.PlasticModulus.CubicMillimeters);
        Near(Radius, p.EqualAreaAxisFromInside.Millimeters);
        Near(radial / mean, p.ElasticModulusAboutRadialAxisNear.CubicMillimeters);
        Near(radial / (Long + 2 * Radius - mean), p.ElasticModulusAboutRadialAxisFar.CubicMillimeters);
        Near(2 * Long + 2 * Math.PI * Radius, p.OuterPerimeter.Millimeters);
        Near(2 * Long + 2 * Math.PI * (Radius + Hole), p.Perimeter.Millimeters);
    }

    /// <summary>
    /// The hole lies in the left half, so the radial equal-area axis lies right of the middle, where chords are 10 mm: half the hole's area
    /// makes 0.2·π mm.
    /// </summary>
    [Fact]
    public void Radial_equal_area_axis_moves_by_half_the_hole()
    {
        SectionProperties p = Drawn.Bar(Drawn.Slot(), Drawn.Circle(HoleX, Radius, Hole)).AsDrawn.Properties;
        double middle = Long / 2 + Radius;
        double moved = Math.PI * Hole * Hole / 2 / (2 * Radius);
        Near(middle + moved, p.EqualAreaAxisAxial.Millimeters);

        // First moments about the middle: two rectangles, two half circles (4r/3π from their chord), less the hole.
        double whole =
            2 * (2 * Radius * Math.Pow(Long / 2, 2) / 2 + Math.PI * Radius * Radius / 2 * (Long / 2 + 4 * Radius / (3 * Math.PI)));
        double hole = Math.PI * Hole * Hole;
        double aboutMiddle = whole - hole * (Long / 2 - HoleX);
        Near(aboutMiddle - moved * hole + 2 * Radius * moved * moved, p.PlasticModulusAboutRadialAxis.CubicMillimeters);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(30)]
    [InlineData(62)]
    [InlineData(-135)]
    public void A_sharp_rectangle_turned_has_the_moments_of_its_principal_axes(double turn)
    {
        double c = Math.Cos(turn * Math.PI / 180);
        double s = Math.Sin(turn * Math.PI / 180);
        SectionProperties p = Drawn.Bar(Drawn.Rectangle(3, 7, 40, 10)).TurnedBy(Angle.FromDegrees(turn)).Properties;
        double flat = 40 * Math.Pow(10, 3) / 12;
        double upright = 10 * Math.Pow(40, 3) / 12;
        Near(flat * c * c + upright * s * s, p.SecondMomentAboutBendingAxis.MillimetersToTheFourth);
        Near(flat * s * s + upright * c * c, p.SecondMomentAboutRadialAxis.MillimetersToTheFourth);
        Assert.Equal((upright - flat) * s * c, p.ProductOfInertia.MillimetersToTheFourth, Tolerance * upright);
        Near(upright, p.PrincipalSecondMomentMajor.MillimetersToTheFourth);
        Near(upright / 20, p.PrincipalElasticModulusMajor.CubicMillimeters);
        Near(flat / 5, p.PrincipalElasticModulusMinor.CubicMillimeters);
        Near(Math.Sqrt(flat / 400), p.PrincipalRadiusOfGyrationMinor.Millimeters);
        Near(Math.Sqrt(upright / 400), p.PrincipalRadiusOfGyrationMajor.Millimeters);
        Near(40 * Math.Abs(s) + 10 * Math.Abs(c), p.Depth.Millimeters);
        Near(p.Depth.Millimeters / 2, p.EqualAreaAxisFromInside.Millimeters);
    }

    /// <summary>Over the whole bar less the hole, with y from the middle.</summary>
    private static double Sum(Func<double, double, double> bar, Func<double, double, double> hole) =>
        Chords(Radius, half => bar(half.Level, Long + 2 * half.Half)) - Chords(Hole, half => hole(half.Level, 2 * half.Half));

    private static double Chords(double radius, Func<(double Level, double Half), double> integrand)
    {
        double At(double u) => integrand((radius * Math.Sin(u), radius * Math.Cos(u))) * radius * Math.Cos(u);
        return GaussLegendreRule.Integrate(At, -Math.PI / 2, 0, 64) + GaussLegendreRule.Integrate(At, 0, Math.PI / 2, 64);
    }

    private static void Near(double expected, double actual) => Assert.Equal(expected, actual, Tolerance * Math.Abs(expected));
}
