using BendMath.Guards;

namespace BendMath.Learning;

/// <summary>
/// One ratio or a line: a line only from rings enough on dies enough, and only when it predicts left-out rings clearly better.
/// </summary>
internal static class FitChoice
{
    public static (LeastSquares Fit, string Reason) Of(IReadOnlyList<double> x, IReadOnlyList<double> y, IReadOnlyList<double> stamps,
        bool? asked)
    {
        LeastSquares ratio = new(x, y, sloped: false);
        if (asked is { } sloped)
        {
            return (sloped ? new(x, y, sloped: true) : ratio, "The form was asked for.");
        }

        int dies = stamps.Distinct().Count();
        if (x.Count < RingFit.LeastRingsForLine || dies < RingFit.LeastDiesForLine || Spread(x) is null)
        {
            return (ratio,
                Invariant(
                    $"One ratio for every radius: a line is tried from {RingFit.LeastRingsForLine} rings on {RingFit.LeastDiesForLine} "
                        + $"dies on (a setting), and there {(x.Count == 1 ? "is" : "are")} {Counted.Text(x.Count, "ring")} on {Counted.Text(dies, "die")}."));
        }

        LeastSquares line = new(x, y, sloped: true);
        double before = ratio.LeaveOneOutError!.Value;
        double? after = line.LeaveOneOutError;
        bool better = after <= RingFit.LineGain.DecimalFractions * before && before > 1e-12;
        return (better ? line : ratio,
            better
                ? Invariant(
                    $"A line in the radius: it predicts each ring from the others to {100 * after:0.00} %, one ratio only "
                        + $"to {100 * before:0.00} %.")
                            : Invariant(
                                $"One ratio for every radius: a line predicts each ring from the others to {100 * after:0.00} %, one "
                                    + $"ratio to {100 * before:0.00} %, and a line is taken only from {RingFit.LineGain.Percent:0} % of "
                                    + $"that down (a setting)."));
    }

    /// <summary>Largest less smallest value, or null when they do not differ.</summary>
    public static double? Spread(IEnumerable<double> x)
    {
        double[] all = [.. x];
        double spread = all.Max() - all.Min();
        return spread > 1e-9 * all.Max() ? spread : null;
    }
}
