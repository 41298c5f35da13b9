using BendMath.Forming;
using BendMath.Forming.ThreePoint;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Learning;

/// <summary>
/// What one measured ring teaches. One ring identifies one number: which face the stamp means, or the stroke, or a plain ratio of
/// curvatures. The explanations that fit agree on the measured die and part on others; a second ring on another die tells them apart.
/// Immutable and thread-safe.
/// </summary>
public sealed class RingDiagnosis
{
    private RingDiagnosis(MeasuredRing ring, IReadOnlyList<Hypothesis> explanations)
    {
        Ring = ring;
        Hypotheses = explanations;
    }

    /// <summary>The measured ring.</summary>
    public MeasuredRing Ring { get; }

    /// <summary>Every explanation tried, those that fit and those that do not.</summary>
    public IReadOnlyList<Hypothesis> Hypotheses { get; }

    /// <summary>Explains one measured ring.</summary>
    /// <param name="ring">The measured ring.</param>
    /// <param name="basis">The model the curvature ratio is applied to; where it knows half-span and nose of the bender, the stroke is an
    /// explanation, too.</param>
    /// <exception cref="ArgumentNullException">The ring or the basis is null.</exception>
    public static RingDiagnosis Of(MeasuredRing ring, FormingModel basis)
    {
        Guard.NotNull(ring, nameof(ring));
        Guard.NotNull(basis, nameof(basis));
        List<Hypothesis> explanations = [FromFace(ring, basis)];
        if (basis.Setup is { } setup)
        {
            explanations.Add(FromStroke(ring, setup));
        }

        explanations.Add(FromRatio(ring, basis));
        return new(ring, [.. explanations]);
    }

    /// <summary>The explanation of a kind, or null when it was not tried.</summary>
    /// <param name="kind">Which explanation.</param>
    public Hypothesis? Find(HypothesisKind kind) => Hypotheses.FirstOrDefault(explanation => explanation.Kind == kind);

    /// <summary>The ring and how many explanations fit.</summary>
    public override string ToString() =>
        $"{Ring}: {Hypotheses.Count(e => e.Fits)} of {Counted.Text(Hypotheses.Count, "explanation fits", "explanations fit")}";

    private static Hypothesis FromFace(MeasuredRing ring, FormingModel basis)
    {
        OrientedSection section = ring.Analysis.Section;
        double loaded = ring.Loaded.State.InsideRadius;
        double offset = ring.Die.Stamp - loaded;
        if (offset < 0)
        {
            string looser = Invariant(
                $"wrapping does not explain it: the bar was bent to an inside radius of {loaded * 1e3:0.##} mm, wider than "
                    + $"the {ring.Die.Stamp * 1e3:0.##} mm stamp");
            return new(HypothesisKind.ReferenceFace, false, looser, null);
        }

        ReferenceFace face =
            offset < Guard.LeastMeters ? ReferenceFace.InsideOfBar
                : ReferenceFace.OffsetBy(Length.FromMeters(Math.Min(offset, Guard.MostMeters)));
        bool fits = offset <= (1 + ReferenceFace.Negligible) * section.Height;
        string sentence = Invariant(
            $"{(fits ? "wrapping fits" : "wrapping would fit only")} if the stamp means a face {offset * 1e3:0.##} mm outside the inside "
                + $"of the bar, {100 * offset / section.Height:0} % of its depth{(!fits ? ", which is beyond the bar itself" : face.IsFaceOf(section) ? string.Empty : "; the bar has no face there")}");
        return new(HypothesisKind.ReferenceFace, fits, sentence, new WrapBending(face, basis.Setup, ring));
    }

    private static Hypothesis FromStroke(MeasuredRing ring, ThreePointSetup setup)
    {
        IncrementalThreePointBending plain = new(setup.With(ring.Die));
        double face = ring.Die.InsideFace(ring.Analysis.Section, ring.Die.Face);
        Length? stroke = plain.StrokeFor(ring.Loaded);
        if (stroke is { } alone && face <= setup.A)
        {
            string unrelated = Invariant(
                $"pinching does not explain it: a stroke of {alone.Millimeters:0.##} mm leaves this ring, but the die implies none to set "
                    + $"it against, as its inside-face radius of {face * 1e3:0.##} mm is not greater than the "
                    + $"half-span, {setup.A * 1e3:0.##} mm");
            return new(HypothesisKind.Stroke, false, unrelated, null);
        }

        double implied = plain.StrokeForDie(ring.Analysis, ring.Die);
        if (stroke is { } found && found.Meters / implied is > 0 and < double.PositiveInfinity)
        {
            double share = found.Meters / implied;
            IncrementalThreePointBending model = new(setup, share, ring);
            if (model.Try(ring.Analysis, ring.Die).Formed is not null)
            {
                string sentence = Invariant(
                    $"pinching in small steps fits with a stroke of {found.Millimeters:0.##} mm, {100 * share:0.#} % of the stroke the "
                        + $"die's radius implies over a half-span of {setup.A * 1e3:0.##} mm");
                return new(HypothesisKind.Stroke, true, sentence, model);
            }
        }

        return new(HypothesisKind.Stroke, false, $"pinching does not explain it: no stroke over {setup} leaves this ring", null);
    }

    private static Hypothesis FromRatio(MeasuredRing ring, FormingModel basis)
    {
        FormingTrial trial = basis.Try(ring.Analysis, ring.Die);
        if (trial.Formed is not { } formed || formed.IsStraightWhen(ring.Release))
        {
            string why =
                trial.Refusal is null ? $"{basis.Name} leaves the bar straight"
                    : $"{basis.Name} cannot use die {ring.Die.Name}: {trial.Refusal}";
            return new(HypothesisKind.CurvatureRatio, false, "a curvature ratio does not explain it: " + why, null);
        }

        double ratio = CurvatureRatioCorrection.RatioOf(formed.RingWhen(ring.Release), ring.Ring);
        bool fits = ratio >= CurvatureRatioCorrection.LeastCredible && ratio <= CurvatureRatioCorrection.MostCredible;
        string sentence =
            fits
                ? Invariant(
                    $"{basis.Name} fits with a curvature ratio of {ratio:0.####}: the ring is {100 * Math.Abs(ratio - 1):0.0} % {(ratio >= 1 ? "more curved" : "less curved")} than the model says") : Invariant($"{basis.Name} would fit only with a curvature ratio of {ratio:0.##}, outside {CurvatureRatioCorrection.LeastCredible:0.#} to {CurvatureRatioCorrection.MostCredible:0.#}, the ratios a bender is taken to have (a setting)");
        return new(HypothesisKind.CurvatureRatio, fits, sentence, new CurvatureRatioCorrection(basis, ratio, ring));
    }
}
