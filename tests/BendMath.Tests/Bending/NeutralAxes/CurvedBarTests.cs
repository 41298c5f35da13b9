using BendMath.Bending.NeutralAxes;
using BendMath.Tests.Definitions;
using UnitsNet;

namespace BendMath.Tests.Bending.NeutralAxes;

public sealed class CurvedBarTests
{
    public static TheoryData<ReferenceRow> Printed { get; } = ReferenceTable.Load("Handbook/curved-bar-factors.csv").AsTheory();

    public static TheoryData<ReferenceRow> Recomputed { get; } =
        ReferenceTable.Load("Handbook/curved-bar-factors-recomputed.csv").AsTheory();

    /// <summary>Machinery's Handbook, 31st ed. (2020), Table 4, p. 275 (found); the rows left out are named in the table.</summary>
    [Theory]
    [MemberData(nameof(Printed))]
    public void Machinerys_Handbook_stress_factors(ReferenceRow row)
    {
        CurvedBar bar = WithRadiusOverC(row, 0);
        new Comparison(row)
            .Printed("inside_factor", bar.InsideStressFactor)
            .Printed("outside_factor", bar.OutsideStressFactor)
            .Printed("shift_over_radius", bar.Eccentricity / bar.CentroidRadius)
            .Verify(3);
    }

    /// <summary>Closed forms of Roark's Table 9.1 (from memory), evaluated by an independent program; not a published check.</summary>
    [Theory]
    [MemberData(nameof(Recomputed))]
    public void Closed_forms_of_Roark_recomputed(ReferenceRow row)
    {
        CurvedBar bar = WithRadiusOverC(row, row.Number("bore_over_c"));
        new Comparison(row)
            .Printed("eccentricity_over_c", bar.Eccentricity.Millimeters / 10)
            .Printed("inside_factor", bar.InsideStressFactor)
            .Printed("outside_factor", bar.OutsideStressFactor)
            .Verify(3);
    }

    /// <summary>Independent program, adaptive quadrature over chords; not a published source. Rectangular tubes are left out.</summary>
    [Fact]
    public void Neutral_axes_of_the_definition_cases()
    {
        IReadOnlyList<ReferenceRow> rows =
            ReferenceTable.Load("Definitions/bend-definitions.csv")
                .Where(row => row["shape"] is "angle" or "flat" or "square" or "round" or "tube");
        Assert.True(rows.Count >= 50);
        Assert.All(rows, row => new Comparison(row)
            .Relative("curved_bar_neutral_axis_mm",
            CurvedBar.Of(CaseRow.Section(row),
                BendRadius.Inside(CaseRow.Millimeters(row, "inside_radius_mm"))).NeutralAxisFromInside.Millimeters, 1e-10)
            .Verify(1));
    }

    /// <summary>
    /// Trapezoid, closed form of Roark's Table 9.1 (from memory): r_n = A/[((b_i·r_o − b_o·r_i)/d)·ln(r_o/r_i) − (b_i − b_o)].
    /// </summary>
    [Theory]
    [InlineData(40, 10, 70, 30)]
    [InlineData(10, 40, 70, 5)]
    [InlineData(25, 24, 8, 0.01)]
    public void A_trapezoid_follows_its_closed_form(double inside, double outside, double depth, double radius)
    {
        double end = radius + depth;
        double expected =
            depth * (inside + outside) / 2 / ((inside * end - outside * radius) / depth * Math.Log(end / radius) - (inside - outside));
        CurvedBar bar = CurvedBar.Of(StackedSection.Of(1e-3, (depth, inside, outside)), BendRadius.Inside(Length.FromMillimeters(radius)));
        Assert.Equal(1, bar.NeutralRadius.Millimeters / expected, 1e-12);
    }

    /// <summary>Solid circle, closed form without a difference: e = c²/(2(R + √(R² − c²))), from r_n = c²/(2(R − √(R² − c²))).</summary>
    [Theory]
    [InlineData(1e-3)]
    [InlineData(1)]
    [InlineData(100)]
    [InlineData(1e6)]
    public void A_round_bar_keeps_ten_digits_at_any_radius(double insideOverDepth)
    {
        double radius = insideOverDepth * 20 + 10;
        double expected = 100 / (2 * (radius + Math.Sqrt(insideOverDepth * 20 * (insideOverDepth * 20 + 20))));
        CurvedBar bar =
            CurvedBar.Of(new RoundBar(Length.FromMillimeters(20)).Section, BendRadius.Inside(Length.FromMillimeters(insideOverDepth * 20)));
        Assert.Equal(1, bar.Eccentricity.Millimeters / expected, 1e-10);
    }

    /// <summary>
    /// Stacked rectangles at R/h = 1e6 in 28-digit decimals: R̄·ln(r₂/r₁) = 2X(1 + x²/3 + x⁴/5) with x = (r₂ − r₁)/(r₂ + r₁) and X = R̄·x;
    /// what is left out is of the order x⁶ = 1e−40.
    /// </summary>
    [Theory]
    [InlineData(1, 1, 20, 30)]
    [InlineData(80, 20, 20, 40)]
    [InlineData(3, 30, 27, 3)]
    public void Stacked_rectangles_keep_ten_digits_at_a_million_depths(int innerWidth, int outerWidth, int innerDepth, int outerDepth)
    {
        decimal inside = 1_000_000m * (innerDepth + outerDepth);
        decimal area = innerWidth * innerDepth + outerWidth * outerDepth;
        decimal centroid = (innerWidth * innerDepth * (innerDepth / 2m) + outerWidth * outerDepth * (innerDepth + outerDepth / 2m)) / area;
        decimal mean = inside + centroid;
        decimal Excess(decimal width, decimal from, decimal depth)
        {
            decimal middle = 2 * from + depth;
            decimal square = depth / middle * (depth / middle);
            decimal first = depth * (2 * mean - middle) / middle;
            return width * (first + 2 * mean * depth / middle * square * (1 / 3m + square / 5));
        }

        decimal excess = Excess(innerWidth, inside, innerDepth) + Excess(outerWidth, inside + innerDepth, outerDepth);
        decimal expected = mean * excess / (area + excess);
        OrientedSection section = StackedSection.Of(1e-3, (innerDepth, innerWidth, innerWidth), (outerDepth, outerWidth, outerWidth));
        CurvedBar bar = CurvedBar.Of(section, BendRadius.Inside(Length.FromMillimeters((double)inside)));
        Assert.Equal(1, bar.Eccentricity.Millimeters / (double)expected, 1e-10);
    }

    /// <summary>e → I/(R̄·A) for every shape, with an error of the order h/R̄ (Roark's Table 9.1, from memory).</summary>
    [Fact]
    public void A_slightly_curved_bar_has_the_limit_of_every_shape()
    {
        foreach (OrientedSection section in Shapes())
        {
            SectionProperties p = section.Properties;
            foreach (double depths in new[] { 1e3, 1e6 })
            {
                CurvedBar bar = CurvedBar.Of(section, BendRadius.Inside(depths * section.Depth));
                double limit = p.SecondMomentAboutBendingAxis.MetersToTheFourth / (bar.CentroidRadius.Meters * p.Area.SquareMeters);
                Assert.Equal(1, bar.Eccentricity.Meters / limit, 1 / depths);
                Assert.Equal(1, bar.InsideStressFactor, 2 / depths);
                Assert.Equal(1, bar.OutsideStressFactor, 2 / depths);
            }
        }
    }

    /// <summary>
    /// A positive moment closes the ring: it compresses the inside, stretches the outside and presses the fibers together; the stress has
    /// the moment as its resultant.
    /// </summary>
    [Fact]
    public void A_positive_moment_compresses_the_inside()
    {
        foreach (OrientedSection section in Shapes())
        {
            CurvedBar bar = CurvedBar.Of(section, BendRadius.Inside(2 * section.Depth));
            Torque moment = Torque.FromNewtonMeters(10);
            double c = section.Properties.CentroidFromInside.Meters;
            double straight = 10 * c / section.Properties.SecondMomentAboutBendingAxis.MetersToTheFourth;
            Assert.Equal(-bar.InsideStressFactor, bar.StressAt(Length.Zero, moment, Force.Zero).Pascals / straight, 1e-12);
            Assert.True(bar.StressAt(section.Depth, moment, Force.Zero).Pascals > 0);
            Assert.Equal(0, bar.StressAt(bar.NeutralAxisFromInside, moment, Force.Zero).Pascals / straight, 1e-9);
            Assert.True(bar.RadialStressAt(bar.NeutralAxisFromInside, moment).Pascals < 0);
            Assert.Equal(1 / section.Properties.Area.SquareMeters, bar.StressAt(Length.Zero, Torque.Zero, Force.FromNewtons(1)).Pascals,
                1e-6);
        }
    }

    [Fact]
    public void A_fiber_outside_the_section_is_refused_by_name()
    {
        CurvedBar bar = CurvedBar.Of(new RoundBar(Length.FromMillimeters(20)).Section, BendRadius.Inside(Length.FromMillimeters(50)));
        Assert.Equal("fromInside",
            Assert.Throws<ArgumentOutOfRangeException>(() => bar.StressAt(Length.FromMillimeters(21), Torque.Zero, Force.Zero)).ParamName);
        Assert.Equal("fromInside",
            Assert.Throws<ArgumentOutOfRangeException>(() => bar.RadialStressAt(Length.Zero, Torque.Zero)).ParamName);
    }

    private static CurvedBar WithRadiusOverC(ReferenceRow row, double bore)
    {
        Length depth = Length.FromMillimeters(20);
        OrientedSection section = row["shape"] switch
        {
            "rectangle" => new SquareBar(depth).Section,
            "round" => new RoundBar(depth).Section,
            "tube" => new RoundTube(depth, Length.FromMillimeters(10 * (1 - bore))).Section,
            var shape => throw new NotSupportedException($"{row}: no shape '{shape}'."),
        };
        return CurvedBar.Of(section, BendRadius.Centroid(Length.FromMillimeters(10 * row.Number("radius_over_c"))));
    }

    private static OrientedSection[] Shapes()
    {
        EqualAngle angle =
            new(Length.FromMillimeters(30), Length.FromMillimeters(3),
                AngleFillets.Of(Length.FromMillimeters(5), Length.FromMillimeters(2.5)));
        FlatBar flat = new(Length.FromMillimeters(25), Length.FromMillimeters(5));
        return
        [
            angle.FlangeOut, angle.FlangeIn, flat.EasyWay, flat.HardWay,
            new RoundBar(Length.FromMillimeters(12)).Section, new RoundTube(Length.FromMillimeters(25), Length.FromMillimeters(2)).Section,
        ];
    }
}
