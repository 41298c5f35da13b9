using System.Globalization;
using BendMath.Evidence;
using BendMath.Guards;
using BendMath.Sections.Features;
using UnitsNet;

namespace BendMath.Distortion.Checks;

/// <summary>
/// Radial leg, width or diameter over the loaded inside radius, against two bounds. Exactly at a bound counts as inside it. Immutable and
/// thread-safe.
/// </summary>
/// <remarks>
/// Equation: ρ = b/R_i; low for ρ ≤ low bound, medium for ρ ≤ high bound, else high.
/// Range: cold bending of mild steel on a hand bender; 0.15 is a 3/4 in leg at an inside radius of 5 in, which usually bends clean; the
/// upper bound 0.25 is a setting, not a finding.
/// Source: <see cref="Sources.CommonPractice"/>
/// </remarks>
public sealed record LegToRadiusCheck
{
    private const string Validity = "Cold bending of mild steel on a hand bender; says nothing about walls and free edges.";

    /// <summary>Makes the check with bounds of the shop's own.</summary>
    /// <param name="lowUpTo">Ratio up to and including which the risk is low, greater than zero.</param>
    /// <param name="mediumUpTo">Ratio up to and including which the risk is medium, not below the first.</param>
    /// <exception cref="ArgumentOutOfRangeException">A bound is not positive and finite, or they are out of order.</exception>
    public LegToRadiusCheck(double lowUpTo, double mediumUpTo)
    {
        LowUpTo = Guard.Positive(lowUpTo, nameof(lowUpTo));
        MediumUpTo = Guard.Positive(mediumUpTo, nameof(mediumUpTo));
        if (mediumUpTo < lowUpTo)
        {
            throw Guard.Fault(nameof(mediumUpTo), mediumUpTo, Invariant($"must not be below the lower bound, {lowUpTo}"));
        }
    }

    /// <summary>Low up to 0.15, which is common practice without a source; medium up to 0.25, which is a setting.</summary>
    public static LegToRadiusCheck CommonPractice { get; } = new(0.15, 0.25);

    /// <summary>Ratio up to and including which the risk is low.</summary>
    public double LowUpTo { get; }

    /// <summary>Ratio up to and including which the risk is medium.</summary>
    public double MediumUpTo { get; }

    /// <summary>Checks a loaded bend.</summary>
    /// <param name="loaded">The bend.</param>
    /// <exception cref="ArgumentNullException">The bend is null.</exception>
    public DistortionFinding Of(LoadedBend loaded)
    {
        SectionFeatures features = Guard.NotNull(loaded, nameof(loaded)).Analysis.Section.Features;
        return Judge(features.RadialDepth.Meters, loaded.State.InsideRadius, features.WallThickness is not null, loaded);
    }

    /// <summary>Checks a leg against a radius.</summary>
    /// <param name="radialLeg">Leg, width or diameter in the plane of the ring, greater than zero.</param>
    /// <param name="loadedInsideRadius">Inside radius while loaded, greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length is not positive and finite, or their ratio is not finite.</exception>
    public DistortionFinding Of(Length radialLeg, Length loadedInsideRadius)
    {
        double leg = Guard.Positive(radialLeg, nameof(radialLeg));
        double radius = Guard.Positive(loadedInsideRadius, nameof(loadedInsideRadius));
        return leg / radius is > 0 and < double.PositiveInfinity
            ? Judge(leg, radius, hollow: false, loaded: null)
            : throw Guard.Fault(nameof(loadedInsideRadius), loadedInsideRadius,
                $"must be comparable with the leg, {Guard.Text(radialLeg)}");
    }

    /// <summary>Largest leg of low risk at a radius.</summary>
    /// <param name="loadedInsideRadius">Inside radius while loaded, greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The radius is not positive and finite.</exception>
    public Length LargestLegFor(Length loadedInsideRadius) =>
        Length.FromMeters(LowUpTo * Guard.Positive(loadedInsideRadius, nameof(loadedInsideRadius)));

    /// <summary>Least loaded inside radius of low risk for a leg.</summary>
    /// <param name="radialLeg">Leg in the plane of the ring, greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The leg is not positive and finite, or too long for a finite radius.</exception>
    public Length LeastRadiusFor(Length radialLeg)
    {
        double radius = Guard.Positive(radialLeg, nameof(radialLeg)) / LowUpTo;
        return radius < double.PositiveInfinity ? Length.FromMeters(radius)
            : throw Guard.Fault(nameof(radialLeg), radialLeg, "must be short enough for a finite radius");
    }

    /// <summary>Both bounds.</summary>
    public override string ToString() => Invariant($"leg to radius: low up to {LowUpTo:0.###}, medium up to {MediumUpTo:0.###}");

    private DistortionFinding Judge(double leg, double radius, bool hollow, LoadedBend? loaded)
    {
        double ratio = leg / radius;
        RiskLevel level = Judgment.Level(ratio, LowUpTo, MediumUpTo);
        string rule =
            level != RiskLevel.Low
            ? "For a low risk use a leg of at most {3:0.#} mm or an inside radius of at least {4:0.#} mm while loaded; above {6:0.##} the "
                + "risk counts as high."
            : hollow ? "Up to {5:0.##} counts as low, which says nothing about the wall."
            : "Up to {5:0.##} such bends usually come out clean.";
        string sentence = string.Format(
            CultureInfo.InvariantCulture,
            "The bar is {0:0.###} of the inside radius deep ({1:0.#} mm at {2:0.#} mm). " + rule,
            ratio,
            leg * 1e3,
            leg / ratio * 1e3,
            LowUpTo * leg / ratio * 1e3,
            leg / LowUpTo * 1e3,
            LowUpTo,
            MediumUpTo);
        bool practice = level == RiskLevel.Low && LowUpTo == CommonPractice.LowUpTo && !hollow;
        return new("leg to radius", ratio, LowUpTo, level, sentence, practice ? Sources.CommonPractice : Sources.Setting, Validity, () =>
        [
            Remedies.AtLeastRadius(leg / LowUpTo),
            Remedies.AtMostLeg("leg", LowUpTo * leg / ratio),
            loaded is null ? null : Remedies.Orientation(loaded, level, other => Of(other)),
        ])
        {
            Equation =
                new("d_r", "b_r/R", new("b_r", "leg, width or diameter in the plane of the ring", Length.FromMeters(leg)),
                    DemandEquation.LoadedRadius(radius)),
        };
    }
}
