using System.Globalization;
using UnitsNet;

namespace BendMath;

/// <summary>The rings one die leaves over the yield range of the material. Immutable and thread-safe.</summary>
public sealed class RingsOverYield
{
    private const int Points = 17;

    private RingsOverYield(IReadOnlyList<FinishedRing> rings, string? note)
    {
        Rings = rings;
        Note = note;
    }

    /// <summary>The ring at the most likely yield, then those at 17 yields from the lowest to the highest; none when there is no range, and <see cref="Note"/> says why.</summary>
    public IReadOnlyList<FinishedRing> Rings { get; }

    /// <summary>Why there is no range, or null.</summary>
    public string? Note { get; }

    /// <summary>Range of the finished inside diameter, or null.</summary>
    public LengthRange? InsideDiameter => Rings.Count == 0
        ? null
        : new(Length.FromMeters(Rings.Min(ring => ring.InsideDiameter.Meters)), Length.FromMeters(Rings.Max(ring => ring.InsideDiameter.Meters)));

    /// <summary>Scans the yield range, interior and most likely yield included: incremental bending is not monotone in yield.</summary>
    /// <param name="model">How the bender forms.</param>
    /// <param name="analysis">Section and material.</param>
    /// <param name="die">The die.</param>
    /// <param name="release">How the ring is let go.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The die does not suit the bar, or the release is not a defined value.</exception>
    public static RingsOverYield Of(FormingModel model, BendAnalysis analysis, Die die, Release release)
    {
        Guard.NotNull(model, nameof(model));
        Guard.Defined(release, nameof(release));
        if (Guard.NotNull(analysis, nameof(analysis)).Material.YieldRange is not { } range)
        {
            return new([], $"no range: the yield of {analysis.Material.Name} is given as one number");
        }

        model.Form(analysis, Guard.NotNull(die, nameof(die)));
        double low = range.Low.Pascals;
        double step = (range.High.Pascals - low) / (Points - 1);
        List<FinishedRing> rings = [];
        foreach (double yield in Enumerable.Range(0, Points).Select(i => low + i * step).Prepend(analysis.Material.Law.YieldStress.Pascals))
        {
            BarMaterial material = analysis.Material.WithYield(Pressure.FromPascals(yield));
            if (!model.TryForm(BendAnalysis.Of(analysis.Section, material, analysis.StressState), die, out FormedBend? formed, out string? refusal) || formed.IsStraightWhen(release))
            {
                return new([], string.Format(
                    CultureInfo.InvariantCulture, "no range: at a yield of {0:0.#} MPa {1}", yield / 1e6, refusal ?? "the bar springs back straight"));
            }

            rings.Add(formed.RingWhen(release));
        }

        return new(rings.AsReadOnly(), null);
    }

    /// <summary>The range or why there is none.</summary>
    public override string ToString() => InsideDiameter?.ToString() ?? Note!;
}
