using BendMath.Evidence;
using BendMath.Forming;
using BendMath.Forming.ThreePoint;
using BendMath.Forming.Variation;
using BendMath.Guards;
using BendMath.Numerics;

namespace BendMath.Learning;

/// <summary>
/// A model whose finished curvature is multiplied by the ratio measured rings showed: one ratio for every die, or a ratio that changes with
/// the radius.
/// </summary>
/// <remarks>
/// Equation: R_f + n = (R_model + n)/c; one ring: c = (R_model + n)/(R_measured + n) on the measured die; several: ln c = b₀ + b₁·(x − x̄),
/// x = R_model/h, by least squares, b₁ = 0 for one ratio. R inside radii released as the rings were measured, n the model's fiber that
/// keeps its length, h the depth.
/// Range: the same stock, orientation and material on dies near the measured ones; outside the measured range of x a line is carried on,
/// with an advisory, until c reaches <see cref="LeastCredible"/> or <see cref="MostCredible"/>. The loaded state is the one that leaves the
/// corrected ring.
/// Source: <see cref="Sources.LearningFromRings"/>
/// </remarks>
public sealed class CurvatureRatioCorrection : FormingModel
{
    private readonly LeastSquares _fit;

    private readonly double _low;

    private readonly double _high;

    internal CurvatureRatioCorrection(FormingModel basis, double ratio, MeasuredRing evidence)
        : this(basis, new LeastSquares([0.0], [Math.Log(ratio)], sloped: false), double.NegativeInfinity, double.PositiveInfinity,
            evidence.Release, [evidence])
    {
    }

    internal CurvatureRatioCorrection(FormingModel basis, LeastSquares fit, double low, double high, Release release,
        IReadOnlyList<MeasuredRing> evidence)
        : base(evidence)
    {
        Basis = basis;
        _fit = fit;
        _low = low;
        _high = high;
        Release = release;
    }

    /// <summary>
    /// The smallest ratio taken for one a bender can have: a ring of twice the radius the model says. A setting, not a finding.
    /// </summary>
    public static double LeastCredible => 0.5;

    /// <summary>
    /// The largest ratio taken for one a bender can have: pinching without hardening leaves half the radius of the three contacts, (4n +
    /// 1)/(4n + 2) at n = 0. A setting, not a finding.
    /// </summary>
    public static double MostCredible => 2;

    /// <summary>The model that is corrected.</summary>
    public override FormingModel Basis { get; }

    /// <summary>
    /// Measured over modeled curvature, of several rings the one in the middle of them; above 1 the rings came out tighter than the model
    /// said.
    /// </summary>
    public double Ratio => Math.Exp(_fit.Center);

    /// <summary>Whether the ratio changes with the radius.</summary>
    public bool IsLine => _fit.Parameters == 2;

    /// <summary>How the rings were let go that the ratio was taken from.</summary>
    public Release Release { get; }

    /// <inheritdoc/>
    public override string Name =>
        Basis.Name + (IsLine ? " with a curvature ratio that changes with the radius" : " with a curvature ratio");

    /// <inheritdoc/>
    public override string Assumption => Evidence.Count == 1
        ? Invariant(
            $"{Basis.Assumption} The measured ring was {Curved(Ratio)} than that; the same ratio of curvature, {Ratio:0.####}, is applied "
                + $"to every die.")
        : IsLine
            ? Invariant(
                $"{Basis.Assumption} {Evidence.Count} measured rings were {Curved(RatioAt(_low))} than that at a radius of {_low:0.#} "
                    + $"depths of the bar and {Curved(RatioAt(_high))} at {_high:0.#} depths; between them the ratio of curvature follows "
                    + $"a line.")
            : Invariant(
                $"{Basis.Assumption} {Evidence.Count} measured rings were {Curved(Ratio)} than that on the whole; the same ratio of "
                    + $"curvature, {Ratio:0.####}, is applied to every die.");

    /// <inheritdoc/>
    public override ThreePointSetup? Setup => Basis.Setup;

    /// <inheritdoc/>
    public override string CorrectionName =>
        Evidence.Count == 1 ? "corrected by one ring" : IsLine ? "fit to the rings: a line" : "fit to the rings: one ratio";

    internal override double LeastInsideRadius => Basis.LeastInsideRadius;

    internal override bool IsMonotone => Basis.IsMonotone;

    internal override FormingModel? WithExtraStroke(double meters) =>
        Basis.WithExtraStroke(meters) is { } basis ? new CurvatureRatioCorrection(basis, _fit, _low, _high, Release, Evidence) : null;

    internal override IReadOnlyList<FormingSetting> Settings(BendAnalysis analysis, Die die) =>
        [.. Basis.Settings(analysis, die).Select(setting => new CorrectedSetting(setting, this, analysis))];

    internal override (string Bar, string Except) FixedTool(Die die) => Basis.FixedTool(die);

    internal override RingPrediction? PredictionOf(BendAnalysis analysis, Die die)
    {
        if (Basis.Try(analysis, die).Formed is not { } plain || plain.IsStraightWhen(Release))
        {
            return null;
        }

        FinishedRing modeled = plain.RingWhen(Release);
        return _fit.PredictionError(VariableOf(modeled, analysis.Section)) is { } error && error > 1e-9
            ? new RingPrediction(modeled.Fiber, error, _fit.Freedom) : null;
    }

    /// <summary>The least squares behind several rings.</summary>
    internal LeastSquares Fit => _fit;

    /// <inheritdoc/>
    public override ReferenceFace FaceOf(Die die) => Basis.FaceOf(die);

    /// <summary>
    /// The ratio at a radius; beyond the measured radii a line is carried on, but not beyond the ratios a bender can have.
    /// </summary>
    /// <param name="radiusOverDepth">Inside radius the model leaves, over the depth of the bar; greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is not positive and finite.</exception>
    public double RatioAt(double radiusOverDepth) => RatioIn(Guard.Positive(radiusOverDepth, nameof(radiusOverDepth)));

    /// <summary>A bar as the uncorrected model formed it, by a stroke for example, corrected.</summary>
    /// <param name="formed">What <see cref="Basis"/> says.</param>
    /// <returns>The corrected bar, or null when the ratio asks for a ring tighter than the tightest possible bend leaves.</returns>
    /// <exception cref="ArgumentNullException">The bar is null.</exception>
    public FormedBend? Correct(FormedBend formed) => Corrected(Guard.NotNull(formed, nameof(formed))).Formed;

    internal static double RatioOf(FinishedRing modeled, FinishedRing measured) =>
        (modeled.Inside + modeled.Fiber) / (measured.Inside + modeled.Fiber);

    /// <summary>Inside radius over depth, the variable of the fit.</summary>
    internal static double VariableOf(FinishedRing modeled, OrientedSection section) => modeled.Inside / section.Height;

    /// <summary>Whether a radius lies outside those that were measured; rounding does not count.</summary>
    internal bool IsOutside(double variable) => variable < _low * (1 - 1e-9) || variable > _high * (1 + 1e-9);

    internal override FormingTrial Try(BendAnalysis analysis, Die die)
    {
        FormingTrial trial = Basis.Try(analysis, die);
        return trial.Formed is { } formed ? Corrected(formed) : trial;
    }

    /// <summary>
    /// The ring the uncorrected model must leave so that the corrected one leaves the wanted ring, released as the rings were measured;
    /// null when there is none.
    /// </summary>
    internal BendRadius? Uncorrected(BendAnalysis analysis, BendRadius wanted, Release release)
    {
        if (analysis.TryLoadedFor(wanted, release) is not { } loaded || loaded.Release(Release).IsStraight)
        {
            return null;
        }

        double target = loaded.Release(Release).Ring.Inside;
        double height = analysis.Section.Height;

        // Corrected over wanted radius, less 1; what cannot be bent counts as too tight.
        double Residual(double inside)
        {
            if (analysis.TryLoadedFor(inside, 0, Release)?.Release(Release) is not { } bent)
            {
                return -1;
            }

            if (bent.IsStraight)
            {
                return 1;
            }

            double fiber = bent.Ring.Fiber;
            return Math.Min(1, ((inside + fiber) / RatioIn(inside / height) - fiber) / target - 1);
        }

        double low = target / 50;
        double high = target * 50;
        if (!(Residual(low) < 0 && Residual(high) > 0))
        {
            return null;
        }

        double found = Bracketed.Root(Residual, low, high);
        return found is >= 1e-6 and <= 1e6 ? BendRadius.Inside(UnitsNet.Length.FromMeters(found)) : null;
    }

    private static string Curved(double ratio) => Invariant($"{100 * Math.Abs(ratio - 1):0.0} % {(ratio >= 1 ? "more" : "less")} curved");

    private double RatioIn(double variable)
    {
        if (!IsLine)
        {
            return Ratio;
        }

        double one = _fit.At(_low);
        double other = _fit.At(_high);
        double least = Math.Min(Math.Log(LeastCredible), Math.Min(one, other));
        double most = Math.Max(Math.Log(MostCredible), Math.Max(one, other));
        return Math.Exp(Math.Min(Math.Max(_fit.At(variable), least), most));
    }

    private FormingTrial Corrected(FormedBend formed)
    {
        BendAnalysis analysis = formed.Loaded.Analysis;
        if (formed.IsStraightWhen(Release))
        {
            return formed.Corrected(this, formed.Loaded, Ratio, Doubts(analysis, formed.Die, null));
        }

        FinishedRing modeled = formed.RingWhen(Release);
        double variable = VariableOf(modeled, analysis.Section);
        double ratio = RatioIn(variable);
        double inside = (modeled.Inside + modeled.Fiber) / ratio - modeled.Fiber;
        return inside > 0 && analysis.TryLoadedFor(inside, 0, Release) is { } loaded
            ? formed.Corrected(this, loaded, ratio, Doubts(analysis, formed.Die, variable))
            : FormingTrial.Refused("the curvature ratio asks for a ring tighter than the tightest possible bend of this bar leaves");
    }

    private IEnumerable<Advisory> Doubts(BendAnalysis analysis, Die? die, double? variable)
    {
        foreach (Advisory advisory in EvidenceAdvisories(analysis, die))
        {
            yield return advisory;
        }

        if (Evidence.Count > 1 && variable is { } x && IsOutside(x))
        {
            yield return new("outside-measured-radii",
                Invariant(
                    $"The model leaves an inside radius of {x:0.0} depths of the bar here; rings were measured from {_low:0.0} to {_high:0.0} depths only{(IsLine ? ", and the line is carried on beyond them" : string.Empty)}."), Sources.LearningFromRings);
        }
    }
}
