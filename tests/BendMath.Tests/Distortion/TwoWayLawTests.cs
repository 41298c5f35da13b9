using BendMath.Distortion.Shape;
using UnitsNet;

namespace BendMath.Tests.Distortion;

/// <summary>
/// Hencky's deformation theory for a thin wall, held against what the theory itself demands (textbooks of plasticity, from memory).
/// </summary>
public sealed class TwoWayLawTests
{
    private const double Poisson = 0.3;

    private static readonly Pressure Modulus = Pressure.FromGigapascals(200);

    public static TheoryData<StressStrainLaw> Laws =>
    [
        (StressStrainLaw)new LinearHardening(Modulus, Pressure.FromMegapascals(310), Pressure.FromMegapascals(1500)),
        (StressStrainLaw)new PerfectlyPlastic(Modulus, Pressure.FromMegapascals(310)),
        (StressStrainLaw)new PowerHardening(Modulus, Pressure.FromMegapascals(600), 0.2),
        (StressStrainLaw)new RambergOsgood(Modulus, Pressure.FromMegapascals(300), 12),
    ];

    [Theory]
    [MemberData(nameof(Laws))]
    public void A_pull_along_one_way_gives_the_tensile_test(StressStrainLaw law)
    {
        TwoWayLaw both = new(law, Poisson);
        foreach (double strain in new[] { 1e-4, 2e-3, -5e-3, 0.04 })
        {
            double guess = 0;
            both.At(strain, -both.SecantRatio(Math.Abs(strain)) * strain, ref guess, out TwoWayStress stress);
            Near.Relative(law.Stress(strain), stress.AlongRing, 1e-9);
            Near.Absolute(0, stress.Across, 1e-8 * law.E * law.YieldStrain);
            Near.Relative(Math.Abs(strain), guess, 1e-9);
        }
    }

    [Fact]
    public void Elastic_strains_give_Hookes_law()
    {
        TwoWayLaw law = new(new PerfectlyPlastic(Modulus, Pressure.FromMegapascals(310)), Poisson);
        double guess = 0;
        law.At(6e-4, -2e-4, ref guess, out TwoWayStress stress);
        double factor = 200e9 / (1 - Poisson * Poisson);
        Near.Relative(factor * (6e-4 + Poisson * -2e-4), stress.AlongRing, 1e-12);
        Near.Relative(factor * (-2e-4 + Poisson * 6e-4), stress.Across, 1e-12);
        Near.Relative(factor, stress.SlopeHH, 1e-12);
        Near.Relative(Poisson * factor, stress.SlopeHX, 1e-12);
    }

    /// <summary>
    /// The strain the law is read at is von Mises' stress over the secant modulus, and strains put back through the compliance are those
    /// put in.
    /// </summary>
    [Theory]
    [MemberData(nameof(Laws))]
    public void Stresses_put_back_give_the_strains(StressStrainLaw law)
    {
        TwoWayLaw both = new(law, Poisson);
        foreach ((double along, double across) in new[] { (0.01, 0.004), (0.003, -0.009), (-0.02, 0.0), (0.001, 0.0005), (0.0, 0.015) })
        {
            double strain = 0;
            both.At(along, across, ref strain, out TwoWayStress s);
            double mises = Math.Sqrt(s.AlongRing * s.AlongRing - s.AlongRing * s.Across + s.Across * s.Across);
            double secant = law.Stress(strain) / strain;
            double ratio = both.SecantRatio(strain);
            Near.Relative(law.Stress(strain), mises, 1e-8);
            Near.Absolute(along, (s.AlongRing - ratio * s.Across) / secant, 1e-8 * strain);
            Near.Absolute(across, (s.Across - ratio * s.AlongRing) / secant, 1e-8 * strain);
        }
    }

    /// <summary>To the hundred-thousandth of E that a perfectly plastic wall is given in the slopes to guide the search.</summary>
    [Theory]
    [MemberData(nameof(Laws))]
    public void Slopes_are_those_of_the_stresses(StressStrainLaw law)
    {
        TwoWayLaw both = new(law, Poisson);
        const double Step = 1e-6;
        (TwoWayStress here, TwoWayStress byAlong, TwoWayStress byAcross) = (At(0, 0), Change(Step, 0), Change(0, Step));
        double scale = 2e-5 * law.E + 1e-4 * here.SlopeHH;
        Near.Absolute(byAlong.AlongRing, here.SlopeHH, scale);
        Near.Absolute(byAlong.Across, here.SlopeHX, scale);
        Near.Absolute(byAcross.AlongRing, here.SlopeHX, scale);
        Near.Absolute(byAcross.Across, here.SlopeXX, scale);

        TwoWayStress At(double along, double across)
        {
            double guess = 0;
            both.At(0.012 + along, -0.002 + across, ref guess, out TwoWayStress stress);
            return stress;
        }

        TwoWayStress Change(double along, double across)
        {
            TwoWayStress up = At(along, across);
            TwoWayStress down = At(-along, -across);
            double width = 2 * (along + across);
            return new() { AlongRing = (up.AlongRing - down.AlongRing) / width, Across = (up.Across - down.Across) / width };
        }
    }

    /// <summary>
    /// A plastic hinge in a wall that also carries a force n along the ring: without n it bears 2/√3·σ_y·t²/4, and with it about √(1 −
    /// (n/σ_y·t)²) of that (Ilyushin's quadratic, from memory, good to about 10 %).
    /// </summary>
    [Fact]
    public void Hinge_gives_way_to_the_force_along_the_ring()
    {
        const double T = 0.003;
        const double Yield = 310e6;
        TwoWayLaw law = new(new PerfectlyPlastic(Modulus, Pressure.FromPascals(Yield)), Poisson);
        WallRule rule = new(T);
        foreach (double share in new[] { 0.0, 0.3, 1, 2, 5 })
        {
            double bend = 40 * Yield / law.Modulus / T;
            double[] strains = new double[WallRule.Points];
            double across = 0;
            WallSums sums = default;
            for (int i = 0; i < 60; i++)
            {
                rule.Integrate(law, share * bend * T / 2, 0, across, bend, strains, out sums);
                across -= sums.X / sums.XX0;
            }

            double moment = Math.Abs(sums.XMoment) / (Yield * T * T / 4);
            double force = sums.N / (Yield * T);
            Assert.True(force < 1 + 1e-9);
            Near.Absolute(2 / Math.Sqrt(3) * Math.Sqrt(Math.Max(0, 1 - force * force)), moment, 0.12, $"share {share}");
        }
    }
}
