using BendMath.Evidence;
using BendMath.Materials.Standard;
using UnitsNet;

namespace BendMath.Tests.Materials.Standard;

/// <summary>
/// Grades against the rows of standards and handbooks (source and provenance in each row of <c>Handbook/grades.csv</c>), and hardening
/// pairs against the ultimate strengths printed beside them (<c>Handbook/hardening-pairs.csv</c>).
/// </summary>
public sealed class GradesTests
{
    private static readonly ReferenceTable Printed = ReferenceTable.Load("Handbook/grades.csv");

    private static readonly ReferenceTable Pairs = ReferenceTable.Load("Handbook/hardening-pairs.csv");

    public static TheoryData<ReferenceRow> Rows { get; } = Printed.AsTheory();

    public static TheoryData<ReferenceRow> PairsWithUltimate { get; } = new(Pairs.Where(row => row.Has("printed_ultimate_MPa")));

    [Fact]
    public void Every_row_is_there_once()
    {
        Assert.Equal(39, Printed.Rows.Count);
        Assert.Equal(39, Grades.All.Count);
        Assert.Equal(39, Grades.All.Select(grade => grade.FullName).Distinct().Count());
        Assert.All(Printed.Rows, row => Assert.Contains(row["provenance"], new[] { "found", "memory" }));
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void A_grade_has_the_printed_values(ReferenceRow row)
    {
        Grade grade =
            Assert.Single(Grades.Named(row["name"]),
                grade =>
                    grade.Condition == row["condition"] && (grade.SizeRange ?? string.Empty) == row["size_range"]);
        Assert.Equal(row.Number("modulus_GPa"), grade.Physical.ElasticModulus.Gigapascals, 1e-9);
        Assert.Equal(row.Number("poissons_ratio"), grade.Physical.PoissonsRatio);
        Assert.Equal(row.Number("density_kg_per_m3"), grade.Physical.Density.KilogramsPerCubicMeter, 1e-9);
        Assert.Equal(row.Number("yield_MPa"), grade.Tensile.YieldStrength.Megapascals, 1e-9);
        Same(row.NumberOrNull("yield_high_MPa"), grade.Tensile.MaximumYield?.Megapascals);
        Same(row.NumberOrNull("ultimate_MPa"), grade.Tensile.UltimateStrength?.Megapascals);
        Same(row.NumberOrNull("ultimate_high_MPa"), grade.Tensile.MaximumUltimate?.Megapascals);
        Same(row.NumberOrNull("elongation_percent"), grade.Tensile.Elongation?.Percent);
        Assert.Equal(row["elongation_gauge"], grade.Tensile.ElongationGauge ?? string.Empty);
        Assert.Equal(row["kind"], grade.Tensile.ValueKind.ToString());
        Assert.Equal(row["provenance"] == "memory" ? SourceKind.FromMemory : SourceKind.Published, grade.Tensile.Source!.Kind);
    }

    /// <summary>
    /// The inch-pound digits of the same row: 1 ksi = 6.894757 MPa; standards round the SI value to 5 MPa or more, a few of them by as much
    /// as 7.
    /// </summary>
    [Theory]
    [MemberData(nameof(Rows))]
    public void The_yield_agrees_with_the_inch_pound_value_printed_beside_it(ReferenceRow row)
    {
        if (!row.Has("printed_us_units"))
        {
            Assert.StartsWith("EN 10025-2", row["source"], StringComparison.Ordinal);
            return;
        }

        double ksi = double.Parse(row["printed_us_units"].Split('/', '-')[0], System.Globalization.CultureInfo.InvariantCulture);
        Assert.InRange(row.Number("yield_MPa") - ksi * 6.894757, -7, 7);
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void A_grade_becomes_a_material_in_one_call_and_says_what_it_means(ReferenceRow row)
    {
        Grade grade =
            Assert.Single(Grades.Named(row["name"]),
                grade =>
                    grade.Condition == row["condition"] && (grade.SizeRange ?? string.Empty) == row["size_range"]);
        BarMaterial material = grade.ToMaterial();
        Assert.Equal(grade.FullName, material.Name);
        Assert.Equal(grade.Tensile.YieldStrength.Megapascals, material.Law.YieldStress.Megapascals, 1e-9);
        Assert.Equal(grade.Physical.PoissonsRatio, material.PoissonsRatio);
        Same(row.NumberOrNull("yield_high_MPa"), material.YieldRange?.High.Megapascals);
        Assert.Equal(300, material.WithYield(Pressure.FromMegapascals(300)).Law.YieldStress.Megapascals, 1e-9);
        Assert.Contains(row["yield_MPa"] + " MPa", grade.LawNote(), StringComparison.Ordinal);
    }

    /// <summary>Shigley, Table A-22, prints K, n and the measured ultimate strength in one row (from memory).</summary>
    [Theory]
    [MemberData(nameof(PairsWithUltimate))]
    public void A_pair_implies_the_ultimate_strength_printed_beside_it(ReferenceRow row)
    {
        HardeningPair pair = new(row["material"], Pressure.FromMegapascals(row.Number("strength_coefficient_MPa")), row.Number("exponent"));
        Assert.InRange(pair.ImpliedUltimate.Megapascals / row.Number("printed_ultimate_MPa"), 0.99, 1.01);
    }

    [Fact]
    public void The_table_of_pairs_is_whole()
    {
        Assert.Equal(48, Pairs.Rows.Count);
        Assert.Equal(5, PairsWithUltimate.Count);
    }

    [Fact]
    public void Every_pair_a_grade_carries_is_in_print()
    {
        HardeningPair[] carried =
            [.. Grades.All.SelectMany(grade => grade.RefusedPairs.Append(grade.Hardening!)).Where(pair => pair is not null).Distinct()];
        Assert.Equal(8, carried.Length);
        Assert.All(carried, pair => Assert.Contains(Pairs.Rows, row =>
            row.Number("strength_coefficient_MPa") == pair.StrengthCoefficient.Megapascals
                && row.Number("exponent") == pair.HardeningExponent));
    }

    [Fact]
    public void Pairs_are_used_or_refused_by_the_ultimate_strength_they_imply()
    {
        Assert.Equal(
            ["1020, hot rolled bar", "304, annealed", "304L, annealed", "6061-T6, extruded, t <= 0.249 in",
                "6061-T6, extruded, t >= 0.250 in", "6061-T6, typical of T6 and T651", "C11000, copper, hot rolled or annealed (soft)",
                    "C26000, cartridge brass, annealed"],
            Grades.All.Where(grade => grade.Hardening is not null).Select(grade => grade.FullName));
        Assert.Equal(
            ["A36, hot rolled plate, bar, shape", "1018, hot rolled bar", "S235JR, hot rolled, longitudinal, t <= 16 mm",
                "S235JR, hot rolled, longitudinal, 16 < t <= 40 mm", "C11000, copper, hot rolled or annealed (soft)"],
            Grades.All.Where(grade => grade.RefusedPairs.Count > 0).Select(grade => grade.FullName));
        Grade copper = Grades.Find("C11000", "soft");
        Assert.Equal(530, copper.Hardening!.StrengthCoefficient.Megapascals, 1e-9);
        Assert.Equal("it implies an ultimate strength of 131.6 MPa, below the 220 MPa of C11000, copper, hot rolled or annealed (soft).",
            copper.ReasonAgainst(Assert.Single(copper.RefusedPairs)));
    }

    [Fact]
    public void The_power_law_is_one_call_and_its_note_names_both_yields()
    {
        Grade stainless = Grades.Find("304", "annealed");
        PowerHardening law = Assert.IsType<PowerHardening>(stainless.ToPowerHardening().Law);
        Assert.Equal(1275, law.StrengthCoefficient.Megapascals, 1e-9);
        Assert.Contains("it leaves the elastic line at 21 MPa, not at the grade's yield of 205 MPa",
            stainless.PowerHardeningNote(), StringComparison.Ordinal);
        Assert.Contains("has no credible pair",
            Assert.Throws<InvalidOperationException>(() => Grades.Find("A36").ToPowerHardening()).Message,
                StringComparison.Ordinal);
    }

    [Fact]
    public void Rows_of_one_name_are_told_apart()
    {
        Assert.Equal(225, Grades.Find("s235jr", "16 < t").Tensile.YieldStrength.Megapascals, 1e-9);
        Assert.Same(Grades.Find("S235JR", "t <= 16 mm"), Grades.Find("S235JR, hot rolled, longitudinal, t <= 16 mm"));
        ArgumentException several = Assert.Throws<ArgumentException>(() => Grades.Find("S235JR"));
        Assert.Contains("t <= 16 mm; S235JR, hot rolled, longitudinal, 16 < t <= 40 mm, but is 'S235JR', which leaves several.",
            several.Message, StringComparison.Ordinal);
        Assert.Equal("detail", Assert.Throws<ArgumentException>(() => Grades.Find("S235JR", "t = 3")).ParamName);
        Assert.Contains("but is 'S999'", Assert.Throws<ArgumentException>(() => Grades.Find("S999")).Message, StringComparison.Ordinal);
        Assert.Empty(Grades.Named("S999"));
    }

    /// <summary>
    /// EN 10025-2 sells S235 in the qualities JR, J0, J2 (and S355 in K2 too): a designation may stop short of them, of a grade or of a
    /// temper.
    /// </summary>
    [Fact]
    public void A_designation_may_stop_short_of_its_quality()
    {
        Assert.Same(Grades.Find("S235JR", "t <= 16 mm"), Grades.Find("S235", "t <= 16 mm"));
        Assert.Equal(Grades.Named("S355J2"), Grades.Named("s355"));
        Assert.Equal(["A500 Grade B", "A500 Grade C"], Grades.Named("A500").Select(grade => grade.Name).Distinct());
        Assert.Equal("6061-T6", Grades.Find("6061", "typical").Name);
        Assert.Equal("304", Grades.Find("304", "annealed").Name);
        Assert.Contains("S235JR, hot rolled, longitudinal, t <= 16 mm; S235JR, ",
            Assert.Throws<ArgumentException>("name", () => Grades.Find("S235")).Message, StringComparison.Ordinal);
        Assert.All(new[] { "S", "S23", "S235J", "A3", "30", "Titan", "A500 " + "Gr" }, name => Assert.Empty(Grades.Named(name)));
        Assert.InRange(Assert.Throws<ArgumentException>("name", () => Grades.Find("S235" + new string('x', 1_000_000))).Message.Length, 100,
            1_000);
        Assert.InRange(Assert.Throws<ArgumentException>("detail", () => Grades.Find("S235", new string('x', 1_000_000))).Message.Length,
            100, 1_000);
    }

    [Fact]
    public void A_grade_of_ones_own_is_checked()
    {
        Grade Own(double yield, double? highYield = null, double? ultimate = null, double? highUltimate = null) => new(
            "rim steel (invented)", "hot rolled", "own data",
            new(Pressure.FromGigapascals(205), 0.3, Density.FromKilogramsPerCubicMeter(7850)),
            new(Pressure.FromMegapascals(yield), GradeValueKind.Typical, Stress(highYield), Stress(ultimate), Stress(highUltimate)));
        Assert.Equal("280 to 320 MPa", Own(280, 320).ToMaterial().YieldRange!.ToString());
        Assert.StartsWith("maximumYield must not be below the yield strength, 280 MPa, but is 270 MPa.",
            Assert.Throws<ArgumentOutOfRangeException>(() => Own(280, 270)).Message, StringComparison.Ordinal);
        Assert.StartsWith("ultimateStrength must not be below the yield strength, 280 MPa",
            Assert.Throws<ArgumentOutOfRangeException>(() => Own(280, null, 270)).Message, StringComparison.Ordinal);
        Assert.StartsWith("maximumUltimate must come with the ultimate strength",
            Assert.Throws<ArgumentOutOfRangeException>(() => Own(280, null, null, 400)).Message, StringComparison.Ordinal);
        Assert.Equal(300,
            Own(280).With(tensile: Own(280).Tensile.With(yieldStrength: Pressure.FromMegapascals(300)))
                .ToMaterial().Law.YieldStress.Megapascals, 1e-9);
        Assert.Throws<ArgumentOutOfRangeException>("maximumYield",
            () => Own(280, 320).Tensile.With(yieldStrength: Pressure.FromMegapascals(330)));
        Assert.StartsWith("tensile must have a yield smaller than the elastic modulus, 205 GPa",
            Assert.Throws<ArgumentOutOfRangeException>(() => Own(205e3)).Message, StringComparison.Ordinal);
    }

    private static Pressure? Stress(double? megapascals) => megapascals is { } value ? Pressure.FromMegapascals(value) : null;

    private static void Same(double? expected, double? actual)
    {
        Assert.Equal(expected.HasValue, actual.HasValue);
        Assert.Equal(expected ?? 0, actual ?? 0, 1e-9);
    }
}
