using BendMath.Forming.ThreePoint;
using BendMath.Forming.Variation;
using BendMath.Stock.Tolerances;
using UnitsNet;

namespace BendMath.Tests.Forming;

/// <summary>
/// Invented jobs: bars of sizes that are sold (EN 10056-1, 10058, 10059, 10060, 10219-2, from memory), dies from tight to wide, everything
/// that may scatter.
/// </summary>
internal static class InventedJob
{
    public static (FormingModel Model, BendAnalysis Analysis, Die Die, InputVariation Scatter) Of(Random random)
    {
        (OrientedSection section, MillTolerance mill) = Bar(random);
        double yield = 220 + 200 * random.NextDouble();
        BarMaterial material = new(
            "invented steel",
            random.Next(2) == 0
                ? new PerfectlyPlastic(Pressure.FromGigapascals(205), Pressure.FromMegapascals(yield))
                : new LinearHardening(Pressure.FromGigapascals(205), Pressure.FromMegapascals(yield),
                    Pressure.FromMegapascals(500 + 1500 * random.NextDouble())),
            Density.FromKilogramsPerCubicMeter(7850));
        BendAnalysis analysis = BendAnalysis.Of(section, material);
        double depths = Math.Exp(Math.Log(6) + random.NextDouble() * Math.Log(40.0 / 6));
        Die die = new("invented die", depths * section.Depth, ReferenceFace.InsideOfBar);
        bool pinched = random.Next(20) == 0;
        FormingModel model = pinched ? new IncrementalThreePointBending(new(4.5 * section.Depth, 0.3 * section.Depth)) : new WrapBending();
        double stroke = pinched ? model.Form(analysis, die).Contact!.Stroke.Meters : 0;
        PressureRange range =
            new(Pressure.FromMegapascals(yield * (0.8 + 0.15 * random.NextDouble())),
                Pressure.FromMegapascals(yield * (1.05 + 0.2 * random.NextDouble())));
        PressureRange? perhapsRange = random.Next(4) == 0 ? null : range;
        MillTolerance? perhapsMill = random.Next(3) == 0 ? null : mill;
        Ratio? perhapsCurvature = random.Next(2) == 0 ? null : Ratio.FromPercent(0.2 + random.NextDouble());
        Length? off = pinched ? Length.FromMeters(stroke * (0.005 + 0.02 * random.NextDouble())) : null;
        bool nothing = perhapsRange is null && perhapsMill is null && perhapsCurvature is null && off is null;
        return (model, analysis, die, new(nothing ? range : perhapsRange, perhapsMill, off, perhapsCurvature));
    }

    private static (OrientedSection Section, MillTolerance Mill) Bar(Random random)
    {
        switch (random.Next(5))
        {
            case 0:
                (double leg, double thick, double root) = Pick(random, (30d, 3d, 5d), (40, 4, 6), (50, 5, 7), (60, 6, 8));
                EqualAngle angle = new(Mm(leg), Mm(thick), AngleFillets.Of(Mm(root), Mm(root / 2)));
                return (angle.Orientations[random.Next(2)], MillTolerance.En10056(angle));
            case 1:
                (double width, double depth) = Pick(random, (20d, 5d), (25, 6), (40, 8), (50, 10));
                FlatBar flat = new(Mm(width), Mm(depth));
                return (flat.Orientations[random.Next(2)], MillTolerance.En10058(flat));
            case 2:
                SquareBar square = new(Mm(Pick(random, 10d, 12, 16, 20)));
                return (square.Orientations[0], MillTolerance.En10059(square));
            case 3:
                RoundBar round = new(Mm(Pick(random, 10d, 12, 16, 20)));
                return (round.Section, MillTolerance.En10060(round));
            default:
                (double side, double wall) = Pick(random, (20d, 2d), (25, 2), (30, 2.5), (40, 3));
                SquareTube tube = new(Mm(side), Mm(wall), CornerRadii.Of(Mm(2 * wall), Mm(wall)));
                return (tube.Orientations[0], MillTolerance.En10219(tube));
        }
    }

    private static T Pick<T>(Random random, params T[] values) => values[random.Next(values.Length)];

    private static Length Mm(double value) => Length.FromMillimeters(value);
}
