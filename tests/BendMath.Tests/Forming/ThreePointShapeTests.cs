using BendMath.Forming.ThreePoint;
using BendMath.Tests.Definitions;
using MathNet.Numerics.Integration;
using MathNet.Numerics.OdeSolvers;
using MathNet.Numerics.RootFinding;

namespace BendMath.Tests.Forming;

/// <summary>
/// The pinched bar as a curve: from its contact on the nose, with the height x²/(2R_n) and the slope ±x/R_n there, the curvature under a
/// moment that falls in a straight line to zero is integrated twice along each side, and must arrive at its support, at the height
/// κ_nom·a²/2. The library solves two closed equations instead and integrates nothing along the bar.
/// </summary>
public sealed class ThreePointShapeTests
{
    private static readonly ReferenceTable Table = ReferenceTable.Load("Definitions/incremental-three-point.csv");

    public static TheoryData<ReferenceRow> Cases => new(Table.Where(CaseRow.IsCovered));

    [Theory]
    [MemberData(nameof(Cases))]
    public void Both_sides_arrive_at_their_supports(ReferenceRow row)
    {
        BendAnalysis analysis = CaseRow.Analysis(row);
        double halfSpan = row.Number("half_span_mm") / 1e3;
        double stroke = row.Number("stroke_mm") / 1e3;
        ThreePointSetup setup = new(CaseRow.Millimeters(row, "half_span_mm"), CaseRow.Millimeters(row, "nose_radius_mm"));
        FormedBend formed = new IncrementalThreePointBending(setup).FormAtStroke(analysis, CaseRow.Millimeters(row, "stroke_mm"));
        double shift = formed.Contact!.ContactShift.Meters;
        double nose = setup.NoseRadius.Meters + formed.Loaded.NeutralAxisFromInside.Meters;
        double support = stroke * halfSpan * halfSpan / ((halfSpan * halfSpan) + (stroke * stroke));
        double moment = formed.Loaded.BendingMoment.NewtonMeters;
        double peak = formed.Loaded.Curvature.InverseMeters;
        double stiffness = analysis.Law.ElasticModulus.Pascals * analysis.Section.Properties.SecondMomentAboutBendingAxis.MetersToTheFourth;

        // Incoming side: loaded for the first time. The lever of the curvature at a distance u from the support is u.
        double incoming = halfSpan - shift;
        double yield = analysis.YieldCurvature.InverseMeters;
        double elastic = Math.Min(1, stiffness * yield / moment);
        double Curvature(double share) =>
            share >= 1 ? peak
                : Brent.FindRoot(k => (MomentAt(analysis, k) / moment) - share, 0.9 * share * moment / stiffness, peak * (1 + 1e-9),
                    1e-13 * peak, 200);
        double sum = (moment * elastic * elastic * elastic / (3 * stiffness))
            + GaussKronrodRule.Integrate(share => Curvature(share) * share, elastic, 1, out _, out _, 1e-11, 20, 15);
        Near.Relative(support, Start(shift) + (shift / nose * incoming) + (incoming * incoming * sum), 1e-8,
            "height of the bar at the incoming support");

        // Outgoing side: let go under the nose before, so what stays and an elastic part; the curve itself by Runge and Kutta's method.
        double outgoing = halfSpan + shift;
        double permanent = formed.RingWhen(Release.HeldFlat).Curvature.InverseMeters;
        MathNet.Numerics.LinearAlgebra.Vector<double>[] curve = RungeKutta.FourthOrder(
            MathNet.Numerics.LinearAlgebra.Vector<double>.Build.Dense([Start(shift), -shift / nose]),
            0,
            outgoing,
            101,
            (s, y) =>
                MathNet.Numerics.LinearAlgebra.Vector<double>.Build.Dense([y[1], permanent + (moment * (1 - (s / outgoing)) / stiffness)]));
        Near.Relative(support, curve[^1][0], 1e-8, "height of the bar at the outgoing support");

        double Start(double x) => x * x / (2 * nose);
    }

    private static double MomentAt(BendAnalysis analysis, double curvature) =>
        analysis.LoadedAt(UnitsNet.ReciprocalLength.FromInverseMeters(curvature)).BendingMoment.NewtonMeters;
}
