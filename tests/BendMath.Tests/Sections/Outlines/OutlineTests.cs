using BendMath.Evidence;
using BendMath.Sections.Features;
using BendMath.Sections.Outlines;
using UnitsNet;
using static BendMath.Tests.Sections.Drawn;

namespace BendMath.Tests.Sections.Outlines;

public sealed class OutlineTests
{
    [Fact]
    public void Outline_of_an_angle_has_points_and_arcs_in_its_axes()
    {
        EqualAngle angle =
            new(Length.FromMillimeters(30), Length.FromMillimeters(3),
                AngleFillets.Of(Length.FromMillimeters(5), Length.FromMillimeters(2.5)));
        Outline outline = angle.FlangeOut.Outline;
        Assert.Single(outline.Loops);
        Assert.Empty(outline.Holes);
        Assert.Empty(outline.Advisories);
        OutlineEdge root = Assert.Single(outline.Outer.Edges, edge => edge.IsArc && edge.Sweep!.Value.Degrees < 0);
        Assert.Equal(8, root.Center!.X.Millimeters, 1e-12);
        Assert.Equal(8, root.Center.Y.Millimeters, 1e-12);
        Assert.Equal(5, root.Radius!.Value.Millimeters, 1e-12);
        Assert.Equal(-90, root.Sweep!.Value.Degrees, 1e-12);
        Assert.Equal(-90, root.StartAngle!.Value.Degrees, 1e-12);
        Assert.Equal(8, root.Start.X.Millimeters, 1e-12);
        Assert.Equal(3, root.Start.Y.Millimeters, 1e-12);
        Assert.Equal(outline, angle.FlangeOut.Outline);
        Assert.All(Enumerable.Range(0, outline.Outer.Edges.Count), i =>
            Assert.Equal(outline.Outer.Edges[i].End, outline.Outer.Edges[(i + 1) % outline.Outer.Edges.Count].Start));
    }

    [Fact]
    public void Every_arc_ends_where_its_center_radius_and_angles_say()
    {
        Outline outline = Bar(Slot(), Circle(20, 5, 2)).TurnedBy(Angle.FromDegrees(33)).Outline;
        OutlineEdge[] arcs = [.. outline.Loops.SelectMany(loop => loop.Edges).Where(edge => edge.IsArc)];
        Assert.Equal(3, arcs.Length);
        Assert.All(arcs, arc =>
        {
            double end = arc.StartAngle!.Value.Radians + arc.Sweep!.Value.Radians;
            Assert.Equal(arc.End.X.Meters, arc.Center!.X.Meters + arc.Radius!.Value.Meters * Math.Cos(end), 1e-15);
            Assert.Equal(arc.End.Y.Meters, arc.Center.Y.Meters + arc.Radius.Value.Meters * Math.Sin(end), 1e-15);
        });
        Assert.Equal(-360, Assert.Single(outline.Holes).Edges[0].Sweep!.Value.Degrees);
    }

    [Fact]
    public void An_outline_handed_back_gives_the_same_figures()
    {
        OrientedSection section = Bar(Slot(), Circle(20, 5, 2)).AsDrawn;
        CustomBar again = new("again", new Outline(section.Outline.Loops));
        Assert.Empty(again.Advisories);
        Assert.Equal(section.Properties, again.AsDrawn.Properties);
    }

    [Fact]
    public void Reversed_winding_is_repaired_and_reported()
    {
        OutlineLoop hole = Reversed(Circle(20, 5, 2));
        CustomBar sound = Bar(Slot(), hole);
        Assert.Empty(sound.Advisories);
        CustomBar repaired = Bar(Reversed(Slot()), Circle(20, 5, 2));
        Assert.Equal(["reversed-winding", "reversed-winding"], repaired.Advisories.Select(advisory => advisory.Code));
        Assert.StartsWith("Loop 1 ran", repaired.Advisories[0].Message, StringComparison.Ordinal);
        SameFigures(sound, repaired);
    }

    [Fact]
    public void Points_along_a_straight_line_are_dropped_and_reported()
    {
        CustomBar sound = Bar(Polygon((0, 0), (30, 0), (30, 7), (0, 11)));
        CustomBar repaired = Bar(Polygon((10, 0), (20, 0), (30, 0), (30, 3), (30, 7), (0, 11), (0, 0)));
        Advisory advisory = Assert.Single(repaired.Advisories);
        Assert.Equal("collinear-points", advisory.Code);
        Assert.Contains("3 points", advisory.Message, StringComparison.Ordinal);
        SameFigures(sound, repaired);
    }

    [Fact]
    public void A_loop_may_begin_anywhere_and_holes_may_come_first()
    {
        CustomBar sound = Bar(Polygon((0, 0), (30, 0), (30, 7), (0, 11)), Reversed(Circle(9, 5, 2)));
        CustomBar other = Bar(Reversed(Circle(9, 5, 2)), Polygon((30, 7), (0, 11), (0, 0), (30, 0), (30, 7)));
        Assert.Empty(other.Advisories);
        SameFigures(sound, other);
    }

    [Fact]
    public void Ends_that_miss_each_other_by_rounding_of_a_drawing_are_joined_and_reported()
    {
        CustomBar repaired = Bar(Loop(Line(0, 0, 40, 0), Line(40.00002, 0, 40, 10), Line(40, 10, 0, 10), Line(0, 10, 0, 0)));
        Advisory advisory = Assert.Single(repaired.Advisories);
        Assert.Equal("joined-ends", advisory.Code);
        Assert.Contains("x = 40 mm, y = 0 mm", advisory.Message, StringComparison.Ordinal);
        SameFigures(Bar(Rectangle(0, 0, 40, 10)), repaired);
    }

    [Fact]
    public void Fine_polygons_of_an_arc_are_not_straightened()
    {
        const int Points = 4096;
        CustomBar bar =
            Bar(Polygon([.. Enumerable.Range(0, Points).Select(i => (10 * Math.Cos(2 * Math.PI * i / Points), 10 * Math.Sin(2 * Math.PI * i / Points)))]));
        Assert.Empty(bar.Advisories);
        Assert.Equal(Points, bar.Outline.Outer.Edges.Count);
    }

    public static TheoryData<string, OutlineLoop[], string> Faults() => new()
    {
        { "open", [Loop(Line(0, 0, 40, 0), Line(40, 0, 40, 10), Line(40, 10, 0, 10), Line(0, 10, 0, 1))],
            "edge 4 of loop 1 ends at x = 0 mm, y = 1 mm, 1 mm from where edge 1 begins" },
        { "an arc alone", [Loop(Turn(0, 0, 5, 0, 350))], "edge 1 of loop 1 ends at" },
        { "zero length", [Polygon((0, 0), (40, 0), (40, 0), (40, 10), (0, 10))], "edge 2 of loop 1 is 0 mm long at x = 40 mm, y = 0 mm" },
        { "crossing lines", [Polygon((0, 0), (10, 10), (10, 0), (0, 10))],
            "edge 1 of loop 1 meets edge 3 of loop 1 at x = 5 mm, y = 5 mm" },
        { "corner on a line", [Polygon((0, 0), (10, 0), (10, 10), (5, 0), (0, 10))],
            "edge 1 of loop 1 meets edge 3 of loop 1 at x = 5 mm, y = 0 mm" },
        { "corner on a corner", [Polygon((0, 0), (10, 0), (5, 5), (10, 10), (0, 10), (5, 5))],
            "meets edge 5 of loop 1 at x = 5 mm, y = 5 mm" },
        { "spike", [Polygon((0, 0), (10, 0), (10, 5), (10, 20), (10, 10), (0, 10))], "meets edge 4 of loop 1 at x = 10 mm, y = 10 mm" },
        { "lines that overlap", [Polygon((0, 0), (20, 0), (20, 10), (15, 0), (5, 0), (0, 10))],
            "edge 1 of loop 1 meets edge 3 of loop 1 at x = 15 mm, y = 0 mm" },
        { "line through an arc",
            [Loop(Line(0, 0, 40, 0), Arc(40, 0, 40, 10, 40, 5, counterClockwise: false), Line(40, 10, 36, -5), Line(36, -5, 0, 10), Line(0, 10, 0, 0))], "meets edge" },
        { "hole that touches from inside", [Circle(0, 0, 10), Circle(4, 0, 6)],
            "edge 1 of loop 1 meets edge 1 of loop 2 at x = 10 mm, y = 0 mm" },
        { "hole that crosses", [Circle(0, 0, 10), Circle(6, 0, 6)], "edge 1 of loop 1 meets edge 1 of loop 2 at" },
        { "round hole that touches a side", [Rectangle(0, 0, 20, 20), Circle(10, 5, 5)],
            "edge 1 of loop 1 meets edge 1 of loop 2 at x = 10 mm, y = 0 mm" },
        { "square hole that touches a side", [Rectangle(0, 0, 20, 20), Rectangle(5, 0, 5, 5)], "meets edge" },
        { "holes that overlap", [Rectangle(0, 0, 40, 20), Circle(10, 10, 5), Circle(16, 10, 5)],
            "edge 1 of loop 2 meets edge 1 of loop 3" },
        { "the same hole twice", [Rectangle(0, 0, 40, 20), Circle(10, 10, 5), Circle(10, 10, 5)],
            "edge 1 of loop 2 meets edge 1 of loop 3" },
        { "hole outside", [Rectangle(0, 0, 40, 20), Circle(60, 10, 5)], "loop 2 at x = 65 mm, y = 10 mm lies outside it" },
        { "hole in a hole", [Circle(0, 0, 30), Circle(0, 0, 20), Circle(3, 0, 5)], "loop 3 at x = 8 mm, y = 0 mm lies inside loop 2" },
        { "circle among edges", [Loop(Turn(0, 0, 5, 0, 360), Line(5, 0, 20, 0), Line(20, 0, 5, 0))],
            "edge 1 of loop 1, from x = 5 mm, y = 0 mm, is one among others" },
        { "arcs that cross",
            [Loop(Line(0, 0, 30, 0), Line(30, 0, 30, 30), Arc(30, 30, 10, 30, 20, 30, counterClockwise: false), Line(10, 30, 0, 30), Line(0, 30, 0, 0)), Circle(20, 12, 9)], "meets edge 1 of loop 2" },
        { "an arc run back on itself",
            [Loop(Arc(10, 0, -10, 0, 0, 0), Arc(-10, 0, 0, 10, 0, 0, counterClockwise: false), Line(0, 10, 30, 0), Line(30, 0, 10, 0))],
                "edge 1 of loop 1 meets edge 2 of loop 1" },
    };

    [Theory]
    [MemberData(nameof(Faults), DisableDiscoveryEnumeration = true)]
    public void A_fault_is_refused_and_placed(string name, OutlineLoop[] loops, string place)
    {
        ArgumentException refusal = Assert.Throws<ArgumentException>(() => new Outline(loops));
        Assert.Equal("loops", refusal.ParamName);
        Assert.True(refusal.Message.Contains(place, StringComparison.Ordinal), $"{name}: {refusal.Message}");
    }

    [Fact]
    public void Tangent_joints_half_circles_and_needles_are_sound()
    {
        Assert.Empty(Bar(Slot()).Advisories);
        Assert.Empty(Bar(Loop(Turn(0, 0, 5, 0, 180), Turn(0, 0, 5, 180, 180))).Advisories);
        Assert.Empty(Bar(Loop(Turn(0, 0, 5, 17, 343), Turn(0, 0, 5, 0, 17))).Advisories);
        Assert.Empty(Bar(Loop(Turn(0, 0, 10, 0, 180), Turn(-5, 0, 5, 180, -180), Turn(5, 0, 5, 180, 180))).Advisories);
        Assert.Empty(Bar(Polygon((0, 0), (100, 0), (100, 0.001))).Advisories);
        Assert.Empty(Bar(Loop(Line(-10, 0, 10, 0), Turn(0, 0, 10, 0, 180))).Advisories);
    }

    [Fact]
    public void What_an_outline_cannot_know_stays_unknown_unless_given()
    {
        CustomBar bar = Bar(Rectangle(0, 0, 30, 4));
        Assert.Null(bar.TorsionConstant);
        Assert.Null(bar.AsDrawn.ShearCenter);
        Assert.False(bar.AsDrawn.Features.OutstandsAreKnown);
        Assert.Empty(bar.AsDrawn.Features.Outstands);
        Outstand leg = new(Length.FromMillimeters(20), Length.FromMillimeters(4), FlangeDirection.Out);
        OrientedSection told = bar.TurnedBy(Angle.FromDegrees(90), [leg]);
        Assert.True(told.Features.OutstandsAreKnown);
        Assert.Equal(leg, Assert.Single(told.Features.Outstands));
        Assert.True(new FlatBar(Length.FromMillimeters(30), Length.FromMillimeters(4)).EasyWay.Features.OutstandsAreKnown);
        CustomBar known = new("bar", bar.Outline, AreaMomentOfInertia.FromMillimetersToTheFourth(580));
        Assert.Equal(580, known.TorsionConstant!.Value.MillimetersToTheFourth, 1e-9);
    }

    [Fact]
    public void A_turn_lays_another_side_inside()
    {
        CustomBar bar = Bar(Polygon((100, -50), (130, -50), (130, -46), (100, -46)));
        Assert.Equal(4, bar.AsDrawn.Depth.Millimeters, 1e-12);
        Assert.Equal(30, bar.TurnedBy(Angle.FromDegrees(90)).Depth.Millimeters, 1e-12);
        Assert.Same(bar.Orientations[3], bar.TurnedBy(Angle.FromDegrees(-90)));
        Assert.Equal("bar from a drawing, turned by 45°", bar.TurnedBy(Angle.FromDegrees(45)).ToString());
        Assert.Equal(34 * Math.Sqrt(0.5), bar.TurnedBy(Angle.FromDegrees(45)).Depth.Millimeters, 1e-12);
        Assert.Equal(2, bar.AsDrawn.Properties.CentroidFromInside.Millimeters, 1e-12);
        Assert.Equal(15, bar.AsDrawn.Properties.CentroidAxial.Millimeters, 1e-12);
    }

    private static void SameFigures(CustomBar expected, CustomBar actual)
    {
        Assert.Equal(expected.Outline, actual.Outline);
        Assert.Equal(expected.AsDrawn.Properties, actual.AsDrawn.Properties);
        OrientedSection turned = expected.TurnedBy(Angle.FromDegrees(27));
        OrientedSection other = actual.TurnedBy(Angle.FromDegrees(27));
        Assert.Equal(turned.Properties, other.Properties);
        Assert.Equal(turned.Profile.Bands.Select(band => band.Width0), other.Profile.Bands.Select(band => band.Width0));
    }
}
