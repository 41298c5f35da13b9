using BendMath.Guards;
using BendMath.Numerics.Geometry;
using BendMath.Sections;
using BendMath.Sections.Features;
using UnitsNet;

namespace BendMath.Stock.Geometry;

/// <summary>The outline of an angle: the radial leg along y at z = 0…t, the axial leg along z.</summary>
internal static class AngleOutline
{
    public static void Check(Length leg, double legMeters, string name, double thickness, AngleFillets fillets)
    {
        double taken = thickness + fillets.RootMeters + fillets.ToeMeters;
        if (legMeters <= taken)
        {
            throw Guard.Fault(name, leg,
                Invariant($"must be longer than thickness, root radius and toe radius together, {taken * 1e3:0.###} mm"));
        }

        if (fillets.ToeMeters > thickness)
        {
            throw Guard.Fault(nameof(fillets), fillets.Toe,
                Invariant($"must have a toe radius not greater than the thickness, {thickness * 1e3:0.###} mm"));
        }
    }

    public static OrientedSection Oriented(BarStock stock, Orientation orientation, double radialLeg, double axialLeg, double thickness,
        AngleFillets fillets, bool flangeOut)
    {
        Edge[] outline = FlangeOut(radialLeg, axialLeg, thickness, fillets.RootMeters, fillets.ToeMeters);
        Outstand radialOutstand = new(radialLeg, thickness, flangeOut ? FlangeDirection.Out : FlangeDirection.In);
        Outstand axialOutstand = new(axialLeg, thickness, null);
        return new(
            stock,
            orientation,
            [flangeOut ? outline : Mirrored(outline, radialLeg)],
            new SectionFeatures(radialLeg, [radialOutstand, axialOutstand])
            {
                Walls = WallLayout.AxialLeg(
                    "leg along the axis",
                    flangeOut ? thickness / 2 : radialLeg - thickness / 2,
                    thickness / 2,
                    axialLeg - thickness / 2,
                    thickness,
                    inPairs: false,
                    flangeOut ? WallLayout.OutwardShare : WallLayout.OtherShare),
            },
            OpenShapeFormulas.CenterLines(flangeOut ? thickness / 2 : radialLeg - thickness / 2, thickness / 2));
    }

    /// <summary>An equal angle symmetric about the plane of the ring.</summary>
    public static OrientedSection OnBisector(BarStock stock, double leg, double thickness, AngleFillets fillets, bool heelIn)
    {
        double half = Math.Sqrt(0.5);
        double depth = (leg + thickness - 2 * fillets.ToeMeters) * half + fillets.ToeMeters;
        Corner[] corners = CornerOutline.OnBisector(Corners(leg, leg, thickness, fillets), 0, leg * half);
        Corner[] shear = CornerOutline.OnBisector([new(thickness / 2, thickness / 2)], 0, leg * half);
        Outstand outstand = new(leg, thickness, heelIn ? FlangeDirection.Out : FlangeDirection.In);
        return new(
            stock,
            heelIn ? Orientation.HeelIn : Orientation.HeelOut,
            [CornerOutline.Of(heelIn ? corners : CornerOutline.Mirrored(corners, depth))],
            new SectionFeatures(depth,
                [outstand, outstand])
            {
                Walls =
                    WallLayout.SlantedLegs(leg, thickness, depth, heelIn, isWhole: fillets == AngleFillets.Sharp)
            },
            OpenShapeFormulas.CenterLines(heelIn ? shear : CornerOutline.Mirrored(shear, depth)));
    }

    public static Corner[] Corners(double radialLeg, double axialLeg, double thickness, AngleFillets fillets) =>
    [
        new(0, 0),
        new(0, axialLeg),
        new(thickness, axialLeg, fillets.ToeMeters),
        new(thickness, thickness, fillets.RootMeters),
        new(radialLeg, thickness, fillets.ToeMeters),
        new(radialLeg, 0),
    ];

    private static Edge[] Mirrored(Edge[] outline, double height) =>
        [.. Enumerable.Reverse(outline).Select(edge => edge.MirroredInY(height))];

    /// <summary>Written into an array of the right size, so that nothing is left for the collector.</summary>
    private static Edge[] FlangeOut(double a, double b, double t, double root, double toe)
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
