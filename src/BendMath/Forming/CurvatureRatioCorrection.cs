using System.Globalization;

namespace BendMath;

/// <summary>A model whose finished curvature is multiplied by the ratio one measured ring showed.</summary>
/// <remarks>
/// Equation: κ_t = c·κ_t(model), c = κ_measured/κ_model.
/// Range: the same stock, orientation and material on dies near the measured one.
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

    internal override string? RefusalOf(BendAnalysis analysis, Die die) => Basis.RefusalOf(analysis, die);

    private protected override FormedBend Shape(BendAnalysis analysis, Die die) =>
        Basis.ShapeFor(analysis, die).Corrected(this, Ratio, EvidenceAdvisories(analysis, die));
}
