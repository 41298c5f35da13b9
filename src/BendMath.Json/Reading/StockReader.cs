using UnitsNet;

namespace BendMath.Json.Reading;

/// <summary>Reads the bar and how it lies.</summary>
internal static class StockReader
{
    public const string Example = "\"stock\": { \"shape\": \"flat\", \"width\": \"25 mm\", \"thickness\": \"5 mm\" }";

    private static readonly Dictionary<string, Shape> Shapes = new(StringComparer.Ordinal)
    {
        ["equal angle"] = new(Angle, "flange out", "flange in", "heel in", "heel out"),
        ["flat"] = new(Flat, "easy way", "hard way"),
        ["square"] = new(stock => stock.Length("side", "12 mm") is { } side ? stock.Build(() => new SquareBar(side)) : null, string.Empty, "on the diagonal"),
        ["round"] = new(stock => stock.Length("diameter", "10 mm") is { } diameter ? stock.Build(() => new RoundBar(diameter)) : null),
        ["round tube"] = new(Tube),
    };

    /// <summary>The words for shapes and, for each, the ways it can lie; none for a shape that lies one way only. An empty one is meant where the file names none.</summary>
    public static IReadOnlyDictionary<string, string[]> Orientations { get; } = Shapes.ToDictionary(pair => pair.Key, pair => pair.Value.Orientations);

    /// <summary>Reads <c>stock</c> and <c>orientation</c> of a job or a measured ring.</summary>
    public static OrientedSection? Read(JobObject owner)
    {
        string? shape = null;
        BarStock? bar = null;
        if (owner.Object("stock", Example) is { } stock)
        {
            shape = stock.Word("shape", [.. Shapes.Keys]);
            if (shape is null)
            {
                owner.Find("orientation");
                return null;
            }

            bar = Shapes[shape].Read(stock);
            stock.Close();
        }

        JsonPart? lies = owner.Find("orientation");
        if (shape is null)
        {
            return null;
        }

        string[] ways = [.. Shapes[shape].Orientations.Where(way => way.Length > 0)];
        if (lies is null && ways.Length < Shapes[shape].Orientations.Length)
        {
            return bar?.Orientations[0];
        }

        if (ways.Length == 0)
        {
            if (lies is not null)
            {
                owner.Fault("orientation", $"\"orientation\" must be left out, because {shape} lies one way only, but is {lies.Described}.");
            }

            return bar?.Orientations[0];
        }

        string? way = owner.Word("orientation", ways);
        return way is null ? null : bar?.Orientations.First(section => section.Orientation == way);
    }

    private static EqualAngle? Angle(JobObject stock)
    {
        Length? leg = stock.Length("leg", "30 mm");
        Length? thickness = stock.Length("thickness", "3 mm");
        bool sharp = stock.OptionalWord("corners", "sharp") is not null;
        bool hasCorners = stock.Has("corners");
        bool hasRadius = stock.Has("root radius") || stock.Has("toe radius");
        Length? root = null;
        Length? toe = null;
        if (hasRadius || !hasCorners)
        {
            root = stock.OptionalLength("root radius", "5 mm", zero: true);
            toe = stock.OptionalLength("toe radius", "2.5 mm", zero: true);
        }

        if (hasCorners && hasRadius)
        {
            stock.Fault("corners", "\"corners\" must be left out where \"root radius\" or \"toe radius\" is given.");
        }
        else if (!hasCorners && !(stock.Has("root radius") && stock.Has("toe radius")))
        {
            stock.Fault(null, "An angle needs both \"root radius\" and \"toe radius\", or \"corners\": \"sharp\" for none.");
        }

        if (!stock.Sound || leg is not { } a || thickness is not { } t)
        {
            return null;
        }

        return stock.Build(() => new EqualAngle(a, t, sharp ? AngleFillets.Sharp : AngleFillets.Of(root!.Value, toe!.Value)), ("fillets", sharp ? "corners" : "toe radius"), ("root", "root radius"), ("toe", "toe radius"));
    }

    private static FlatBar? Flat(JobObject stock)
    {
        Length? width = stock.Length("width", "25 mm");
        Length? thickness = stock.Length("thickness", "5 mm");
        return width is { } w && thickness is { } t ? stock.Build(() => new FlatBar(w, t)) : null;
    }

    private static RoundTube? Tube(JobObject stock)
    {
        Length? diameter = stock.Length("outside diameter", "21.3 mm");
        Length? wall = stock.Length("wall", "2.6 mm");
        return diameter is { } d && wall is { } t ? stock.Build(() => new RoundTube(d, t), ("outsideDiameter", "outside diameter")) : null;
    }

    private sealed class Shape(Func<JobObject, BarStock?> read, params string[] orientations)
    {
        public Func<JobObject, BarStock?> Read { get; } = read;

        public string[] Orientations { get; } = orientations;
    }
}
