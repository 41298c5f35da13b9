using BendMath.Json.Parts;
using UnitsNet;

namespace BendMath.Json.Words;

/// <summary>
/// What a file calls a shape, its dimensions and the ways it lies. The reader, the writer, the page of words and the tests all take it from
/// here.
/// </summary>
internal abstract class ShapeWords(string word, Type shape, Orientation[] orientations)
{
    private static readonly CornerWords<AngleFillets> AngleCorners = new(
        "An angle", "fillets", [("sharp", static _ => AngleFillets.Sharp)], static radii => AngleFillets.Of(radii[0], radii[1]),
        ("root radius", "root", "5 mm", static fillets => fillets.Root), ("toe radius", "toe", "2.5 mm", static fillets => fillets.Toe));

    private static readonly CornerWords<CornerRadii> TubeCorners = new(
        "A tube",
        null,
        [("sharp", static _ => CornerRadii.Sharp), ("cold formed", CornerRadii.ColdFormed), ("hot finished", CornerRadii.HotFinished)],
        static radii => CornerRadii.Of(radii[0], radii[1]),
        ("outside corner radius", "outside", "6 mm", static corners => corners.Outside),
        ("inside corner radius", "inside", "3 mm", static corners => corners.Inside));

    /// <summary>Every shape a file has words for.</summary>
    public static IReadOnlyList<ShapeWords> All { get; } =
    [
        new ShapeWords<EqualAngle, AngleFillets>(
            "equal angle",
            [Of<EqualAngle>("leg", "leg", "30 mm", bar => bar.Leg), Of<EqualAngle>("thickness", "thickness", "3 mm", bar => bar.Thickness)],
            AngleCorners, bar => bar.Fillets, (size, fillets) => new(size[0], size[1], fillets),
            Orientation.FlangeOut, Orientation.FlangeIn, Orientation.HeelIn, Orientation.HeelOut),
        new ShapeWords<UnequalAngle, AngleFillets>(
            "unequal angle",
            [
                Of<UnequalAngle>("long leg", "longLeg", "50 mm", bar => bar.LongLeg),
                Of<UnequalAngle>("short leg", "shortLeg", "30 mm", bar => bar.ShortLeg),
                Of<UnequalAngle>("thickness", "thickness", "5 mm", bar => bar.Thickness),
            ],
            AngleCorners, bar => bar.Fillets, (size, fillets) => new(size[0], size[1], size[2], fillets),
            Orientation.LongLegFlangeOut, Orientation.LongLegFlangeIn, Orientation.ShortLegFlangeOut, Orientation.ShortLegFlangeIn),
        new RoundedShapeWords<FlatBar>(
            "flat",
            [Of<FlatBar>("width", "width", "25 mm", bar => bar.Width), Of<FlatBar>("thickness", "thickness", "5 mm", bar => bar.Thickness)],
            bar => bar.CornerRadius, (size, radius) => new(size[0], size[1], radius), Orientation.EasyWay, Orientation.HardWay),
        new RoundedShapeWords<SquareBar>(
            "square", [Of<SquareBar>("side", "side", "12 mm", bar => bar.Side)],
            bar => bar.CornerRadius, (size, radius) => new(size[0], radius), Orientation.Usual, Orientation.OnDiagonal),
        new PlainShapeWords<RoundBar>(
            "round", [Of<RoundBar>("diameter", "diameter", "10 mm", bar => bar.Diameter)], size => new(size[0]), Orientation.Usual),
        new PlainShapeWords<HexagonBar>(
            "hexagon", [Of<HexagonBar>("across flats", "acrossFlats", "17 mm", bar => bar.AcrossFlats)], size => new(size[0]),
            Orientation.OnFlat, Orientation.OnCorner),
        new PlainShapeWords<RoundTube>(
            "round tube",
            [
                Of<RoundTube>("outside diameter", "outsideDiameter", "21.3 mm", bar => bar.OutsideDiameter),
                Of<RoundTube>("wall", "wall", "2.6 mm", bar => bar.Wall),
            ],
            size => new(size[0], size[1]), Orientation.Usual),
        new ShapeWords<SquareTube, CornerRadii>(
            "square tube",
            [Of<SquareTube>("side", "side", "40 mm", bar => bar.Side), Of<SquareTube>("wall", "wall", "3 mm", bar => bar.Wall)],
            TubeCorners, bar => bar.Corners, (size, corners) => new(size[0], size[1], corners), Orientation.Usual),
        new ShapeWords<RectangularTube, CornerRadii>(
            "rectangular tube",
            [
                Of<RectangularTube>("height", "height", "60 mm", bar => bar.Height),
                Of<RectangularTube>("width", "width", "40 mm", bar => bar.Width),
                Of<RectangularTube>("wall", "wall", "3 mm", bar => bar.Wall),
            ],
            TubeCorners, bar => bar.Corners, (size, corners) => new(size[0], size[1], size[2], corners), Orientation.EasyWay,
                Orientation.HardWay),
        new ShapeWords<Channel, FlangeFillets>(
            "channel",
            [
                Of<Channel>("depth", "depth", "80 mm", bar => bar.Depth),
                Of<Channel>("flange width", "flangeWidth", "45 mm", bar => bar.FlangeWidth),
                Of<Channel>("web thickness", "webThickness", "6 mm", bar => bar.WebThickness),
                Of<Channel>("flange thickness", "flangeThickness", "8 mm", bar => bar.FlangeThickness),
            ],
            FlangeCorners("A channel"), bar => bar.Fillets, (size, fillets) => new(size[0], size[1], size[2], size[3], fillets),
            Orientation.FlangesOut, Orientation.FlangesIn, Orientation.HardWay),
        new ShapeWords<Tee, FlangeFillets>(
            "tee",
            [
                Of<Tee>("depth", "depth", "40 mm", bar => bar.Depth),
                Of<Tee>("flange width", "flangeWidth", "40 mm", bar => bar.FlangeWidth),
                Of<Tee>("stem thickness", "stemThickness", "5 mm", bar => bar.StemThickness),
                Of<Tee>("flange thickness", "flangeThickness", "5 mm", bar => bar.FlangeThickness),
            ],
            FlangeCorners("A tee"), bar => bar.Fillets, (size, fillets) => new(size[0], size[1], size[2], size[3], fillets),
            Orientation.StemOut, Orientation.StemIn, Orientation.StemUp),
    ];

    private static readonly Dictionary<Type, ShapeWords> ByShape = All.ToDictionary(words => words.Shape);

    public string Word { get; } = word;

    public Type Shape { get; } = shape;

    /// <summary>The ways it can lie; an empty one is meant where a file names none.</summary>
    public string[] Orientations { get; } = Array.ConvertAll(orientations, OrientationWords.Of);

    /// <summary>The words of its dimensions, corners included.</summary>
    public abstract IEnumerable<string> Dimensions { get; }

    /// <summary>The words for a bar; null where a file has none.</summary>
    public static ShapeWords? Of(BarStock stock) => ByShape.TryGetValue(stock.GetType(), out ShapeWords? words) ? words : null;

    public abstract BarStock? Read(JobObject stock);

    public abstract IEnumerable<WrittenNumber> Write(BarStock stock);

    private static NumberWord<T> Of<T>(string word, string parameter, string example, Func<T, Length> of) =>
        NumberWord<T>.Length(word, parameter, example, of);

    private static CornerWords<FlangeFillets> FlangeCorners(string what) => new(
        what, null, [("sharp", static _ => FlangeFillets.Sharp)], static radii => FlangeFillets.Of(radii[0], radii[1], radii[2]),
        ("root radius", "root", "8 mm", static fillets => fillets.Root), ("toe radius", "toe", "0 mm", static fillets => fillets.Toe),
        ("outer radius", "outer", "0 mm", static fillets => fillets.Outer));

    /// <summary>All dimensions in meters, or null after a fault.</summary>
    private protected static Length[]? Read<T>(JobObject stock, NumberWord<T>[] dimensions)
    {
        double?[] values = [.. dimensions.Select(dimension => dimension.Read(stock))];
        return Array.TrueForAll(values, value => value is not null) ? [.. values.Select(value => Length.FromMeters(value!.Value))] : null;
    }

    private protected static (string, string)[] Parameters<T>(NumberWord<T>[] dimensions, params IEnumerable<(string, string)> corners) =>
        [.. dimensions.Select(dimension => (dimension.Parameter, dimension.Word)), .. corners];
}

/// <summary>A shape without corners to speak of.</summary>
internal sealed class PlainShapeWords<T>(string word, NumberWord<T>[] dimensions, Func<Length[], T> make, params Orientation[] orientations)
    : ShapeWords(word, typeof(T), orientations)
    where T : BarStock
{
    public override IEnumerable<string> Dimensions => dimensions.Select(dimension => dimension.Word);

    public override BarStock? Read(JobObject stock) =>
        Read(stock, dimensions) is { } size ? stock.Build(() => make(size), Parameters(dimensions)) : null;

    public override IEnumerable<WrittenNumber> Write(BarStock stock) => dimensions.Select(dimension => dimension.Write((T)stock));
}

/// <summary>A shape whose corners are sharp unless their radius is given.</summary>
internal sealed class RoundedShapeWords<T>(
    string word, NumberWord<T>[] dimensions, Func<T, Length> corner, Func<Length[], Length, T> make, params Orientation[] orientations)
    : ShapeWords(word, typeof(T), orientations)
    where T : BarStock
{
    private const string Radius = "corner radius";

    private readonly NumberWord<T> _corner = NumberWord<T>.Length(Radius, "cornerRadius", "2 mm", corner);

    public override IEnumerable<string> Dimensions => [.. dimensions.Select(dimension => dimension.Word), Radius];

    public override BarStock? Read(JobObject stock)
    {
        Length[]? size = Read(stock, dimensions);
        Length? radius = stock.OptionalLength(Radius, "2 mm", zero: true);
        return size is not null && stock.Sound
            ? stock.Build(() => make(size, radius ?? Length.Zero), Parameters(dimensions, (_corner.Parameter, Radius)))
            : null;
    }

    public override IEnumerable<WrittenNumber> Write(BarStock stock) =>
    [
        .. dimensions.Select(dimension => dimension.Write((T)stock)),
        .. corner((T)stock).Meters > 0 ? new[] { _corner.Write((T)stock) } : [],
    ];
}

/// <summary>A shape whose corners must be given.</summary>
internal sealed class ShapeWords<T, TCorners>(
    string word,
    NumberWord<T>[] dimensions,
    CornerWords<TCorners> corners,
    Func<T, TCorners> cornersOf,
    Func<Length[], TCorners, T> make,
    params Orientation[] orientations)
    : ShapeWords(word, typeof(T), orientations)
    where T : BarStock
    where TCorners : class
{
    public override IEnumerable<string> Dimensions => [.. dimensions.Select(dimension => dimension.Word), .. corners.Words];

    public override BarStock? Read(JobObject stock)
    {
        Length[]? size = Read(stock, dimensions);
        return corners.Read(stock) is { } radii && size is not null
            ? stock.Build(() => make(size, radii(size[size.Length - 1])), Parameters(dimensions, corners.Parameters(stock)))
            : null;
    }

    public override IEnumerable<WrittenNumber> Write(BarStock stock) =>
        [.. dimensions.Select(dimension => dimension.Write((T)stock)), .. corners.Write(cornersOf((T)stock))];
}
