using BendMath.Fuzz.Making;
using UnitsNet;

namespace BendMath.Fuzz.Sizes;

/// <summary>Metals: a modulus, a strain at yield, and hardening that the laws take; mostly as of metals in a shop, sometimes any.</summary>
internal static class MetalSizes
{
    private static readonly string[] Names =
        ["mild steel", "brass, half-hard", "=1+1", "<b>steel</b>", "\"quoted\"", "Stahl; weich", "acier doux – 2ᵉ choix", "🙂"];

    public static void AddTo(Rules rules)
    {
        rules.SetMade<BarMaterial>(string.Empty, frame => frame.Scene.Material);
        rules.SetMade<BendAnalysis>(string.Empty, frame => frame.Scene.Analysis);
        rules.SetMade<StressStrainLaw>(string.Empty, frame => frame.Maker.MakeAnew(frame.Tape.Of(frame.Scene.Laws), frame));
        rules.Set("name", frame => frame.Tape.Of(Names));
        rules.Set("elasticModulus",
            frame => Megapascals(frame, frame.Tape.Chance(0.1) ? frame.Tape.Log(1e7, 1e17) : frame.Tape.Log(2e9, 5e11)));
        rules.Set("yieldStress proofStress yieldStrength plateauStress", frame => Megapascals(frame, Modulus(frame) * Strain(frame)));
        rules.Set("tangentModulus",
            frame => frame.Tape.Chance(0.8) ? Megapascals(frame, Modulus(frame) * frame.Tape.Log(1e-5, 0.9)) : Pressure.Zero);
        rules.Set("strengthCoefficient",
            frame => Megapascals(frame, Modulus(frame) * frame.Tape.Log(5e-4, frame.Tape.Chance(0.1) ? 0.9 : 0.02)));
        rules.Set("hardeningExponent", Exponent);
        rules.Set("exponent", frame => frame.Scene.Cut(frame.Tape.Chance(0.15) ? frame.Tape.Log(1.51, 1000) : frame.Tape.Log(3, 60)));
        rules.Set("points", Curve);
        rules.Set("PressureRange.low", frame => Megapascals(frame, Yield(frame) * frame.Tape.Between(1, 0.7)));
        rules.Set("PressureRange.high", frame => Megapascals(frame, Yield(frame) * frame.Tape.Between(1.001, 1.5)));
        rules.Set("density",
            frame =>
                Density.FromKilogramsPerCubicMeter(
                    frame.Scene.Cut(frame.Tape.Chance(0.1) ? frame.Tape.Log(2e-3, 9e5) : frame.Tape.Log(1000, 20000))));
        rules.Set("elongation", frame => Ratio.FromPercent(frame.Scene.Cut(frame.Tape.Log(1, 100))));
        rules.Set("poissonsRatio", frame => frame.Scene.Cut(frame.Tape.Between(0, 0.5)));
        rules.Set("BarMaterial.WithSofterUnloading.share", frame => Ratio.FromPercent(frame.Scene.Cut(frame.Tape.Between(100, 50))));
        rules.Set("maximumYield", frame => frame.Value("yieldStrength", Pressure.Zero) * 1.4);
        rules.Set("ultimateStrength", frame => frame.Value("yieldStrength", Pressure.Zero) * 1.5);
        rules.Set("HotRolledSteel.ultimateStrength",
            frame => Megapascals(frame, frame.Value("plateauStress", Pressure.FromMegapascals(300)).Pascals * frame.Tape.Log(1.001, 2)));
        rules.Set("maximumUltimate", frame => frame.Value("yieldStrength", Pressure.Zero) * 1.9);
    }

    private static double Modulus(Frame frame) => frame.Value("elasticModulus", Pressure.FromGigapascals(200)).Pascals;

    private static double Strain(Frame frame) => frame.Tape.Chance(0.1) ? frame.Tape.Log(1e-6, 0.9) : frame.Tape.Log(4e-4, 0.015);

    private static double Yield(Frame frame) =>
        (frame.Find<StressStrainLaw>("law")?.Value as StressStrainLaw
            ?? ((BarMaterial)frame.Scene.Material.Value!).Law).YieldStress.Pascals;

    /// <summary>A pressure that a door takes: from 1 Pa upward.</summary>
    private static Pressure Megapascals(Frame frame, double pascals) =>
        Pressure.FromMegapascals(frame.Scene.Cut(Math.Max(2, pascals) / 1e6));

    /// <summary>An exponent whose curve meets its elastic line at a strain that is none too small.</summary>
    private static double Exponent(Frame frame)
    {
        double ratio = frame.Value("strengthCoefficient", Pressure.FromMegapascals(600)).Pascals / Modulus(frame);
        double most = 1 - Math.Log(Math.Min(ratio, 0.99)) / Math.Log(1e-11);
        return frame.Scene.Cut(Math.Max(0, Math.Min(most, frame.Tape.Between(0, frame.Tape.Chance(0.1) ? 0.99 : 0.5))));
    }

    /// <summary>
    /// Points of a pull test: the first on the elastic line, each further out, higher, and flatter than the line from the origin.
    /// </summary>
    private static IEnumerable<(Ratio Strain, Pressure Stress)> Curve(Frame frame)
    {
        double strain = frame.Tape.Log(2e-4, 5e-3);
        double stress = Modulus(frame) * strain * frame.Tape.Between(1, 0.99);
        List<(Ratio, Pressure)> points = [(Ratio.FromPercent(strain * 100), Pressure.FromMegapascals(stress / 1e6))];
        for (int count = 1 + frame.Tape.Index(5); count > 0; count--)
        {
            double step = frame.Tape.Log(1.2, 5);
            stress *= Math.Pow(step, frame.Tape.Between(0.02, 0.5));
            strain *= step;
            if (strain < 0.6)
            {
                points.Add((Ratio.FromPercent(strain * 100), Pressure.FromMegapascals(stress / 1e6)));
            }
        }

        return points.Count > 1 ? points : [.. points, (Ratio.FromPercent(60), Pressure.FromMegapascals(stress * 1.01 / 1e6))];
    }
}
