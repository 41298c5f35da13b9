using BendMath;
using RingPlanner.Pages;

namespace RingPlanner.Drawings;

/// <summary>The finished ring or arc from above, to scale, with diameters and the chord and rise of the check.</summary>
internal static class RingDrawing
{
    private const double Width = 640;

    private const double Height = 480;

    private const double Largest = 190;

    public static string Of(PlannedRing ring, Units units)
    {
        double outside = ring.Free.OutsideRadius.Meters;
        double scale = Largest / outside;
        double inner = ring.Free.InsideRadius.Meters * scale;
        double half = ring.Layout.Arc.Turn.Radians / 2;
        double x = 250, y = 240;
        Svg svg = new(Width, Height);
        if (ring.Layout.Arc.IsFullRing)
        {
            svg.Circle(x, y, Largest, "bar").Circle(x, y, inner, "hole");
        }
        else
        {
            svg.Path(Band(x, y, inner, half), "bar");
        }

        svg.Line(x - Largest - 15, y, x + Largest + 15, y, "center").Line(x, y - Largest - 15, x, y + Largest + 15, "center");
        double chord = ring.Check.Chord.Meters * scale;
        double level = y - Math.Sqrt(Math.Max(0, inner * inner - chord * chord / 4));
        svg.Line(x - chord / 2, level, x + chord / 2, level).Line(x, level, x, y - inner, "thin");
        svg.Words(x, level + 18, $"chord {units.Size(ring.Check.Chord)}")
            .Words(x + 6, (level + y - inner) / 2 + 4, $"rise {units.Fine(ring.Check.Rise)}", "start");
        string[] words =
        [
            $"inside diameter {units.Size(ring.Free.InsideDiameter)}",
            $"outside diameter {units.Size(ring.Free.OutsideDiameter)}",
            .. ring.Check.OpeningBetweenEnds is { } opening ? [$"between the ends {units.Size(opening)}"] : Array.Empty<string>(),
        ];
        for (int i = 0; i < words.Length; i++)
        {
            svg.Words(x, y + 30 + 20 * i, words[i]);
        }

        return svg.ToString();
    }

    /// <summary>The band of an arc around the top.</summary>
    private static string Band(double x, double y, double inner, double half)
    {
        string large = half > Math.PI / 2 ? "1" : "0";
        return $"M {Point(x, y, Largest, -half)} A {Svg.N(Largest)} {Svg.N(Largest)} 0 {large} 1 {Point(x, y, Largest, half)} "
            + $"L {Point(x, y, inner, half)} A {Svg.N(inner)} {Svg.N(inner)} 0 {large} 0 {Point(x, y, inner, -half)} Z";
    }

    private static string Point(double x, double y, double radius, double angle) =>
        $"{Svg.N(x + radius * Math.Sin(angle))} {Svg.N(y - radius * Math.Cos(angle))}";
}
