using System.Globalization;
using BendMath.Bending;
using UnitsNet;

namespace BendMath;

/// <summary>
/// What one measured ring teaches. One ring identifies one number: which face the stamp means, or the stroke, or a plain ratio of curvatures.
/// The explanations that fit agree on the measured die and part on others; a second ring on another die tells them apart. Immutable and thread-safe.
/// </summary>
public sealed class DieCorrection
{
    private DieCorrection(MeasuredRing ring, IReadOnlyList<Explanation> explanations)
    {
        Ring = ring;
        Explanations = explanations;
    }

    /// <summary>The measured ring.</summary>
    public MeasuredRing Ring { get; }

    /// <summary>Every explanation tried, those that fit and those that do not.</summary>
    public IReadOnlyList<Explanation> Explanations { get; }

    /// <summary>Explains one measured ring.</summary>
    /// <param name="ring">The measured ring.</param>
    /// <param name="basis">The model the curvature ratio is applied to.</param>
    /// <param name="setup">Half-span and nose of the bender, for the stroke; null when the bender is not of that kind or not measured.</param>
    /// <exception cref="ArgumentNullException">The ring or the basis is null.</exception>
    public static DieCorrection Of(MeasuredRing ring, FormingModel basis, ThreePointSetup? setup = null)
    {
        Guard.NotNull(ring, nameof(ring));
        Guard.NotNull(basis, nameof(basis));
        double loaded = ring.Analysis.LoadedFor(ring.Measured, ring.Release).State.InsideRadius;
        List<Explanation> explanations = [FromFace(ring, loaded)];
        if (setup is not null)
        {
            explanations.Add(FromStroke(ring, setup));
        }

        explanations.Add(FromRatio(ring, basis));
        return new(ring, [.. explanations]);
    }

    /// <summary>The explanation of a kind, or null when it was not tried.</summary>
    /// <param name="kind">Which explanation.</param>
    public Explanation? Find(ExplanationKind kind) => Explanations.FirstOrDefault(explanation => explanation.Kind == kind);

    /// <summary>The ring and how many explanations fit.</summary>
    public override string ToString() => $"{Ring}: {Explanations.Count(e => e.Fits)} of {Explanations.Count} explanations fit";

    private static Explanation FromFace(MeasuredRing ring, double loaded)
    {
        double offset = ring.Die.Stamp - loaded;
        double depth = ring.Analysis.Section.Height;
        if (offset < 0)
        {
            string looser = string.Format(
                CultureInfo.InvariantCulture,
                "wrapping does not explain it: the bar was bent to an inside radius of {0:0.##} mm, wider than the {1:0.##} mm stamp",
                loaded * 1e3,
                ring.Die.Stamp * 1e3);
            return new(ExplanationKind.StampedFace, false, looser, null);
        }

        bool fits = offset <= depth * 1.02;
        string sentence = string.Format(
            CultureInfo.InvariantCulture,
            "wrapping fits if the stamp means a face {0:0.##} mm outside the inside of the bar, {1:0} % of its depth{2}",
            offset * 1e3,
            100 * offset / depth,
            fits ? string.Empty : ", which is beyond the bar itself");
        return new(ExplanationKind.StampedFace, fits, sentence, new WrapBending(StampedFace.OffsetBy(Length.FromMeters(offset)), ring));
    }

    private static Explanation FromStroke(MeasuredRing ring, ThreePointSetup setup)
    {
        IncrementalThreePointBending model = new(setup);
        Length? stroke = model.StrokeFor(ring.Analysis, ring.Measured, ring.Release);
        if (stroke is not { } found || model.RefusalOf(ring.Analysis, ring.Die) is not null)
        {
            return new(ExplanationKind.Stroke, false, $"pinching does not explain it: no stroke over {setup} leaves this ring", null);
        }

        double share = found.Meters / model.StrokeForDie(ring.Analysis, ring.Die);
        string sentence = string.Format(
            CultureInfo.InvariantCulture,
            "pinching bit by bit fits with a stroke of {0:0.##} mm, {1:0.#} % of the stroke the die's radius implies over a half-span of {2:0.##} mm",
            found.Millimeters,
            100 * share,
            setup.A * 1e3);
        return new(ExplanationKind.Stroke, true, sentence, new IncrementalThreePointBending(setup, share, ring));
    }

    private static Explanation FromRatio(MeasuredRing ring, FormingModel basis)
    {
        FormedBend formed = basis.ShapeFor(ring.Analysis, ring.Die);
        if (formed.IsStraightWhen(ring.Release))
        {
            return new(ExplanationKind.CurvatureRatio, false, $"a curvature ratio does not explain it: {basis.Name} leaves the bar straight", null);
        }

        // The fiber that keeps its length stays where the model has it, so that the measured radius fixes the curvature.
        FinishedRing modeled = formed.RingWhen(ring.Release);
        double shift = ring.Measured.Radius - modeled.RadiusTo(ring.Measured.Reference).Meters;
        double ratio = 1 / (1 + shift * modeled.TotalCurvature);
        string sentence = string.Format(
            CultureInfo.InvariantCulture,
            "{0} fits with a curvature ratio of {1:0.####}: the ring is {2:0.0} % {3} than the model says",
            basis.Name,
            ratio,
            100 * Math.Abs(ratio - 1),
            ratio >= 1 ? "more curved" : "less curved");
        return new(ExplanationKind.CurvatureRatio, true, sentence, new CurvatureRatioCorrection(basis, ratio, ring));
    }
}
