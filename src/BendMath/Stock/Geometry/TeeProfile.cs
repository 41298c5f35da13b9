using BendMath.Guards;
using BendMath.Numerics.Geometry;
using BendMath.Sections;
using BendMath.Sections.Features;
using UnitsNet;

namespace BendMath.Stock.Geometry;

/// <summary>How a tee lies in the bender.</summary>
internal enum TeePosition
{
    StemOut,
    StemIn,
    StemUp,
}

/// <summary>The dimensions of a tee in meters and what follows from them.</summary>
internal sealed record TeeProfile(double Depth, double Flange, double Stem, double Thickness, FlangeFillets Fillets)
{
    /// <summary>All dimensions, for comparison.</summary>
    public object Identity => (Picometers.Of(Depth), Picometers.Of(Flange), Picometers.Of(Stem), Picometers.Of(Thickness), Fillets);

    public void Check(Length depth, Length flangeWidth, string depthName, string flangeName, string filletsName)
    {
        double inDepth = Thickness + Fillets.RootMeters + Fillets.OuterMeters;
        if (Depth <= inDepth)
        {
            throw Guard.Fault(depthName, depth,
                $"must be greater than flange, root radius and stem corner radius together, {Guard.MillimetersText(inDepth)}");
        }

        double inWidth = Stem + 2 * (Fillets.RootMeters + Fillets.ToeMeters);
        if (Flange <= inWidth)
        {
            throw Guard.Fault(flangeName, flangeWidth,
                $"must be greater than stem, root radii and toe radii together, {Guard.MillimetersText(inWidth)}");
        }

        if (Fillets.ToeMeters > Thickness)
        {
            throw Guard.Fault(filletsName, Fillets.Toe,
                $"must have a toe radius not greater than the flange thickness, {Guard.MillimetersText(Thickness)}");
        }

        if (2 * Fillets.OuterMeters > Stem)
        {
            throw Guard.Fault(filletsName, Fillets.Outer,
                $"must have an outer radius not greater than half the stem thickness, {Guard.MillimetersText(Stem / 2)}");
        }
    }

    public OrientedSection Oriented(BarStock stock, TeePosition position)
    {
        bool up = position == TeePosition.StemUp;
        FlangeDirection? end = position switch
        {
            TeePosition.StemOut => FlangeDirection.Out,
            TeePosition.StemIn => FlangeDirection.In,
            _ => null,
        };
        Orientation orientation = position switch
        {
            TeePosition.StemOut => Orientation.StemOut,
            TeePosition.StemIn => Orientation.StemIn,
            _ => Orientation.StemUp,
        };
        Outstand stem = new(Depth, Stem, end);
        Outstand first = new(Flange / 2, Thickness, up ? FlangeDirection.In : null);
        Outstand second = new(Flange / 2, Thickness, up ? FlangeDirection.Out : null);
        return new(
            stock,
            orientation,
            [CornerOutline.Of(Turned(Corners()))],
            new SectionFeatures(up ? Flange : Depth,
                [stem, first, second])
            {
                Walls =
                    up ? null : FlangeWalls(position == TeePosition.StemOut ? Thickness / 2 : Depth - Thickness / 2)
            },
            OpenShapeFormulas.CenterLines(Turned([new(Thickness / 2, Flange / 2)])));

        Corner[] Turned(Corner[] corners) => position switch
        {
            TeePosition.StemOut => corners,
            TeePosition.StemIn => CornerOutline.Mirrored(corners, Depth),
            _ => CornerOutline.Transposed(corners),
        };
    }

    private WallLayout FlangeWalls(double y) =>
        WallLayout.AxialLeg("flange", y, Flange / 2, Flange / 2, Thickness, inPairs: true, WallLayout.OutwardShare);

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
