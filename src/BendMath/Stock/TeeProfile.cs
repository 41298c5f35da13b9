using UnitsNet;

namespace BendMath.Stock;

/// <summary>How a tee lies in the bender.</summary>
internal enum TeePosition
{
    StemOut,
    StemIn,
    StemUp,
}

/// <summary>The dimensions of a tee in metres and what follows from them.</summary>
internal sealed record TeeProfile(double Depth, double Flange, double Stem, double Thickness, FlangeFillets Fillets)
{
    public void Check(Length depth, Length flangeWidth, string depthName, string flangeName, string filletsName)
    {
        double inDepth = Thickness + Fillets.RootMeters + Fillets.OuterMeters;
        if (Depth <= inDepth)
        {
            throw Guard.Fault(depthName, depth, $"must be greater than flange, root radius and stem corner radius together, {Guard.MillimetersText(inDepth)}");
        }

        double inWidth = Stem + 2 * (Fillets.RootMeters + Fillets.ToeMeters);
        if (Flange <= inWidth)
        {
            throw Guard.Fault(flangeName, flangeWidth, $"must be greater than stem, root radii and toe radii together, {Guard.MillimetersText(inWidth)}");
        }

        if (Fillets.ToeMeters > Thickness)
        {
            throw Guard.Fault(filletsName, Fillets.Toe, $"must have a toe radius not greater than the flange thickness, {Guard.MillimetersText(Thickness)}");
        }

        if (2 * Fillets.OuterMeters > Stem)
        {
            throw Guard.Fault(filletsName, Fillets.Outer, $"must have an outer radius not greater than half the stem thickness, {Guard.MillimetersText(Stem / 2)}");
        }
    }

    public OrientedSection Oriented(string name, TeePosition position)
    {
        Corner[] corners = Corners();
        double halfFlange = Flange / 2;
        return position switch
        {
            TeePosition.StemOut => Section("stem out", corners, Flange, Depth, Leg(Depth, Stem, FreeEdge.Outside), Leg(halfFlange, Thickness, FreeEdge.Side), Leg(halfFlange, Thickness, FreeEdge.Side)),
            TeePosition.StemIn => Section("stem in", CornerOutline.Mirrored(corners, Depth), Flange, Depth, Leg(Depth, Stem, FreeEdge.Inside), Leg(halfFlange, Thickness, FreeEdge.Side), Leg(halfFlange, Thickness, FreeEdge.Side)),
            _ => Section("stem up", CornerOutline.Transposed(corners), Depth, Flange, Leg(halfFlange, Thickness, FreeEdge.Inside), Leg(halfFlange, Thickness, FreeEdge.Outside), Leg(Depth, Stem, FreeEdge.Side)),
        };

        OrientedSection Section(string orientation, Corner[] turned, double width, double radial, params Outstand[] legs) =>
            new(name, orientation, [CornerOutline.Of(turned)], width, new SectionFeatures(radial, legs));

        static Outstand Leg(double length, double thickness, FreeEdge edge) => new(length, thickness, edge);
    }

    /// <summary>Flange along z at y = 0, stem outward.</summary>
    private Corner[] Corners()
    {
        double root = Fillets.RootMeters;
        double toe = Fillets.ToeMeters;
        double outer = Fillets.OuterMeters;
        double left = (Flange - Stem) / 2;
        double right = (Flange + Stem) / 2;
        return
        [
            new(0, 0),
            new(0, Flange),
            new(Thickness, Flange, toe),
            new(Thickness, right, root),
            new(Depth, right, outer),
            new(Depth, left, outer),
            new(Thickness, left, root),
            new(Thickness, 0, toe),
        ];
    }
}
