using BendMath.Fuzz.Making;
using BendMath.Measurement;
using UnitsNet;

namespace BendMath.Fuzz.Sizes;

/// <summary>
/// Measured rings: about what wrapping leaves if the stamp means some face of the bar, on a die of the job, mostly of its bar and metal.
/// </summary>
internal static class RingSizes
{
    public static void AddTo(Rules rules)
    {
        rules.SetMade<BendAnalysis>("MeasuredRing.analysis", frame => frame.Tape.Chance(0.15) ? Another(frame) : frame.Scene.Analysis);
        rules.SetMade<BendRadius>("MeasuredRing.measured", frame => frame.Maker.MakeAnew(typeof(BendRadius), Beside(frame, Size(frame))));
        rules.SetMade<RingReading>("MeasuredRing.reading", frame => frame.Maker.MakeAnew(typeof(RingReading), Beside(frame, Size(frame))));
        rules.Set("TapeAroundInside.tape RingReading.TapeAroundInside.tape", frame => frame.Length(2 * Math.PI * Ring(frame)));
        rules.Set("RingReading.TapeAroundOutside.tape", frame => frame.Length(2 * Math.PI * (Ring(frame) + 1.001 * frame.Scene.Height)));
        rules.Set("RingReading.ChordAgainstInside.chord", frame => frame.Length(2 * Ring(frame) * frame.Tape.Between(0.9, 0.1)));
        rules.Set("RingReading.ChordAgainstOutside.chord",
            frame => frame.Length(2 * (Ring(frame) + 1.001 * frame.Scene.Height) * frame.Tape.Between(0.9, 0.1)));
        rules.Set("RingReading.ChordAgainstInside.rise", frame => Rise(frame, Ring(frame)));
        rules.Set("RingReading.ChordAgainstOutside.rise", frame => Rise(frame, Ring(frame) + 1.001 * frame.Scene.Height));
        rules.Set("MarkedLength.before",
            frame => frame.Length(Math.Min(frame.Scene.Most, frame.Scene.InsideRadius * frame.Tape.Between(6.2, 0.5))));
        rules.Set("MarkedLength.turn",
            frame =>
                Angle.FromDegrees(
                    frame.Scene.Cut(
                        Math.Min(360,
                            57.29 * frame.Meters("before") / (frame.Scene.InsideRadius + frame.Tape.Next() * frame.Scene.Height)))));
        rules.Set("MeasuredRing.note", frame => frame.Tape.Of(["14 March", "=HYPERLINK(1)", "<script>", "a; \"b\", c", "Größe – ok"]));
    }

    private static Frame Beside(Frame frame, double size)
    {
        Frame beside = new(frame.Maker, frame, null);
        beside.Add("ring", Made.Of(size));
        return beside;
    }

    private static double Ring(Frame frame) => frame.Value<double?>("ring", null) ?? frame.Scene.InsideRadius;

    /// <summary>
    /// What a ring of the die measures inside, if the stamp means a face somewhere in the bar and the bender repeats to a few percent.
    /// </summary>
    private static double Size(Frame frame)
    {
        Die die = (Die)frame.Find<Die>("die")!.Value!;
        BendAnalysis analysis = (BendAnalysis)frame.Find<BendAnalysis>("analysis")!.Value!;
        double inside =
            Math.Max(0.3 * die.StampedRadius.Meters, die.StampedRadius.Meters - frame.Tape.Next() * analysis.Section.Depth.Meters);
        ReleasedBend released =
            analysis.LoadedTo(BendRadius.Inside(Length.FromMeters(Math.Clamp(inside, frame.Scene.Least, frame.Scene.Most))))
                .Release(Release.Free);
        double ring = released.IsStraight ? 2 * inside : released.Ring.InsideRadius.Meters;
        return Math.Clamp(ring * frame.Tape.Log(0.99, 1.01), frame.Scene.Least, frame.Scene.Most / 10);
    }

    private static Length Rise(Frame frame, double radius)
    {
        double chord = frame.Meters("chord");
        double flat = Math.Sqrt(Math.Max(0, radius * radius - chord * chord / 4));
        return Length.FromMillimeters(Math.Max(frame.Scene.Least * 1e3, chord * chord / 4 / (radius + flat) * 1e3));
    }

    /// <summary>A ring of another bar or another metal.</summary>
    private static Made Another(Frame frame) => frame.Maker.CallWith(
        typeof(BendAnalysis).GetMethod(nameof(BendAnalysis.Of), [typeof(OrientedSection), typeof(BarMaterial)])!,
        frame.Tape.Chance(0.5) ? frame.Scene.AnotherSection() : frame.Scene.Section,
        frame.Maker.MakeAnew(typeof(BarMaterial), frame));
}
