using System.Globalization;
using UnitsNet;

namespace BendMath;

/// <summary>The ring one die leaves over the yield range of the material: inside diameter and developed length as ranges. Immutable and thread-safe.</summary>
public sealed class YieldScan
{
    private const int Points = 17;

    private YieldScan(LengthRange? insideDiameter, LengthRange? developedLength, string? note)
    {
        InsideDiameter = insideDiameter;
        DevelopedLength = developedLength;
        Note = note;
    }

    /// <summary>Range of the finished inside diameter, or null; <see cref="Note"/> says why.</summary>
    public LengthRange? InsideDiameter { get; }

    /// <summary>Range of the developed length, or null.</summary>
    public LengthRange? DevelopedLength { get; }

    /// <summary>Why there is no range, or null.</summary>
    public string? Note { get; }

    /// <summary>Scans the yield range, interior and most likely yield included: incremental bending is not monotone in yield.</summary>
    /// <param name="model">How the bender forms.</param>
    /// <param name="analysis">Section and material.</param>
    /// <param name="die">The die.</param>
    /// <param name="release">How the ring is let go.</param>
    /// <param name="arc">How much of the ring is wanted.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The die does not suit the bar, or the release is not a defined value.</exception>
    public static YieldScan Of(FormingModel model, BendAnalysis analysis, Die die, Release release, ArcExtent arc)
    {
        Guard.NotNull(model, nameof(model));
        Guard.NotNull(arc, nameof(arc));
        if (Guard.NotNull(analysis, nameof(analysis)).Material.YieldRange is not { } range)
        {
            return new(null, null, $"no range: the yield of {analysis.Material.Name} is given as one number");
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
                return new(null, null, string.Format(
                    CultureInfo.InvariantCulture, "no range: at a yield of {0:0.#} MPa {1}", yield / 1e6, refusal ?? "the bar springs back straight"));
            }

            rings.Add(formed.RingWhen(release));
        }

        return new(
            new(Length.FromMeters(rings.Min(r => r.InsideDiameter.Meters)), Length.FromMeters(rings.Max(r => r.InsideDiameter.Meters))),
            new(Length.FromMeters(rings.Min(r => r.BlankLengthFor(arc.Turn).Meters)), Length.FromMeters(rings.Max(r => r.BlankLengthFor(arc.Turn).Meters))),
            null);
    }

    /// <summary>The range or why there is none.</summary>
    public override string ToString() => InsideDiameter?.ToString() ?? Note!;
}
