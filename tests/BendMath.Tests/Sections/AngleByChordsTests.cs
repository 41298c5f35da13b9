using MathNet.Numerics.Integration;
using UnitsNet;

namespace BendMath.Tests.Sections;

/// <summary>
/// Source: definitions of area and moments of area, integrated here over chords parallel to the heel by Gauss–Legendre quadrature
/// (MathNet.Numerics); the library integrates along the outline.
/// </summary>
public sealed class AngleByChordsTests
{
    private const double Tolerance = 1e-10;

    [Theory]
    [InlineData(30, 30, 3, 5, 2.5)]
    [InlineData(100, 100, 10, 12, 6)]
    [InlineData(50, 30, 5, 7, 0)]
    [InlineData(30, 50, 5, 0, 5)]
    [InlineData(20, 20, 3, 0, 0)]
    public void Rolled_angle_has_the_moments_of_its_chords(double radialLeg, double axialLeg, double thickness, double root, double toe)
    {
        Chords chords = new(radialLeg, axialLeg, thickness, root, toe);
        AngleFillets fillets = AngleFillets.Of(Length.FromMillimeters(root), Length.FromMillimeters(toe));
        SectionProperties outward = Angle(FlangeDirection.Out);
        SectionProperties inward = Angle(FlangeDirection.In);
        Assert.Equal(chords.CentroidY, outward.CentroidFromInside.Millimeters, Tolerance * chords.CentroidY);
        Assert.Equal(radialLeg - chords.CentroidY, inward.CentroidFromInside.Millimeters, Tolerance * chords.CentroidY);
        Assert.Equal(chords.Product, outward.ProductOfInertia.MillimetersToTheFourth, Tolerance * chords.SecondY);
        Assert.Equal(-chords.Product, inward.ProductOfInertia.MillimetersToTheFourth, Tolerance * chords.SecondY);
        Assert.All(new[] { outward, inward }, section =>
        {
            Assert.Equal(chords.Area, section.Area.SquareMillimeters, Tolerance * chords.Area);
            Assert.Equal(chords.CentroidZ, section.CentroidAxial.Millimeters, Tolerance * chords.CentroidZ);
            Assert.Equal(chords.SecondY, section.SecondMomentAboutBendingAxis.MillimetersToTheFourth, Tolerance * chords.SecondY);
            Assert.Equal(chords.SecondZ, section.SecondMomentAboutRadialAxis.MillimetersToTheFourth, Tolerance * chords.SecondZ);
        });

        SectionProperties Angle(FlangeDirection direction) =>
            OrientedBars.Angle(Length.FromMillimeters(radialLeg), Length.FromMillimeters(axialLeg), Length.FromMillimeters(thickness),
                fillets, direction).Properties;
    }

    /// <summary>Parallel-axis theorem (any textbook): a sharp angle is the square on its legs less the square between them.</summary>
    [Theory]
    [InlineData(30, 3)]
    [InlineData(19.05, 3.175)]
    [InlineData(100, 12)]
    [InlineData(25, 24)]
    public void Sharp_angle_is_a_square_less_a_square(double leg, double thickness)
    {
        SectionProperties angle =
            new EqualAngle(Length.FromMillimeters(leg), Length.FromMillimeters(thickness), AngleFillets.Sharp).FlangeOut.Properties;
        SectionProperties whole = new SquareBar(Length.FromMillimeters(leg)).Section.Properties;
        SectionProperties gap = new SquareBar(Length.FromMillimeters(leg - thickness)).Section.Properties;
        double outer = whole.Area.SquareMillimeters;
        double inner = gap.Area.SquareMillimeters;
        double outerAt = whole.CentroidFromInside.Millimeters;
        double innerAt = thickness + gap.CentroidFromInside.Millimeters;
        double area = outer - inner;
        double centroid = ((outer * outerAt) - (inner * innerAt)) / area;
        double shifts = (outer * Math.Pow(outerAt - centroid, 2)) - (inner * Math.Pow(innerAt - centroid, 2));
        double second =
            whole.SecondMomentAboutBendingAxis.MillimetersToTheFourth - gap.SecondMomentAboutBendingAxis.MillimetersToTheFourth + shifts;
        const double Rounding = 1e-13;
        double scale = whole.SecondMomentAboutBendingAxis.MillimetersToTheFourth;
        Assert.Equal(area, angle.Area.SquareMillimeters, Rounding * outer);
        Assert.Equal(centroid, angle.CentroidFromInside.Millimeters, Rounding * leg);
        Assert.Equal(centroid, angle.CentroidAxial.Millimeters, Rounding * leg);
        Assert.Equal(second, angle.SecondMomentAboutBendingAxis.MillimetersToTheFourth, 10 * Rounding * scale);
        Assert.Equal(second, angle.SecondMomentAboutRadialAxis.MillimetersToTheFourth, 10 * Rounding * scale);
        Assert.Equal(shifts, angle.ProductOfInertia.MillimetersToTheFourth, 10 * Rounding * scale);
        Assert.Equal(second + Math.Abs(shifts), angle.PrincipalSecondMomentMajor.MillimetersToTheFourth, 10 * Rounding * scale);
        Assert.Equal(second - Math.Abs(shifts), angle.PrincipalSecondMomentMinor.MillimetersToTheFourth, 10 * Rounding * scale);
    }

    /// <summary>The axial leg lies at y = 0…t and reaches from z = 0; every chord of the angle, flange out, starts at z = 0.</summary>
    private sealed class Chords
    {
        private const int Order = 64;

        private readonly double[] _sums = new double[6];

        public Chords(double radialLeg, double axialLeg, double t, double root, double toe)
        {
            Straight(0, t - toe, axialLeg);
            Round(t - toe, toe, 0, Math.PI / 2, cosine => axialLeg - toe + (toe * cosine));
            Round(t + root, root, -Math.PI / 2, 0, cosine => t + root - (root * cosine));
            Straight(t + root, radialLeg - toe, t);
            Round(radialLeg - toe, toe, 0, Math.PI / 2, cosine => t - toe + (toe * cosine));
        }

        public double Area => _sums[0];

        public double CentroidY => _sums[1] / Area;

        public double CentroidZ => _sums[2] / Area;

        public double SecondY => _sums[3] - (Area * CentroidY * CentroidY);

        public double SecondZ => _sums[4] - (Area * CentroidZ * CentroidZ);

        public double Product => _sums[5] - (Area * CentroidY * CentroidZ);

        private void Straight(double from, double to, double chord) => Add(y => y, _ => chord, _ => 1, from, to);

        /// <summary>y = center + r·sin u makes the chord of a circular arc smooth in u.</summary>
        private void Round(double center, double radius, double from, double to, Func<double, double> chord) =>
            Add(u => center + (radius * Math.Sin(u)), u => chord(Math.Cos(u)), u => radius * Math.Cos(u), from, to);

        private void Add(Func<double, double> level, Func<double, double> chord, Func<double, double> slope, double from, double to)
        {
            Func<double, double, double>[] integrands =
            [
                (_, c) => c, (y, c) => y * c, (_, c) => c * c / 2, (y, c) => y * y * c, (_, c) => c * c * c / 3, (y, c) => y * c * c / 2,
            ];
            for (int i = 0; i < integrands.Length; i++)
            {
                _sums[i] += GaussLegendreRule.Integrate(u => integrands[i](level(u), chord(u)) * slope(u), from, to, Order);
            }
        }
    }
}
