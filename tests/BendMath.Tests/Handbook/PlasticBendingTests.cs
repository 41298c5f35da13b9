using UnitsNet;

namespace BendMath.Tests.Handbook;

/// <summary>Closed forms of perfectly plastic bending; the source stands with each test.</summary>
public sealed class PlasticBendingTests
{
    private static readonly ReferenceTable Table = ReferenceTable.Load("Handbook/plastic-moments.csv");

    public static TheoryData<ReferenceRow> Rows => Table.AsTheory();

    public static TheoryData<double> CoreRatios => [0.01, 0.02, 0.05, 0.1, 0.25, 0.4, 0.5, 0.65, 0.8, 0.95, 0.999];

    /// <summary>
    /// F. J. Gardiner, The Springback of Metals, Trans. ASME 79 (1957) 1-9 (from memory): R/R_f = 4x³ − 3x + 1, x = R·σ_y/(E·t), mid-plane
    /// radii. Factored, it keeps its digits near first yield.
    /// </summary>
    [Theory]
    [InlineData(12, 4)]
    [InlineData(60, 3)]
    [InlineData(5, 5)]
    public void Rectangle_springs_back_by_the_cubic_of_Gardiner_1957(double width, double thickness)
    {
        FlatBar bar = new(Length.FromMillimeters(width), Length.FromMillimeters(thickness));
        foreach (OrientedSection section in bar.Orientations)
        {
            PerfectlyPlasticBar plastic = new(section);
            double depth = section.Depth.Meters;
            int count = 0;
            for (double ratio = 3; ratio < 395; ratio *= 1.25)
            {
                double radius = ratio * depth;
                double x = radius * 250e6 / (200e9 * depth);
                double kept = (x + 1) * ((2 * x) - 1) * ((2 * x) - 1);
                AssertKept(kept, radius, plastic.Analysis.LoadedAt(ReciprocalLength.FromInverseMeters(1 / radius)));
                AssertKept(kept, radius, plastic.Analysis.LoadedTo(BendRadius.Centroid(Length.FromMeters(radius))));
                count++;
            }

            Assert.Equal(22, count);
        }
    }

    /// <summary>Beer, Johnston &amp; DeWolf, Mechanics of Materials, Problem 4.99 (from memory): M/M_Y = (3/2)(1 − η²/3).</summary>
    [Theory]
    [MemberData(nameof(CoreRatios))]
    public void Rectangle_carries_the_closed_form_of_Beer_and_Johnston(double core)
    {
        PerfectlyPlasticBar bar = new(new SquareBar(Length.FromMillimeters(20)).Section);
        AssertRelative(1.5 * (1 - (core * core / 3)), bar.MomentRatio(core), 1e-10);
    }

    /// <summary>Derived by integration over the circle and checked by quadrature; not a published source.</summary>
    [Theory]
    [MemberData(nameof(CoreRatios))]
    public void Solid_circle_carries_the_derived_closed_form(double core)
    {
        PerfectlyPlasticBar bar = new(new RoundBar(Length.FromMillimeters(20)).Section);
        AssertRelative(Circle(core), bar.MomentRatio(core), 1e-10);
    }

    /// <summary>Derived: a tube is a solid circle less the circle of its bore at the same height of the core.</summary>
    [Theory]
    [MemberData(nameof(CoreRatios))]
    public void Thick_tube_carries_the_difference_of_two_circles(double core)
    {
        PerfectlyPlasticBar bar = new(new RoundTube(Length.FromMillimeters(40), Length.FromMillimeters(5)).Section);
        const double Bore = 0.75;
        double boreCore = core / Bore;
        double bore = boreCore < 1 ? Circle(boreCore) * Math.Pow(Bore, 3) : Math.Pow(Bore, 4) / core;
        AssertRelative((Circle(core) - bore) / (1 - Math.Pow(Bore, 4)), bar.MomentRatio(core), 1e-10);
    }

    /// <summary>
    /// Derived: at the mean radius r, M/(π·r²·t·σ_y) = (2/π)(arcsin η/η + √(1 − η²)) with an error of the order (wall/diameter)².
    /// </summary>
    [Theory]
    [InlineData(0.1)]
    [InlineData(0.3)]
    [InlineData(0.5)]
    [InlineData(0.8)]
    public void Thin_tube_is_a_limit_that_tubes_approach_with_the_square_of_the_wall(double core)
    {
        double thin = ThinTube(core);
        double[] errors = [.. new[] { 0.02, 0.01, 0.005, 0.0025 }.Select(wall => Math.Abs(MomentAtMeanRadius(core, wall) - thin))];
        Assert.All(errors, error => Assert.True(error > 1e-8, $"an error of {error:E2} shows no rate"));
        foreach ((double coarse, double fine) in errors.Zip(errors.Skip(1)))
        {
            Assert.Equal(2, Math.Log2(coarse / fine), 0.1);
        }
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void Moments_and_kept_curvatures_agree_with_the_derived_table(ReferenceRow row)
    {
        double core = row.Number("core_ratio");
        PerfectlyPlasticBar rectangle = new(new FlatBar(Length.FromMillimeters(40), Length.FromMillimeters(5)).EasyWay);
        PerfectlyPlasticBar circle = new(new RoundBar(Length.FromMillimeters(12)).Section);
        PerfectlyPlasticBar tube = new(new RoundTube(Length.FromMeters(100), Length.FromMillimeters(0.001)).Section);
        new Comparison(row)
            .Printed("rectangle_moment_ratio", rectangle.MomentRatio(core))
            .Printed("circle_moment_ratio", circle.MomentRatio(core))
            .Printed("thin_tube_moment_ratio", tube.MomentRatio(core))
            .Printed("rectangle_kept_curvature", rectangle.KeptCurvature(core))
            .Printed("circle_kept_curvature", circle.KeptCurvature(core))
            .Printed("thin_tube_kept_curvature", tube.KeptCurvature(core))
            .Verify(6);
    }

    /// <summary>
    /// Standard textbook values (Beer &amp; Johnston; Timoshenko; Hill), from memory: rectangle 3/2, circle 16/(3π), tube (16/3π)(1 −
    /// k³)/(1 − k⁴) with k the ratio of bore to outside diameter.
    /// </summary>
    [Fact]
    public void Shape_factors_are_those_of_the_textbooks()
    {
        Length size = Length.FromMillimeters(31.7);
        const double Circle = 16 / (3 * Math.PI);
        AssertRelative(1.5, new SquareBar(size).Section.Properties.ShapeFactor, 1e-12);
        FlatBar flat = new(size, size / 7);
        Assert.All(flat.Orientations, section => AssertRelative(1.5, section.Properties.ShapeFactor, 1e-12));
        AssertRelative(Circle, new RoundBar(size).Section.Properties.ShapeFactor, 1e-12);
        Assert.All(new[] { 0.05, 0.2, 0.5, 0.8, 0.9 }, k =>
        {
            double expected = Circle * (1 - Math.Pow(k, 3)) / (1 - Math.Pow(k, 4));
            AssertRelative(expected, new RoundTube(size, size * ((1 - k) / 2)).Section.Properties.ShapeFactor, 1e-12);
        });
    }

    private static void AssertKept(double kept, double radius, LoadedBend loaded)
    {
        ReleasedBend released = loaded.Release(Release.HeldFlat);
        AssertRelative(kept, released.CurvatureKept, 1e-9);
        AssertRelative(kept, radius / released.Ring.CentroidRadius.Meters, 1e-9);
    }

    private static double Circle(double core) =>
        4 / Math.PI * ((Math.Sqrt(1 - (core * core)) * ((5.0 / 6) - (core * core / 3))) + (Math.Asin(core) / (2 * core)));

    private static double ThinTube(double core) => 2 / Math.PI * ((Math.Asin(core) / core) + Math.Sqrt(1 - (core * core)));

    private static double MomentAtMeanRadius(double core, double wallOverDiameter)
    {
        const double MeanRadius = 0.05;
        double diameter = 2 * MeanRadius / (1 - wallOverDiameter);
        double wall = wallOverDiameter * diameter;
        PerfectlyPlasticBar tube = new(new RoundTube(Length.FromMeters(diameter), Length.FromMeters(wall)).Section);
        double yield = tube.Analysis.Law.YieldStress.Pascals;
        double curvature = yield / (tube.Analysis.Law.ElasticModulus.Pascals * MeanRadius * core);
        return tube.Analysis.MomentAt(ReciprocalLength.FromInverseMeters(curvature)).NewtonMeters
            / (Math.PI * MeanRadius * MeanRadius * wall * yield);
    }

    private static void AssertRelative(double expected, double actual, double tolerance) =>
        Assert.True(Math.Abs(actual - expected) <= tolerance * Math.Abs(expected),
            $"{actual:R} instead of {expected:R}, off by {Math.Abs((actual / expected) - 1):E2}");
}
