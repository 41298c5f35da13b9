using System.Globalization;
using UnitsNet;

namespace BendMath.Tests.Accuracy;

/// <summary>
/// Neutral axis, moment and finished curvature of every shape and law against the same definitions in double-double, from an inside radius
/// of 3 depths to 100 000.
/// </summary>
public sealed class AccuracyTests
{
    private const double Allowed = 1e-11;

    private const double Modulus = 205e9;

    private const string Page = "docs/validation.md";

    private static readonly Dictionary<string, PreciseSection> Shapes = new()
    {
        ["rectangle 30 × 5"] = PreciseSection.Rectangle(0.030, 0.005),
        ["round bar 12"] = PreciseSection.Round(0.012),
        ["round tube 33.7 × 3.2"] = PreciseSection.Tube(0.0337, 0.0032),
        ["sharp angle 30 × 3"] = PreciseSection.Angle(0.030, 0.003, 0, 0),
        ["rolled angle 30 × 3"] = PreciseSection.Angle(0.030, 0.003, 0.005, 0.0025),
    };

    private static readonly Dictionary<string, PreciseLaw> Laws = new()
    {
        ["perfectly plastic"] = new PreciseLines(Modulus, 290e6, 0),
        ["linear hardening"] = new PreciseLines(Modulus, 290e6, 1500e6),
        ["power law"] = new PreciseQuarterPower(Modulus, 900e6),
        ["Ramberg–Osgood"] = new PreciseRambergOsgood(Modulus, 290e6, 9),
    };

    public static MatrixTheoryData<string, string> Pairs => new(Shapes.Keys, Laws.Keys);

    public static MatrixTheoryData<string, int> Knees =>
        new(["rectangle 30 × 5", "round bar 12", "rolled angle 30 × 3"], [40, 80, 250, 1000]);

    [Theory]
    [MemberData(nameof(Pairs))]
    public void Every_figure_of_a_bend_is_right_to_eleven_digits(string shape, string law)
    {
        double worst = Worst(Shapes[shape], Laws[law]);
        Assert.True(worst <= Allowed, string.Create(CultureInfo.InvariantCulture, $"{shape}, {law}: off by {worst:E2}"));
        double printed = Printed(shape, Laws.Keys.ToList().IndexOf(law));
        Assert.True(
            worst <= 3 * printed && worst >= printed / 10,
                string.Create(CultureInfo.InvariantCulture, $"{shape}, {law}: {Page} says {printed:E1}, recomputed {worst:E1}"));
    }

    /// <summary>The larger the exponent, the sharper the knee of the law: nowhere does it cost digits.</summary>
    [Theory]
    [MemberData(nameof(Knees))]
    public void A_sharp_knee_costs_no_digits(string shape, int exponent)
    {
        double worst = Worst(Shapes[shape], new PreciseRambergOsgood(Modulus, 290e6, exponent));
        Assert.True(worst <= Allowed, string.Create(CultureInfo.InvariantCulture, $"{shape}, exponent {exponent}: off by {worst:E2}"));
    }

    /// <summary>
    /// π to 31 digits, from memory, and Gardiner's cubic 4x³ − 3x + 1 where x = R·σ_y/(E·t) is 0.008, 0.4 and 0.496, in whole numbers.
    /// </summary>
    [Theory]
    [InlineData(0.25, 976_002_048, 1e9)]
    [InlineData(12.5, 56_000_000, 1e9)]
    [InlineData(15.5, 95_744, 1e9)]
    public void The_reference_itself_has_more_than_twenty_digits(double radius, double kept, double unit)
    {
        DoubleDouble pi = new(3.141592653589793116, 1.224646799147353207e-16);
        Assert.Equal(0, (double)(PreciseSection.Round(2).Area - pi), 1e-20);

        const double Depth = 0.03125;
        PreciseBend bend =
            new(PreciseSection.Rectangle(Depth, 0.005), new PreciseLines(Modulus, Modulus / 1000, 0), radius - (Depth / 2), 0.0156);
        Assert.Equal(0, (double)((bend.FlatCurvature / bend.Curvature) - ((DoubleDouble)kept / unit)), 1e-20);
    }

    /// <summary>
    /// A grid of 17 radii, even on a logarithmic scale, and 8 around the radius of first yield; straight bars must be straight in both.
    /// </summary>
    private static double Worst(PreciseSection section, PreciseLaw law)
    {
        BendAnalysis analysis =
            BendAnalysis.Of(section.Library, new BarMaterial("steel", law.Library, Density.FromKilogramsPerCubicMeter(7850)));
        double depth = section.Library.Depth.Meters;
        double firstYield = 1 / analysis.YieldCurvature.InverseMeters;
        double[] radii =
        [
            .. Enumerable.Range(0, 17).Select(i => depth * 3 * Math.Pow(1e5 / 3, i / 16.0)),
            .. new[] { 0.5, 0.9, 0.97, 0.99, 0.999, 1, 1.001, 1.1 }.Select(share => share * firstYield),
        ];
        double worst = 0;
        int straight = 0;
        foreach (double radius in radii)
        {
            LoadedBend loaded = analysis.LoadedTo(BendRadius.Inside(Length.FromMeters(radius)));
            PreciseBend precise = new(section, law, radius, loaded.NeutralAxisFromInside.Meters);
            Compare(loaded.NeutralAxisFromInside.Meters, precise.NeutralAxis);
            Compare(loaded.Curvature.InverseMeters, precise.Curvature);
            Compare(loaded.BendingMoment.NewtonMeters, precise.Moment * Modulus);
            straight += Finished(loaded.Release(Release.HeldFlat), precise.FlatCurvature / precise.Curvature, precise.FlatCurvature);
            Finished(loaded.Release(Release.Free), precise.FreeCurvature / precise.Curvature, precise.FreeCurvature);
        }

        Assert.InRange(straight, 4, radii.Length - 8);
        return worst;

        int Finished(ReleasedBend released, DoubleDouble kept, DoubleDouble curvature)
        {
            Assert.Equal(Math.Abs(kept.High) < 1e-6, released.IsStraight);
            if (!released.IsStraight)
            {
                Compare(released.Ring.Curvature.InverseMeters, curvature);
            }

            return released.IsStraight ? 1 : 0;
        }

        void Compare(double actual, DoubleDouble expected) => worst = Math.Max(worst, Math.Abs((double)((actual - expected) / expected)));
    }

    private static double Printed(string shape, int law)
    {
        string row =
            File.ReadAllLines(Path.Combine(Repository.Root, Page))
                .Single(line => line.StartsWith($"| {shape} |", StringComparison.Ordinal));
        return double.Parse(row.Split('|')[2 + law], CultureInfo.InvariantCulture);
    }
}
