using BendMath.Guards;
using BendMath.Numerics.Geometry;
using BendMath.Sections;
using BendMath.Sections.Features;
using UnitsNet;

namespace BendMath.Stock.Geometry;

/// <summary>How a channel lies in the bender.</summary>
internal enum ChannelPosition
{
    FlangesOut,
    FlangesIn,
    HardWay,
}

/// <summary>The dimensions of a channel in meters and what follows from them.</summary>
internal sealed record ChannelProfile(double Depth, double Flange, double Web, double Thickness, FlangeFillets Fillets)
{
    /// <summary>All dimensions, for comparison.</summary>
    public object Identity => (Picometers.Of(Depth), Picometers.Of(Flange), Picometers.Of(Web), Picometers.Of(Thickness), Fillets);

    public void Check(Length depth, Length flangeWidth, string depthName, string flangeName, string filletsName)
    {
        double inDepth = 2 * (Thickness + Fillets.RootMeters);
        if (Depth <= inDepth)
        {
            throw Guard.Fault(depthName, depth,
                $"must be greater than both flanges and root radii together, {Guard.MillimetersText(inDepth)}");
        }

        double inWidth = Web + Fillets.RootMeters + Fillets.ToeMeters;
        if (Flange <= inWidth)
        {
            throw Guard.Fault(flangeName, flangeWidth,
                $"must be greater than web, root radius and toe radius together, {Guard.MillimetersText(inWidth)}");
        }

        if (Fillets.ToeMeters > Thickness)
        {
            throw Guard.Fault(filletsName, Fillets.Toe,
                $"must have a toe radius not greater than the flange thickness, {Guard.MillimetersText(Thickness)}");
        }

        double room = Math.Min(Depth / 2, Flange);
        if (Fillets.OuterMeters > room)
        {
            throw Guard.Fault(filletsName, Fillets.Outer,
                $"must have an outer radius not greater than half the depth or the flange width, {Guard.MillimetersText(room)}");
        }

        double largest = Fillets.RootMeters + Math.Min(Web, Thickness) * (2 + Math.Sqrt(2));
        if (Fillets.OuterMeters >= largest)
        {
            throw Guard.Fault(filletsName, Fillets.Outer,
                $"must have an outer radius smaller than {Guard.MillimetersText(largest)}, else no material is left in the corners");
        }
    }

    public OrientedSection Oriented(BarStock stock, ChannelPosition position)
    {
        bool hardWay = position == ChannelPosition.HardWay;
        FlangeDirection? edge = position switch
        {
            ChannelPosition.FlangesOut => FlangeDirection.Out,
            ChannelPosition.FlangesIn => FlangeDirection.In,
            _ => null,
        };
        Orientation orientation = position switch
        {
            ChannelPosition.FlangesOut => Orientation.FlangesOut,
            ChannelPosition.FlangesIn => Orientation.FlangesIn,
            _ => Orientation.HardWay,
        };
        Outstand flange = new(Flange, Thickness, edge);
        return new(
            stock,
            orientation,
            [CornerOutline.Of(Turned(Corners()))],
            new SectionFeatures(hardWay ? Depth : Flange, [flange, flange]) { Walls = WallsOf(position) },
            OpenShapeFormulas.ChannelShearCenter(Turned([new(OpenShapeFormulas.ChannelShearFromBack(this), Depth / 2)])));

        Corner[] Turned(Corner[] corners) => position switch
        {
            ChannelPosition.FlangesOut => corners,
            ChannelPosition.FlangesIn => CornerOutline.Mirrored(corners, Flange),
            _ => CornerOutline.Transposed(corners),
        };
    }

    private WallLayout WallsOf(ChannelPosition position) => position switch
    {
        ChannelPosition.HardWay => WallLayout.AxialFlanges(Depth, Web / 2, Flange - Web / 2, Thickness),
        ChannelPosition.FlangesOut => WallLayout.AxialWeb(Web / 2, Thickness / 2, Depth - Thickness, Web),
        _ => WallLayout.AxialWeb(Flange - Web / 2, Thickness / 2, Depth - Thickness, Web),
    };

    /// <summary>Web along z at y = 0, flanges outward.</summary>
    private Corner[] Corners()
    {
        double root = Fillets.RootMeters;
        double toe = Fillets.ToeMeters;
        double outer = Fillets.OuterMeters;
        return
        [
            new(0, 0, outer),
            new(0, Depth, outer),
            new(Flange, Depth),
            new(Flange, Depth - Thickness, toe),
            new(Web, Depth - Thickness, root),
            new(Web, Thickness, root),
            new(Flange, Thickness, toe),
            new(Flange, 0),
        ];
    }
}
