using System.Diagnostics.CodeAnalysis;
using BendMath.Evidence;
using BendMath.Forming;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Learning;

/// <summary>
/// What several measured rings teach about a model: a ratio of curvatures, or a line where there are rings enough, with the scatter that is
/// left. It yields a model for the whole plan and the chance that a ring comes out within a tolerance. Immutable and thread-safe.
/// </summary>
/// <remarks>
/// Equation: ln[(R_model + n)/(R_measured + n)] = b₀ + b₁·(R_model/h − x̄) + scatter, by least squares.
/// Range: springback that is misjudged by a share of the yield, and a stroke off by a fixed amount, change the curvature by a fixed amount,
/// which is a line in R; a stroke off by a share is a ratio. The scatter is taken as equal everywhere and normal in the logarithm.
/// Source: <see cref="Sources.LearningFromRings"/>
/// </remarks>
public sealed class RingFit
{
    private readonly LeastSquares _fit;

    private RingFit(BendAnalysis analysis, FormingModel basis, RingGroup group, IReadOnlyList<Usable> rings, IReadOnlyList<string> leftOut,
        bool? asked)
    {
        Analysis = analysis;
        Group = group;
        LeftOut = leftOut;
        double[] x = [.. rings.Select(ring => ring.Variable)];
        double[] y = [.. rings.Select(ring => ring.LogRatio)];
        (_fit, FormReason) = FitChoice.Of(x, y, [.. rings.Select(ring => ring.Ring.Die.Stamp)], asked);
        Rings = [.. rings.Select((ring, i) => new FittedRing(ring.Ring, ring.Modeled, ring.Variable, ring.LogRatio, _fit, i))];
        Release release = rings.Count(ring => ring.Ring.Release == Release.HeldFlat) * 2 > rings.Count ? Release.HeldFlat : Release.Free;
        Model = new(basis, _fit, x.Min(), x.Max(), release, [.. rings.Select(ring => ring.Ring)]);
        OddRing =
            Rings.FirstOrDefault(ring => ring.IsAlone)
                ?? Rings.Where(ring => ring.OddChance <= OddLimit).OrderBy(ring => ring.OddChance!.Value.DecimalFractions).FirstOrDefault();
        Advisories = [.. RingFitSentences.Doubts(this)];
    }

    /// <summary>Rings up to which a fit falls back to a wider group: 3. A setting, not a finding.</summary>
    public static int Few => 3;

    /// <summary>Rings from which on a line is tried: 5. A setting, not a finding.</summary>
    public static int LeastRingsForLine => 5;

    /// <summary>Dies of different stamps from which on a line is tried: 3. A setting, not a finding.</summary>
    public static int LeastDiesForLine => 3;

    /// <summary>
    /// A line is taken only when its leave-one-out error is at most this share of that of one ratio: 80 %. A setting, not a finding.
    /// </summary>
    public static Ratio LineGain => Ratio.FromPercent(80);

    /// <summary>Chance below which a ring is called odd: 5 %. A setting, not a finding.</summary>
    public static Ratio OddLimit => Ratio.FromPercent(5);

    /// <summary>The bar the fit is for.</summary>
    public BendAnalysis Analysis { get; }

    /// <summary>
    /// Whether the rings are of the same stock, lying the same way, of the same metal; otherwise a wider group speaks for the bar.
    /// </summary>
    public bool IsOfSameBar => Group == RingGroup.SameBar;

    /// <summary>The rings of the fit.</summary>
    public IReadOnlyList<FittedRing> Rings { get; }

    /// <summary>Rings at hand that could not be used, each with the reason.</summary>
    public IReadOnlyList<string> LeftOut { get; }

    /// <summary>The basis with the fitted correction: give it to a plan.</summary>
    public CurvatureRatioCorrection Model { get; }

    /// <summary>
    /// Whether it is a ratio of curvatures whose logarithm follows a line in radius over depth; otherwise one ratio for every radius.
    /// </summary>
    public bool IsLine => Model.IsLine;

    /// <summary>Why it is a line or one ratio, in a sentence.</summary>
    public string FormReason { get; }

    /// <summary>Number of rings less the number of fitted values.</summary>
    public int DegreesOfFreedom => _fit.Freedom;

    /// <summary>
    /// Standard deviation of a ring about the fit, as a share of its radius; null with one ring for each fitted value, which leaves no
    /// scatter to see.
    /// </summary>
    /// <remarks>
    /// Equation: s = √(SSE/(n − p)).
    /// Range: at least one ring more than the fit has numbers.
    /// Source: <see cref="Sources.WeisbergRegression"/>
    /// </remarks>
    public Ratio? Scatter => _fit.Deviation is { } s ? Ratio.FromDecimalFractions(s) : null;

    /// <summary>
    /// How far off, root mean square and as a share of the radius, each ring is predicted by the others; null where one cannot be left out.
    /// </summary>
    /// <remarks>
    /// Equation: √(∑(e/(1 − h))²/n).
    /// Range: leverage below 1.
    /// Source: <see cref="Sources.WeisbergRegression"/>
    /// </remarks>
    public Ratio? LeaveOneOutError => _fit.LeaveOneOutError is { } error ? Ratio.FromDecimalFractions(error) : null;

    /// <summary>
    /// The ring that does not fit with the others, or null; it stays in the fit. Where the others agree to the last digit and show no
    /// scatter, one that is off by more than <see cref="Hypothesis.AgreementLimit"/>.
    /// </summary>
    public FittedRing? OddRing { get; }

    /// <summary>What is doubtful about the fit.</summary>
    public IReadOnlyList<Advisory> Advisories { get; }

    /// <summary>The fit in sentences: from how many rings and which, what they say, how much they scatter, what is odd.</summary>
    public IReadOnlyList<string> Sentences => RingFitSentences.Of(this);

    /// <summary>
    /// Fits the rings that speak for a bar: those of the same bar where there are more than <see cref="Few"/>, otherwise those of a wider
    /// group.
    /// </summary>
    /// <param name="rings">The measured rings; at least one.</param>
    /// <param name="analysis">Section and material of the bar to predict.</param>
    /// <param name="basis">The model to correct.</param>
    /// <param name="line">A line or one ratio; null to let the rings decide.</param>
    /// <exception cref="ArgumentNullException">An argument without a default is null.</exception>
    /// <exception cref="ArgumentException">There is no ring, or one is null; the basis leaves no ring on any of the measured dies, or a
    /// line is asked for from rings that do not differ in radius.</exception>
    public static RingFit Of(IReadOnlyList<MeasuredRing> rings, BendAnalysis analysis, FormingModel basis, bool? line = null)
    {
        Guard.Items(rings, nameof(rings), 1);
        Guard.NotNull(analysis, nameof(analysis));
        Guard.NotNull(basis, nameof(basis));
        (Usable[] usable, List<string> leftOut) = UsableOf(rings, basis);
        if (usable.Length == 0)
        {
            throw Guard.Refused(nameof(rings), $"must hold one on whose die {basis.Name} leaves a ring", leftOut[0]);
        }

        (RingGroup group, IReadOnlyList<Usable> chosen) = RingGroups.For(usable, one => one.Ring, analysis, Few);
        return line == true && FitChoice.Spread(chosen.Select(one => one.Variable)) is null
            ? throw Guard.Refused(nameof(rings), "must differ in radius over depth for a line", "do not")
            : new(analysis, basis, group, chosen, leftOut.AsReadOnly(), line);
    }

    /// <summary>The fit <see cref="Of"/> gives, or why the basis can speak of none of the rings.</summary>
    /// <param name="rings">The measured rings; at least one.</param>
    /// <param name="analysis">Section and material of the bar to predict.</param>
    /// <param name="basis">The model to correct.</param>
    /// <param name="fit">The fit, or null.</param>
    /// <param name="refusal">Why not, for the first ring, or null.</param>
    /// <returns>Whether the basis leaves a ring on any of the measured dies.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">There is no ring, or one is null.</exception>
    public static bool TryOf(
        IReadOnlyList<MeasuredRing> rings, BendAnalysis analysis, FormingModel basis, [NotNullWhen(true)] out RingFit? fit,
        [NotNullWhen(false)] out string? refusal)
    {
        Guard.Items(rings, nameof(rings), 1);
        Guard.NotNull(analysis, nameof(analysis));
        (Usable[] usable, List<string> leftOut) = UsableOf(rings, Guard.NotNull(basis, nameof(basis)));
        refusal = usable.Length == 0 ? leftOut[0] : null;
        fit = null;
        if (refusal is null)
        {
            (RingGroup group, IReadOnlyList<Usable> chosen) = RingGroups.For(usable, one => one.Ring, analysis, Few);
            fit = new(analysis, basis, group, chosen, leftOut.AsReadOnly(), null);
        }

        return fit is not null;
    }

    /// <summary>What a die is expected to leave, with its interval.</summary>
    /// <param name="die">The die.</param>
    /// <param name="release">How the ring is let go.</param>
    /// <exception cref="ArgumentNullException">The die is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The release is not a defined value.</exception>
    public DiePrediction Forecast(Die die, Release release) => DiePrediction.Of(Model, Analysis, die, release);

    /// <summary>Form, number of rings and group.</summary>
    public override string ToString() =>
        $"{(IsLine ? "line" : "curvature ratio")} "
            + $"from {Counted.Text(Rings.Count, "ring")} {RingGroups.Words(Group, Analysis)}";

    /// <summary>Which of the rings at hand the fit is from.</summary>
    internal RingGroup Group { get; }

    private static (Usable[] Usable, List<string> LeftOut) UsableOf(IReadOnlyList<MeasuredRing> rings, FormingModel basis)
    {
        List<string> leftOut = [];
        return ([.. rings.Select(ring => Usable.Of(ring, basis, leftOut)).OfType<Usable>()], leftOut);
    }

    /// <summary>A ring the basis can speak of.</summary>
    private sealed record Usable(MeasuredRing Ring, FinishedRing Modeled, double Variable, double LogRatio)
    {
        public static Usable? Of(MeasuredRing ring, FormingModel basis, List<string> leftOut)
        {
            FormingTrial trial = basis.Try(ring.Analysis, ring.Die);
            if (trial.Formed is not { } formed || formed.IsStraightWhen(ring.Release))
            {
                leftOut.Add($"{ring}: {trial.Refusal ?? $"{basis.Name} leaves the bar straight"}");
                return null;
            }

            FinishedRing modeled = formed.RingWhen(ring.Release);
            double ratio = CurvatureRatioCorrection.RatioOf(modeled, ring.Ring);
            if (!(ratio > 0 && ratio < double.PositiveInfinity))
            {
                leftOut.Add($"{ring}: no ratio of curvatures leads from {basis.Name} to it");
                return null;
            }

            return new(ring, modeled, CurvatureRatioCorrection.VariableOf(modeled, ring.Analysis.Section), Math.Log(ratio));
        }
    }
}
