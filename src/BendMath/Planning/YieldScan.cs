using UnitsNet;

namespace BendMath;

/// <summary>The ring one die leaves over the yield range of the material: inside diameter and developed length as ranges. Immutable and thread-safe.</summary>
public sealed class YieldScan
{
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
        Guard.NotNull(arc, nameof(arc));
        RingsOverYield scan = RingsOverYield.Of(model, analysis, die, release);
        return scan.Note is { } note
            ? new(null, null, note)
            : new(
                scan.InsideDiameter,
                new(Length.FromMeters(scan.Rings.Min(ring => ring.BlankLengthFor(arc.Turn).Meters)), Length.FromMeters(scan.Rings.Max(ring => ring.BlankLengthFor(arc.Turn).Meters))),
                null);
    }

    /// <summary>The range or why there is none.</summary>
    public override string ToString() => InsideDiameter?.ToString() ?? Note!;
}
