using BendMath.Evidence;
using BendMath.Guards;
using BendMath.Measurement;
using UnitsNet;

namespace BendMath;

/// <summary>
/// A ring the shop made and measured: die, bar, size as read and, if noted, the length of the bar before. Immutable and thread-safe.
/// </summary>
public sealed class MeasuredRing
{
    /// <summary>Strains at which two laws are compared: below yield, about it, and those of wide and tight rings.</summary>
    private static readonly double[] Strains = [5e-4, 1e-3, 1.5e-3, 2e-3, 5e-3, 0.02, 0.1, 0.3];

    /// <summary>Makes the record of a ring measured across.</summary>
    /// <param name="die">The die it was bent on.</param>
    /// <param name="analysis">Section and material of the bar.</param>
    /// <param name="measured">The size as measured, with the line it was measured to.</param>
    /// <param name="release">Whether it was measured as it came off (free) or held flat.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The measured radius leaves no inside radius or is tighter than the tightest bend
    /// leaves or so wide that the bar counts as straight, or the release is not a defined value.</exception>
    public MeasuredRing(Die die, BendAnalysis analysis, BendRadius measured, Release release)
        : this(die, analysis, RingReading.Of(Guard.NotNull(measured, nameof(measured))), release, nameof(measured), null, null)
    {
    }

    /// <summary>Makes the record of a ring measured in any way.</summary>
    /// <param name="die">The die it was bent on.</param>
    /// <param name="analysis">Section and material of the bar.</param>
    /// <param name="reading">What was measured.</param>
    /// <param name="release">Whether it was measured as it came off (free) or held flat.</param>
    /// <param name="marked">A length marked on the straight bar and the turn it became; null when none was.</param>
    /// <param name="note">A date, a name, what to remember: one line of printable characters without blanks at its ends; null for
    /// none.</param>
    /// <exception cref="ArgumentNullException">An argument without a default is null.</exception>
    /// <exception cref="ArgumentException">The note is not such a line.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The measured radius leaves no inside radius or is tighter than the tightest bend
    /// leaves or so wide that the bar counts as straight, or the release is not a defined value.</exception>
    public MeasuredRing(Die die, BendAnalysis analysis, RingReading reading, Release release, MarkedLength? marked = null,
        string? note = null)
        : this(die, analysis, Guard.NotNull(reading, nameof(reading)), release, nameof(reading), marked, note)
    {
    }

    private MeasuredRing(Die die, BendAnalysis analysis, RingReading reading, Release release, string name, MarkedLength? marked,
        string? note)
    {
        Die = Guard.NotNull(die, nameof(die));
        Analysis = Guard.NotNull(analysis, nameof(analysis));
        Reading = reading;
        Measured.InsideOf(analysis.Section, name);
        Release = Guard.Defined(release, nameof(release));
        Loaded = analysis.TryLoadedFor(Measured, release)
            ?? throw Guard.Fault(name, Measured.Value,
                $"must be a radius wider than the tightest possible bend of {analysis.Section} leaves");
        if (Loaded.Release(Release).IsStraight)
        {
            throw Guard.Fault(name, Measured.Value, "must be a radius tighter than that of a bar that springs back straight, or nearly");
        }

        Marked = marked;
        Note = note is null || (note.Length > 0 && note.Trim().Length == note.Length && !note.Any(char.IsControl))
            ? note
            : throw Guard.Refused(nameof(note), "must be one line of printable characters without blanks at its ends");
    }

    /// <summary>The die it was bent on.</summary>
    public Die Die { get; }

    /// <summary>Section and material of the bar.</summary>
    public BendAnalysis Analysis { get; }

    /// <summary>What was measured.</summary>
    public RingReading Reading { get; }

    /// <summary>The size that follows from the reading, with the line it was measured to.</summary>
    public BendRadius Measured => Reading.Radius;

    /// <summary>A length marked on the straight bar and the turn it became, or null.</summary>
    public MarkedLength? Marked { get; }

    /// <summary>A date, a name, what to remember; or null.</summary>
    public string? Note { get; }

    /// <summary>
    /// Distance from the inside face to the fiber that kept its length, as measured; it may lie outside the bar. Null without a marked
    /// length.
    /// </summary>
    /// <remarks>
    /// Equation: n = L₀/θ − R_inside.
    /// Range: as good as the readings: an error of 1 mm in the length of a full ring moves n by 0.16 mm, one of 1 mm in its diameter by 0.5
    /// mm.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public Length? KeptFiberFromInside => Marked is { } marked ? Length.FromMeters(marked.KeptRadius.Meters - Ring.Inside) : null;

    /// <summary>Whether it was measured free or held flat.</summary>
    public Release Release { get; }

    /// <summary>The loaded state that leaves this ring, whatever the bender did.</summary>
    public LoadedBend Loaded { get; }

    /// <summary>The ring, measured anywhere: all its radii follow from the one that was measured.</summary>
    public FinishedRing Ring => Loaded.Release(Release).Ring;

    /// <summary>Stock, die and size.</summary>
    public override string ToString() => $"{Analysis.Section} on {Die.Name}: {Measured}";

    /// <summary>Whether it is a ring of this bar, as it lies, whatever its name.</summary>
    /// <param name="section">The bar to compare with.</param>
    /// <exception cref="ArgumentNullException">The section is null.</exception>
    public bool IsOf(OrientedSection section) => Analysis.Section.IsSameBar(Guard.NotNull(section, nameof(section)), Length.Zero);

    /// <summary>Whether its law gives the stresses of another: the names of materials do not matter, nor their densities.</summary>
    /// <param name="law">The law to compare with.</param>
    /// <exception cref="ArgumentNullException">The law is null.</exception>
    public bool IsOf(StressStrainLaw law) =>
        Near(Analysis.Law.E, Guard.NotNull(law, nameof(law)).E, law.E)
            && Strains.All(strain => Near(Analysis.Law.Stress(strain), law.Stress(strain), law.Stress(strain)));

    /// <summary>In what a case differs from the measured one, each as what the prediction is for.</summary>
    /// <param name="analysis">Section and material of the case.</param>
    /// <param name="die">Its die, or null.</param>
    /// <param name="anyStamp">Whether another stamp makes no difference, because rings of several dies were measured.</param>
    internal IReadOnlyList<string> DifferencesFrom(BendAnalysis analysis, Die? die, bool anyStamp = false)
    {
        List<string> differences = [];
        if (!anyStamp && die is not null && die.Stamp != Die.Stamp)
        {
            differences.Add($"another die than {Die.Name}");
        }

        if (die is not null && die.Face != Die.Face)
        {
            differences.Add($"a stamp that means the {die.Face}, where the measured one means the {Die.Face}");
        }

        if (die is not null && !die.IsTrial && (die.Mate != Die.Mate || die.NoseRadius?.Meters != Die.NoseRadius?.Meters))
        {
            differences.Add($"another mate or nose than that of {Die.Name}");
        }

        if (!IsOf(analysis.Section))
        {
            bool sameWords = string.Equals(analysis.Section.ToString(), Analysis.Section.ToString(), StringComparison.Ordinal);
            differences.Add($"another bar than {(sameWords ? Analysis.Section.Description : Analysis.Section.ToString())}");
        }

        if (!IsOf(analysis.Law))
        {
            differences.Add(
                analysis.StressState == Analysis.StressState ? $"another metal than {Analysis.Material}"
                    : "plane strain in one case and not in the other");
        }

        if (analysis.Unloading != Analysis.Unloading)
        {
            differences.Add(Invariant($"another stiffness on release than {100 * Analysis.Unloading:0.##} % of E"));
        }

        return differences;
    }

    private static bool Near(double one, double other, double scale) => Math.Abs(one - other) <= 1e-9 * scale;
}
