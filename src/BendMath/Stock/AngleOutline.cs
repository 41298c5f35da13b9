using System.Globalization;
using BendMath.Numerics;
using UnitsNet;

namespace BendMath.Stock;

/// <summary>The outline of an angle: the radial leg along y at z = 0…t, the axial leg along z.</summary>
internal static class AngleOutline
{
    public static void Check(Length leg, double legMeters, string name, double thickness, AngleFillets fillets)
    {
        double taken = thickness + fillets.RootMeters + fillets.ToeMeters;
        if (legMeters <= taken)
        {
            throw Guard.Fault(name, leg, string.Format(
                CultureInfo.InvariantCulture, "must be longer than thickness, root radius and toe radius together, {0:0.###} mm", taken * 1e3));
        }

        if (fillets.ToeMeters > thickness)
        {
            throw Guard.Fault(nameof(fillets), fillets.Toe, string.Format(
                CultureInfo.InvariantCulture, "must have a toe radius not greater than the thickness, {0:0.###} mm", thickness * 1e3));
        }
    }

    public static OrientedSection Oriented(string name, double radialLeg, double axialLeg, double thickness, AngleFillets fillets, bool flangeOut)
    {
        Edge[] outline = FlangeOut(radialLeg, axialLeg, thickness, fillets.RootMeters, fillets.ToeMeters);
        Outstand radial = new(radialLeg, thickness, flangeOut ? FreeEdge.Outside : FreeEdge.Inside);
        Outstand axial = new(axialLeg, thickness, FreeEdge.Side);
        return new(
            name,
            flangeOut ? "flange out" : "flange in",
            [flangeOut ? outline : [.. Enumerable.Reverse(outline).Select(edge => edge.MirroredInY(radialLeg))]],
            axialLeg,
            new SectionFeatures(radialLeg, [radial, axial]));
    }

    private static Edge[] FlangeOut(double a, double b, double t, double root, double toe)
    {
        List<Edge> edges = [Edge.Line(0, 0, 0, b)];
        if (toe < t)
        {
            edges.Add(Edge.Line(0, b, t - toe, b));
        }

        if (toe > 0)
        {
            edges.Add(Edge.Fillet(t - toe, b, t, b - toe, t - toe, b - toe, counterClockwise: true));
        }

        edges.Add(Edge.Line(t, b - toe, t, t + root));
        if (root > 0)
        {
            edges.Add(Edge.Fillet(t, t + root, t + root, t, t + root, t + root, counterClockwise: false));
        }

        edges.Add(Edge.Line(t + root, t, a - toe, t));
        if (toe > 0)
        {
            edges.Add(Edge.Fillet(a - toe, t, a, t - toe, a - toe, t - toe, counterClockwise: true));
        }

        if (toe < t)
        {
            edges.Add(Edge.Line(a, t - toe, a, 0));
        }

        edges.Add(Edge.Line(a, 0, 0, 0));
        return [.. edges];
    }
}
