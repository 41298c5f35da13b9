using BendMath.Json.Parts;
using BendMath.Stock.Standard;


namespace BendMath.Json.Reading;

/// <summary>Reads the bar, by its shape or by the designation of a standard size, and how it lies.</summary>
internal static class StockReader
{
    public const string Example = "\"stock\": { \"shape\": \"flat\", \"width\": \"25 mm\", \"thickness\": \"5 mm\" }";

    private static readonly Dictionary<string, Shape> Shapes = new(StringComparer.Ordinal)
    {
        ["equal angle"] = new(ShapeReader.EqualAngle, Orientation.FlangeOut, Orientation.FlangeIn, Orientation.HeelIn, Orientation.HeelOut),
        ["unequal angle"] = new(
            ShapeReader.UnequalAngle, Orientation.LongLegFlangeOut, Orientation.LongLegFlangeIn, Orientation.ShortLegFlangeOut,
                Orientation.ShortLegFlangeIn),
        ["flat"] = new(ShapeReader.Flat, Orientation.EasyWay, Orientation.HardWay),
        ["square"] = new(ShapeReader.Square, Orientation.Usual, Orientation.OnDiagonal),
        ["round"] = new(ShapeReader.Round, Orientation.Usual),
        ["hexagon"] = new(ShapeReader.Hexagon, Orientation.OnFlat, Orientation.OnCorner),
        ["round tube"] = new(ShapeReader.RoundTube, Orientation.Usual),
        ["square tube"] = new(ShapeReader.SquareTube, Orientation.Usual),
        ["rectangular tube"] = new(ShapeReader.RectangularTube, Orientation.EasyWay, Orientation.HardWay),
        ["channel"] = new(ShapeReader.Channel, Orientation.FlangesOut, Orientation.FlangesIn, Orientation.HardWay),
        ["tee"] = new(ShapeReader.Tee, Orientation.StemOut, Orientation.StemIn, Orientation.StemUp),
    };

    /// <summary>The words for shapes and, for each, the ways it can lie. An empty one is meant where the file names none.</summary>
    public static IReadOnlyDictionary<string, string[]> Orientations { get; } =
        Shapes.ToDictionary(pair => pair.Key, pair => pair.Value.Orientations);

    /// <summary>Reads <c>stock</c> and <c>orientation</c> of a job or a measured ring.</summary>
    public static OrientedSection? Read(JobObject owner)
    {
        (string Name, string[] Ways)? kind = null;
        BarStock? bar = null;
        if (owner.Object("stock", Example) is { } stock)
        {
            if (stock.Has("size"))
            {
                StandardSize? size = Size(stock);
                bar = size?.Stock;
                kind =
                    size is null ? null
                        : (size.FullName, [.. size.Stock.Orientations.Select(section => OrientationWords.Of(section.Orientation))]);
                stock.Close();
            }
            else if (stock.Word("shape", [.. Shapes.Keys]) is { } shape)
            {
                bar = Shapes[shape].Read(stock);
                kind = (shape, Shapes[shape].Orientations);
                stock.Close();
            }
        }

        if (kind is { } known)
        {
            return Lying(owner, known.Name, known.Ways, bar);
        }

        owner.Find("orientation");
        return null;
    }

    private static OrientedSection? Lying(JobObject owner, string name, string[] all, BarStock? bar)
    {
        JsonPart? lies = owner.Find("orientation");
        string[] ways = [.. all.Where(way => way.Length > 0)];
        if (lies is null && ways.Length < all.Length)
        {
            return bar?.Orientations[0];
        }

        if (ways.Length == 0)
        {
            owner.Fault("orientation", $"\"orientation\" must be left out, because {name} lies one way only, but is {lies!.Described}.");
            return null;
        }

        string? way = owner.Word("orientation", ways);
        return way is null ? null : bar?.Lying(OrientationWords.Meant(way));
    }

    private static StandardSize? Size(JobObject stock)
    {
        string? designation = stock.Text("size", "\"size\": \"L 50x50x5\"");
        string? name = stock.OptionalWord("system", [.. StandardSizes.Systems.Select(system => system.Name)]);
        if (designation is null || (name is null && stock.Has("system")))
        {
            return null;
        }

        SizeSystem? system = StandardSizes.Systems.FirstOrDefault(candidate => candidate.Name == name);
        if (!StandardSizes.TryFind(designation, system, out StandardSize? size, out string? fault))
        {
            stock.Fault("size", fault!);
        }

        return size;
    }

    private sealed class Shape(Func<JobObject, BarStock?> read, params Orientation[] orientations)
    {
        public Func<JobObject, BarStock?> Read { get; } = read;

        public string[] Orientations { get; } = Array.ConvertAll(orientations, OrientationWords.Of);
    }
}
