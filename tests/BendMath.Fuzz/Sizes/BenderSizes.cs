using BendMath.Forming.ThreePoint;
using BendMath.Fuzz.Making;
using UnitsNet;

namespace BendMath.Fuzz.Sizes;

/// <summary>Rings, dies and benders about the size of the wanted ring.</summary>
internal static class BenderSizes
{
    private static readonly string[] Names = ["A", "240", "rim die", "=A1", "<g>", "die; 2", "\"B\"", "Ø 300"];

    public static void AddTo(Rules rules)
    {
        Radii(rules);
        rules.SetMade<DieRack>(string.Empty, frame => frame.Scene.Rack);
        rules.SetMade<FormingModel>(string.Empty, frame => frame.Scene.Model);
        rules.SetMade<Die>(string.Empty, frame => frame.Scene.Rack is { Value: DieRack { Count: > 0 } rack } made && frame.Tape.Chance(0.9)
            ? Made.ItemOf(made, frame.Tape.Index(rack.Count))
            : frame.Maker.MakeAnew(typeof(Die), frame));
        rules.SetMade<IEnumerable<Die>>("dies", Dies);
        rules.Set("Die.name", frame => frame.Value<string?>("die name", null) ?? frame.Tape.Of(Names));
        rules.Set("stampedRadius",
            frame => frame.Length(Math.Clamp(frame.Scene.InsideRadius * frame.Tape.Log(0.4, 1.3), frame.Scene.Least, frame.Scene.Most)));
        rules.Set("offset", frame => frame.Share(frame.Scene.Height));
        rules.Set("faceLength", frame => frame.Length(Near(frame, 0.1, 4)));
        rules.Set("Die.noseRadius", frame => frame.Share(Math.Min(frame.Scene.Most, frame.Scene.InsideRadius)));
        Mates(rules);
        Benders(rules);
    }

    private static void Radii(Rules rules)
    {
        rules.Set("BendRadius.Inside.radius", frame => Radius(frame, 0, 1));
        rules.Set("BendRadius.Centroid.radius", frame => Radius(frame, frame.Scene.Height, 1));
        rules.Set("BendRadius.Outside.radius", frame => Radius(frame, frame.Scene.Height, 1));
        rules.Set("BendRadius.InsideDiameter.diameter", frame => Radius(frame, 0, 2));
        rules.Set("BendRadius.CentroidDiameter.diameter", frame => Radius(frame, frame.Scene.Height, 2));
        rules.Set("BendRadius.OutsideDiameter.diameter", frame => Radius(frame, frame.Scene.Height, 2));
    }

    /// <summary>
    /// The radius of the wanted ring or, where it is about another ring, of that or one near it, to a line a share of the depth further
    /// out.
    /// </summary>
    private static Length Radius(Frame frame, double further, double times)
    {
        double inside =
            frame.Value<double?>("ring", null)
                ?? frame.Scene.InsideRadius * (frame.IsWithin(nameof(WantedRing)) ? 1 : frame.Tape.Log(0.7, 1.4));
        return frame.Length(Math.Clamp((inside + 1.001 * further) * times, frame.Scene.Least, frame.Scene.Most));
    }

    private static Made Dies(Frame frame)
    {
        int count = 1 + frame.Tape.Index(4);
        return Made.ListOf(typeof(Die), [.. Enumerable.Range(0, count).Select(i =>
        {
            Frame one = new(frame.Maker, frame, null);
            one.Add("die name", Made.Of(frame.Tape.Of(Names) + (i == 0 ? string.Empty : $" {i + 1}")));
            return frame.Maker.MakeAnew(typeof(Die), one);
        })]);
    }

    private static void Mates(Rules rules)
    {
        rules.Set("MatingDie.OfFace.radius",
            frame =>
                frame.Length(Math.Min(frame.Scene.Most, (frame.Meters("stampedRadius") + frame.Scene.Height) * frame.Tape.Log(0.8, 1.5))));
        rules.Set("MatingDie.OfFace.halfSpan",
            frame => frame.Length(Math.Max(frame.Scene.Least, frame.Meters("radius") * frame.Tape.Between(0.05, 0.95))));
        rules.Set("MatingDie.OfSupports.halfSpan", frame => frame.Length(Near(frame, 0.1, 1)));
        rules.Set("MatingDie.OfSupports.rise",
            frame =>
                frame.Length(
                    Math.Max(Math.Min(frame.Scene.Least, frame.Meters("halfSpan")),
                        frame.Meters("halfSpan") * frame.Tape.Between(0.02, 0.95))));
        rules.Set("supportRadius", frame => frame.Share(0.9 * frame.Meters("halfSpan")));
        rules.Set("shims", frame => frame.Share(frame.Scene.Height));
    }

    private static void Benders(Rules rules)
    {
        rules.SetMade<ThreePointSetup>(string.Empty, frame => frame.Scene.Setup);
        rules.SetMade<ThreePointSetup>("WrapBending.setup PairBending.setup",
            frame => frame.Scene.HoldsBack ? Made.Of(null) : frame.Scene.Setup);
        rules.SetMade<ThreePointSetup>("BumpBending.setup", frame =>
        {
            Frame rigid = new(frame.Maker, frame, null);
            rigid.Add("rigid", Made.Of(true));
            return frame.Maker.MakeAnew(typeof(ThreePointSetup), rigid);
        });
        rules.SetMade<ForcePerLength>("stiffness", frame => frame.Value("rigid", false)
            ? Made.Of(null)
            : Made.Of(Force.FromNewtons(frame.Scene.Cut(frame.Tape.Log(10, 1e6))) / frame.Length(frame.Tape.Log(1e-5, 1e-2))));
        rules.Set("ThreePointSetup.halfSpan", frame =>
        {
            double least = 1.2 * frame.Scene.Height;
            return frame.Length(
                Math.Clamp(frame.Tape.Log(least, Math.Max(1.5 * least, 0.9 * frame.Scene.InsideRadius)), frame.Scene.Least,
                    frame.Scene.Most));
        });
        rules.Set("ThreePointSetup.noseRadius", frame => frame.Share(Math.Min(frame.Scene.Most, 0.5 * frame.Scene.InsideRadius)));
        rules.Set("BumpBending.feed",
            frame =>
                frame.Length(
                    Math.Max(Math.Min(frame.Scene.Least, frame.Scene.Most),
                        ((ThreePointSetup)frame.Find<ThreePointSetup>("setup")!.Value!).HalfSpan.Meters * frame.Tape.Log(0.08, 0.99))));
        rules.Set("stroke", frame => frame.Length(Math.Max(frame.Scene.Least, frame.Scene.Height * frame.Tape.Log(1e-2, 10))));
        rules.Set("leverLength", frame => frame.Length(frame.Tape.Chance(0.1) ? frame.Tape.Log(2e-6, 9e5) : frame.Tape.Log(0.1, 3)));
        rules.Set("advantage mechanicalAdvantage", frame => frame.Scene.Cut(frame.Tape.Log(1, frame.Tape.Chance(0.1) ? 9e8 : 100)));
        rules.Set("pullLimit pull",
            frame => Force.FromNewtons(frame.Scene.Cut(frame.Tape.Chance(0.1) ? frame.Tape.Log(2e-12, 9e14) : frame.Tape.Log(10, 2000))));
    }

    private static double Near(Frame frame, double low, double high) =>
        Math.Clamp(frame.Scene.InsideRadius * frame.Tape.Log(low, high), frame.Scene.Least, frame.Scene.Most);
}
