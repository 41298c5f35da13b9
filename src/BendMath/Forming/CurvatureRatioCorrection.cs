using System.Globalization;
using BendMath.Forming;

namespace BendMath;

/// <summary>A model whose finished curvature is multiplied by the ratio one measured ring showed.</summary>
/// <remarks>
/// Equation: R_f + n = (R_model + n)/c, c = (R_model + n)/(R_measured + n) on the measured die; R inside radii released as the ring was measured, n the model's fiber that keeps its length.
/// Range: the same stock, orientation and material on dies near the measured one. The loaded state is the one that leaves the corrected ring.
/// Source: <see cref="Sources.FormingModels"/>
/// </remarks>
public sealed class CurvatureRatioCorrection : FormingModel
{
    internal CurvatureRatioCorrection(FormingModel basis, double ratio, MeasuredRing evidence)
        : base([evidence])
    {
        Basis = basis;
        Ratio = ratio;
    }

    /// <summary>The smallest ratio taken for one a bender can have: a ring of twice the radius the model says. A setting, not a finding.</summary>
    public static double LeastCredible => 0.5;

    /// <summary>
    /// The largest ratio taken for one a bender can have: pinching without hardening leaves half the radius of the three contacts, (4n + 1)/(4n + 2) at n = 0.
    /// A setting, not a finding.
    /// </summary>
    public static double MostCredible => 2;

    /// <summary>The model that is corrected.</summary>
    public FormingModel Basis { get; }

    /// <summary>Measured over modeled curvature; above 1 the ring came out tighter than the model said.</summary>
    public double Ratio { get; }

    /// <inheritdoc/>
    public override string Name => Basis.Name + " with a curvature ratio";

    /// <inheritdoc/>
    public override string Assumption => string.Format(
        CultureInfo.InvariantCulture,
        "{0} The measured ring was {1:0.0} % {2} than that; the same ratio of curvature, {3:0.####}, is applied to every die.",
        Basis.Assumption,
        100 * Math.Abs(Ratio - 1),
        Ratio >= 1 ? "more curved" : "less curved",
        Ratio);

    internal override double LeastInsideRadius => Basis.LeastInsideRadius;

    /// <inheritdoc/>
    public override StampedFace FaceOf(Die die) => Basis.FaceOf(die);

    internal override bool IsMonotone => Basis.IsMonotone;

    internal override FormingModel? WithExtraStroke(double meters) => Basis.WithExtraStroke(meters) is { } basis ? new CurvatureRatioCorrection(basis, Ratio, Evidence[0]) : null;

    internal static double RatioOf(FinishedRing modeled, FinishedRing measured) => (modeled.Inside + modeled.Fiber) / (measured.Inside + modeled.Fiber);

    internal override FormingTrial Try(BendAnalysis analysis, Die die)
    {
        FormingTrial trial = Basis.Try(analysis, die);
        if (trial.Formed is not { } formed)
        {
            return trial;
        }

        IEnumerable<Advisory> evidence = EvidenceAdvisories(analysis, die);
        Release release = Evidence[0].Release;
        if (formed.IsStraightWhen(release))
        {
            return formed.Corrected(this, formed.Loaded, Ratio, evidence);
        }

        FinishedRing modeled = formed.RingWhen(release);
        double inside = (modeled.Inside + modeled.Fiber) / Ratio - modeled.Fiber;
        return inside > 0 && analysis.TryLoadedFor(inside, 0, release) is { } loaded
            ? formed.Corrected(this, loaded, Ratio, evidence)
            : FormingTrial.Refused("the curvature ratio asks for a ring tighter than the tightest possible bend of this bar leaves");
    }
}
