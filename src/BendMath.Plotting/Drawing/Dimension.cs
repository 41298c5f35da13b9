using ScottPlot;

namespace BendMath.Plotting.Drawing;

/// <summary>
/// A distance between two places with its number: arrows inside and the number on the line where there is room, otherwise arrows from
/// outside and the number beyond one of them.
/// </summary>
internal sealed class Dimension
{
    private const double Tail = 16;

    private const double Overshoot = 5;

    private readonly (Spot From, Spot To)[] _extensions;

    private readonly bool _inside;

    /// <param name="text">The number.</param>
    /// <param name="a">One end.</param>
    /// <param name="b">The other end; a number outside stands beyond it.</param>
    /// <param name="side">0 for a number beyond the arrow; 1 or −1 for one to its left or right.</param>
    /// <param name="reach">Where on the section the ends are measured, for extension lines; null for ends on the section.</param>
    public Dimension(string text, Spot a, Spot b, int side = 0, (Spot A, Spot B)? reach = null)
    {
        Text = text;
        A = a;
        B = b;
        Spot ahead = (b - a).Unit;
        double width = Sketch.WidthOf(text);
        double half = (Math.Abs(ahead.X) * width + Math.Abs(ahead.Y) * Sketch.LineHeight) / 2;
        double beside = (Math.Abs(ahead.Y) * width + Math.Abs(ahead.X) * Sketch.LineHeight) / 2 + 5;
        _inside = (b - a).Length > 2 * half + 30;
        Spot outside = side == 0 ? b + ahead * (Tail + 2 + half) : b + ahead * (0.7 * Tail) + ahead.Left * (side * beside);
        Box = new(_inside ? (a + b) * 0.5 : outside, width, Sketch.LineHeight);
        _extensions =
            reach is { } at
                ? [.. new[] { Extension(at.A, a), Extension(at.B, b) }.Where(line => (line.To - line.From).Length > Overshoot + 1)] : [];
    }

    public string Text { get; }

    public Spot A { get; }

    public Spot B { get; }

    /// <summary>Where the number stands.</summary>
    public Box Box { get; }

    /// <summary>Places on the lines that should lie beside the metal.</summary>
    public IEnumerable<Spot> Open()
    {
        Spot ahead = (B - A).Unit;
        double[] steps = [0.3 * Tail, 0.65 * Tail, Tail];
        return _inside ? [A + (B - A) * 0.2, A + (B - A) * 0.8] : steps.SelectMany(step => new[] { A - ahead * step, B + ahead * step });
    }

    /// <summary>Places all along the line, and along the tails of arrows from outside.</summary>
    public IEnumerable<Spot> Trace()
    {
        Spot ahead = (B - A).Unit;
        Spot from = _inside ? A : A - ahead * Tail;
        double length = (B - A).Length + (_inside ? 0 : 2 * Tail);
        int count = (int)Math.Ceiling(length / 6);
        return Enumerable.Range(0, count + 1).Select(i => from + ahead * (length * i / count));
    }

    public void Draw(Sketch sketch)
    {
        foreach ((Spot from, Spot to) in _extensions)
        {
            sketch.Line(from, to, 0.8);
        }

        Spot ahead = (B - A).Unit;
        if (_inside)
        {
            Spot middle = (A + B) * 0.5;
            sketch.Arrow(middle, A, 0.8);
            sketch.Arrow(middle, B, 0.8);
        }
        else
        {
            sketch.Arrow(A - ahead * Tail, A, 0.8);
            sketch.Arrow(B + ahead * Tail, B, 0.8);
        }

        sketch.Words(Text, Box.Center, Alignment.MiddleCenter, onWhite: true);
    }

    private static (Spot From, Spot To) Extension(Spot from, Spot to) => (to - from).Length > 0
        ? (from + (to - from).Unit * 2, to + (to - from).Unit * Overshoot)
        : (from, to);
}
