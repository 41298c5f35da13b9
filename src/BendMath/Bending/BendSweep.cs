using BendMath.Bending;
using BendMath.Evidence;
using BendMath.Guards;
using BendMath.Numerics.Geometry;
using UnitsNet;

namespace BendMath;

/// <summary>
/// One section and law over many radii, for plots, sliders and optimizers: plain numbers in meters and newton-meters in and out, nothing
/// allocated. Each point starts from its neighbor, so radii in order are fastest; any order gives the same answers to rounding. Immutable
/// and thread-safe.
/// </summary>
public sealed class BendSweep
{
    private readonly BendAnalysis _analysis;

    private BendSweep(BendAnalysis analysis) => _analysis = analysis;

    private BandProfile Profile => _analysis.Section.Profile;

    /// <summary>A sweep of an analysis.</summary>
    /// <param name="analysis">Section and material.</param>
    /// <exception cref="ArgumentNullException">The analysis is null.</exception>
    public static BendSweep Of(BendAnalysis analysis) => new(Guard.NotNull(analysis, nameof(analysis)));

    /// <summary>Finished inside radii from loaded inside radii, at the centroid's axial position.</summary>
    /// <param name="loadedMeters">Loaded inside radii in meters, each in the range of <see cref="BendRadius"/>.</param>
    /// <param name="finishedMeters">Receives the finished inside radii in meters, positive infinity where the bar springs back straight.
    /// May be the same memory.</param>
    /// <param name="release">How the bar is let go.</param>
    /// <exception cref="ArgumentException">There are fewer places than radii.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A radius is outside its range, or the release is not a defined value. Places before
    /// the bad radius are written.</exception>
    /// <remarks>
    /// Equation: as <see cref="BendAnalysis.LoadedTo(BendRadius)"/> and <see cref="LoadedBend.Release(Release)"/>.
    /// Range: any radius.
    /// Source: <see cref="Sources.Mechanics"/>
    /// </remarks>
    public void FinishedRadii(ReadOnlySpan<double> loadedMeters, Span<double> finishedMeters, Release release)
    {
        bool free = Guard.Defined(release, nameof(release)) == Release.Free;
        Room(finishedMeters, loadedMeters.Length, nameof(finishedMeters));
        ref readonly AreaMoments m = ref Profile.Moments;
        AxisTrack track = new(_analysis);
        for (int i = 0; i < loadedMeters.Length; i++)
        {
            double inside = Radius(loadedMeters[i], nameof(loadedMeters), i);
            double axis = track.AxisAt(inside);
            double curvature = 1 / (inside + axis);
            BentState state = new(curvature, axis, _analysis.Law.MomentsOf(Profile, curvature, axis));
            (double f, double r) = state.Left(m, free, _analysis.Unloading);
            double total = Math.Sqrt(f * f + r * r);
            finishedMeters[i] = total < HeldFlat.StraightRatio * curvature
                ? double.PositiveInfinity
                : (1 + state.Stretch(m, _analysis.Unloading) - f * m.CentroidY) / total;
        }
    }

    /// <summary>Loaded inside radii that leave finished inside radii: the inverse of <see cref="FinishedRadii"/>.</summary>
    /// <param name="finishedMeters">Finished inside radii in meters, each in the range of <see cref="BendRadius"/>.</param>
    /// <param name="loadedMeters">Receives the loaded inside radii in meters. May be the same memory.</param>
    /// <param name="release">How the bar is let go.</param>
    /// <exception cref="ArgumentException">There are fewer places than radii.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A radius is outside its range or tighter than the tightest bend leaves, or the release
    /// is not a defined value. Places before the bad radius are written.</exception>
    /// <remarks>
    /// Equation: as <see cref="BendAnalysis.LoadedFor(BendRadius, Release)"/>.
    /// Range: as <see cref="BendAnalysis.LoadedFor(BendRadius, Release)"/>.
    /// Source: <see cref="Sources.Mechanics"/>
    /// </remarks>
    public void LoadedRadii(ReadOnlySpan<double> finishedMeters, Span<double> loadedMeters, Release release)
    {
        bool free = Guard.Defined(release, nameof(release)) == Release.Free;
        Room(loadedMeters, finishedMeters.Length, nameof(loadedMeters));
        for (int i = 0; i < finishedMeters.Length; i++)
        {
            double wanted = Radius(finishedMeters[i], nameof(finishedMeters), i);
            loadedMeters[i] = _analysis.StateForFinished(wanted, 0, free) is { } state
                ? state.InsideRadius
                : throw Fault(nameof(finishedMeters), i, wanted, "must be wider than the ring the tightest possible bend leaves");
        }
    }

    /// <summary>Neutral axes, measured from the inside face, at loaded inside radii.</summary>
    /// <param name="loadedMeters">Loaded inside radii in meters, each in the range of <see cref="BendRadius"/>.</param>
    /// <param name="axisMeters">Receives the distances y_n in meters. May be the same memory.</param>
    /// <exception cref="ArgumentException">There are fewer places than radii.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A radius is outside its range. Places before it are written.</exception>
    public void NeutralAxes(ReadOnlySpan<double> loadedMeters, Span<double> axisMeters)
    {
        Room(axisMeters, loadedMeters.Length, nameof(axisMeters));
        AxisTrack track = new(_analysis);
        for (int i = 0; i < loadedMeters.Length; i++)
        {
            axisMeters[i] = track.AxisAt(Radius(loadedMeters[i], nameof(loadedMeters), i));
        }
    }

    /// <summary>Bending moments while loaded to inside radii.</summary>
    /// <param name="loadedMeters">Loaded inside radii in meters, each in the range of <see cref="BendRadius"/>.</param>
    /// <param name="momentNewtonMeters">Receives the bending moments M_b in newton-meters. May be the same memory.</param>
    /// <exception cref="ArgumentException">There are fewer places than radii.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A radius is outside its range. Places before it are written.</exception>
    public void BendingMoments(ReadOnlySpan<double> loadedMeters, Span<double> momentNewtonMeters)
    {
        Room(momentNewtonMeters, loadedMeters.Length, nameof(momentNewtonMeters));
        ref readonly AreaMoments m = ref Profile.Moments;
        AxisTrack track = new(_analysis);
        for (int i = 0; i < loadedMeters.Length; i++)
        {
            double inside = Radius(loadedMeters[i], nameof(loadedMeters), i);
            double axis = track.AxisAt(inside);
            double curvature = 1 / (inside + axis);
            momentNewtonMeters[i] = _analysis.Law.E * (curvature * m.SecondY - _analysis.Law.MomentsOf(Profile, curvature, axis).Pb);
        }
    }

    /// <summary>Section and material.</summary>
    public override string ToString() => $"sweep of {_analysis}";

    private static void Room(ReadOnlySpan<double> places, int wanted, string name)
    {
        if (places.Length < wanted)
        {
            throw Guard.Refused(name, $"must have a place for each of the {wanted} radii", $"has {places.Length}");
        }
    }

    private static double Radius(double meters, string name, int index) =>
        meters is >= Guard.LeastMeters and <= Guard.MostMeters ? meters
            : throw Fault(name, index, meters, "must be between 0.001 mm and 1000 km");

    private static ArgumentOutOfRangeException Fault(string name, int index, double meters, string rule) => new(
        name, $"{name}: radius {index + 1} {rule}, but is {Guard.MillimetersText(meters)}.");

    /// <summary>Neutral axes along a sweep, each started on the line through the two before it.</summary>
    private struct AxisTrack(BendAnalysis analysis)
    {
        private double _radius = double.NaN;

        private double _axis;

        private double _slope;

        public double AxisAt(double inside)
        {
            double step = inside - _radius;
            double guess = Math.Abs(step) < inside ? _axis + _slope * step : analysis.FirstGuess;
            double axis = AxialBalance.AxisAtRadius(analysis.Section.Profile, analysis.Law, inside, guess);
            _slope = Math.Abs(step) > 0 && Math.Abs(step) < inside ? (axis - _axis) / step : 0;
            _axis = axis;
            _radius = inside;
            return axis;
        }
    }
}
