using BendMath.Evidence;
using BendMath.Guards;
using BendMath.Sections.Outlines;
using UnitsNet;

namespace BendMath.Forming.Bumps;

/// <summary>
/// A bar after bumps, let go and held flat: its permanent curvature from place to place, what each bump took, its shape in the plane.
/// Places count along the unbent bar from its start. Immutable and thread-safe.
/// </summary>
public sealed class BumpedBar
{
    private readonly BumpBending _model;

    private readonly BumpEquilibrium _equilibrium;

    private readonly MomentEnvelope _bar;

    private readonly BumpShape _shape;

    private readonly double _mean;

    private IReadOnlyList<Advisory>? _advisories;

    private BumpedBar(BumpBending model, BendAnalysis analysis, BumpEquilibrium equilibrium, MomentEnvelope bar, BumpOutcome[] outcomes)
    {
        _model = model;
        Analysis = analysis;
        _equilibrium = equilibrium;
        _bar = bar;
        Outcomes = Array.AsReadOnly(outcomes);
        First = outcomes.Length > 0 ? outcomes.Min(outcome => outcome.Bump.At) : 0;
        Last = outcomes.Length > 0 ? outcomes.Max(outcome => outcome.Bump.At) : bar.Length;
        _mean = Last > First ? bar.Turn(First, Last) / (Last - First) : bar.Permanent(First);
        _shape = new(bar, analysis.Moments.CentroidY, analysis.Section.Height);
        (Leading, Trailing) = _shape.Tails(_mean, First, Last);
    }

    /// <summary>The model that bent it.</summary>
    public FormingModel Model => _model;

    /// <summary>Section and material.</summary>
    public BendAnalysis Analysis { get; }

    /// <summary>What each bump did, in their order, from the straight bar on.</summary>
    public IReadOnlyList<BumpOutcome> Outcomes { get; }

    /// <summary>Length of the bar.</summary>
    public Length BarLength => Length.FromMeters(_bar.Length);

    /// <summary>Mean permanent curvature from the first place bumped to the last.</summary>
    public ReciprocalLength MeanCurvature => ReciprocalLength.FromInverseMeters(_mean);

    /// <summary>Length at the start that stays nearly straight: where the curvature first reaches half its mean.</summary>
    public Length LeadingTail => Length.FromMeters(Leading);

    /// <summary>Length at the end that stays nearly straight.</summary>
    public Length TrailingTail => Length.FromMeters(_bar.Length - Trailing);

    /// <summary>Whether nothing stayed of the bumps: the bar was bent elastically only.</summary>
    public bool IsStraight => _mean == 0;

    /// <summary>
    /// Mean permanent curvature around the place of the first bite, from whichever end the pass began, half the way to the next to either
    /// side, over the mean of what was bumped a half-span and more away: the kink of a first bite at full stroke, 1 without one. Null where
    /// no place so far away was bumped or nothing stayed there.
    /// </summary>
    /// <remarks>
    /// The curvature at the very place of a bump would not do: without hardening the moment there is the same for a sharp kink and an even
    /// ring, and only the turn tells them apart.
    /// </remarks>
    public double? FirstBiteKink
    {
        get
        {
            double a = _equilibrium.HalfSpan;
            double bite = Outcomes.Count > 0 ? Outcomes[0].Bump.At : First;
            double before = Math.Max(First, bite - a);
            double after = Math.Min(Last, bite + a);
            double turn = _bar.Turn(First, before) + _bar.Turn(after, Last);
            double next = Outcomes.Select(outcome => Math.Abs(outcome.Bump.At - bite)).Where(away => away > 0).DefaultIfEmpty(0).Min();
            double half = Math.Min(next / 2, a);
            return turn > 0 ? _bar.Turn(bite - half, bite + half) / (2 * half) / (turn / (before - First + Last - after)) : null;
        }
    }

    /// <summary>What is doubtful about this bar.</summary>
    public IReadOnlyList<Advisory> Advisories => _advisories ??= [.. Doubts()];

    internal double First { get; }

    internal double Last { get; }

    internal double Leading { get; }

    internal double Trailing { get; }

    /// <summary>Number of corners in which the state is kept.</summary>
    internal int Corners => _bar.Count;

    /// <summary>The same bar bumped further: a second, tighter pass, or corrections here and there.</summary>
    /// <param name="bumps">Up to 100,000 bumps in their order; each needs bar under both supports.</param>
    /// <exception cref="ArgumentNullException">The list is null.</exception>
    /// <exception cref="ArgumentException">A bump is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A bump has no bar under a support, closes too far, or there are too many.</exception>
    public BumpedBar Again(IReadOnlyList<Bump> bumps)
    {
        Bump[] list = Guard.Items(bumps, nameof(bumps), 0);
        if (list.Length > Bump.Most)
        {
            throw Guard.Fault(nameof(bumps), list.Length, "must hold at most 100,000");
        }

        foreach (Bump bump in list)
        {
            Check(bump);
        }

        MomentEnvelope bar = new(_bar);
        BumpMomentDiagram[] tents = new BumpMomentDiagram[list.Length];
        double[] permanent = new double[list.Length];
        bar.Reserve(list.Length);
        Run(bar, list, tents, permanent);
        return new(_model, Analysis, _equilibrium, bar, [.. Outcomes, .. list.Select((bump, i) => Outcome(bump, tents[i], permanent[i]))]);
    }

    /// <summary>Permanent curvature at a place.</summary>
    /// <param name="position">From the start along the unbent bar; from zero to the length of the bar.</param>
    /// <exception cref="ArgumentOutOfRangeException">The place is not on the bar.</exception>
    public ReciprocalLength PermanentCurvatureAt(Length position) =>
        ReciprocalLength.FromInverseMeters(_bar.Permanent(Place(position, nameof(position))));

    /// <summary>Turn of the bar from one place to another: the integral of its permanent curvature.</summary>
    /// <param name="from">From the start along the unbent bar.</param>
    /// <param name="to">Not before <paramref name="from"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A place is not on the bar, or they are in the wrong order.</exception>
    public Angle TurnBetween(Length from, Length to)
    {
        double start = Place(from, nameof(from));
        double end = Place(to, nameof(to));
        return end >= start ? Angle.FromRadians(_bar.Turn(start, end))
            : throw Guard.Fault(nameof(to), to, $"must not be before {Guard.MillimetersText(start)}");
    }

    /// <summary>The even ring that turns as much as a stretch of the bar: the mean radius.</summary>
    /// <param name="from">From the start along the unbent bar.</param>
    /// <param name="to">After <paramref name="from"/>.</param>
    /// <returns>The ring, or null where that stretch is straight.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A place is not on the bar, or they are in the wrong order.</exception>
    public FinishedRing? MeanRing(Length from, Length to)
    {
        double start = Place(from, nameof(from));
        double end = Place(to, nameof(to));
        return end > start
            ? LoadedLeaving(Analysis, _bar.Turn(start, end) / (end - start))?.Release(Release.HeldFlat).Ring
            : throw Guard.Fault(nameof(to), to, $"must be after {Guard.MillimetersText(start)}");
    }

    /// <summary>
    /// How far the bar bulges between places of bumps, from valley to ridge of the deviation from an even curve that turns as much.
    /// </summary>
    /// <param name="from">A place of a bump.</param>
    /// <param name="to">A place of a later bump along the bar.</param>
    /// <exception cref="ArgumentOutOfRangeException">A place is not on the bar, or they are in the wrong order.</exception>
    public Length FacetRiseBetween(Length from, Length to)
    {
        double start = Place(from, nameof(from));
        double end = Place(to, nameof(to));
        return end > start ? Length.FromMeters(BumpShape.FacetRise(_bar, start, end))
            : throw Guard.Fault(nameof(to), to, $"must be after {Guard.MillimetersText(start)}");
    }

    /// <summary>The finished bar as a plane curve: the start lies at the origin and points along x, the bar turns toward y.</summary>
    /// <param name="line">The line of the bar.</param>
    /// <param name="count">Number of points, evenly spaced along the unbent bar, both ends included; from 2 to 100,000.</param>
    /// <exception cref="ArgumentOutOfRangeException">The line is not a defined value or the count is outside its range.</exception>
    public IReadOnlyList<OutlinePoint> Points(RadiusReference line, int count)
    {
        Guard.Defined(line, nameof(line));
        return count is >= 2 and <= Bump.Most
            ? Array.AsReadOnly(_shape.Points(line, count))
            : throw Guard.Fault(nameof(count), count, "must be from 2 to 100,000");
    }

    /// <summary>
    /// Where to cut the tails: after the leading tail, and where the bar has turned once around from there or, failing that, before the
    /// trailing tail.
    /// </summary>
    public RingTrim Trim() => _shape.Trim(Leading, Trailing, _mean);

    /// <summary>The same from a place of one's choice, such as beyond a kink.</summary>
    /// <param name="start">Place of the first cut, before the trailing tail.</param>
    /// <exception cref="ArgumentOutOfRangeException">The place is not on the bar or in the trailing tail.</exception>
    public RingTrim TrimFrom(Length start)
    {
        double from = Place(start, nameof(start));
        return from < Trailing ? _shape.Trim(from, Trailing, _mean)
            : throw Guard.Fault(nameof(start), start, $"must be before the trailing tail, {Guard.MillimetersText(Trailing)}");
    }

    /// <summary>Bumps and mean radius.</summary>
    public override string ToString() =>
        IsStraight ? Invariant($"{Analysis.Section} after {Counted.Text(Outcomes.Count, "bump")}: straight")
            : Invariant(
                $"{Analysis.Section} after {Counted.Text(Outcomes.Count, "bump")}: mean radius {1e3 / _mean:0.##} mm where it keeps its "
                    + $"length");

    internal static BumpedBar Straight(BumpBending model, BendAnalysis analysis, BumpEquilibrium equilibrium, double length) =>
        new(model, analysis, equilibrium, new MomentEnvelope(equilibrium.Curve, length), []);

    /// <summary>The loaded state that leaves a curvature, held flat; null for none.</summary>
    internal static LoadedBend? LoadedLeaving(BendAnalysis analysis, double permanent)
    {
        // No bar bends further than this.
        double Tightest() => analysis.StateAtRadius(analysis.Section.TightestRadius).Curvature;
        return permanent > 0 && analysis.Curve.Leaving(permanent, Tightest) is { } curvature
            ? new(analysis, analysis.StateNear(analysis.Curve.At(curvature))) : null;
    }

    /// <summary>
    /// The inner loop: allocates nothing. Hands out the moments and the curvature that stays under the nose of each bump.
    /// </summary>
    internal void Run(MomentEnvelope bar, ReadOnlySpan<Bump> bumps, Span<BumpMomentDiagram> tents, Span<double> permanent)
    {
        double guess = _equilibrium.LargestMoment / 2;
        for (int i = 0; i < bumps.Length; i++)
        {
            double center = Math.Min(Math.Max(bumps[i].At, _equilibrium.HalfSpan), bar.Length - _equilibrium.HalfSpan);
            BumpMomentDiagram tent = _equilibrium.Tent(bar, center, _model.Setup.NominalOf(bumps[i].Closed), guess);
            tents[i] = tent;
            if (tent.Peak > 0)
            {
                guess = tent.Peak;
                bar.Raise(center, tent);
            }

            permanent[i] = bar.Permanent(center);
        }
    }

    private BumpOutcome Outcome(Bump bump, in BumpMomentDiagram tent, double permanent) =>
        new(bump, tent.Peak, tent.SupportForce, permanent + tent.Peak / _equilibrium.Curve.Stiffness, tent.Flat);

    private void Check(Bump bump)
    {
        _model.CheckedStroke(_equilibrium, bump.Stroke, "bumps");
        double a = _equilibrium.HalfSpan;
        double slack = 1e-12 * _bar.Length;
        if (bump.At < a - slack || bump.At > _bar.Length - a + slack)
        {
            throw Guard.Fault("bumps", bump.Position,
                $"must have bar under both supports, from {Guard.MillimetersText(a)} to {Guard.MillimetersText(_bar.Length - a)}");
        }
    }

    private double Place(Length position, string name)
    {
        double s = Guard.NonNegative(position, name);
        return s <= _bar.Length * (1 + 1e-12) ? Math.Min(s, _bar.Length)
            : throw Guard.Fault(name, position, $"must not be beyond the end of the bar, {Guard.MillimetersText(_bar.Length)}");
    }

    private IEnumerable<Advisory> Doubts()
    {
        double stroke = Outcomes.Count > 0 ? Outcomes.Max(outcome => outcome.Bump.Closed) : 0;
        foreach (Advisory advisory in _model.Validity(Analysis, stroke, Outcomes.Any(outcome => outcome.LengthOnNose.Meters > 0), _mean))
        {
            yield return advisory;
        }

        if (FirstBiteKink is > 1.5 and { } kink)
        {
            yield return new("first-bite-kink",
                Invariant(
                    $"The first bite leaves a kink of {kink:0.#} times the curvature further on: take lighter first bites, or cut it off."),
                        Sources.FormingModels);
        }

        foreach (Advisory advisory in _model.EvidenceFor(Analysis))
        {
            yield return advisory;
        }
    }
}
