using BendMath.Guards;
using BendMath.Stock.Tolerances;
using UnitsNet;

namespace BendMath.Forming.Variation;

/// <summary>
/// What may differ from one ring to the next: the metal, the bar, the hand at the bender. Whatever is left out counts as exactly known.
/// Immutable and thread-safe.
/// </summary>
public sealed record InputVariation
{
    private const double Rounding = 1e-12;

    private readonly double? _stroke;

    private readonly double? _curvature;

    /// <summary>Names what scatters.</summary>
    /// <param name="yield">The yield stress lies anywhere in this range; null when it is known.</param>
    /// <param name="mill">The dimensions of the bar lie anywhere within this mill tolerance; null when the bar was measured.</param>
    /// <param name="stroke">The stroke of a pinching bender is met to within this length, either way, greater than zero; null when it is
    /// met exactly.</param>
    /// <param name="curvature">The finished curvature repeats to within this share, either way, from ring to ring, greater than zero and
    /// less than one half; null when it repeats exactly.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public InputVariation(PressureRange? yield = null, MillTolerance? mill = null, Length? stroke = null, Ratio? curvature = null)
    {
        Yield = yield;
        Mill = mill;
        _stroke = stroke is { } length ? Guard.Positive(length, nameof(stroke)) : null;
        _curvature = curvature is { } share ? Guard.Positive(share, nameof(curvature)) : null;
        if (_curvature >= 0.5)
        {
            throw Guard.Fault(nameof(curvature), curvature!.Value, "must be less than 50 %");
        }
    }

    /// <summary>Range of the yield stress, or null.</summary>
    public PressureRange? Yield { get; }

    /// <summary>Mill tolerance of the bar, or null.</summary>
    public MillTolerance? Mill { get; }

    /// <summary>How far the stroke may be off, either way, or null.</summary>
    public Length? Stroke => _stroke is { } meters ? Length.FromMeters(meters) : null;

    /// <summary>Share by which the finished curvature may be off, either way, or null.</summary>
    public Ratio? Curvature => _curvature is { } share ? Ratio.FromDecimalFractions(share) : null;

    internal double StrokeMeters => _stroke ?? 0;

    internal double CurvatureShare => _curvature ?? 0;

    /// <summary>
    /// Why it contradicts a bender or a bar: a stroke where the model has none, the mill tolerance of another bar, a yield that is not
    /// about that of the material or that its law cannot have.
    /// </summary>
    /// <param name="model">How the bender forms.</param>
    /// <param name="analysis">Section and material.</param>
    /// <returns>The rule that is broken, as the rest of a sentence; null where nothing contradicts.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public string? RefusalFor(FormingModel model, BendAnalysis analysis)
    {
        BarMaterial material = Guard.NotNull(analysis, nameof(analysis)).Material;
        return Guard.NotNull(model, nameof(model)).WithExtraStroke(0) is null && _stroke is { } stroke
            ? $"must not name a stroke for {model.Name}, which has none, but names {Guard.MillimetersText(stroke)}"
            : Yield is not null && !IsYieldOf(Yield, material.Law)
            ? $"must have a yield range about the yield of {material.Name}, {Guard.Text(material.Law.YieldStress)}, and below its elastic "
                + $"modulus, but has {Yield}"
            : Mill is not null
                && (Mill.Nominal.Lying(analysis.Section.Orientation) is not { } same || !same.IsSameBar(analysis.Section, Length.Zero))
            ? $"must hold the mill tolerance of the bar that is bent, {analysis.Section}, but holds that of {Mill.Nominal}"
            : null;
    }

    /// <summary>What scatters.</summary>
    public override string ToString()
    {
        string[] parts =
        [
            .. Yield is null ? Array.Empty<string>() : [$"yield {Yield}"],
            .. Mill is null ? Array.Empty<string>() : [$"bar to {Mill.Standard}"],
            .. _stroke is not { } stroke ? Array.Empty<string>() : [Invariant($"stroke ± {stroke * 1e3:0.###} mm")],
            .. _curvature is not { } curvature ? Array.Empty<string>() : [Invariant($"curvature ± {curvature * 100:0.##} %")],
        ];
        return parts.Length == 0 ? "nothing scatters" : string.Join(", ", parts);
    }

    private static bool IsYieldOf(PressureRange range, StressStrainLaw law) => range.Low.Pascals >= 1
        && range.Low.Pascals <= law.YieldStress.Pascals * (1 + Rounding) && range.High.Pascals >= law.YieldStress.Pascals * (1 - Rounding)
            && law.Allows(range.High);
}
