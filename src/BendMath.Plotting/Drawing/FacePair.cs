using BendMath.Sections.Outlines;

namespace BendMath.Plotting.Drawing;

/// <summary>Two parallel straight faces with metal from one to the other: a leg, a wall, a solid bar.</summary>
internal sealed class FacePair(Spot origin, Spot along, double distance, double low, double high)
{
    private const double Near = 1e-9;

    /// <summary>A place on the first face, from which <see cref="Low"/> and <see cref="High"/> count.</summary>
    public Spot Origin { get; } = origin;

    /// <summary>Unit step along the faces.</summary>
    public Spot Along { get; } = along;

    /// <summary>Unit step from the first face to the second.</summary>
    public Spot Across => Along.Left;

    public double Distance { get; } = distance;

    /// <summary>Where the faces begin to lie opposite each other.</summary>
    public double Low { get; } = low;

    /// <summary>Where they end.</summary>
    public double High { get; } = high;

    /// <summary>Every pair but those as far apart as the section is deep or wide, whose number stands there already.</summary>
    public static IEnumerable<FacePair> Of(SectionShape shape)
    {
        OutlineEdge[] straight = [.. shape.Outline.Loops.SelectMany(loop => loop.Edges).Where(edge => !edge.IsArc)];
        for (int i = 0; i < straight.Length; i++)
        {
            for (int j = i + 1; j < straight.Length; j++)
            {
                if (Between(shape, straight[i], straight[j]) is { } pair && !IsExtent(shape, pair))
                {
                    yield return pair;
                }
            }
        }
    }

    private static FacePair? Between(SectionShape shape, OutlineEdge first, OutlineEdge second)
    {
        double size = Math.Max(shape.Width, shape.Depth);
        Spot origin = shape.At(first.Start);
        Spot run = shape.At(first.End) - origin;
        Spot along = run.Unit;
        Spot from = shape.At(second.Start) - origin;
        Spot to = shape.At(second.End) - origin;
        double distance = from.Dot(along.Left);
        double low = Math.Max(0, to.Dot(along));
        double high = Math.Min(run.Length, from.Dot(along));
        bool opposite = (to - from).Unit.Dot(along) < -1 + Near && distance > Near * size && high - low > 1e-3 * size;
        if (!opposite)
        {
            return null;
        }

        Spot middle = origin + along * ((low + high) / 2);
        return Enumerable.Range(1, 7).All(eighth => shape.IsSolid(middle + along.Left * (distance * eighth / 8)))
            ? new(origin, along, distance, low, high) : null;
    }

    private static bool IsExtent(SectionShape shape, FacePair pair) =>
        Math.Abs(pair.Distance - shape.Depth) < Near * shape.Depth || Math.Abs(pair.Distance - shape.Width) < Near * shape.Width;
}
