using BendMath.Guards;
using BendMath.Lengths;
using UnitsNet;

namespace BendMath;

/// <summary>
/// How blanks are cut: their straight ends, the saw, the bars in stock, the rule they are marked by. Immutable and thread-safe.
/// </summary>
public sealed record CuttingRules
{
    private readonly double _kerf;

    private readonly double? _barLength;

    /// <summary>Says how blanks are cut.</summary>
    /// <param name="ends">The straight ends of a blank.</param>
    /// <param name="kerf">Width of a saw cut, zero or more.</param>
    /// <param name="barLength">Length of the bars in stock; null when not known.</param>
    /// <param name="cutStyle">The rule blanks are cut by; it rounds up. Null for whole millimeters.</param>
    /// <exception cref="ArgumentNullException">The ends are null.</exception>
    /// <exception cref="ArgumentException">The cut style does not round up.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    public CuttingRules(EndAllowance ends, Length kerf, Length? barLength = null, LengthStyle? cutStyle = null)
    {
        Ends = Guard.NotNull(ends, nameof(ends));
        _kerf = Guard.NonNegative(kerf, nameof(kerf));
        _barLength = barLength is { } bar ? Guard.Positive(bar, nameof(barLength)) : null;
        CutStyle = cutStyle ?? LengthStyle.Millimeters(0, LengthRounding.Up);
        if (CutStyle.Rounding != LengthRounding.Up)
        {
            throw Guard.Refused(nameof(cutStyle), "must round up, so that no blank is short", $"is \"{cutStyle}\"");
        }
    }

    /// <summary>The straight ends of a blank.</summary>
    public EndAllowance Ends { get; }

    /// <summary>Width of a saw cut.</summary>
    public Length Kerf => Length.FromMeters(_kerf);

    /// <summary>Length of the bars in stock, or null.</summary>
    public Length? BarLength => _barLength is { } meters ? Length.FromMeters(meters) : null;

    /// <summary>The rule blanks are cut by; it rounds up.</summary>
    public LengthStyle CutStyle { get; }

    /// <summary>The same rules with some of them changed, checked as new ones; what is left out stays.</summary>
    /// <param name="ends">Other ends, or null.</param>
    /// <param name="kerf">Another saw cut, or null.</param>
    /// <param name="barLength">Another length of bar, or null.</param>
    /// <param name="cutStyle">Another rule, or null.</param>
    /// <exception cref="ArgumentException">The cut style does not round up.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    public CuttingRules With(EndAllowance? ends = null, Length? kerf = null, Length? barLength = null, LengthStyle? cutStyle = null) =>
        new(ends ?? Ends, kerf ?? Kerf, barLength ?? BarLength, cutStyle ?? CutStyle);

    /// <summary>Ends, saw and bars.</summary>
    public override string ToString() =>
        Invariant(
            $"ends {Ends}; saw cut {_kerf * 1e3:0.##} mm; {(_barLength is { } bar ? Invariant($"bars of {bar * 1e3:0.##} mm") : "bars of "
                + "unknown length")}");
}
