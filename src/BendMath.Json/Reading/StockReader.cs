using BendMath.Json.Parts;
using BendMath.Json.Words;
using BendMath.Stock.Standard;

namespace BendMath.Json.Reading;

/// <summary>Reads the bar, by its shape or by the designation of a standard size, and how it lies.</summary>
internal static class StockReader
{
    public const string Example = "\"stock\": { \"shape\": \"flat\", \"width\": \"25 mm\", \"thickness\": \"5 mm\" }";

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
            else if (stock.Word("shape", [.. ShapeWords.All.Select(words => words.Word)]) is { } shape)
            {
                ShapeWords words = ShapeWords.All.First(words => words.Word == shape);
                bar = words.Read(stock);
                kind = (shape, words.Orientations);
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
}
