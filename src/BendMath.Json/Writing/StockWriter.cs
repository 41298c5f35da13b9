using BendMath.Json.Reading;
using BendMath.Stock.Geometry;
using UnitsNet;

namespace BendMath.Json.Writing;

/// <summary>The shape of a bar in the words of a file.</summary>
internal static class StockWriter
{
    /// <summary>Shape and dimensions, or null for a bar a file has no words for.</summary>
    public static (string Shape, (string Word, Length Value)[] Dimensions)? Words(BarStock stock) => stock switch
    {
        EqualAngle a => ("equal angle", [("leg", a.Leg), ("thickness", a.Thickness), .. Fillets(a.Fillets)]),
        UnequalAngle a =>
            ("unequal angle", [("long leg", a.LongLeg), ("short leg", a.ShortLeg), ("thickness", a.Thickness), .. Fillets(a.Fillets)]),
        FlatBar f => ("flat", [("width", f.Width), ("thickness", f.Thickness), .. Corner(f.CornerRadius)]),
        SquareBar s => ("square", [("side", s.Side), .. Corner(s.CornerRadius)]),
        RoundBar r => ("round", [("diameter", r.Diameter)]),
        HexagonBar h => ("hexagon", [("across flats", h.AcrossFlats)]),
        RoundTube t => ("round tube", [("outside diameter", t.OutsideDiameter), ("wall", t.Wall)]),
        SquareTube t => ("square tube", [("side", t.Side), ("wall", t.Wall), .. Corners(t.Corners)]),
        RectangularTube t => ("rectangular tube", [("height", t.Height), ("width", t.Width), ("wall", t.Wall), .. Corners(t.Corners)]),
        Channel c =>
            ("channel",
                [("depth", c.Depth), ("flange width", c.FlangeWidth), ("web thickness", c.WebThickness),
                    ("flange thickness", c.FlangeThickness), .. Fillets(c.Fillets)]),
        Tee t =>
            ("tee",
                [("depth", t.Depth), ("flange width", t.FlangeWidth), ("stem thickness", t.StemThickness),
                    ("flange thickness", t.FlangeThickness), .. Fillets(t.Fillets)]),
        _ => null,
    };

    private static (string, Length)[] Fillets(AngleFillets fillets) => [("root radius", fillets.Root), ("toe radius", fillets.Toe)];

    private static (string, Length)[] Fillets(FlangeFillets fillets) =>
        [("root radius", fillets.Root), ("toe radius", fillets.Toe), ("outer radius", fillets.Outer)];

    private static (string, Length)[] Corners(CornerRadii corners) =>
        [("outside corner radius", corners.Outside), ("inside corner radius", corners.Inside)];

    private static (string, Length)[] Corner(Length radius) => radius.Meters > 0 ? [("corner radius", radius)] : [];
}
