using BendMath.Evidence;
using BendMath.Guards;

namespace BendMath.Distortion.Checks;

/// <summary>Rules of codes on strain and radius, written for plate, applied to the depth of the bar. Immutable and thread-safe.</summary>
/// <remarks>
/// Equation: h/(2R_m) ≤ 5 %, R_m the radius of the middle of the depth; R_i ≥ 10 h, 4.5 h, 2 h.
/// Range: plate of ships and pressure parts; for bar a convention of whoever switches the rule on. Met or not met, there is no level
/// between.
/// Source: <see cref="Sources.IacsColdForming"/>, <see cref="Sources.AsmeFiberStrain"/>
/// </remarks>
internal static class StrainRuleCheck
{
    private const string Validity =
        "A rule for plate, applied to the depth of the bar; binding only where a code or a customer asks for it.";

    public static Judgment Judge(LoadedBend loaded, StrainRule rule)
    {
        double inside = loaded.State.InsideRadius;
        double depth = loaded.Analysis.Section.Height;
        if (rule == StrainRule.FivePercent)
        {
            double strain = depth / (2 * inside + depth);
            return Finding("extreme fiber strain of 5 %", strain, 0.05, Sources.AsmeFiberStrain, depth, inside, 9.5,
                Invariant(
                    $"Depth over twice the middle radius is {100 * strain:0.00} %; the rule allows 5 % before heat treatment is asked "
                        + $"for."));
        }

        double times = rule == StrainRule.TenThicknesses ? 10 : rule == StrainRule.FourAndHalfThicknesses ? 4.5 : 2;
        return Finding(Invariant($"inside radius of {times} depths"), depth / inside, 1 / times, Sources.IacsColdForming, depth, inside,
            times, Invariant($"The inside radius is {inside / depth:0.0#} depths of the bar; the rule asks for {times:0.#}."));
    }

    private static DistortionFinding Finding(string check, double demand, double limit, Source source, double depth, double inside,
        double times, string sentence) => new(
        DistortionCheck.StrainRule, check, demand, limit, Judgment.Level(demand, limit, limit), sentence, source, Validity,
            () => [Remedies.AtLeastRadius(times * depth), Remedies.AtMostLeg("depth", inside / times)]);
}
