using BendMath.Numerics.Geometry;

namespace BendMath.Distortion.Shape;

/// <summary>
/// A flat wall along the ring: s runs over its middle from z₀, y₀ under the angle β to the axis of the ring, and it moves by v along its
/// normal, so that a fiber of it lies at y = y₀ + s·sin β + (v + ζ)·cos β. Cut into elements with v and v′ at their ends.
/// </summary>
internal sealed class Strip
{
    /// <summary>Places of the unknowns: v and v′ of each node in turn; −1 where it is held at zero.</summary>
    private readonly int[] _unknowns;

    /// <param name="start">y₀ and z₀.</param>
    /// <param name="direction">sin β and cos β.</param>
    /// <param name="width">b.</param>
    /// <param name="thickness">t.</param>
    /// <param name="count">How many such strips the section has, placed symmetrically about the plane of the ring if there are two.</param>
    /// <param name="unknowns">Places of the unknowns of the nodes.</param>
    public Strip((double Y, double Z) start, (double Sin, double Cos) direction, double width, double thickness, int count, int[] unknowns)
    {
        Start = start;
        (Sin, Cos) = direction;
        Width = width;
        Thickness = thickness;
        Count = count;
        _unknowns = unknowns;
    }

    public (double Y, double Z) Start { get; }

    public double Sin { get; }

    public double Cos { get; }

    public double Width { get; }

    public double Thickness { get; }

    public int Count { get; }

    public int Nodes => _unknowns.Length / 2;

    public double ElementLength => Width / (Nodes - 1);

    public int Deflection(int node) => _unknowns[2 * node];

    public int Slope(int node) => _unknowns[2 * node + 1];

    /// <summary>The unknowns of an element: v, v′ at its start, v, v′ at its end.</summary>
    public ReadOnlySpan<int> OfElement(int element) => _unknowns.AsSpan(2 * element, 4);

    /// <summary>The undisplaced strip, as a section of its own.</summary>
    public BandProfile Straight()
    {
        (double Y, double Z) a = At(0, -Thickness / 2);
        (double Y, double Z) b = At(Width, -Thickness / 2);
        (double Y, double Z) c = At(Width, Thickness / 2);
        (double Y, double Z) d = At(0, Thickness / 2);
        return BandProfile.Of([[Side(a, b), Side(b, c), Side(c, d), Side(d, a)]]);

        static Edge Side((double Y, double Z) from, (double Y, double Z) to) => Edge.Line(from.Y, from.Z, to.Y, to.Z);
    }

    private (double Y, double Z) At(double s, double zeta) => (Start.Y + s * Sin + zeta * Cos, Start.Z + s * Cos - zeta * Sin);
}
