using BendMath.Numerics;

namespace BendMath.Bending.MomentCurves;

/// <summary>How a piece of a moment table maps its variable u in [−1, 1] to t = ln κ̂.</summary>
internal enum PieceMap
{
    /// <summary>In proportion.</summary>
    Even,

    /// <summary>By the square of the distance from its lower end, where the table has the root of a round corner.</summary>
    RootAtStart,

    /// <summary>By the square of the distance from its upper end.</summary>
    RootAtEnd,
}

/// <summary>
/// A stretch of ln κ̂ along which the held-flat states of a section are smooth: neutral axis, share of the curvature that stays, and the
/// same for the moment about the radial axis, as polynomials. Integrals over it are taken from the polynomials when first asked for.
/// Immutable and thread-safe.
/// </summary>
internal sealed class MomentPiece(double start, double end, PieceMap map, double[] axis, double[] share, double[]? mixed)
{
    private double[]? _work;

    private PlasticIntegrals? _plastic;

    public double Start { get; } = start;

    public double End { get; } = end;

    /// <summary>∫m² dκ̂ from the start.</summary>
    public double Work(double t) =>
        Chebyshev.Value(_work ??= Integral((share, curvature) => curvature * curvature * curvature * (1 - share.Value) * (1 - share.Value)),
            PlaceOf(t));

    /// <summary>∫κ̂_p dm and ∫κ̂_p·m dm from the start.</summary>
    public (double First, double Second) Plastic(double t)
    {
        PlasticIntegrals plastic = _plastic ??= new(
            Integral((share, curvature) => curvature * curvature * share.Value * (1 - share.Value - share.Slope)),
            Integral(
                (share, curvature) =>
                    curvature * curvature * curvature * share.Value * (1 - share.Value) * (1 - share.Value - share.Slope)));
        double u = PlaceOf(t);
        return (Chebyshev.Value(plastic.First, u), Chebyshev.Value(plastic.Second, u));
    }

    /// <summary>y_n and dy_n/dt.</summary>
    public (double Value, double Slope) Axis(double t) => Over(axis, t);

    /// <summary>κ_p/κ and its derivative over t.</summary>
    public (double Value, double Slope) Share(double t) => Over(share, t);

    /// <summary>∫e_p·(z − z̄) dA over κ·I_b.</summary>
    public double Mixed(double t) => mixed is null ? 0 : Chebyshev.Value(mixed, PlaceOf(t));

    /// <summary>t and dt/du.</summary>
    public static (double T, double Slope) At(double start, double end, PieceMap map, double u)
    {
        double width = end - start;
        double v = (1 + u) / 2;
        return map switch
        {
            PieceMap.Even => (start + width * v, width / 2),
            PieceMap.RootAtStart => (start + width * v * v, width * v),
            _ => (end - width * (1 - v) * (1 - v), width * (1 - v)),
        };
    }

    private double PlaceOf(double t)
    {
        double share = Math.Min(1, Math.Max(0, (t - Start) / (End - Start)));
        return map switch
        {
            PieceMap.Even => 2 * share - 1,
            PieceMap.RootAtStart => 2 * Math.Sqrt(share) - 1,
            _ => 1 - 2 * Math.Sqrt(1 - share),
        };
    }

    private (double Value, double Slope) Over(double[] series, double t)
    {
        double u = PlaceOf(t);
        (double value, double slope) = Chebyshev.ValueAndSlope(series, u);
        double rate = At(Start, End, map, u).Slope;
        return (value, rate > 0 ? slope / rate : 0);
    }

    /// <summary>The antiderivative over t of a function of the share with its slope, and of κ̂.</summary>
    private double[] Integral(Func<(double Value, double Slope), double, double> function)
    {
        Span<double> values = stackalloc double[Chebyshev.Count];
        for (int k = 0; k < values.Length; k++)
        {
            (double t, double rate) = At(Start, End, map, Chebyshev.Points[k]);
            (double value, double slope) = Chebyshev.ValueAndSlope(share, Chebyshev.Points[k]);
            values[k] = rate * function((value, slope / rate), Math.Exp(t));
        }

        return Chebyshev.Antiderivative(values);
    }

    private sealed record PlasticIntegrals(double[] First, double[] Second);
}
