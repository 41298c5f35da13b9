using BendMath.Fuzz.Making;
using BendMath.Sections.Outlines;
using UnitsNet;

namespace BendMath.Fuzz.Sizes;

/// <summary>Dimensions of the shapes: the outside first, the rest as shares of it that leave a bar.</summary>
internal static class StockSizes
{
    public static void AddTo(Rules rules)
    {
        rules.SetMade<OrientedSection>(string.Empty, frame => frame.Scene.Section);
        rules.Set("leg longLeg width height side diameter acrossFlats depth outsideDiameter", frame => frame.Length(frame.Scene.Size()));
        rules.Set("shortLeg", frame => frame.Length(Below(frame, frame.Meters("longLeg"), 0.1, 0.99)));
        rules.Set("RectangularTube.width", frame => frame.Length(Below(frame, frame.Meters("height"), 0.05, 1)));
        rules.Set("thickness", frame => frame.Length(frame.Scene.Thickness(0.4 * frame.Meters("shortLeg", "leg", "width"))));
        rules.Set("FlatBar.thickness", frame => frame.Length(frame.Scene.Thickness(frame.Meters("width"))));
        rules.Set("cornerRadius", frame => frame.Share(frame.Meters("thickness", "side") / 2));
        rules.Set("wall", frame => frame.Length(frame.Scene.Thickness(0.48 * frame.Meters("width", "side", "outsideDiameter"))));
        rules.Set("designWall CornerRadii.ColdFormed.wall CornerRadii.HotFinished.wall", frame => frame.Length(frame.Meters("wall")));
        rules.SetMade<CornerRadii>("corners", Corners);
        rules.Set("outside", frame => frame.Share(frame.Meters("width", "side") / 2));
        rules.Set("inside", Inside);
        Angles(rules);
        Flanges(rules);
        Drawings(rules);
    }

    private static void Angles(Rules rules)
    {
        rules.Set("AngleFillets.Of.root",
            frame => frame.Share(Math.Min(3 * frame.Meters("thickness"), 0.35 * frame.Meters("shortLeg", "leg"))));
        rules.Set("AngleFillets.Of.toe", frame => frame.Share(Math.Min(frame.Meters("thickness"), 0.15 * frame.Meters("shortLeg", "leg"))));
        rules.Set("designDistance",
            frame =>
                frame.Length(
                    frame.Meters("thickness") * 1.001
                        + frame.Tape.Next() * Math.Min(3.2 * frame.Meters("thickness"), 0.3 * frame.Meters("shortLeg", "leg"))));
        rules.Set("AngleFillets.FromDesignDistance.thickness",
            frame => frame.Length(Math.Min(frame.Meters("thickness"), frame.Meters("designDistance"))));
    }

    private static void Flanges(Rules rules)
    {
        rules.Set("flangeWidth", frame => frame.Length(frame.Meters("depth") * frame.Tape.Log(0.2, 3)));
        rules.Set("webThickness stemThickness",
            frame => frame.Length(frame.Scene.Thickness(0.4 * Math.Min(frame.Meters("flangeWidth"), frame.Meters("depth")))));
        rules.Set("flangeThickness", frame => frame.Length(frame.Scene.Thickness(0.3 * frame.Meters("depth"))));
        rules.Set("FlangeFillets.Of.root FlangeFillets.OfRoot.root", frame => frame.Share(0.19 * Math.Min(
            frame.Meters("depth"), frame.Meters("flangeWidth") - frame.Meters("webThickness", "stemThickness"))));
        rules.Set("FlangeFillets.Of.toe", frame => frame.Share(Math.Min(
            frame.Meters("flangeThickness"), 0.25 * (frame.Meters("flangeWidth") - frame.Meters("webThickness", "stemThickness")))));
        rules.Set("FlangeFillets.Of.outer", frame => frame.IsWithin(nameof(Tee))
            ? frame.Share(Math.Min(frame.Meters("stemThickness") / 2, 0.2 * frame.Meters("depth")))
            : frame.Share(
                Math.Min(0.5 * Math.Min(frame.Meters("depth"), frame.Meters("flangeWidth")),
                    frame.Meters("root") + 3.4 * Math.Min(frame.Meters("webThickness"), frame.Meters("flangeThickness")))));
    }

    /// <summary>Loops about one middle, a hole small enough for the outside; a point by itself lies anywhere.</summary>
    private static void Drawings(Rules rules)
    {
        rules.SetMade<IReadOnlyList<OutlineLoop>>("Outline.loops", frame =>
        {
            double size = frame.Scene.Size();
            List<Made> loops = [Loop(frame, size, 0.6)];
            if (frame.Tape.Chance(0.3))
            {
                loops.Add(Loop(frame, 0.15 * size, 0.6));
            }

            return Made.ListOf(typeof(OutlineLoop), loops);
        });
        rules.SetMade<IReadOnlyList<OutlinePoint>>("corners points", frame => Star(frame, frame.Scene.Size(), 0.6));
        rules.SetMade<IReadOnlyList<OutlineEdge>>("OutlineLoop.edges", frame => Slot(frame, frame.Scene.Size()));
        rules.Set("OutlinePoint.x OutlinePoint.y", frame => frame.Length(frame.Scene.Size() * frame.Tape.Between(0, 1)));
        rules.Set("OutlineEdge.Arc.radius OutlineLoop.Circle.radius Outstand.length", frame => frame.Length(frame.Scene.Size()));
        rules.Set("Outstand.thickness", frame => frame.Length(frame.Scene.Thickness(frame.Meters("length"))));
        rules.Set("startAngle CustomBar.TurnedBy.turn", frame => Angle.FromDegrees(frame.Scene.Cut(frame.Tape.Between(0, 360))));
        rules.Set("sweep", frame => Angle.FromDegrees(frame.Scene.Cut(frame.Tape.Between(1, 359))));
        rules.Set("CustomBar.torsionConstant",
            frame => AreaMomentOfInertia.FromMillimetersToTheFourth(frame.Scene.Cut(frame.Tape.Log(1e-3, 1e9))));
    }

    private static Made Loop(Frame frame, double size, double least) => frame.Tape.Index(3) switch
    {
        0 => frame.Maker.CallWith(typeof(OutlineLoop).GetMethod(nameof(OutlineLoop.Polygon))!, Star(frame, size, least)),
        1 =>
            frame.Maker.CallWith(typeof(OutlineLoop).GetMethod(nameof(OutlineLoop.Circle))!, Point(frame, 0, 0),
                Made.Of(frame.Length(size * least))),
        _ => frame.Maker.CallWith(typeof(OutlineLoop).GetConstructors()[0], Slot(frame, size / 2)),
    };

    /// <summary>Corners about the origin, in the order of their angles.</summary>
    private static Made Star(Frame frame, double size, double least)
    {
        int count = 3 + frame.Tape.Index(6);
        return Made.ListOf(typeof(OutlinePoint), [.. Enumerable.Range(0, count).Select(i =>
        {
            double radius = size * frame.Tape.Between(least, 1);
            double angle = 2 * Math.PI * (i + 0.5 * frame.Tape.Next()) / count;
            return Point(frame, radius * Math.Cos(angle), radius * Math.Sin(angle));
        })]);
    }

    /// <summary>Two straights joined by two half circles.</summary>
    private static Made Slot(Frame frame, double size)
    {
        double half = size * frame.Tape.Between(0.1, 1);
        Made a = Point(frame, -half, -size);
        Made b = Point(frame, half, -size);
        Made c = Point(frame, half, size);
        Made d = Point(frame, -half, size);
        return Made.ListOf(typeof(OutlineEdge),
            [Straight(frame, a, b), Round(frame, b, c, Point(frame, half, 0)), Straight(frame, c, d),
                Round(frame, d, a, Point(frame, -half, 0))]);
    }

    private static Made Straight(Frame frame, Made from, Made to) =>
        frame.Maker.CallWith(typeof(OutlineEdge).GetMethod(nameof(OutlineEdge.Line))!, from, to);

    private static Made Round(Frame frame, Made from, Made to, Made center) => frame.Maker.CallWith(
        typeof(OutlineEdge).GetMethod(nameof(OutlineEdge.Arc),
            [typeof(OutlinePoint), typeof(OutlinePoint), typeof(OutlinePoint), typeof(bool)])!, from, to, center, Made.Of(true));

    private static Made Point(Frame frame, double x, double y) =>
        frame.Maker.CallWith(typeof(OutlinePoint).GetConstructors()[0], Made.Of(Length.FromMillimeters(x * 1e3)),
            Made.Of(Length.FromMillimeters(y * 1e3)));

    /// <summary>Corners of which the rules for cold formed or hot finished tubes leave a bore.</summary>
    private static Made Corners(Frame frame)
    {
        bool isThick = frame.Meters("wall") > frame.Meters("width", "side") / 7;
        return frame.Maker.Through(
            frame.Tape.Of(
                Doors.Of(typeof(CornerRadii)).Where(door => !isThick || door.Name is nameof(CornerRadii.Of) or nameof(CornerRadii.Sharp))
                    .ToArray()), typeof(CornerRadii), frame);
    }

    private static Length Inside(Frame frame)
    {
        double wall = frame.Meters("wall");
        double most = Math.Max(0, frame.Meters("width", "side") / 2 - wall);
        double least = Math.Max(0, frame.Meters("outside") - 3.3 * wall);
        double radius = least + (Math.Max(most, least) - least) * frame.Tape.Next();
        return radius < frame.Scene.Least ? Length.Zero : Length.FromMillimeters(radius * 1e3);
    }

    private static double Below(Frame frame, double length, double low, double high) =>
        Math.Max(Math.Min(frame.Scene.Least * 2, length), length * frame.Tape.Between(high, low));
}
