using System.Globalization;
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

    public static OrientedSection Oriented(object stock, double radialLeg, double axialLeg, double thickness, AngleFillets fillets, bool flangeOut, string radial = "")
    {
        Corner[] corners = Corners(radialLeg, axialLeg, thickness, fillets);
        Corner[] shear = [new(thickness / 2, thickness / 2)];
        Outstand radialOutstand = new(radialLeg, thickness, flangeOut ? FreeEdge.Outside : FreeEdge.Inside);
        Outstand axialOutstand = new(axialLeg, thickness, FreeEdge.Side);
        return new(
            stock,
            radial + (flangeOut ? "flange out" : "flange in"),
            [CornerOutline.Of(flangeOut ? corners : CornerOutline.Mirrored(corners, radialLeg))],
            new SectionFeatures(radialLeg, [radialOutstand, axialOutstand]),
            OpenShapeFormulas.CenterLines(flangeOut ? shear : CornerOutline.Mirrored(shear, radialLeg)));
    }

    /// <summary>An equal angle symmetric about the plane of the ring.</summary>
    public static OrientedSection OnBisector(object stock, double leg, double thickness, AngleFillets fillets, bool heelIn)
    {
        double half = Math.Sqrt(0.5);
        double depth = (leg + thickness - 2 * fillets.ToeMeters) * half + fillets.ToeMeters;
        Corner[] corners = CornerOutline.OnBisector(Corners(leg, leg, thickness, fillets), 0, leg * half);
        Corner[] shear = CornerOutline.OnBisector([new(thickness / 2, thickness / 2)], 0, leg * half);
        Outstand outstand = new(leg, thickness, heelIn ? FreeEdge.Outside : FreeEdge.Inside);
        return new(
            stock,
            heelIn ? "heel in" : "heel out",
            [CornerOutline.Of(heelIn ? corners : CornerOutline.Mirrored(corners, depth))],
            new SectionFeatures(depth, [outstand, outstand]),
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
}
