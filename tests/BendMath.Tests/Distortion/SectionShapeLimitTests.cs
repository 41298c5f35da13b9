using System.Numerics;
using BendMath.Distortion;
using BendMath.Distortion.Shape;
using MathNet.Numerics.LinearAlgebra;
using UnitsNet;

namespace BendMath.Tests.Distortion;

/// <summary>Shapes of bent sections where theory has an answer of its own.</summary>
public sealed class SectionShapeLimitTests
{
    private const double Inch = 25.4;

    private const double Poisson = 0.3;

    private static readonly Pressure Modulus = Pressure.FromGigapascals(200);

    private static readonly LinearHardening Steel = new(Modulus, Pressure.FromMegapascals(310), Pressure.FromMegapascals(1500));

    private static readonly PerfectlyPlastic Elastic = new(Modulus, Pressure.FromGigapascals(100));

    /// <summary>
    /// Closed form: D·v⁗ + E·t·κ²·(v + y₀ − y_n) = 0, clamped, with v″ = νκ and v‴ = 0 at the free edge: the beam on an elastic foundation
    /// with the curl of a bent plate (derived; beams on elastic foundations after M. Hetényi, from memory).
    /// </summary>
    [Theory]
    [InlineData(0.3)]
    [InlineData(0.6)]
    [InlineData(1)]
    public void Elastic_leg_is_a_strip_of_a_cylinder(double ratio)
    {
        const double Leg = 0.05;
        const double T = 0.002;
        const double B = Leg - T / 2;
        double radius = B * B / (ratio * T);
        EqualAngle angle = new(Length.FromMeters(Leg), Length.FromMeters(T), AngleFillets.Sharp);
        LegShape shape = Report(angle.FlangeOut, Elastic, radius).ShapeOfLegs(cancellationToken: TestContext.Current.CancellationToken)!;
        double curvature = shape.Bend!.Curvature.InverseMeters;
        double offset = T / 2 - shape.Bend.NeutralAxisFromInside.Meters;
        double plate = 200e9 * T * T * T / (12 * (1 - Poisson * Poisson));
        double root = Math.Pow(200e9 * T * curvature * curvature / (4 * plate), 0.25);

        // w = v + offset = e^(ax)(C1 cos ax + C2 sin ax) + e^(−ax)(C3 cos ax + C4 sin ax), by the roots (±1 ± i)·a of the fourth power.
        Complex[] roots = [new(root, root), new(root, -root), new(-root, root), new(-root, -root)];
        Matrix<Complex> system = Matrix<Complex>.Build.Dense(4, 4, (i, j) => i switch
        {
            0 => 1,
            1 => roots[j],
            2 => roots[j] * roots[j] * Complex.Exp(roots[j] * B),
            _ => roots[j] * roots[j] * roots[j] * Complex.Exp(roots[j] * B),
        });
        MathNet.Numerics.LinearAlgebra.Vector<Complex> constants = system.Solve(
            MathNet.Numerics.LinearAlgebra.Vector<Complex>.Build.Dense([offset, 0, Poisson * curvature, 0]));
        Complex edge = 0;
        Complex slope = 0;
        for (int j = 0; j < 4; j++)
        {
            edge += constants[j] * Complex.Exp(roots[j] * B);
            slope += constants[j] * roots[j] * Complex.Exp(roots[j] * B);
        }

        LegTurn turn = Assert.Single(shape.Turns);
        Near.Relative(edge.Real - offset, turn.EdgeDisplacement.Meters, 1e-4, "edge");
        Near.Relative(slope.Real, turn.AtEdge.Radians, 1e-4, "slope");
    }

    [Theory]
    [InlineData("out")]
    [InlineData("in")]
    public void Elastic_leg_goes_back(string flange)
    {
        EqualAngle angle = new(Length.FromMillimeters(Inch), Length.FromMillimeters(Inch / 8), AngleFillets.Sharp);
        LegTurn turn =
            Assert.Single(
                Report(flange == "out" ? angle.FlangeOut : angle.FlangeIn, Elastic, 2)
                    .ShapeOfLegs(cancellationToken: TestContext.Current.CancellationToken)!.Turns);
        Near.Absolute(0, turn.ReleasedEdgeDisplacement / turn.EdgeDisplacement, 2e-3);
    }

    /// <summary>
    /// Brazier 1927, from memory: the elastic tube flattens by 2ζ = 2κ²r⁴(1 − ν²)/t² of its mean diameter. It is the first term of a series
    /// in ζ.
    /// </summary>
    [Fact]
    public void Elastic_tube_flattens_as_Brazier_says()
    {
        RoundTube tube = new(Length.FromMillimeters(50), Length.FromMillimeters(1));
        TubeShape slight = Report(tube.Section, Elastic, 15).ShapeOfTube(cancellationToken: TestContext.Current.CancellationToken)!;
        Near.Relative(slight.ElasticFormula.DecimalFractions, slight.Ovality!.Value.DecimalFractions, 2e-3);
        TubeShape more = Report(tube.Section, Elastic, 6).ShapeOfTube(cancellationToken: TestContext.Current.CancellationToken)!;
        Near.Relative(more.ElasticFormula.DecimalFractions, more.Ovality!.Value.DecimalFractions, 1e-2);
        Assert.True(more.Ovality > slight.Ovality);
    }

    /// <summary>
    /// A plate with waves much longer than it is deep buckles as a beam; at 3, 8 and 30 depths it is stiffer by 1.037, 1.005 and 1.0003
    /// (independent program, Poisson's ratio ½).
    /// </summary>
    [Theory]
    [InlineData(3, 1.037)]
    [InlineData(8, 1.005)]
    [InlineData(30, 1.0003)]
    public void Long_waves_of_a_flat_are_those_of_a_beam(double wave, double expected)
    {
        double plate = PlateRipple.CriticalStrain(Elastic, 0.05, wave, CancellationToken.None);
        double beam = PlateRipple.CriticalStrainOfBeam(Elastic, 0.05, wave, CancellationToken.None);
        Near.Absolute(expected, plate / beam, 5e-4);
    }

    /// <summary>
    /// Closed form for perfect plasticity beyond three times the yield strain: e = ⅓(t/b)²·(1 + ln(e/e_y)), which leaves out terms of order
    /// (e_y/e)² (derived).
    /// </summary>
    [Fact]
    public void Compressed_half_ripples_as_the_closed_form_says()
    {
        PerfectlyPlastic law = new(Modulus, Pressure.FromMegapascals(250));
        HardWayRipple ripple =
            Report(new FlatBar(Length.FromMillimeters(50), Length.FromMillimeters(5)).HardWay, law, 0.6)
                .RippleOfFlat(cancellationToken: TestContext.Current.CancellationToken)!;
        double strain = ripple.CompressedHalf.DecimalFractions;
        Near.Relative(0.2 * 0.2 / 3 * (1 + Math.Log(strain / law.YieldStrain)), strain, 1e-3);
    }

    [Fact]
    public void From_three_depths_on_a_known_distance_makes_a_beam()
    {
        DistortionReport report = Report(new FlatBar(Length.FromMillimeters(50), Length.FromMillimeters(5)).HardWay, Steel, 0.6);
        Assert.False(report.RippleOfFlat(Length.FromMillimeters(149), TestContext.Current.CancellationToken)!.IsBeamFormula);
        Assert.True(report.RippleOfFlat(Length.FromMillimeters(150), TestContext.Current.CancellationToken)!.IsBeamFormula);
        HardWayRipple unknown = report.RippleOfFlat(cancellationToken: TestContext.Current.CancellationToken)!;
        Assert.False(unknown.IsBeamFormula);
        Assert.Equal(200, unknown.HalfWave.Millimeters, 9);
    }

    /// <summary>
    /// The beam of <see cref="LateralBuckling"/>, bent to the strain at which a flat on supports begins to wave, stands on the same
    /// distance: the torsion constant of a thin strip, an incompressible bar.
    /// </summary>
    [Fact]
    public void Waves_of_the_beam_agree_with_lateral_buckling()
    {
        BarMaterial material = new("incompressible steel", Steel, Density.FromKilogramsPerCubicMeter(7850), poissonsRatio: 0.4999999);
        FlatBar bar = new(Length.FromMillimeters(50), Length.FromMillimeters(5));
        double strain = PlateRipple.CriticalStrainOfBeam(Steel, 0.1, 6, CancellationToken.None);
        BendAnalysis analysis = BendAnalysis.Of(bar.HardWay, material);
        LoadedBend loaded = analysis.LoadedTo(BendRadius.Inside(Length.FromMeters(0.025 / strain - 0.025)));
        AreaMomentOfInertia strip = AreaMomentOfInertia.FromMetersToTheFourth(0.05 * Math.Pow(0.005, 3) / 3);
        LateralBuckling beam = LateralBuckling.Of(loaded, new DistortionSettings(torsionConstant: strip))!;
        Near.Relative(0.3, beam.DistanceByDeformationTheory.Meters, 1e-2);
    }

    /// <summary>
    /// The figures for a shop that the definition states beside its own program's: the leg takes 7 % of the moment with it.
    /// </summary>
    [Fact]
    public void A_turning_leg_lowers_the_moment()
    {
        EqualAngle angle = new(Length.FromMillimeters(Inch), Length.FromMillimeters(Inch / 8), AngleFillets.Sharp);
        DistortionReport report = Report(angle.FlangeOut, Steel, 0.305);
        LegShape shape = report.ShapeOfLegs(cancellationToken: TestContext.Current.CancellationToken)!;
        Assert.Equal(-0.07, shape.Bend!.BendingMoment / report.Loaded.BendingMoment - 1, 0.01);
        Length kept = report.Loaded.Release(Release.Free).Ring.InsideRadius;
        Near.Relative(kept.Meters, shape.Bend.Release(Release.Free).Ring.InsideRadius.Meters, 6e-3);
        Assert.Equal(0, shape.Bend.AxialForce.Newtons, 1e-3);
    }

    [Theory]
    [InlineData(0.05)]
    [InlineData(0.5)]
    public void A_wall_lets_the_leg_through_to_its_clearance(double millimeters)
    {
        EqualAngle angle = new(Length.FromMillimeters(0.75 * Inch), Length.FromMillimeters(Inch / 8), AngleFillets.Sharp);
        DistortionReport report = Report(angle.FlangeOut, Steel, 0.127);
        LegTurn turn =
            Assert.Single(
                report.ShapeOfLegs(Length.FromMillimeters(millimeters), cancellationToken: TestContext.Current.CancellationToken)!.Turns);
        Near.Absolute(millimeters, turn.EdgeDisplacement.Millimeters, 1e-4);
        Assert.True(turn.MostMean <= turn.Mean);
        Assert.True(turn.LeastMean < turn.Mean);
    }

    [Fact]
    public void A_wall_without_clearance_keeps_the_leg_square()
    {
        EqualAngle angle = new(Length.FromMillimeters(0.75 * Inch), Length.FromMillimeters(Inch / 8), AngleFillets.Sharp);
        LegTurn turn =
            Assert.Single(
                Report(angle.FlangeOut, Steel, 0.127)
                    .ShapeOfLegs(Length.Zero, cancellationToken: TestContext.Current.CancellationToken)!.Turns);
        Near.Absolute(0, turn.Mean.Degrees, 1e-3);
    }

    /// <summary>The errors that the closed formulas state of themselves, up to b²/(R·t) = 1 for legs and 1.6 for walls.</summary>
    [Fact]
    public void Closed_formulas_keep_their_error()
    {
        int counted = 0;
        foreach (double leg in new[] { 20.0, 30, 45 })
        {
            EqualAngle angle = new(Length.FromMillimeters(leg), Length.FromMillimeters(3), AngleFillets.Sharp);
            SquareTube tube = new(Length.FromMillimeters(leg), Length.FromMillimeters(1.5), CornerRadii.Sharp);
            foreach (double ratio in new[] { 0.3, 0.5, 0.8, 1 })
            {
                double radius = Math.Pow((leg - 1.5) / 1e3, 2) / (ratio * 0.003);
                LegTurn turn =
                    Assert.Single(
                        Report(angle.FlangeOut, Steel, radius)
                            .ShapeOfLegs(cancellationToken: TestContext.Current.CancellationToken)!.Turns);
                Near.Relative(turn.Mean.Radians, turn.ClosedFormula!.Value.Radians, 0.22, $"leg {leg}, ratio {ratio}");
                DistortionReport report = Report(tube.Section, Steel, Math.Pow((leg - 1.5) / 1e3, 2) / (1.6 * ratio * 0.0015));
                WallShape held = report.ShapeOfWalls(sidesHeld: true, cancellationToken: TestContext.Current.CancellationToken)!;
                Near.Relative(held.MostSink!.Value.Meters, held.HeldFormula.Meters, 0.08, $"tube {leg}, ratio {ratio}");
                Assert.InRange(
                    report.ShapeOfWalls(cancellationToken: TestContext.Current.CancellationToken)!.MostSink!.Value / held.MostSink.Value,
                        2.2, 2.7);
                counted++;
            }
        }

        Assert.Equal(12, counted);
    }

    /// <summary>
    /// Two angles back to back make a channel: each flange of a channel with a radial web turns, the inside one out; the lean of flanges
    /// that are not held is gone once they are.
    /// </summary>
    [Fact]
    public void Flanges_of_a_channel_turn_and_lean()
    {
        Length t = Length.FromMillimeters(3);
        Channel channel = new(Length.FromMillimeters(60), Length.FromMillimeters(30), t, t, FlangeFillets.Sharp);
        LegShape hardWay = Report(channel.HardWay, Steel, 1.5).ShapeOfLegs(cancellationToken: TestContext.Current.CancellationToken)!;
        Assert.Equal(2, hardWay.Turns.Count);
        Assert.True(hardWay.Turns[0].Mean.Degrees > 0.3);
        LegShape leaning = Report(channel.FlangesOut, Steel, 1.5).ShapeOfLegs(cancellationToken: TestContext.Current.CancellationToken)!;
        LegShape held =
            Report(channel.FlangesOut, Steel, 1.5)
                .ShapeOfLegs(flangesHeld: true, cancellationToken: TestContext.Current.CancellationToken)!;
        Assert.NotEqual(0, Assert.Single(leaning.Turns).AtEdge.Degrees);
        Assert.Equal(0, Assert.Single(held.Turns).AtEdge.Degrees);
        Assert.True(Math.Abs(held.Turns[0].EdgeDisplacement.Millimeters) < Math.Abs(leaning.Turns[0].EdgeDisplacement.Millimeters));
    }

    [Fact]
    public void What_passes_its_bound_has_no_size()
    {
        EqualAngle angle = new(Length.FromMillimeters(2 * Inch), Length.FromMillimeters(Inch / 8), AngleFillets.Sharp);
        LegShape legs = Report(angle.HeelIn, Steel, 0.305).ShapeOfLegs(cancellationToken: TestContext.Current.CancellationToken)!;
        Assert.True(legs.Folds);
        Assert.Empty(legs.Turns);
        RoundTube round = new(Length.FromMillimeters(Inch), Length.FromMillimeters(1.65));
        TubeShape tube = Report(round.Section, Steel, 0.1).ShapeOfTube(cancellationToken: TestContext.Current.CancellationToken)!;
        Assert.True(tube.Kinks);
        Assert.Null(tube.Ovality);
        SquareTube square = new(Length.FromMillimeters(2 * Inch), Length.FromMillimeters(1.2), CornerRadii.Sharp);
        WallShape walls = Report(square.Section, Steel, 0.3).ShapeOfWalls(cancellationToken: TestContext.Current.CancellationToken)!;
        Assert.True(walls.Collapses);
        Assert.Null(walls.MostSink);
    }

    [Fact]
    public void The_search_can_be_stopped()
    {
        using CancellationTokenSource stop = new();
        stop.Cancel();
        EqualAngle angle = new(Length.FromMillimeters(Inch), Length.FromMillimeters(Inch / 8), AngleFillets.Sharp);
        DistortionReport report = Report(angle.FlangeOut, Steel, 0.305);
        Assert.Throws<OperationCanceledException>(() => report.ShapeOfLegs(cancellationToken: stop.Token));
    }

    private static DistortionReport Report(OrientedSection section, StressStrainLaw law, double insideMeters) => DistortionReport.Of(
        BendAnalysis.Of(section, new BarMaterial("steel", law, Density.FromKilogramsPerCubicMeter(7850)))
            .LoadedTo(BendRadius.Inside(Length.FromMeters(insideMeters))));
}
