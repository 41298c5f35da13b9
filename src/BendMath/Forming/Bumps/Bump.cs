using System.Globalization;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Forming.Bumps;

/// <summary>
/// One bump of a bender that pinches the bar between a nose and two supports: where the nose stands along the bar, and how far it closes.
/// Immutable and thread-safe.
/// </summary>
public sealed record Bump
{
    /// <summary>The largest number of bumps of one pass.</summary>
    internal const int Most = 100_000;

    /// <summary>Makes a bump.</summary>
    /// <param name="position">Place of the nose, from the start of the bar along the unbent bar, zero or more; the bar must reach both
    /// supports.</param>
    /// <param name="stroke">How far the supports advance past the line tangent to the nose, greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The position is negative or the stroke is not positive, or one is not
    /// finite.</exception>
    public Bump(Length position, Length stroke)
        : this(Guard.NonNegative(position, nameof(position)), Guard.Positive(stroke, nameof(stroke)))
    {
    }

    internal Bump(double position, double stroke)
    {
        At = position;
        Closed = stroke;
    }

    /// <summary>Place of the nose, from the start of the bar.</summary>
    public Length Position => Length.FromMeters(At);

    /// <summary>How far the supports advance past the line tangent to the nose.</summary>
    public Length Stroke => Length.FromMeters(Closed);

    internal double At { get; }

    internal double Closed { get; }

    /// <summary>Bumps of one stroke, a feed apart.</summary>
    /// <param name="first">Place of the first bump.</param>
    /// <param name="last">Place none goes beyond; not before the first.</param>
    /// <param name="feed">Distance between bumps, greater than zero.</param>
    /// <param name="stroke">Stroke of each, greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range, or there would be more than 100,000 bumps.</exception>
    public static IReadOnlyList<Bump> Pass(Length first, Length last, Length feed, Length stroke)
    {
        double from = Guard.NonNegative(first, nameof(first));
        double to = Guard.NonNegative(last, nameof(last));
        double step = Guard.Positive(feed, nameof(feed));
        double closed = Guard.Positive(stroke, nameof(stroke));
        return to < from ? throw Guard.Fault(nameof(last), last, $"must not be before the first, {Guard.MillimetersText(from)}")
            : (to - from) / step >= Most
                ? throw Guard.Fault(nameof(feed), feed, $"must make at most {Most.ToString("N0", CultureInfo.InvariantCulture)} bumps")
            : Pass(from, to, step, closed);
    }

    /// <summary>Position and stroke in millimeters.</summary>
    public override string ToString() => Invariant($"{Closed * 1e3:0.##} mm of stroke at {At * 1e3:0.##} mm");

    internal static IReadOnlyList<Bump> Pass(double from, double to, double feed, double stroke) =>
        Array.AsReadOnly(
            [.. Enumerable.Range(0, 1 + (int)((to - from) / feed * (1 + 1e-12))).Select(i => new Bump(Math.Min(to, from + i * feed), stroke))]);
}

/// <summary>What one bump did. Immutable and thread-safe.</summary>
public sealed record BumpOutcome
{
    private readonly double _moment;

    private readonly double _force;

    private readonly double _curvature;

    private readonly double _flat;

    internal BumpOutcome(Bump bump, double moment, double force, double curvature, double flat)
    {
        Bump = bump;
        _moment = moment;
        _force = force;
        _curvature = curvature;
        _flat = flat;
    }

    /// <summary>The bump.</summary>
    public Bump Bump { get; }

    /// <summary>Whether the bar touched at all; a bar that is bent enough already clears the supports.</summary>
    public bool Touches => _moment > 0;

    /// <summary>Moment under the nose, M₀.</summary>
    public Torque PeakMoment => Torque.FromNewtonMeters(_moment);

    /// <summary>Curvature under the nose while the supports are closed.</summary>
    public ReciprocalLength PeakCurvature => ReciprocalLength.FromInverseMeters(_curvature);

    /// <summary>Force of each support.</summary>
    public Force SupportForce => Force.FromNewtons(_force);

    /// <summary>Force of the nose, the sum of both supports.</summary>
    public Force NoseForce => Force.FromNewtons(2 * _force);

    /// <summary>Length of bar that lies on the nose; zero when it touches at one point.</summary>
    public Length LengthOnNose => Length.FromMeters(2 * _flat);

    internal double Moment => _moment;

    /// <summary>Bump and nose force.</summary>
    public override string ToString() => Invariant($"{Bump}: {(Touches ? Invariant($"nose force {2 * _force:0} N") : "the bar clears")}");
}
