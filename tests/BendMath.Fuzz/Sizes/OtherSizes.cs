using BendMath.Forming.ThreePoint;
using BendMath.Fuzz.Making;
using BendMath.Stock.Standard;
using UnitsNet;

namespace BendMath.Fuzz.Sizes;

/// <summary>Arguments of everything beside jobs: what is measured afterwards, cut lists, sheet, tapes, texts.</summary>
internal static class OtherSizes
{
    private static readonly string[] Texts =
        ["25 mm", "1 1/2 in", "5' 3-1/8\"", "2.5 cm", "0.75\"", "-3 mm", "1e3 mm", "3,5 mm", "", "abc", "\u001b[31m", "1/0 in"];

    private static readonly string[] Words = ["steel", "=1+1", "<b>", "ein Wort, noch eins", "\"quoted\"", "🙂"];

    private static readonly string[] Grades = ["A36", "304", "C11000", "S235JR", "6061", "unknown"];

    public static void AddTo(Rules rules)
    {
        rules.Set(string.Empty, frame => frame.Length(frame.Scene.Height * frame.Tape.Log(0.1, 100)));
        rules.Set(string.Empty, frame => Angle.FromDegrees(frame.Scene.Cut(frame.Tape.Between(1, 360))));
        rules.Set(string.Empty, frame => Ratio.FromPercent(frame.Scene.Cut(frame.Tape.Between(1, 99))));
        rules.Set(string.Empty, frame => Pressure.FromMegapascals(frame.Scene.Cut(frame.Tape.Log(1, 1e4))));
        rules.Set(string.Empty, frame => Force.FromNewtons(frame.Scene.Cut(frame.Tape.Log(1, 1e5))));
        rules.Set(string.Empty, frame => Torque.FromNewtonMeters(frame.Scene.Cut(frame.Tape.Log(0.1, 1e5))));
        rules.Set(string.Empty,
            frame =>
                ReciprocalLength.FromInverseMeters(frame.Scene.Cut(Math.Clamp(frame.Tape.Log(0.001, 1) / frame.Scene.Height, 1e-9, 1e6))));
        rules.Set(string.Empty, frame => frame.Scene.Cut(frame.Tape.Log(1e-3, 1e3)));
        rules.Set(string.Empty, frame => frame.Tape.Chance(0.5));
        rules.Set(string.Empty, frame => frame.Tape.Index(10));
        rules.Set(string.Empty, frame => frame.Tape.Of(Words));
        rules.Set("text csv json path", frame => frame.Tape.Of(Texts));
        rules.Set(string.Empty, _ => CancellationToken.None);
        rules.Set<Stream>(string.Empty, _ => Stream.Null);
        rules.Set<TextWriter>(string.Empty, _ => TextWriter.Null);
        rules.Set("designation", frame => frame.Tape.Of(StandardSizes.All).Designation);
        rules.Set("Grades.Find.name Grades.Named.name", frame => frame.Tape.Of(Grades));
        rules.Set("MonteCarloSample.Of.count", frame => 1 + frame.Tape.Index(20));
        rules.Set("count", frame => 2 + frame.Tape.Index(60));
        rules.Set("fromInside fiber alongFiber fromLeft", frame => frame.Share(frame.Scene.Height));
        rules.Set("axial", frame => frame.Share(frame.Scene.Height, 0.5));
        rules.Set("chord", frame => frame.Length(frame.Scene.InsideRadius * frame.Tape.Between(1.8, 0.1)));
        rules.Set("rise", frame => frame.Length(frame.Meters("chord") * frame.Tape.Log(0.01, 1)));
        rules.Set("chordError riseError radiusError readingError tapeThickness error", frame => frame.Length(frame.Tape.Log(1e-5, 1e-3)));
        rules.Set(
            "radius insideRadius middleRadius loadedInsideRadius heelDiameter diameter reading value inner outer largest smallest nominal",
                frame => frame.Length(Near(frame)));
        rules.Set("RingVerdict.Of.wanted", frame => frame.Length(Near(frame)));
        rules.Set("LengthRange.low", frame => frame.Length(Near(frame)));
        rules.Set("LengthRange.high", frame => frame.Length(frame.Meters("low") * frame.Tape.Between(1.01, 2)));
        rules.Set("hingeOverEdge ratio lateralStiffness torsionalStiffness", frame => frame.Scene.Cut(frame.Tape.Log(0.1, 10)));
        rules.Set("bendAngle", frame => Angle.FromDegrees(frame.Scene.Cut(frame.Tape.Between(90, 300))));
        rules.Set("BumpBending.Bend.barLength BumpBending.BendWhole.barLength BumpBending.PassWithLighterFirstBites.barLength",
            frame => frame.Length(Math.Min(frame.Scene.Most, Span(frame) * frame.Tape.Between(2.1, 8))));
        rules.Set("position Bump.Pass.first Bump.Pass.last from to",
            frame => frame.Length(frame.Scene.InsideRadius * frame.Tape.Between(0.5, 6)));
        rules.Set("Bump.Pass.feed", frame => frame.Length(frame.Scene.InsideRadius * frame.Tape.Between(0.05, 1)));
        rules.Set(
            "BumpBending.BendWhole.stroke BumpBending.FormAtStroke.stroke BumpBending.PassWithLighterFirstBites.stroke "
                + "IncrementalThreePointBending.FormAtStroke.stroke",
                    frame => frame.Length(Math.Max(frame.Scene.Least, Span(frame) * frame.Tape.Log(1e-3, 0.5))));
        rules.Set("CutPiece.length", frame => frame.Length(frame.Tape.Log(0.01, 4)));
        rules.Set("BarSupply.length", frame => frame.Length(frame.Tape.Log(1, 12)));
        rules.Set("CutPiece.quantity BarSupply.quantity", frame => 1 + frame.Tape.Index(8));
        rules.Set("CutPiece.group BarSupply.group", _ => "steel");
        rules.Set("CutList.For.kerf leastUsefulOffcut", frame => frame.Length(frame.Tape.Log(1e-4, 1e-2)));
        rules.Set("edgeDistance", frame => frame.Length(frame.Tape.Log(1e-3, 1)));
        rules.Set("RingPlace.Hole.diameter", frame => frame.Length(frame.Scene.Height * frame.Tape.Log(0.01, 0.5)));
    }

    private static double Span(Frame frame) => ((ThreePointSetup)frame.Scene.Setup.Value!).HalfSpan.Meters;

    private static double Near(Frame frame) =>
        Math.Clamp(frame.Scene.InsideRadius * frame.Tape.Log(0.5, 2), frame.Scene.Least, frame.Scene.Most);
}
