using System.Globalization;
using UnitsNet;

namespace BendMath.Tests.Bending;

/// <summary>The sweep against the single calls, which the definition cases hold.</summary>
public sealed class BendSweepTests
{
    private static readonly EqualAngle Angle =
        new(Length.FromMillimeters(30), Length.FromMillimeters(3), AngleFillets.Of(Length.FromMillimeters(5), Length.FromMillimeters(2.5)));

    private static readonly BarMaterial Hardening = new(
        "hardening steel, invented",
        new LinearHardening(Pressure.FromGigapascals(210), Pressure.FromMegapascals(280), Pressure.FromMegapascals(1500)),
        Density.FromKilogramsPerCubicMeter(7850));

    private static readonly BarMaterial Power = new(
        "power-law steel, invented", new PowerHardening(Pressure.FromGigapascals(210), Pressure.FromMegapascals(530), 0.26),
            Density.FromKilogramsPerCubicMeter(7850));

    internal static string[] Doors { get; } =
        [nameof(BendSweep.FinishedRadii), nameof(BendSweep.LoadedRadii), nameof(BendSweep.NeutralAxes), nameof(BendSweep.BendingMoments)];

    public static TheoryData<string, double> BadRadii() =>
        [.. from door in Doors from bad in new[] { double.NaN, 0, -0.2, double.PositiveInfinity, 1e300, 1e-7 } select (door, bad)];

    private static double[] Radii { get; } = [.. Enumerable.Range(0, 40).Select(i => 0.06 * Math.Pow(1.12, i))];

    [Theory]
    [InlineData(Release.Free)]
    [InlineData(Release.HeldFlat)]
    public void Each_point_is_the_single_call(Release release)
    {
        foreach (BarMaterial material in new[] { Hardening, Power })
        {
            BendAnalysis analysis = BendAnalysis.Of(Angle.FlangeOut, material);
            BendSweep sweep = BendSweep.Of(analysis);
            double[] finished = new double[Radii.Length], axes = new double[Radii.Length], moments = new double[Radii.Length];
            sweep.FinishedRadii(Radii, finished, release);
            sweep.NeutralAxes(Radii, axes);
            sweep.BendingMoments(Radii, moments);
            for (int i = 0; i < Radii.Length; i++)
            {
                LoadedBend loaded = analysis.LoadedTo(BendRadius.Inside(Length.FromMeters(Radii[i])));
                ReleasedBend released = loaded.Release(release);
                Near.Relative(released.IsStraight ? double.PositiveInfinity : released.Ring.InsideRadius.Meters, finished[i], 1e-11);
                Near.Relative(loaded.NeutralAxisFromInside.Meters, axes[i], 1e-12);
                Near.Relative(loaded.BendingMoment.NewtonMeters, moments[i], 1e-12);
            }
        }
    }

    [Fact]
    public void Radii_in_any_order_give_the_same_answers()
    {
        BendSweep sweep = BendSweep.Of(BendAnalysis.Of(Angle.FlangeIn, Power));
        double[] shuffled = [.. Radii.OrderBy(radius => Math.Sin(1e5 * radius))];
        double[] inOrder = new double[Radii.Length], mixed = new double[Radii.Length];
        sweep.FinishedRadii(Radii, inOrder, Release.Free);
        sweep.FinishedRadii(shuffled, mixed, Release.Free);
        for (int i = 0; i < shuffled.Length; i++)
        {
            Near.Relative(inOrder[Array.IndexOf(Radii, shuffled[i])], mixed[i], 1e-10);
        }
    }

    [Fact]
    public void The_inverse_returns_the_loaded_radii_in_place()
    {
        BendSweep sweep = BendSweep.Of(BendAnalysis.Of(Angle.FlangeOut, Hardening));
        double[] radii = Radii[..20];
        sweep.FinishedRadii(radii, radii, Release.Free);
        sweep.LoadedRadii(radii, radii, Release.Free);
        for (int i = 0; i < radii.Length; i++)
        {
            Near.Relative(Radii[i], radii[i], 1e-10);
        }
    }

    [Fact]
    public void A_bar_that_springs_back_straight_is_infinitely_wide()
    {
        double[] finished = new double[1];
        BendSweep.Of(BendAnalysis.Of(Angle.FlangeOut, Hardening)).FinishedRadii([100], finished, Release.Free);
        Assert.Equal(double.PositiveInfinity, finished[0]);
    }

    [Fact]
    public void Nothing_is_allocated()
    {
        BendSweep sweep = BendSweep.Of(BendAnalysis.Of(Angle.FlangeOut, Hardening));
        double[] places = new double[Radii.Length];
        Run();
        long before = GC.GetAllocatedBytesForCurrentThread();
        Run();
        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());

        void Run()
        {
            sweep.FinishedRadii(Radii, places, Release.Free);
            sweep.NeutralAxes(Radii, places);
            sweep.BendingMoments(Radii, places);
            sweep.FinishedRadii(Radii.AsSpan(0, 15), places, Release.Free);
            sweep.LoadedRadii(places.AsSpan(0, 15), places, Release.Free);
        }
    }

    [Fact]
    public void Many_threads_get_the_same_answers()
    {
        BendSweep sweep = BendSweep.Of(BendAnalysis.Of(Angle.FlangeOut, Power));
        double[] alone = new double[Radii.Length];
        sweep.FinishedRadii(Radii, alone, Release.Free);
        double[][] together = [.. Enumerable.Range(0, 8).Select(_ => new double[Radii.Length])];
        Parallel.For(0, together.Length, i => sweep.FinishedRadii(Radii, together[i], Release.Free));
        Assert.All(together, places => Assert.Equal(alone, places));
    }

    [Theory]
    [MemberData(nameof(BadRadii))]
    public void A_bad_radius_is_named_with_its_place(string door, double bad)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(() => Call(door, [0.3, bad], new double[2]));
        Assert.Equal(door == nameof(BendSweep.LoadedRadii) ? "finishedMeters" : "loadedMeters", refused.ParamName);
        Assert.Contains(
            "radius 2 must be between 0.001 mm and 1000 km, but is " + (bad * 1e3).ToString("0.###", CultureInfo.InvariantCulture)[..1],
                refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Too_few_places_are_refused() => Assert.All(Doors, door => Assert.Contains(
        "must have a place for each of the 2 radii, but has 1",
            Assert.Throws<ArgumentException>(() => Call(door, [0.3, 0.4], new double[1])).Message, StringComparison.Ordinal));

    [Fact]
    public void A_ring_out_of_reach_is_refused() => Assert.Contains(
        "radius 1 must be wider than the ring the tightest possible bend leaves",
        Assert.Throws<ArgumentOutOfRangeException>(() => Call(nameof(BendSweep.LoadedRadii), [2e-6], new double[1])).Message,
        StringComparison.Ordinal);

    [Fact]
    public void A_release_that_is_none_is_refused()
    {
        BendSweep sweep = BendSweep.Of(BendAnalysis.Of(Angle.FlangeOut, Hardening));
        Assert.Equal("release",
            Assert.Throws<ArgumentOutOfRangeException>(() => sweep.FinishedRadii([0.3], new double[1], (Release)7)).ParamName);
        Assert.Equal("release",
            Assert.Throws<ArgumentOutOfRangeException>(() => sweep.LoadedRadii([0.3], new double[1], (Release)7)).ParamName);
    }

    private static void Call(string door, double[] radii, double[] places)
    {
        BendSweep sweep = BendSweep.Of(BendAnalysis.Of(Angle.FlangeOut, Hardening));
        switch (door)
        {
            case nameof(BendSweep.FinishedRadii):
                sweep.FinishedRadii(radii, places, Release.Free);
                break;
            case nameof(BendSweep.LoadedRadii):
                sweep.LoadedRadii(radii, places, Release.Free);
                break;
            case nameof(BendSweep.NeutralAxes):
                sweep.NeutralAxes(radii, places);
                break;
            default:
                sweep.BendingMoments(radii, places);
                break;
        }
    }
}
