using BendMath.Evidence;
using UnitsNet;

namespace BendMath.Learning;

/// <summary>One measured ring within a fit: what the model said of it, and how much it weighs. Immutable and thread-safe.</summary>
public sealed class FittedRing
{
    private readonly double? _deleted;

    internal FittedRing(MeasuredRing ring, FinishedRing modeled, double variable, double logRatio, LeastSquares fit, int place)
    {
        Ring = ring;
        Modeled = modeled;
        Number = place + 1;
        RadiusOverDepth = variable;
        LogRatio = logRatio;
        Residual = fit.Residual(place);
        Leverage = fit.Leverage(place);
        CookDistance = fit.CookDistance(place);
        StudentizedResidual = fit.Studentized(place);
        OddChance = fit.OddChance(place) is { } chance ? Ratio.FromDecimalFractions(chance) : null;
        _deleted = fit.Deleted[place];
        IsAlone = fit.IsAlone(place) && Math.Abs(_deleted!.Value) > Hypothesis.AgreementLimit.DecimalFractions;
    }

    /// <summary>The measured ring.</summary>
    public MeasuredRing Ring { get; }

    /// <summary>Its place among the rings of the fit, from 1.</summary>
    public int Number { get; }

    /// <summary>What the model says of it, released as it was measured.</summary>
    public FinishedRing Modeled { get; }

    /// <summary>Inside radius the model leaves, over the depth of the bar: the variable of a line.</summary>
    /// <remarks>
    /// Equation: x = R_model/h.
    /// Range: any ring.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public double RadiusOverDepth { get; }

    /// <summary>Logarithm of measured over modeled curvature; 0.01 is a ring 1 % more curved than the model says.</summary>
    /// <remarks>
    /// Equation: y = ln[(R_model + n)/(R_measured + n)], n the model's fiber that keeps its length.
    /// Range: any ring.
    /// Source: <see cref="Sources.LearningFromRings"/>
    /// </remarks>
    public double LogRatio { get; }

    /// <summary>What the fit leaves of <see cref="LogRatio"/>.</summary>
    /// <remarks>
    /// Equation: e = y − ŷ.
    /// Range: any fit.
    /// Source: <see cref="Sources.WeisbergRegression"/>
    /// </remarks>
    public double Residual { get; }

    /// <summary>How far the fit follows this ring alone: 0 not at all, 1 wholly.</summary>
    /// <remarks>
    /// Equation: h = 1/n + (x − x̄)²/∑(x − x̄)², the second term only for a line.
    /// Range: any fit.
    /// Source: <see cref="Sources.WeisbergRegression"/>
    /// </remarks>
    public double Leverage { get; }

    /// <summary>
    /// How far the whole fit would move without this ring (Cook's distance); above 1 it rests on this ring. Null where the fit cannot be
    /// made without it or leaves no scatter.
    /// </summary>
    /// <remarks>
    /// Equation: D = e²·h/(p·s²·(1 − h)²).
    /// Range: a fit with scatter and leverage below 1.
    /// Source: <see cref="Sources.WeisbergRegression"/>
    /// </remarks>
    public double? CookDistance { get; }

    /// <summary>
    /// Distance from what the other rings predict, in its standard errors (externally studentized residual). Null with too few rings to
    /// tell.
    /// </summary>
    /// <remarks>
    /// Equation: t = e/(s₍ᵢ₎·√(1 − h)), s₍ᵢ₎² = (SSE − e²/(1 − h))/(n − p − 1).
    /// Range: at least two rings more than the fit has numbers, which scatter without this one too.
    /// Source: <see cref="Sources.WeisbergRegression"/>
    /// </remarks>
    public double? StudentizedResidual { get; }

    /// <summary>
    /// How often, by chance alone, the oddest of so many rings would lie at least as far off as this one; small means odd. Null where it
    /// cannot be told.
    /// </summary>
    /// <remarks>
    /// Equation: min(1, n·2·P(T ≥ |t|)), T Student's with n − p − 1 degrees of freedom (Bonferroni).
    /// Range: scatter that is normal in ln c.
    /// Source: <see cref="Sources.WeisbergRegression"/>
    /// </remarks>
    public Ratio? OddChance { get; }

    /// <summary>
    /// What the other rings predict of this one's inside radius, less what was measured; null where they predict nothing.
    /// </summary>
    /// <remarks>
    /// Equation: (R_measured + n)·(exp(e/(1 − h)) − 1).
    /// Range: leverage below 1.
    /// Source: <see cref="Sources.LearningFromRings"/>
    /// </remarks>
    public Length? PredictedLessMeasured => _deleted is { } deleted && Math.Abs(deleted) < 100
        ? Length.FromMeters((Ring.Ring.Inside + Modeled.Fiber) * (Math.Exp(deleted) - 1))
        : null;

    /// <summary>Whether the other rings agree to the last digit and this one does not agree with them.</summary>
    internal bool IsAlone { get; }

    /// <summary>Logarithm of this ring's curvature over what the others predict; null where they predict nothing.</summary>
    internal double? DeletedResidual => _deleted;

    /// <summary>Number, ring and what is left of it.</summary>
    public override string ToString() =>
        Invariant(
            $"ring {Number}, {Ring}{(Ring.Note is null ? string.Empty : $" ({Ring.Note})")}: {100 * Math.Abs(Math.Exp(LogRatio) - 1):0.0} "
                + $"% {(LogRatio >= 0 ? "more" : "less")} curved than the model says");
}
