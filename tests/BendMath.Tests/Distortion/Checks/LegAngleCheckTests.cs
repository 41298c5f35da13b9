using System.Globalization;
using BendMath.Distortion;
using BendMath.Distortion.Checks;
using MathNet.Numerics;
using MathNet.Numerics.LinearAlgebra;
using UnitsNet;
using static BendMath.Tests.Distortion.Bends;

namespace BendMath.Tests.Distortion.Checks;

public sealed class LegAngleCheckTests
{
    /// <summary>
    /// The strip of a cylinder solved by finite differences (MathNet): u⁗ + 4λ⁴u = 0, u = 1 and u′ = 0 at the heel, no moment and no force
    /// at the edge.
    /// </summary>
    [Theory]
    [InlineData(0.25)]
    [InlineData(0.5)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(8)]
    public void The_effective_part_is_that_of_a_strip_of_a_cylinder(double ratio)
    {
        double coarse = Strip(ratio, 200);
        double fine = Strip(ratio, 400);
        Near.Relative(fine + (fine - coarse) / 3, LegAngleCheck.Part(ratio), 1e-4);
    }

    /// <summary>Rounded figures derived for such a strip; cf. the effective width of curved flanges, H. Bleich 1933, from memory.</summary>
    [Theory]
    [InlineData(0.25, 0.97)]
    [InlineData(0.5, 0.89)]
    [InlineData(1, 0.71)]
    [InlineData(2, 0.51)]
    public void The_effective_part_has_its_round_figures(double ratio, double part) =>
        Near.Absolute(part, LegAngleCheck.Part(ratio), 0.005);

    [Fact]
    public void A_backed_leg_keeps_its_angle()
    {
        LoadedBend rim = At(RimAngle.FlangeOut, 240);
        DistortionFinding free = LegAngleCheck.Judge(rim, new(new(backsAxialLeg: false))).Finding!;
        Near.Relative(28.5 * 28.5 / (241.5 * 3), free.Demand, 1e-12);
        Assert.Equal(RiskLevel.High, free.Level);
        Assert.Equal(RiskLevel.Low, LegAngleCheck.Judge(rim, new(new(backsAxialLeg: true))).Finding!.Level);
        Near.Relative(1.5 + 28.5 * LegAngleCheck.Part(free.Demand), DistortionReport.Of(rim).EffectiveLeg!.Value.Millimeters, 1e-12);
        Assert.Null(DistortionReport.Of(At(Flat.HardWay, 240)).EffectiveLeg);
    }

    /// <summary>
    /// Common practice, no source: a 3/4 in leg usually bends clean at a radius of 5 in. The theory calls it doubtful if nothing backs the
    /// leg, so a shop that has not said is told to try, not to stop.
    /// </summary>
    [Fact]
    public void A_leg_of_which_nobody_says_whether_it_is_backed_asks_for_a_trial()
    {
        LoadedBend practice =
            BendAnalysis.Of(new EqualAngle(Length.FromInches(0.75), Length.FromInches(0.125), AngleFillets.Sharp).FlangeOut, Steel)
            .LoadedTo(BendRadius.Inside(Length.FromInches(5)));
        DistortionFinding finding = LegAngleCheck.Judge(practice, DistortionSettings.Default).Finding!;
        Assert.Equal(RiskLevel.Medium, finding.Level);
        Assert.Contains("Nobody says whether it is backed", finding.Sentence, StringComparison.Ordinal);
        Assert.Equal(RiskLevel.High, LegAngleCheck.Judge(practice, new(new(backsAxialLeg: false))).Finding!.Level);
        Assert.Equal(RiskLevel.Low, DistortionReport.Of(practice).Find("leg to radius")!.Level);
    }

    /// <summary>
    /// Turned by that much about the heel, the free edge has come to the neutral axis: the fibers of the leg put there by hand, strain (y −
    /// y_n)·κ.
    /// </summary>
    [Fact]
    public void Turned_by_that_much_the_edge_of_the_leg_is_unstrained()
    {
        LoadedBend rim = At(RimAngle.FlangeOut, 240);
        double turn = DistortionReport.Of(rim).TurnThatRelievesEdge!.Value.Radians;
        double StrainAt(double along) => rim.StrainAt(Length.FromMillimeters(1.5 + along * Math.Sin(turn))).DecimalFractions;
        Near.Absolute(0, StrainAt(28.5), 1e-12, "edge");
        Assert.True(StrainAt(20) < 0);
        Assert.Contains(string.Format(CultureInfo.InvariantCulture, "turned by {0:0.#}° its edge bears nothing", turn * 180 / Math.PI),
            LegAngleCheck.Judge(rim, DistortionSettings.Default).Finding!.Sentence, StringComparison.Ordinal);
        Assert.Null(DistortionReport.Of(At(Flat.HardWay, 240)).TurnThatRelievesEdge);

        // A thick leg one and a half times its thickness long: the neutral axis lies further away than its edge can go.
        LoadedBend stub =
            At(new UnequalAngle(Length.FromMillimeters(60), Length.FromMillimeters(9), Length.FromMillimeters(6), AngleFillets.Sharp).Orientations.First(way => way.Height > 0.05 && way.Features.Outstands.All(leg => leg.Direction != FlangeDirection.In)), 240);
        Assert.Null(DistortionReport.Of(stub).TurnThatRelievesEdge);
    }

    /// <summary>
    /// That turn is no bound: a straight leg that only its own stress along the ring turns, nothing resisting at the heel, comes to rest
    /// where the work ∫w(e) dx is least, w = e² elastic, |e| plastic. Least found by MathNet: 1.5 and √2 times that sine.
    /// </summary>
    [Theory]
    [InlineData(2, 1.5)]
    [InlineData(1, 1.4142135623730951)]
    public void A_leg_that_nothing_holds_turns_further(double power, double times)
    {
        double Work(double turn) =>
            Integrate.GaussLegendre(x => Math.Pow(Math.Abs(1 - turn * x), power), 0, 1 / turn, 64)
                + Integrate.GaussLegendre(x => Math.Pow(Math.Abs(1 - turn * x), power), 1 / turn, 1, 64);
        Near.Relative(times, FindMinimum.OfScalarFunctionConstrained(Work, 1.01, 3, 1e-7), 1e-4, "turn at rest");
    }

    /// <summary>
    /// With the flange in, the leg lies at the outside face, is stretched and pulled toward the center; its radius is that of its middle.
    /// </summary>
    [Fact]
    public void A_stretched_leg_is_pushed_toward_the_center()
    {
        DistortionFinding finding = LegAngleCheck.Judge(At(RimAngle.FlangeIn, 240), DistortionSettings.Default).Finding!;
        Assert.Contains("stretched and pushed toward the center", finding.Sentence, StringComparison.Ordinal);
        Near.Relative(28.5 * 28.5 / (268.5 * 3), finding.Demand, 1e-12);
    }

    private static double Strip(double ratio, int steps)
    {
        double h = 1.0 / steps;
        double foundation = 4 * 3 * (1 - 0.09) * ratio * ratio;
        int size = steps + 5;
        Matrix<double> matrix = Matrix<double>.Build.Dense(size, size);
        Vector<double> right = Vector<double>.Build.Dense(size);

        // Unknown i + 2 is u(i·h), with two points beyond either end.
        for (int i = 0; i <= steps; i++)
        {
            int row = i + 2;
            double[] fourth = [1, -4, 6, -4, 1];
            for (int k = 0; k < 5; k++)
            {
                matrix[row, row + k - 2] += fourth[k];
            }

            matrix[row, row] += foundation * h * h * h * h;
        }

        matrix.ClearRow(2);
        matrix[2, 2] = 1;
        right[2] = 1;
        (matrix[0, 1], matrix[0, 3]) = (-1, 1);

        // The field equation at the heel fixes the outermost point there, which nothing else uses.
        matrix[1, 0] = 1;
        int last = steps + 2;
        (matrix[last + 1, last - 1], matrix[last + 1, last], matrix[last + 1, last + 1]) = (1, -2, 1);
        (matrix[last + 2, last - 2], matrix[last + 2, last - 1], matrix[last + 2, last + 1], matrix[last + 2, last + 2]) = (-1, 2, -2, 1);
        Vector<double> u = matrix.Solve(right);
        return h * (u.SubVector(2, steps + 1).Sum() - (u[2] + u[last]) / 2);
    }
}
