using BendMath.Distortion;
using MathNet.Numerics.LinearAlgebra;
using UnitsNet;
using static BendMath.Tests.Distortion.Bends;

namespace BendMath.Tests.Distortion;

/// <summary>
/// Timoshenko and Gere, Theory of Elastic Stability (from memory), and eigenvalues of the difference equations by MathNet.
/// </summary>
public sealed class LateralBucklingTests
{
    private const double Lateral = 40;

    private const double Torsional = 55;

    /// <summary>Straight bar: −B·C·φ″ = M²·φ, φ = 0 at the ends; extrapolated from two grids.</summary>
    [Fact]
    public void A_straight_bar_buckles_at_the_least_eigenvalue()
    {
        const double length = 0.7;
        double coarse = Straight(60, length);
        double fine = Straight(120, length);
        Near.Relative(fine + (fine - coarse) / 3,
            LateralBuckling.CriticalMoment(Lateral, Torsional, Length.FromMeters(length)).NewtonMeters, 1e-6);
    }

    /// <summary>
    /// Arc: C(φ_t′ − κφ_n) = −Mφ_n and B(φ_n′ + κφ_t) = Mφ_t on a staggered grid, φ_t = 0 at the ends. Eigenvalues of both signs: those
    /// that close and open the arc. M = κC, an even turn about the radius that moves an end sideways, is no buckling between supports and
    /// is left out.
    /// </summary>
    [Theory]
    [InlineData(0.5, 60)]
    [InlineData(0.3, 120)]
    [InlineData(2, 10)]
    public void An_arc_buckles_at_the_eigenvalues_of_either_sign(double radius, double degrees)
    {
        (double Closing, double Opening) coarse = Arc(40, radius, degrees);
        (double Closing, double Opening) fine = Arc(80, radius, degrees);
        Near.Relative(fine.Closing + (fine.Closing - coarse.Closing) / 3, OfArc(radius, degrees, closing: true), 1e-5, "closing");
        Near.Relative(fine.Opening + (fine.Opening - coarse.Opening) / 3, OfArc(radius, degrees, closing: false), 1e-5, "opening");
    }

    /// <summary>Timoshenko and Gere: a flat arc is a straight bar, and a half circle turns freely about its diameter.</summary>
    [Fact]
    public void An_arc_has_its_limits()
    {
        double straight = LateralBuckling.CriticalMoment(Lateral, Torsional, Length.FromMeters(1)).NewtonMeters;
        Near.Relative(straight, OfArc(1e4, 1e-4 * 180 / Math.PI, closing: true), 1e-3);
        Near.Relative(straight, OfArc(1e4, 1e-4 * 180 / Math.PI, closing: false), 1e-3);
        Near.Relative(Lateral + Torsional, OfArc(1, 180 - 1e-9, closing: true), 1e-9);
        Near.Absolute(0, OfArc(1, 180 - 1e-9, closing: false), 1e-9);
    }

    /// <summary>An elastic flat: π·√(E·I_r·G·J)/M with the moments of a rectangle, J by its series.</summary>
    [Fact]
    public void An_elastic_flat_follows_the_formula()
    {
        LoadedBend bend = At(Flat.HardWay, 40_000, Plastic);
        Assert.True(bend.IsElastic);
        LateralBuckling buckling = LateralBuckling.Of(bend, DistortionSettings.Default)!;
        double j = Flat.TorsionConstant!.Value.MetersToTheFourth;
        Near.Relative(210e9 * 0.025 * Math.Pow(0.005, 3) / 12, buckling.LateralStiffness, 1e-12, "B");
        Near.Relative(210e9 / 2.6 * j, buckling.IncrementalTorsionalStiffness, 1e-12, "C incremental");
        Near.Relative(210e9 / 2.6 * j, buckling.DeformationTorsionalStiffness, 1e-12, "C deformation");
        Near.Relative(buckling.DistanceIfElastic.Meters, buckling.LargestSupportDistance.Meters, 1e-12, "distance");
    }

    /// <summary>
    /// Perfectly plastic flat: only the elastic core, 2·e_y/κ deep, resists sideways; ∫E_s dA = E·core + σ_y·2·ln(e/e_y)/κ over both sides.
    /// </summary>
    [Fact]
    public void A_yielded_flat_resists_with_its_core()
    {
        LoadedBend bend = At(Flat.HardWay, 240, Plastic);
        LateralBuckling buckling = LateralBuckling.Of(bend, DistortionSettings.Default)!;
        double curvature = bend.Curvature.InverseMeters;
        double core = 2 * 290e6 / 210e9 / curvature;
        Near.Relative(210e9 * core * Math.Pow(0.005, 3) / 12, buckling.LateralStiffness, 1e-9, "B");

        // 1/G_s = 3/E_s − (1 − 2ν)/E, integrated over the yielded depth: E_s = σ_y/e gives ∫de/(3e/σ_y − 0.4/E).
        double Yielded(double strain) => Math.Log((3 * strain / 290e6 - 0.4 / 210e9) / (2.6 / 210e9)) * 290e6 / 3 / curvature;
        double shear =
            210e9 / 2.6 * core + Yielded(bend.OuterFiberStrain.DecimalFractions) + Yielded(-bend.InnerFiberStrain.DecimalFractions);
        Near.Relative(shear / 0.025 * Flat.TorsionConstant!.Value.MetersToTheFourth, buckling.DeformationTorsionalStiffness, 1e-8, "C");
        Assert.True(
            buckling.LargestSupportDistance.Equals(buckling.DistanceByDeformationTheory, Length.Zero)
                && buckling.DistanceByDeformationTheory < buckling.DistanceByIncrementalTheory);
    }

    /// <summary>
    /// With elastic moduli the free length of a 10:1 flat, fully plastic at 300 MPa, is about nine widths: π·E/(6σ_y·√(2(1 + ν))/4)·(t/b)²,
    /// J ≈ bt³/3.
    /// </summary>
    [Fact]
    public void The_elastic_length_of_a_ten_to_one_flat_is_about_nine_widths()
    {
        FlatBar flat = new(Mm(50), Mm(5));
        BarMaterial steel =
            new("steel", new PerfectlyPlastic(Pressure.FromGigapascals(205), Pressure.FromMegapascals(300)),
                Density.FromKilogramsPerCubicMeter(7850));
        Near.Absolute(9, LateralBuckling.Of(At(flat.HardWay, 250, steel), DistortionSettings.Default)!.DistanceIfElastic.Meters / 0.05,
            0.5);
    }

    [Fact]
    public void What_is_not_known_is_asked_for()
    {
        FlatBar rounded = new(Mm(25), Mm(5), Mm(2.5));
        DistortionReport unknown = DistortionReport.Of(At(rounded.HardWay, 240));
        Assert.Contains(unknown.NotChecked, text => text.Contains("torsion constant", StringComparison.Ordinal));
        DistortionReport given = DistortionReport.Of(At(rounded.HardWay, 240), new DistortionSettings(
            new(unsupportedLength: Mm(60)), torsionConstant: AreaMomentOfInertia.FromMillimetersToTheFourth(880)));
        Assert.NotNull(given.Find("rolling over"));
        Assert.Contains(DistortionReport.Of(At(Flat.HardWay, 240)).NotChecked,
            text => text.Contains("distance between supports is not given; low up to", StringComparison.Ordinal));
    }

    private static double OfArc(double radius, double degrees, bool closing) => LateralBuckling.CriticalMomentOfArc(
        Lateral, Torsional, Length.FromMeters(radius), Angle.FromDegrees(degrees), closing).NewtonMeters;

    private static double Straight(int steps, double length)
    {
        double h = length / steps;
        Matrix<double> second = Matrix<double>.Build.Dense(steps - 1, steps - 1, (i, j) => i == j ? 2 : Math.Abs(i - j) == 1 ? -1 : 0);
        return Math.Sqrt(Lateral * Torsional * second.Evd(Symmetricity.Symmetric).EigenValues.Real().Minimum()) / h;
    }

    private static (double Closing, double Opening) Arc(int steps, double radius, double degrees)
    {
        double h = radius * degrees * Math.PI / 180 / steps;
        double curvature = 1 / radius;
        int inner = steps - 1;
        Matrix<double> matrix = Matrix<double>.Build.Dense(inner + steps, inner + steps);
        for (int i = 0; i < steps; i++)
        {
            // −C(φ_t′ − κφ_n) = M·φ_n in the middle of each step.
            matrix[inner + i, inner + i] = Torsional * curvature;
            if (i < inner)
            {
                matrix[inner + i, i] = -Torsional / h;
            }

            if (i > 0)
            {
                matrix[inner + i, i - 1] = Torsional / h;
            }
        }

        for (int i = 0; i < inner; i++)
        {
            matrix[i, i] = Lateral * curvature;
            matrix[i, inner + i + 1] = Lateral / h;
            matrix[i, inner + i] = -Lateral / h;
        }

        double[] values =
            [.. matrix.Evd().EigenValues.Select(value => value.Real).Where(value => Math.Abs(value - Torsional * curvature) > 1e-6 * Torsional * curvature)];
        return (values.Where(value => value > 0).Min(), -values.Where(value => value < 0).Max());
    }
}
