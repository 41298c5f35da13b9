using UnitsNet;

namespace BendMath.Tests.Bending;

/// <summary>A rectangle bent and pulled, perfectly plastic.</summary>
public sealed class PullLimitTests
{
    private const double Depth = 0.02;

    private const double Width = 0.005;

    private const double Modulus = 200e9;

    public static MatrixTheoryData<double, double> Cases => new([-0.9, -0.5, -0.1, 0, 0.2, 0.6, 0.95], [250e6, 25e6, 2.5e6]);

    /// <summary>
    /// The interaction of moment and axial force of a fully plastic rectangle, M = M_p(1 − p²) with p = P/P_p (P. G. Hodge, Plastic
    /// Analysis of Structures, 1959, from memory). With a core of the half height k left, the stresses give M = M_p(1 − p² − ⅓(2k/h)²)
    /// exactly (derived), so that the limit is approached with the square of the yield stress.
    /// </summary>
    [Theory]
    [MemberData(nameof(Cases))]
    public void Pull_takes_the_square_of_its_share_off_the_plastic_moment(double share, double yield)
    {
        LoadedBend loaded = Loaded(share, yield);
        double core = 2 * yield / Modulus / loaded.Curvature.InverseMeters / Depth;
        Assert.True(Math.Abs(share) + core < 1, "the core must lie inside the bar");
        double moment = loaded.BendingMoment / loaded.Analysis.PlasticMoment;
        Assert.Equal(1 - (share * share) - (core * core / 3), moment, 1e-10);
        Assert.Equal(share, ((Depth / 2) - loaded.NeutralAxisFromInside.Meters) / (Depth / 2), 1e-9);
        Assert.Equal(share * yield * Depth * Width, loaded.AxialForce.Newtons, 1e-9 * yield * Depth * Width);
    }

    [Theory]
    [InlineData(0.2)]
    [InlineData(-0.5)]
    [InlineData(0.9)]
    public void The_plastic_limit_is_approached_with_the_square_of_the_yield(double share)
    {
        double[] missing =
            [.. new[] { 100e6, 50e6, 25e6 }.Select(yield => 1 - (share * share) - (Loaded(share, yield).BendingMoment / Loaded(share, yield).Analysis.PlasticMoment))];
        Assert.All(missing, left => Assert.True(left > 1e-7));
        Assert.Equal(2, Math.Log2(missing[0] / missing[1]), 0.05);
        Assert.Equal(2, Math.Log2(missing[1] / missing[2]), 0.05);
    }

    /// <summary>
    /// Released, the pull goes with the moment: κ_f = κ − M/(E·I), and the stress left has no resultant: σ_r = σ − M(y − ȳ)/I − P/A.
    /// </summary>
    [Theory]
    [InlineData(0.3)]
    [InlineData(-0.7)]
    public void Release_lets_go_of_pull_and_moment(double share)
    {
        LoadedBend loaded = Loaded(share, 250e6);
        ReleasedBend released = loaded.Release(Release.HeldFlat);
        double second = Width * Depth * Depth * Depth / 12;
        double moment = loaded.BendingMoment.NewtonMeters;
        Assert.Equal(loaded.Curvature.InverseMeters - (moment / Modulus / second), released.Ring.Curvature.InverseMeters, 1e-9);
        foreach (double y in new[] { 0, 0.3, 0.5, 0.8, 1 })
        {
            Length level = Length.FromMeters(y * Depth);
            double expected = loaded.StressAt(level).Pascals - (moment * ((y - 0.5) * Depth) / second) - (share * 250e6);
            Assert.Equal(expected, released.ResidualStressAt(level, Length.Zero).Pascals, 1e-9 * 250e6);
        }
    }

    private static LoadedBend Loaded(double share, double yield)
    {
        FlatBar bar = new(Length.FromMeters(Depth), Length.FromMeters(Width));
        PerfectlyPlastic law = new(Pressure.FromPascals(Modulus), Pressure.FromPascals(yield));
        return BendAnalysis.Of(bar.HardWay, new BarMaterial("steel", law, Density.FromKilogramsPerCubicMeter(7850)))
            .LoadedTo(BendRadius.Inside(Length.FromMeters(5 * Depth)), Force.FromNewtons(share * yield * Depth * Width));
    }
}
