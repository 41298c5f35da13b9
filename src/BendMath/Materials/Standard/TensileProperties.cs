using BendMath.Evidence;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Materials.Standard;

/// <summary>What a tensile test of a grade gives or a standard promises of it. Immutable and thread-safe.</summary>
public sealed record TensileProperties
{
    private readonly double? _highYield;

    private readonly double? _ultimate;

    private readonly double? _highUltimate;

    private readonly double? _elongation;

    /// <summary>States the properties.</summary>
    /// <param name="yieldStrength">The printed yield or proof strength, the lower one of a range; greater than zero.</param>
    /// <param name="valueKind">What the printed strength promises.</param>
    /// <param name="maximumYield">Upper end of the yield, not below the lower; null when none is printed.</param>
    /// <param name="ultimateStrength">The printed ultimate strength, the lower one of a range, not below the yield; null when
    /// unknown.</param>
    /// <param name="maximumUltimate">Upper end of the ultimate strength, not below the lower; needs a lower one; null when none is
    /// printed.</param>
    /// <param name="elongation">Elongation after fracture, greater than zero; null when unknown.</param>
    /// <param name="elongationGauge">Gauge length the elongation belongs to, such as <c>2 in</c>; null when unknown.</param>
    /// <param name="source">Where they are printed; null for data of your own.</param>
    /// <exception cref="ArgumentException">The gauge length is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public TensileProperties(
        Pressure yieldStrength,
        GradeValueKind valueKind,
        Pressure? maximumYield = null,
        Pressure? ultimateStrength = null,
        Pressure? maximumUltimate = null,
        Ratio? elongation = null,
        string? elongationGauge = null,
        Source? source = null)
    {
        Yield = Guard.Positive(yieldStrength, nameof(yieldStrength));
        ValueKind = Guard.Defined(valueKind, nameof(valueKind));
        _highYield = AtLeast(maximumYield, Yield, nameof(maximumYield), "the yield strength");
        _ultimate = AtLeast(ultimateStrength, Yield, nameof(ultimateStrength), "the yield strength");
        _highUltimate = AtLeast(maximumUltimate, _ultimate ?? double.PositiveInfinity, nameof(maximumUltimate), "the ultimate strength");
        _elongation = elongation is { } e ? Guard.Positive(e, nameof(elongation)) : null;
        ElongationGauge = elongationGauge is null ? null : Guard.Line(elongationGauge, nameof(elongationGauge));
        Source = source;
    }

    /// <summary>The printed yield or proof strength, the lower one of a range; <see cref="ValueKind"/> says what it promises.</summary>
    public Pressure YieldStrength => Pressure.FromPascals(Yield);

    /// <summary>What the printed strength promises.</summary>
    public GradeValueKind ValueKind { get; }

    /// <summary>Upper end of the yield, or null when none is printed, which is the rule.</summary>
    public Pressure? MaximumYield => Stress(_highYield);

    /// <summary>The printed ultimate strength, the lower one of a range, or null.</summary>
    public Pressure? UltimateStrength => Stress(_ultimate);

    /// <summary>Upper end of the ultimate strength, or null when none is printed.</summary>
    public Pressure? MaximumUltimate => Stress(_highUltimate);

    /// <summary>Elongation after fracture, or null when unknown.</summary>
    public Ratio? Elongation => _elongation is { } e ? Ratio.FromDecimalFractions(e) : null;

    /// <summary>Gauge length the elongation belongs to, or null; a short gauge gives a larger elongation.</summary>
    public string? ElongationGauge { get; }

    /// <summary>Where they are printed; null for data of your own.</summary>
    public Source? Source { get; }

    internal double Yield { get; }

    internal double HighestYield => _highYield ?? Yield;

    internal string YieldText => _highYield is { } high ? $"{Text(Yield)} ({Text(high)} at most)" : Text(Yield);

    /// <summary>The same properties with some of them changed, checked as new ones; what is left out stays.</summary>
    /// <param name="yieldStrength">Another yield, or null.</param>
    /// <param name="valueKind">Another promise, or null.</param>
    /// <param name="maximumYield">Another upper end of the yield, or null.</param>
    /// <param name="ultimateStrength">Another ultimate strength, or null.</param>
    /// <param name="maximumUltimate">Another upper end of the ultimate strength, or null.</param>
    /// <param name="elongation">Another elongation, or null.</param>
    /// <param name="elongationGauge">Another gauge length, or null.</param>
    /// <param name="source">Another source, or null.</param>
    /// <exception cref="ArgumentException">The gauge length is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public TensileProperties With(
        Pressure? yieldStrength = null,
        GradeValueKind? valueKind = null,
        Pressure? maximumYield = null,
        Pressure? ultimateStrength = null,
        Pressure? maximumUltimate = null,
        Ratio? elongation = null,
        string? elongationGauge = null,
        Source? source = null) => new(
            yieldStrength ?? YieldStrength,
            valueKind ?? ValueKind,
            maximumYield ?? MaximumYield,
            ultimateStrength ?? UltimateStrength,
            maximumUltimate ?? MaximumUltimate,
            elongation ?? Elongation,
            elongationGauge ?? ElongationGauge,
            source ?? Source);

    /// <summary>Yield, ultimate strength and elongation, as far as known.</summary>
    public override string ToString() =>
        $"yield {YieldText}{(_ultimate is { } ultimate ? $", ultimate {Text(ultimate)}" : string.Empty)}{(_elongation is { } e ? Invariant($", elongation {100 * e:0.#} %") : string.Empty)}";

    internal static string Text(double pascals) => Invariant($"{pascals / 1e6:0.#} MPa");

    private static double? AtLeast(Pressure? value, double least, string name, string what)
    {
        if (value is not { } given)
        {
            return null;
        }

        double stress = Guard.Positive(given, name);
        return stress >= least ? stress
            : throw Guard.Fault(name, given,
                double.IsInfinity(least) ? $"must come with {what}" : $"must not be below {what}, {Text(least)}");
    }

    private static Pressure? Stress(double? pascals) => pascals is { } value ? Pressure.FromPascals(value) : null;
}
