using UnitsNet;

namespace BendMath.Cutting;

/// <summary>What a bar gives. Immutable and thread-safe.</summary>
public sealed record BarUtilization
{
    private readonly double _bar;

    private readonly double _offcut;

    internal BarUtilization(double bar, int pieces, double offcut)
    {
        _bar = bar;
        Pieces = pieces;
        _offcut = offcut;
    }

    /// <summary>Length of the bar.</summary>
    public Length BarLength => Length.FromMeters(_bar);

    /// <summary>Number of blanks.</summary>
    public int Pieces { get; }

    /// <summary>What is left after the cuts.</summary>
    public Length Offcut => Length.FromMeters(_offcut);

    /// <summary>Pieces and offcut.</summary>
    public override string ToString() => Invariant($"{Pieces} from a bar of {_bar * 1e3:0.#} mm, {_offcut * 1e3:0.#} mm left");
}
