using System.Globalization;
using BendMath.Evidence;
using BendMath.Forming.ThreePoint;

namespace BendMath.Forming.Pairs;

/// <summary>
/// A die and its mating face close on the bar as far as they go, the bar is fed a little, and they close again. A mate as tight as the die
/// and the stack on it, or tighter, lays the bar on the die; a wider one stops at its middle and pinches the bar between three contacts.
/// </summary>
/// <remarks>
/// Equation: <see cref="WrapBending"/> where the bar lies on the die; otherwise <see cref="IncrementalThreePointBending"/> at the half-span
/// and stroke of <see cref="ClosedPair"/>, the die for a nose.
/// Range: a pair that closes until it is solid, so that neither give nor effort changes the ring; small feed; for three contacts the slopes
/// of three-point bending.
/// Source: <see cref="Sources.Dies"/>
/// </remarks>
public sealed class PairBending : FormingModel
{
    /// <summary>The model without any measured ring.</summary>
    /// <param name="setup">Half-span and nose of the bender, by which a measured ring is explained that the pair did not close on; null
    /// when the bender has none or nobody measured them.</param>
    public PairBending(ThreePointSetup? setup = null)
        : base([]) => Setup = setup;

    /// <inheritdoc/>
    public override ThreePointSetup? Setup { get; }

    /// <inheritdoc/>
    public override string Name => "closing a die pair";

    /// <inheritdoc/>
    public override string Assumption =>
        "The bar is fed in small steps between a die and its mating face, which close each time until they are solid; where the mate is "
            + "wider than the die and the bar on it, three contacts decide, otherwise the face of the die.";

    internal override FormingTrial Try(BendAnalysis analysis, Die die)
    {
        if (die is { Mate: null, IsTrial: true })
        {
            // The die one would make comes with a mate that matches.
            double radius = die.InsideFace(analysis.Section, die.Face);
            return radius > 0
                ? new FormedBend(this, die, analysis.FormedToInside(radius), null, EvidenceAdvisories(analysis, die), [])
                : FormingTrial.Refused("the stamp leaves no inside radius for this bar");
        }

        if (die.Mate is null)
        {
            return FormingTrial.Refused("it has no mating face");
        }

        if (ClosedPair.Try(die, analysis.Section, out string? refusal) is not { } pair)
        {
            return FormingTrial.Refused(refusal!);
        }

        if (pair.LiesOnDie)
        {
            LoadedBend loaded = analysis.FormedToInside(pair.Inside);
            ThreePointContact contact = new(pair.HalfSpanMeters, pair.StrokeMeters, 1 / pair.Inside, 0, loaded.Moment, wrapsNose: true);
            return new FormedBend(this, die, loaded, contact, EvidenceAdvisories(analysis, die), Mismatch(pair));
        }

        ThreePointSetup setup = pair.Setup;
        return setup.Refusal(analysis.Section) is { } shallow
            ? FormingTrial.Refused(shallow)
            : ThreePointPinch.At(this, setup, analysis, die, pair.StrokeMeters, EvidenceAdvisories(analysis, die), Mismatch(pair));
    }

    internal override (string Bar, string Except) FixedTool(Die die) =>
        ($"Die {die.Name}, closed with its mate until it is solid,", "but for shims or another mate ");

    private static IEnumerable<Advisory> Mismatch(ClosedPair pair)
    {
        string format = pair.Touch switch
        {
            PairTouch.Middle =>
                "The mate has a radius of {0:0.##} mm where {1:0.##} mm would match die and bar: it stops at the middle, {2:0.##} mm "
                    + "before its ends would lay the bar on the die, and three contacts decide the ring.",
            PairTouch.Ends =>
                "The mate has a radius of {0:0.##} mm where {1:0.##} mm would match die and bar: it touches at its ends first and leaves "
                    + "a gap of {3:0.##} mm at the middle. The bar lies on the die; the ends may mark it.",
            _ => string.Empty,
        };
        if (format.Length > 0)
        {
            yield return new(pair.Touch == PairTouch.Middle ? "mate-stops-at-middle" : "mate-touches-at-ends", string.Format(
                CultureInfo.InvariantCulture,
                format,
                pair.Die.Mate!.Radius.Millimeters,
                pair.MatchingRadius.Millimeters,
                pair.GapAtEnds.Millimeters,
                pair.GapAtMiddle.Millimeters), Sources.Dies, isMinor: pair.Touch == PairTouch.Ends);
        }
    }
}
