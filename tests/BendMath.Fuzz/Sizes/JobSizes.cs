using System.Reflection;
using BendMath.Fuzz.Making;
using BendMath.Learning;
using BendMath.Lengths;
using BendMath.Stock.Tolerances;
using UnitsNet;

namespace BendMath.Fuzz.Sizes;

/// <summary>The job itself: what its parts have to do with each other. Nothing else in this program knows how a job is made.</summary>
internal static class JobSizes
{
    private static readonly string[] Names =
        ["planter rim", "hoop", "=2+3", "A;=cmd", "<script>alert(1)</script>", "Reif Ø 500, „außen“", "🙂", " x "];

    private static readonly MethodInfo Learning = typeof(RingDiagnosis).GetMethod(nameof(RingDiagnosis.Of))!;

    private static readonly MethodInfo[] Mills =
        [.. typeof(MillTolerance).GetMethods(BindingFlags.Public | BindingFlags.Static).Where(method => method.ReturnType == typeof(MillTolerance))];

    private static readonly MethodInfo[] Styles =
        [.. typeof(LengthStyle).GetMethods().Where(method => method.GetParameters() is [_, { ParameterType: var last }] && last == typeof(LengthRounding))];

    public static void AddTo(Rules rules)
    {
        rules.Set("RingJob.name CutPiece.name", frame => frame.Tape.Of(Names));
        rules.SetMade<BendRadius>("WantedRing.radius", frame => frame.Maker.MakeAnew(typeof(BendRadius), frame));
        rules.SetMade<ArcExtent>(string.Empty, frame => frame.Scene.Arc);
        rules.Set("ArcExtent.Of.turn turn angle",
            frame => Angle.FromDegrees(frame.Scene.Cut(frame.Tape.Chance(0.1) ? frame.Tape.Log(1e-7, 1) : frame.Tape.Between(1, 360))));
        rules.SetMade<EndAllowance>(string.Empty, frame => frame.Maker.Through(frame.Tape.Of(Ends), typeof(EndAllowance), frame));
        rules.Set("EndAllowance.start EndAllowance.end EndAllowance.trim trim",
            frame => frame.Share(Math.Min(frame.Scene.Most, frame.Scene.InsideRadius)));
        rules.Set("kerf", frame => frame.Share(0.3 * frame.Scene.InsideRadius * Turn(frame) / 2 / Math.PI));
        rules.Set("rootOpening", frame => frame.Share(0.3 * frame.Scene.InsideRadius));
        rules.Set("barLength",
            frame => frame.Length(Math.Clamp(frame.Scene.InsideRadius * frame.Tape.Log(0.5, 100), frame.Scene.Least, frame.Scene.Most)));
        rules.SetMade<IEnumerable<MeasuredRing>>("measuredRings rings", frame => frame.Scene.Rings);
        rules.SetMade<IReadOnlyList<MeasuredRing>>("measuredRings rings", frame => frame.Scene.Rings);
        rules.SetMade<HypothesisKind>("correction", Correction);
        rules.SetMade<Calibration>(string.Empty,
            frame =>
                frame.Tape.Chance(0.9) ? frame.Maker.Call(typeof(Calibration).GetConstructors()[0], null, frame)
                    : Made.Of(Calibration.None));
        rules.Require("correction");
        rules.Set("tolerance",
            frame => frame.Length(Math.Clamp(frame.Scene.InsideRadius * frame.Tape.Log(1e-5, 0.5), frame.Scene.Least, frame.Scene.Most)));
        rules.Set("measuringError", frame => frame.Length(frame.Tape.Log(1e-5, 1e-2)));
        rules.Set("quantity", frame => (int)frame.Tape.Log(1, 100_000));
        rules.SetMade<JointPreparation>(string.Empty,
            frame =>
                ((ArcExtent)frame.Scene.Arc.Value!).IsFullRing ? frame.Maker.MakeAnew(typeof(JointPreparation), frame) : Made.Of(null));
        rules.SetMade<LengthStyle>("cutStyle", frame =>
        {
            MethodInfo style = frame.Tape.Of(Styles);
            return frame.Maker.CallWith(style, frame.Maker.Argument(style.GetParameters()[0], frame), Made.Of(LengthRounding.Up));
        });
        rules.Set("decimals", frame => frame.Tape.Index(5));
        rules.Set("denominator", frame => 1 << (1 + frame.Tape.Index(6)));
        Scatter(rules);
        Distortion(rules);
    }

    /// <summary>Draws a job; whether its doors take it shows.</summary>
    public static Made Make(Maker maker) => maker.MakeAnew(typeof(RingJob), null);

    private static MemberInfo[] Ends =>
        [typeof(EndAllowance).GetProperty(nameof(EndAllowance.None))!, typeof(EndAllowance).GetConstructors()[0]];

    private static double Turn(Frame frame) => ((ArcExtent)frame.Scene.Arc.Value!).Turn.Radians;

    private static void Scatter(Rules rules)
    {
        rules.SetMade<Length>("InputVariation.stroke",
            frame =>
                frame.Scene.Pinches ? Made.Of(frame.Length(Math.Max(frame.Scene.Least, frame.Scene.Height * frame.Tape.Log(1e-4, 0.1))))
                    : Made.Of(null));
        rules.Set("InputVariation.curvature", frame => Ratio.FromPercent(frame.Scene.Cut(frame.Tape.Log(1e-3, 40))));
        rules.SetMade<MillTolerance>(string.Empty, Mill);
    }

    /// <summary>A mill tolerance that covers the bar, where there is one.</summary>
    private static Made Mill(Frame frame)
    {
        Made stock = frame.Scene.Section.On!;
        MethodInfo[] mills = [.. Mills.Where(mill => mill.GetParameters()[0].ParameterType == stock.Value!.GetType())];
        try
        {
            return mills.Length == 0 ? Made.Of(null) : frame.Maker.CallWith(frame.Tape.Of(mills), stock);
        }
        catch (Refused)
        {
            return Made.Of(null);
        }
    }

    private static void Distortion(Rules rules)
    {
        rules.Set("lowLegToRadius", frame => frame.Scene.Cut(frame.Tape.Log(0.01, 0.25)));
        rules.Set("mediumLegToRadius", frame => frame.Value("lowLegToRadius", 0.15) * frame.Tape.Between(1, 3));
        rules.Set("unsupportedLength",
            frame => frame.Length(Math.Clamp(frame.Scene.InsideRadius * frame.Tape.Log(0.1, 10), frame.Scene.Least, frame.Scene.Most)));
        rules.Set("requiredWall", frame => frame.Length(Math.Max(frame.Scene.Least, frame.Scene.Height * frame.Tape.Log(1e-3, 1))));
        rules.Set("DistortionSettings.torsionConstant",
            frame =>
                AreaMomentOfInertia.FromMillimetersToTheFourth(
                    Math.Clamp(Math.Pow(frame.Scene.Height * 1e3, 4) * frame.Tape.Log(1e-4, 1), 1e-11, 1e24)));
    }

    /// <summary>An explanation that fits every ring of the job, where there is one.</summary>
    private static Made Correction(Frame frame)
    {
        if (!frame.Scene.HasRings)
        {
            return Made.Of(null);
        }

        RingDiagnosis[] learned =
            [.. frame.Scene.Rings.Arguments.Select(ring => (RingDiagnosis)frame.Maker.CallWith(Learning, ring, frame.Scene.Model).Value!)];
        HypothesisKind[] fitting =
            [.. Enum.GetValues<HypothesisKind>().Where(kind => learned.All(one => one.Find(kind) is { Fits: true }))];
        return fitting.Length == 0 ? Made.Of(null) : Made.Of(frame.Tape.Of(fitting));
    }
}
