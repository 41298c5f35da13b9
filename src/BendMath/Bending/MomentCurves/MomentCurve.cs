using BendMath.Numerics;
using BendMath.Numerics.Geometry;

namespace BendMath.Bending.MomentCurves;

/// <summary>A point of the moment–curvature curve: y_n, m = M/(E·I_b) = κ − κ_p, and their derivatives over κ.</summary>
internal readonly struct MomentPoint(double curvature, double axis, double axisSlope, double moment, double momentSlope)
{
    public double Curvature { get; } = curvature;

    public double Axis { get; } = axis;

    public double AxisSlope { get; } = axisSlope;

    public double Moment { get; } = moment;

    public double MomentSlope { get; } = momentSlope;

    /// <summary>κ_p, held flat.</summary>
    public double Permanent => Curvature - Moment;
}

/// <summary>
/// The moment–curvature curve of a section of a material, held flat without axial force, first loading: a <see cref="MomentTable"/> with
/// the law's strain of reference put back. For searches that ask hundreds of times; it differs from the exact states by about 1e-12.
/// Immutable and thread-safe.
/// </summary>
internal sealed class MomentCurve(MomentTable table, double reference)
{
    private readonly double _logReference = Math.Log(reference);

    public MomentTable Table => table;

    public MomentPoint At(double curvature)
    {
        double t = Place(curvature);
        if (table.PieceAt(t) is not { } piece)
        {
            return new(curvature, table.Moments.CentroidY, 0, curvature, 1);
        }

        (double axis, double axisSlope) = piece.Axis(t);
        (double share, double shareSlope) = piece.Share(t);
        return new(curvature, axis, axisSlope / curvature, curvature * (1 - share), 1 - share - shareSlope);
    }

    /// <summary>∫₀^κ m² dκ.</summary>
    public double Work(double curvature) => reference * reference * reference * table.Work(Place(curvature));

    /// <summary>∫κ_p dm and ∫κ_p·m dm up to a curvature.</summary>
    public (double First, double Second) Plastic(double curvature)
    {
        (double first, double second) = table.Plastic(Place(curvature));
        double square = reference * reference;
        return (square * first, square * reference * second);
    }

    /// <summary>The state at a curvature.</summary>
    public BentState StateAt(double curvature)
    {
        double t = Place(curvature);
        ref readonly AreaMoments m = ref table.Moments;
        if (table.PieceAt(t) is not { } piece)
        {
            return new(curvature, m.CentroidY, default);
        }

        double axis = piece.Axis(t).Value;
        double stiffness = curvature * m.SecondY;
        return new(curvature, axis,
            new(curvature * m.Area * (m.CentroidY - axis), stiffness * piece.Share(t).Value, stiffness * piece.Mixed(t)));
    }

    /// <summary>The curvature at an inside radius: κ·(R + y_n) = 1. Bracket: y_n lies in the section.</summary>
    public double AtRadius(double insideRadius, double height)
    {
        RadiusBalance balance = new(this, insideRadius);
        return Newton.Root(ref balance, 1 / (insideRadius + height), 1 / insideRadius, 1 / (insideRadius + table.Moments.CentroidY),
            rises: true, 2e-16);
    }

    /// <summary>The curvature under a moment m that is reached at a given curvature or before.</summary>
    public double UnderMoment(double moment, double high)
    {
        if (moment <= reference * table.FirstYield)
        {
            return moment;
        }

        MomentBalance balance = new(this, moment);
        return Newton.Root(ref balance, moment, high * (1 + 1e-12), high, rises: true, 1e-16);
    }

    /// <summary>
    /// The curvature that leaves a permanent one, held flat; null where it lies beyond a bound, which is asked for only when a few times as
    /// much curvature does not do.
    /// </summary>
    public double? Leaving(double permanent, Func<double> most)
    {
        // κ_p rises with κ, and below it.
        PermanentBalance balance = new(this, permanent);
        double low = permanent;
        double high = 1.5 * permanent + reference * table.FirstYield;
        for (int i = 0; balance.At(high).Value < 0; i++)
        {
            double bound = i < 2 ? double.PositiveInfinity : most();
            if (high >= bound)
            {
                return null;
            }

            low = high;
            high = Math.Min(bound, 2 * high);
        }

        return Newton.Root(ref balance, low, high, (low + high) / 2, rises: true, 1e-15);
    }

    private double Place(double curvature) => Math.Log(curvature) - _logReference;

    private readonly struct RadiusBalance(MomentCurve curve, double radius) : IDifferentiable
    {
        public (double Value, double Slope) At(double x)
        {
            MomentPoint point = curve.At(x);
            return (x * (radius + point.Axis) - 1, radius + point.Axis + x * point.AxisSlope);
        }
    }

    private readonly struct MomentBalance(MomentCurve curve, double moment) : IDifferentiable
    {
        public (double Value, double Slope) At(double x)
        {
            MomentPoint point = curve.At(x);
            return (point.Moment / moment - 1, point.MomentSlope / moment);
        }
    }

    private readonly struct PermanentBalance(MomentCurve curve, double permanent) : IDifferentiable
    {
        public (double Value, double Slope) At(double x)
        {
            MomentPoint point = curve.At(x);
            return (point.Permanent / permanent - 1, (1 - point.MomentSlope) / permanent);
        }
    }
}
