using BendMath.Evidence;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Learning;

/// <summary>
/// The fiber that keeps its length, from rings whose bar was measured before and after, beside what the material model says. Immutable and
/// thread-safe.
/// </summary>
/// <remarks>
/// Equation: n = L₀/θ − R_inside of each ring; their mean n̄, their scatter s = √(∑(n − n̄)²/(k − 1)), and n̄ ± t·s·√(1 + 1/k) for the next
/// ring.
/// Range: rings of the same bar, lying the same way.
/// Source: <see cref="Sources.WeisbergRegression"/>
/// </remarks>
public sealed class LengthPreservingFiber
{
    private readonly LeastSquares _fit;

    private readonly double _modeled;

    private LengthPreservingFiber(OrientedSection section, IReadOnlyList<MeasuredRing> rings)
    {
        Section = section;
        Rings = rings;
        double[] fibers = [.. rings.Select(ring => ring.KeptFiberFromInside!.Value.Meters)];
        _fit = new(new double[fibers.Length], fibers, sloped: false);
        _modeled = rings.Average(ring => ring.Ring.Fiber);
        Lowest = Length.FromMeters(fibers.Min());
        Highest = Length.FromMeters(fibers.Max());
    }

    /// <summary>The bar.</summary>
    public OrientedSection Section { get; }

    /// <summary>The rings with a marked length.</summary>
    public IReadOnlyList<MeasuredRing> Rings { get; }

    /// <summary>Mean distance of the fiber from the inside face, as measured.</summary>
    public Length FromInside => Length.FromMeters(_fit.Center);

    /// <summary>Least distance measured.</summary>
    public Length Lowest { get; }

    /// <summary>Greatest distance measured.</summary>
    public Length Highest { get; }

    /// <summary>Standard deviation of the measured distances; null with one ring.</summary>
    public Length? Scatter => _fit.Deviation is { } s ? Length.FromMeters(s) : null;

    /// <summary>Where the fiber of the next ring lies, 95 of 100 times; null where no scatter is known.</summary>
    public LengthRange? Interval => _fit.PredictionError(0) is { } error && error > 1e-12
        ? new(Length.FromMeters(_fit.Center - Reach(error)), Length.FromMeters(_fit.Center + Reach(error)))
        : null;

    /// <summary>Mean distance the material model says for the same rings.</summary>
    public Length ModeledFromInside => Length.FromMeters(_modeled);

    /// <summary>The comparison in a sentence.</summary>
    public string Sentence =>
        Invariant(
            $"By {Counted.Text(Rings.Count, "measured ring")} the fiber that keeps its length lies {_fit.Center * 1e3:0.00} mm from the "
                + $"inside face{(Rings.Count == 1 ? " (one ring shows no scatter)" : Invariant($" ({Lowest.Millimeters:0.00} to {Highest.Millimeters:0.00} mm)"))}; the material model says {_modeled * 1e3:0.00} mm, {2e3 * Math.PI * Math.Abs(_modeled - _fit.Center):0.0} mm {(_modeled >= _fit.Center ? "longer" : "shorter")} on a full ring.");

    /// <summary>Reads the fiber off the rings of a bar that have a marked length.</summary>
    /// <param name="rings">Measured rings.</param>
    /// <param name="section">The bar in its orientation.</param>
    /// <returns>The fiber, or null when no ring of this bar has a marked length.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">A ring is null.</exception>
    public static LengthPreservingFiber? Of(IReadOnlyList<MeasuredRing> rings, OrientedSection section)
    {
        Guard.Items(rings, nameof(rings), 0);
        Guard.NotNull(section, nameof(section));
        MeasuredRing[] marked = [.. rings.Where(ring => ring.Marked is not null && ring.IsOf(section))];
        return marked.Length == 0 ? null : new(section, Array.AsReadOnly(marked));
    }

    /// <summary>Length of straight bar for an arc of a ring, by the measured fiber.</summary>
    /// <param name="ring">The ring.</param>
    /// <param name="arc">Turn of the arc, greater than zero; 360° for a full ring.</param>
    /// <exception cref="ArgumentNullException">The ring is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The angle is not positive and finite, or the measured fiber lies beyond the axis of
    /// the ring.</exception>
    /// <remarks>
    /// Equation: L₀ = θ·(R_inside + n̄).
    /// Range: rings of about the measured radii.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public Length BlankLengthFor(FinishedRing ring, Angle arc)
    {
        double radius = Guard.NotNull(ring, nameof(ring)).Inside + _fit.Center;
        double turn = Guard.Positive(arc, nameof(arc));
        return radius > 0
            ? Length.FromMeters(turn * radius)
            : throw Guard.Fault(nameof(ring), ring.InsideRadius,
                $"must be wider than the measured fiber lies inside of it, {Guard.Text(-FromInside)}");
    }

    /// <summary>The sentence.</summary>
    public override string ToString() => Sentence;

    private double Reach(double error) => LeastSquares.Quantile(_fit.Freedom, DiePrediction.Confidence.DecimalFractions) * error;
}
