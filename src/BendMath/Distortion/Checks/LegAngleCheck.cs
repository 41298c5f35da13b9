using BendMath.Evidence;
using BendMath.Guards;
using BendMath.Sections.Features;
using UnitsNet;

namespace BendMath.Distortion.Checks;

/// <summary>
/// Change of the angle between the legs: the stress along the ring pushes the leg that lies along its axis to or from the center, and it
/// curls unless it is backed.
/// </summary>
/// <remarks>
/// Equation: b²/(R·t), low ≤ 0.25, high above 0.5, at most medium while nobody says whether the leg is backed; effective part of the leg
/// (sinh 2λ + sin 2λ)/(λ·(cosh 2λ + cos 2λ + 2)), λ⁴ = 3(1 − ν²)·(b²/(R·t))², ν = 0.3.
/// Range: a strip of a cylinder, clamped along the heel, free at its edge, elastic; no measurement was found to hold it against.
/// Source: <see cref="Sources.DistortionChecks"/>
/// </remarks>
internal static class LegAngleCheck
{
    private const double Low = 0.25;

    private const double Medium = 0.5;

    private const string Validity =
        "A strip of a cylinder clamped along the heel, elastic; derived, no measurement was found. The bounds are settings.";

    /// <summary>As <see cref="DistortionReport.TurnThatRelievesEdge"/>, in radians.</summary>
    public static double? TurnOf(LoadedBend loaded) => Longest(loaded) is { } leg ? Turn(loaded, leg) : null;

    /// <summary>As <see cref="DistortionReport.EffectiveLeg"/>, in meters.</summary>
    public static double? EffectiveLegOf(LoadedBend loaded) =>
        Longest(loaded) is { } leg ? leg.Thickness.Meters / 2 + Width(leg) * Part(Ratio(loaded, leg)) : null;

    public static Judgment Judge(LoadedBend loaded, DistortionSettings settings)
    {
        if (Longest(loaded) is not { } leg)
        {
            return default;
        }

        double ratio = Ratio(loaded, leg);
        double t = leg.Thickness.Meters;
        RiskLevel unbacked = Judgment.Level(ratio, Low, Medium);
        bool? backed = settings.Support.BacksAxialLeg;
        RiskLevel level = backed == true ? RiskLevel.Low
            : backed is null && unbacked == RiskLevel.High ? RiskLevel.Medium
            : unbacked;
        bool pulled = loaded.Strain(LevelOf(loaded, t)) > 0;
        string curls = Turn(loaded, leg) is { } turn
            ? Invariant($"it curls and the angle of the bar changes: turned by {turn * 180 / Math.PI:0.#}° its edge bears nothing, and it ")
                + "may go further."
            : "it curls and the angle of the bar changes.";
        string how = backed == true ? "Backed, it cannot curl."
            : level == RiskLevel.Low ? "Up to 0.25 it hardly curls."
            : backed == false ? $"Not backed, {curls}"
            : $"Nobody says whether it is backed from that side. If not, {curls}";
        string sentence = Invariant(
            $"The leg along the axis of the ring is {(pulled ? "stretched" : "compressed")} and pushed "
                + $"{(pulled ? "toward" : "away from")} the center; b²/(R·t) is {ratio:0.00}, and {100 * Part(ratio):0} % of its width "
                + $"takes full part. {how}");
        return new DistortionFinding(DistortionCheck.LegAngle, "leg angle", ratio, Low, level, sentence, Sources.DistortionChecks, Validity,
            () =>
        [
            Remedies.Support($"back the leg on the side {(pulled ? "toward" : "away from")} the center"),
            loaded.IsPulled ? null : Remedies.AtLeastRadius(Width(leg) * Width(leg) / (Low * t)),
            Remedies.AtMostLeg("leg along the axis of the ring", Math.Sqrt(Low * loaded.State.InsideRadius * t) + t / 2),
            Remedies.Orientation(loaded, level, other => Judge(other, settings)),
        ])
        {
            Equation = new(
                "d_a",
                "(b_a - t_a/2)²/((R + y_a)·t_a)",
                new("b_a", "leg along the axis of the ring", leg.Length),
                new("t_a", "its thickness", leg.Thickness),
                DemandEquation.LoadedRadius(loaded.State.InsideRadius),
                new("y_a", "its middle from the inside face", Length.FromMeters(LevelOf(loaded, t)))),
        };
    }

    private static Outstand? Longest(LoadedBend loaded) => loaded.Analysis.Section.Features.Outstands
        .Where(leg => leg.Direction is null).OrderByDescending(leg => leg.Length.Meters).FirstOrDefault();

    private static double? Turn(LoadedBend loaded, Outstand leg)
    {
        double sine = Math.Abs(loaded.State.NeutralAxis - LevelOf(loaded, leg.Thickness.Meters)) / Width(leg);
        return sine is >= 0 and <= 1 ? Math.Asin(sine) : null;
    }

    private static double Width(Outstand leg) => leg.Length.Meters - leg.Thickness.Meters / 2;

    private static double Ratio(LoadedBend loaded, Outstand leg) =>
        Width(leg) * Width(leg) / ((loaded.State.InsideRadius + LevelOf(loaded, leg.Thickness.Meters)) * leg.Thickness.Meters);

    /// <summary>
    /// The middle of the leg: at the outside face where a radial leg points inward, else at the inside face, where the radius is least.
    /// </summary>
    private static double LevelOf(LoadedBend loaded, double thickness)
    {
        IReadOnlyList<Outstand> legs = loaded.Analysis.Section.Features.Outstands;
        bool outside = legs.Any(leg => leg.Direction == FlangeDirection.In) && !legs.Any(leg => leg.Direction == FlangeDirection.Out);
        return outside ? loaded.Analysis.Section.Height - thickness / 2 : thickness / 2;
    }

    /// <summary>
    /// The part of a leg that carries stress as if it could not curl: 1 for a short one. For long legs both hyperbolic functions overflow;
    /// their quotient is 1 long before.
    /// </summary>
    public static double Part(double ratio)
    {
        double two = 2 * Math.Sqrt(Math.Sqrt(3 * (1 - 0.3 * 0.3)) * ratio);
        return two == 0 ? 1
            : two > 100 ? 2 / two
            : (Math.Sinh(two) + Math.Sin(two)) / (two / 2 * (Math.Cosh(two) + Math.Cos(two) + 2));
    }
}
