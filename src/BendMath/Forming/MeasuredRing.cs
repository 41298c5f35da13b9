using UnitsNet;

namespace BendMath;

/// <summary>A ring the shop made and measured: die, bar, size and, if noted, the length of the bar before. Immutable and thread-safe.</summary>
public sealed class MeasuredRing
{
    /// <summary>Makes the record of a measured ring.</summary>
    /// <param name="die">The die it was bent on.</param>
    /// <param name="analysis">Section and material of the bar.</param>
    /// <param name="measured">The size as measured, with the line it was measured to.</param>
    /// <param name="release">Whether it was measured as it came off (free) or held flat.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The measured radius leaves no inside radius, or the release is not a defined value.</exception>
    public MeasuredRing(Die die, BendAnalysis analysis, BendRadius measured, Release release)
    {
        Die = Guard.NotNull(die, nameof(die));
        Analysis = Guard.NotNull(analysis, nameof(analysis));
        Measured = Guard.NotNull(measured, nameof(measured));
        measured.InsideOf(analysis.Section, nameof(measured));
        Release = Guard.Defined(release, nameof(release));
    }

    /// <summary>The die it was bent on.</summary>
    public Die Die { get; }

    /// <summary>Section and material of the bar.</summary>
    public BendAnalysis Analysis { get; }

    /// <summary>The size as measured.</summary>
    public BendRadius Measured { get; }

    /// <summary>Whether it was measured free or held flat.</summary>
    public Release Release { get; }

    /// <summary>Stock, die and size.</summary>
    public override string ToString() => $"{Analysis.Section} on {Die.Name}: {Measured}";
}
