using BendMath.Sections.Outlines;

namespace BendMath.Plotting.Drawing;

/// <summary>The outline of a section as polygons, in the unit of the caller.</summary>
internal sealed class SectionShape
{
    /// <summary>How far chords may stay within an arc, over the larger extent of the section.</summary>
    public const double Sagitta = 1e-4;

    private SectionShape(Outline outline, Spot[][] polygons, double scale, double width, double depth)
    {
        Outline = outline;
        Polygons = polygons;
        Scale = scale;
        Width = width;
        Depth = depth;
    }

    public Outline Outline { get; }

    /// <summary>The outer loop first, then the holes.</summary>
    public Spot[][] Polygons { get; }

    public double Scale { get; }

    public double Width { get; }

    public double Depth { get; }

    /// <param name="section">The section.</param>
    /// <param name="scale">Units of the caller per meter.</param>
    public static SectionShape Of(OrientedSection section, double scale)
    {
        double width = section.Properties.Width.Meters;
        double depth = section.Properties.Depth.Meters;
        double sagitta = Sagitta * Math.Max(width, depth);
        Spot[][] polygons =
            [.. section.Outline.Loops.Select(loop => loop.Edges.SelectMany(edge => Chords(edge, sagitta)).Select(spot => spot * scale).ToArray())];
        return new(section.Outline, polygons, scale, width * scale, depth * scale);
    }

    public Spot At(OutlinePoint point) => Meters(point) * Scale;

    /// <summary>Whether there is metal at a place, by counting the edges to the right of it.</summary>
    public bool IsSolid(Spot spot)
    {
        bool solid = false;
        foreach (Spot[] loop in Polygons)
        {
            Spot from = loop[loop.Length - 1];
            foreach (Spot to in loop)
            {
                if ((from.Y > spot.Y) != (to.Y > spot.Y) && spot.X < from.X + (spot.Y - from.Y) / (to.Y - from.Y) * (to.X - from.X))
                {
                    solid = !solid;
                }

                from = to;
            }
        }

        return solid;
    }

    /// <summary>The start of an edge and the places along an arc, without its end, which is the start of the next edge.</summary>
    private static IEnumerable<Spot> Chords(OutlineEdge edge, double sagitta)
    {
        yield return Meters(edge.Start);
        if (edge.Center is not { } center)
        {
            yield break;
        }

        double radius = edge.Radius!.Value.Meters;
        double sweep = edge.Sweep!.Value.Radians;
        double start = edge.StartAngle!.Value.Radians;
        double step = radius > sagitta ? 2 * Math.Acos(1 - sagitta / radius) : Math.PI / 4;
        int chords = Math.Max(4, (int)Math.Ceiling(Math.Abs(sweep) / step));
        for (int i = 1; i < chords; i++)
        {
            double angle = start + sweep * i / chords;
            yield return Meters(center) + new Spot(Math.Cos(angle), Math.Sin(angle)) * radius;
        }
    }

    private static Spot Meters(OutlinePoint point) => new(point.X.Meters, point.Y.Meters);
}
