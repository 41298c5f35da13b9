using BendMath.Json.Parts;
using UnitsNet;

namespace BendMath.Json.Reading;

/// <summary>Reads the dimensions of each shape. Fillets and corners are never assumed: their radii or a word for them.</summary>
internal static class ShapeReader
{
    private const string Sharp = "sharp";

    private static readonly Func<Length, CornerRadii> None = static _ => CornerRadii.Sharp;

    public static EqualAngle? EqualAngle(JobObject stock)
    {
        Length? leg = stock.Length("leg", "30 mm");
        Length? thickness = stock.Length("thickness", "3 mm");
        return Radii(stock, "An angle", ("root radius", "5 mm"), ("toe radius", "2.5 mm")) is { } radii && leg is { } a
            && thickness is { } t
            ? stock.Build(() => new EqualAngle(a, t, Fillets(radii)), AngleWords(stock))
            : null;
    }

    public static UnequalAngle? UnequalAngle(JobObject stock)
    {
        Length? longLeg = stock.Length("long leg", "50 mm");
        Length? shortLeg = stock.Length("short leg", "30 mm");
        Length? thickness = stock.Length("thickness", "5 mm");
        return Radii(stock, "An angle", ("root radius", "5 mm"), ("toe radius", "2.5 mm")) is { } radii && longLeg is { } a
            && shortLeg is { } b && thickness is { } t
            ? stock.Build(() => new UnequalAngle(a, b, t, Fillets(radii)),
                [.. AngleWords(stock), ("longLeg", "long leg"), ("shortLeg", "short leg")])
            : null;
    }

    public static FlatBar? Flat(JobObject stock)
    {
        Length? width = stock.Length("width", "25 mm");
        Length? thickness = stock.Length("thickness", "5 mm");
        Length? corner = CornerRadius(stock);
        return stock.Sound && width is { } w && thickness is { } t
            ? stock.Build(() => new FlatBar(w, t, corner ?? Length.Zero), ("cornerRadius", "corner radius")) : null;
    }

    public static SquareBar? Square(JobObject stock)
    {
        Length? side = stock.Length("side", "12 mm");
        Length? corner = CornerRadius(stock);
        return stock.Sound && side is { } a ? stock.Build(() => new SquareBar(a, corner ?? Length.Zero), ("cornerRadius", "corner radius"))
            : null;
    }

    public static RoundBar? Round(JobObject stock) =>
        stock.Length("diameter", "10 mm") is { } diameter ? stock.Build(() => new RoundBar(diameter)) : null;

    public static HexagonBar? Hexagon(JobObject stock) =>
        stock.Length("across flats", "17 mm") is { } size ? stock.Build(() => new HexagonBar(size), ("acrossFlats", "across flats")) : null;

    public static RoundTube? RoundTube(JobObject stock)
    {
        Length? diameter = stock.Length("outside diameter", "21.3 mm");
        Length? wall = stock.Length("wall", "2.6 mm");
        return diameter is { } d && wall is { } t ? stock.Build(() => new RoundTube(d, t), ("outsideDiameter", "outside diameter")) : null;
    }

    public static SquareTube? SquareTube(JobObject stock)
    {
        Length? side = stock.Length("side", "40 mm");
        Length? wall = stock.Length("wall", "3 mm");
        return Corners(stock) is { } corners && side is { } a && wall is { } t ? stock.Build(() => new SquareTube(a, t, corners(t))) : null;
    }

    public static RectangularTube? RectangularTube(JobObject stock)
    {
        Length? height = stock.Length("height", "60 mm");
        Length? width = stock.Length("width", "40 mm");
        Length? wall = stock.Length("wall", "3 mm");
        return Corners(stock) is { } corners && height is { } h && width is { } w && wall is { } t
            ? stock.Build(() => new RectangularTube(h, w, t, corners(t))) : null;
    }

    public static Channel? Channel(JobObject stock)
    {
        Length? depth = stock.Length("depth", "80 mm");
        Length? flange = stock.Length("flange width", "45 mm");
        Length? web = stock.Length("web thickness", "6 mm");
        Length? thickness = stock.Length("flange thickness", "8 mm");
        return FlangeRadii(stock, "A channel") is { } fillets && depth is { } h && flange is { } b && web is { } w && thickness is { } t
            ? stock.Build(() => new Channel(h, b, w, t, fillets), FlangeWords)
            : null;
    }

    public static Tee? Tee(JobObject stock)
    {
        Length? depth = stock.Length("depth", "40 mm");
        Length? flange = stock.Length("flange width", "40 mm");
        Length? stem = stock.Length("stem thickness", "5 mm");
        Length? thickness = stock.Length("flange thickness", "5 mm");
        return FlangeRadii(stock, "A tee") is { } fillets && depth is { } h && flange is { } b && stem is { } s && thickness is { } t
            ? stock.Build(() => new Tee(h, b, s, t, fillets), FlangeWords)
            : null;
    }

    private static (string, string)[] FlangeWords =>
        [("flangeWidth", "flange width"), ("webThickness", "web thickness"), ("stemThickness", "stem thickness"),
            ("flangeThickness", "flange thickness")];

    private static (string, string)[] AngleWords(JobObject stock) =>
        [("fillets", stock.Has("corners") ? "corners" : "toe radius"), ("root", "root radius"), ("toe", "toe radius")];

    private static AngleFillets Fillets(Length[] radii) => radii.Length == 0 ? AngleFillets.Sharp : AngleFillets.Of(radii[0], radii[1]);

    private static Length? CornerRadius(JobObject stock) => stock.OptionalLength("corner radius", "2 mm", zero: true);

    private static FlangeFillets? FlangeRadii(JobObject stock, string what) =>
        Radii(stock, what, ("root radius", "8 mm"), ("toe radius", "0 mm"), ("outer radius", "0 mm")) is not { } radii ? null
        : radii.Length == 0 ? FlangeFillets.Sharp
        : stock.Build(() => FlangeFillets.Of(radii[0], radii[1], radii[2]), ("root", "root radius"), ("toe", "toe radius"),
            ("outer", "outer radius"));

    /// <summary>The corners of a tube, which may follow from its wall.</summary>
    private static Func<Length, CornerRadii>? Corners(JobObject stock)
    {
        (string, string)[] words = [("outside corner radius", "6 mm"), ("inside corner radius", "3 mm")];
        string? named = null;
        if (Radii(stock, "A tube", [Sharp, "cold formed", "hot finished"], word => named = word, words) is not { } radii)
        {
            return null;
        }

        return named switch
        {
            "cold formed" => CornerRadii.ColdFormed,
            "hot finished" => CornerRadii.HotFinished,
            Sharp => None,
            _ =>
                stock.Build(() => CornerRadii.Of(radii[0], radii[1]), ("outside", "outside corner radius"),
                    ("inside", "inside corner radius")) is { } given ? _ => given : null,
        };
    }

    private static Length[]? Radii(JobObject stock, string what, params (string Word, string Example)[] words) =>
        Radii(stock, what, [Sharp], _ => { }, words);

    /// <summary>
    /// Every radius in the order of its word, none where "corners" says it in a word, or null after a fault of the stock.
    /// </summary>
    private static Length[]? Radii(JobObject stock, string what, string[] corners, Action<string> take,
        (string Word, string Example)[] words)
    {
        string? named = stock.OptionalWord("corners", corners);
        bool hasCorners = stock.Has("corners");
        string[] radii = [.. words.Select(pair => pair.Word)];
        bool hasRadius = radii.Any(stock.Has);
        Length?[] lengths =
            hasRadius || !hasCorners ? [.. words.Select(pair => stock.OptionalLength(pair.Word, pair.Example, zero: true))] : [];
        if (hasCorners && hasRadius)
        {
            stock.Fault("corners", $"\"corners\" must be left out where {Words.Listed(radii, "or")} is given.");
        }
        else if (!hasCorners && !radii.All(stock.Has))
        {
            string both = radii.Length == 2 ? "both " : string.Empty;
            string none = corners.Length == 1 ? $"{Words.Listed(corners, "or")} for none" : Words.Listed(corners, "or");
            stock.Fault(null, $"{what} needs {both}{Words.Listed(radii, "and")}, or \"corners\": {none}.");
        }

        if (!stock.Sound)
        {
            return null;
        }

        if (named is not null)
        {
            take(named);
        }

        return [.. lengths.Select(length => length!.Value)];
    }
}
