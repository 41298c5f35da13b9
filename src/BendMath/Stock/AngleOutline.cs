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

    public static OrientedSection FlangeOut(object stock, double radialLeg, double axialLeg, double thickness, AngleFillets fillets) => new(
        stock, "flange out", [Outline(radialLeg, axialLeg, thickness, fillets.RootMeters, fillets.ToeMeters)], Features(radialLeg, axialLeg, thickness, FreeEdge.Outside));

    public static OrientedSection FlangeIn(OrientedSection flangeOut, double radialLeg, double axialLeg, double thickness) =>
        flangeOut.Mirrored("flange in", Features(radialLeg, axialLeg, thickness, FreeEdge.Inside));

    public static OrientedSection Oriented(object stock, double radialLeg, double axialLeg, double thickness, AngleFillets fillets, bool flangeOut)
    {
        OrientedSection outward = FlangeOut(stock, radialLeg, axialLeg, thickness, fillets);
        return flangeOut ? outward : FlangeIn(outward, radialLeg, axialLeg, thickness);
    }

    private static SectionFeatures Features(double radialLeg, double axialLeg, double thickness, FreeEdge toe) =>
        new(radialLeg, [new(radialLeg, thickness, toe), new(axialLeg, thickness, FreeEdge.Side)]);

    private static Edge[] Outline(double a, double b, double t, double root, double toe)
    {
        Edge[] edges = new Edge[4 + (toe < t ? 2 : 0) + (toe > 0 ? 2 : 0) + (root > 0 ? 1 : 0)];
        int count = 0;
        edges[count++] = Edge.Line(0, 0, 0, b);
        if (toe < t)
        {
            edges[count++] = Edge.Line(0, b, t - toe, b);
        }

        if (toe > 0)
        {
            edges[count++] = Edge.Fillet(t - toe, b, t, b - toe, t - toe, b - toe, counterClockwise: true);
        }

        edges[count++] = Edge.Line(t, b - toe, t, t + root);
        if (root > 0)
        {
            edges[count++] = Edge.Fillet(t, t + root, t + root, t, t + root, t + root, counterClockwise: false);
        }

        edges[count++] = Edge.Line(t + root, t, a - toe, t);
        if (toe > 0)
        {
            edges[count++] = Edge.Fillet(a - toe, t, a, t - toe, a - toe, t - toe, counterClockwise: true);
        }

        if (toe < t)
        {
            edges[count++] = Edge.Line(a, t - toe, a, 0);
        }

        edges[count] = Edge.Line(a, 0, 0, 0);
        return edges;
    }
}
