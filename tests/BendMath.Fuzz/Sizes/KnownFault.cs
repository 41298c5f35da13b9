using BendMath.Forming.Pairs;
using BendMath.Forming.ThreePoint;
using BendMath.Fuzz.Making;
using BendMath.Learning;
using BendMath.Measurement;
using UnitsNet;

namespace BendMath.Fuzz.Sizes;

/// <summary>
/// What once went wrong, or may: parts of a job that contradict each other, which a door refuses, and doubtful ones, which are planned with
/// an advisory.
/// </summary>
/// <param name="Name">What is wrong.</param>
/// <param name="Models">The forming models it is tried with.</param>
/// <param name="Rules">The usual rules with what makes it wrong over them.</param>
/// <param name="Widened">Makes the ring this much wider than the bar keeps; null for the usual.</param>
internal sealed record KnownFault(string Name, IReadOnlyList<Type> Models, Rules Rules, double? Widened = null)
{
    private static readonly Type[] Wrap = [typeof(WrapBending)];

    private static readonly Type[] Pair = [typeof(PairBending)];

    public static IReadOnlyList<KnownFault> All { get; } =
    [
        new("a stroke scatters where none is set: wrapping", Wrap, StrokeScatters()),
        new("a stroke scatters where none is set: a pair", Pair, StrokeScatters()),
        new("a curvature ratio of a ring whose die cannot form the bar", Wrap, Over(rules =>
        {
            Correct(rules, HypothesisKind.CurvatureRatio);
            rules.SetMade<Die>("MeasuredRing.die", frame => SwallowedDie(frame));
            MeasureAs(rules, frame => frame.Scene.InsideRadius);
        })),
        new("a correction by the stamped face of a ring wider than its stamp", Wrap, Over(rules =>
        {
            Correct(rules, HypothesisKind.ReferenceFace);
            MeasureAs(rules, frame => 5 * ((Die)frame.Find<Die>("die")!.Value!).StampedRadius.Meters);
        })),
        new("a correction by the stroke of a bender nobody measured", Wrap, Over(rules =>
        {
            Correct(rules, HypothesisKind.Stroke);
            rules.SetMade<ThreePointSetup>("WrapBending.setup", _ => Made.Of(null));
        })),
        new("several rings on dies without a mate, bent between pairs", Pair, Over(rules =>
        {
            Correct(rules, HypothesisKind.CurvatureRatio);
            rules.SetMade<MatingDie>("mate", _ => Made.Of(null));
        })),
        new("a saw cut of more than a tenth of the ring", Wrap, Over(rules =>
        {
            rules.SetMade<ArcExtent>(string.Empty,
                frame => frame.Maker.Call(typeof(ArcExtent).GetProperty(nameof(ArcExtent.FullRing))!, null, frame));
            rules.Require("joint");
            rules.Set("kerf",
                frame => frame.Length(Math.Min(frame.Scene.Most, 2 * Math.PI * frame.Scene.InsideRadius * frame.Tape.Between(0.11, 2))));
        })),
        new("a ring so wide that the bar is nearly straight", Wrap, Over(_ => { }), 0.49),
        new("a ring wider than the bar keeps", Wrap, Over(_ => { }), 2),
        new("an arc shorter than any length", Wrap, Over(rules => rules.SetMade<ArcExtent>(
            string.Empty,
                frame =>
                    frame.Maker.CallWith(typeof(ArcExtent).GetMethod(nameof(ArcExtent.Of))!,
                        Made.Of(Angle.FromDegrees(frame.Tape.Log(1e-7, 1e-5))))))),
        new("bars shorter than a blank", Wrap,
            Over(rules => rules.Set("barLength", frame => frame.Length(Math.Max(frame.Scene.Least, 1e-3 * frame.Scene.InsideRadius))))),
        new("bars a million times as long as a blank", Wrap,
            Over(rules => rules.Set("barLength", frame => frame.Length(frame.Scene.Most)))),
        new("dies the bar leaves no inside radius on", Wrap, Over(rules =>
            rules.SetMade<IEnumerable<Die>>("dies", frame => Made.ListOf(typeof(Die), [SwallowedDie(frame)])))),
        new("a name with a control character", Wrap,
            Over(
                rules =>
                    rules.Set("RingJob.name Die.name CustomBar.name BarMaterial.name",
                        frame => frame.Tape.Of(["\u001b[31mred", "two\nlines", "\0"])))),
    ];

    private static Rules Over(Action<Rules> change)
    {
        Rules rules = new(AllSizes.Usual);
        change(rules);
        return rules;
    }

    private static Rules StrokeScatters() => Over(rules =>
    {
        rules.Require("scatter", "stroke");
        rules.Set("InputVariation.stroke",
            frame => frame.Length(Math.Max(frame.Scene.Least, frame.Scene.Height * frame.Tape.Log(1e-4, 0.1))));
    });

    private static void Correct(Rules rules, HypothesisKind kind)
    {
        rules.Require("calibration");
        rules.SetMade<Calibration>(string.Empty, frame => frame.Maker.Call(typeof(Calibration).GetConstructors()[0], null, frame));
        rules.Set("correction", _ => kind);
    }

    /// <summary>A die stamped for the outside of the bar with a radius of half its depth.</summary>
    private static Made SwallowedDie(Frame frame) => frame.Maker.CallWith(
        typeof(Die).GetConstructors()[0], Made.Of("A"), Made.Of(frame.Length(Math.Max(frame.Scene.Least, 0.5 * frame.Scene.Height))),
            frame.Maker.Call(typeof(ReferenceFace).GetProperty(nameof(ReferenceFace.OutsideOfBar))!, null, frame), Made.Of(null),
                Made.Of(null), Made.Of(null));

    private static void MeasureAs(Rules rules, Func<Frame, double> inside)
    {
        rules.SetMade<BendRadius>("MeasuredRing.measured", Size);
        rules.SetMade<RingReading>("MeasuredRing.reading",
            frame => frame.Maker.CallWith(typeof(RingReading).GetMethod(nameof(RingReading.Of))!, Size(frame)));

        Made Size(Frame frame) =>
            frame.Maker.CallWith(typeof(BendRadius).GetMethod(nameof(BendRadius.Inside))!,
                Made.Of(frame.Length(Math.Min(frame.Scene.Most, inside(frame)))));
    }
}
