using BendMath.Distortion;
using UnitsNet;

namespace BendMath.Tests.Definitions;

/// <summary>
/// Source of every number: independent program, written to the same definitions by another route and converged to half a percent; not a
/// published source. The strains at which a flat waves are the exception: with the linear law the tangent modulus jumps inside the plate,
/// the program integrates across the jump, and its figures scatter by one percent around those of panels that end there.
/// </summary>
public sealed class SectionShapeTests
{
    private const double Converged = 5e-3;

    private const double AcrossJump = 1.5e-2;

    private static readonly ReferenceTable Table = ReferenceTable.Load("Definitions/section-shapes.csv");

    public static TheoryData<ReferenceRow> Legs => new(Table.Where(row => row["kind"] == "leg"));

    public static TheoryData<ReferenceRow> Tubes => new(Table.Where(row => row["kind"] == "tube"));

    public static TheoryData<ReferenceRow> Walls => new(Table.Where(row => row["kind"] == "wall"));

    public static TheoryData<ReferenceRow> Flats => new(Table.Where(row => row["kind"] == "flat"));

    [Fact]
    public void No_case_drops_out() => Assert.Equal((10, 6, 5, 3), (Legs.Count, Tubes.Count, Walls.Count, Flats.Count));

    [Theory]
    [MemberData(nameof(Legs))]
    public void Leg_turns_as_the_independent_program_says(ReferenceRow row)
    {
        LegShape shape = Report(row).ShapeOfLegs(Clearance(row), cancellationToken: TestContext.Current.CancellationToken)!;
        LegTurn turn = Assert.Single(shape.Turns);
        Comparison comparison = new Comparison(row)
            .Relative("neutral_axis_mm", shape.Bend!.NeutralAxisFromInside.Millimeters, Converged)
            .Relative("bending_moment_nmm", shape.Bend.BendingMoment.NewtonMillimeters, Converged)
            .Relative("edge_displacement_mm", turn.EdgeDisplacement.Millimeters, Converged)
            .Relative("mean_turn_deg", turn.Mean.Degrees, Converged)
            .Relative("edge_turn_deg", turn.AtEdge.Degrees, Converged)
            .RelativeWherePrinted("released_edge_displacement_mm", turn.ReleasedEdgeDisplacement.Millimeters, Converged)
            .RelativeWherePrinted("released_mean_turn_deg", turn.ReleasedMean.Degrees, Converged);
        comparison.Verify(5);
    }

    [Theory]
    [MemberData(nameof(Tubes))]
    public void Tube_flattens_as_the_independent_program_says(ReferenceRow row)
    {
        TubeShape shape = Report(row).ShapeOfTube(Clearance(row), TestContext.Current.CancellationToken)!;
        new Comparison(row)
            .Relative("neutral_axis_mm", shape.Bend!.NeutralAxisFromInside.Millimeters, Converged)
            .Relative("bending_moment_nmm", shape.Bend.BendingMoment.NewtonMillimeters, Converged)
            .Relative("ovality", shape.Ovality!.Value.DecimalFractions, Converged)
            .Relative("crown_inward_mm", shape.CrownInward!.Value.Millimeters, Converged)
            .Relative("outside_wall_strain", shape.OutsideWallStrain!.Value.DecimalFractions, Converged)
            .Relative("inside_wall_strain", shape.InsideWallStrain!.Value.DecimalFractions, Converged)
            .Verify(6);
    }

    [Theory]
    [MemberData(nameof(Walls))]
    public void Wall_sinks_as_the_independent_program_says(ReferenceRow row)
    {
        WallShape shape = Report(row).ShapeOfWalls(row["hold"] == "held", TestContext.Current.CancellationToken)!;
        new Comparison(row)
            .Relative("neutral_axis_mm", shape.Bend!.NeutralAxisFromInside.Millimeters, Converged)
            .Relative("bending_moment_nmm", shape.Bend.BendingMoment.NewtonMillimeters, Converged)
            .Relative("inside_wall_sink_mm", shape.InsideWallSink!.Value.Millimeters, Converged)
            .Relative("outside_wall_sink_mm", shape.OutsideWallSink!.Value.Millimeters, Converged)
            .Verify(4);
    }

    [Theory]
    [MemberData(nameof(Flats))]
    public void Flat_ripples_as_the_independent_program_says(ReferenceRow row)
    {
        DistortionReport report = Report(row);
        HardWayRipple unknown = report.RippleOfFlat(cancellationToken: TestContext.Current.CancellationToken)!;
        Comparison comparison = new Comparison(row)
            .Relative("edge_strain", unknown.EdgeStrain.DecimalFractions, 1e-5)
            .Relative("compressed_half_strain", unknown.CompressedHalf.DecimalFractions, 1e-5)
            .Relative("free_edges_strain_4h", unknown.FreeEdges.DecimalFractions, AcrossJump);
        for (int wave = 1; wave <= 2; wave++)
        {
            HardWayRipple known = report.RippleOfFlat(wave * CaseRow.Millimeters(row, "depth_mm"), TestContext.Current.CancellationToken)!;
            comparison.Relative($"free_edges_strain_{wave}h", known.FreeEdges.DecimalFractions, AcrossJump);
        }

        comparison.Verify(5);
    }

    private static Length? Clearance(ReferenceRow row) => row.Has("clearance_mm") ? CaseRow.Millimeters(row, "clearance_mm") : null;

    private static DistortionReport Report(ReferenceRow row) => DistortionReport.Of(
        BendAnalysis.Of(Section(row), new BarMaterial("case " + row["case"], CaseRow.Law(row), Density.FromKilogramsPerCubicMeter(7850)))
            .LoadedTo(BendRadius.Inside(CaseRow.Millimeters(row, "inside_radius_mm"))));

    private static OrientedSection Section(ReferenceRow row)
    {
        Length depth = CaseRow.Millimeters(row, "depth_mm");
        Length t = CaseRow.Millimeters(row, "thickness_mm");
        return row["shape"] switch
        {
            "angle, flange out" => OrientedBars.Angle(depth, Width(), t, AngleFillets.Sharp, FlangeDirection.Out),
            "angle, flange in" => OrientedBars.Angle(depth, Width(), t, AngleFillets.Sharp, FlangeDirection.In),
            "angle, heel in" => new EqualAngle(depth, t, AngleFillets.Sharp).HeelIn,
            "tee, flange at the inside face" => new Tee(depth, Width(), t, t, FlangeFillets.Sharp).StemOut,
            "round tube" => new RoundTube(depth, t).Section,
            "rectangular tube" => new SquareTube(depth, t, CornerRadii.Sharp).Section,
            "flat, hard way" => new FlatBar(depth, t).HardWay,
            var shape => throw new NotSupportedException($"{row}: no shape '{shape}'."),
        };

        Length Width() => CaseRow.Millimeters(row, "width_mm");
    }
}
