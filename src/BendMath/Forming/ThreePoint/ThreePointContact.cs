using BendMath.Evidence;
using UnitsNet;

namespace BendMath.Forming.ThreePoint;

/// <summary>Contacts and forces of a bar pinched between a nose and two supports, in the steady state. Immutable and thread-safe.</summary>
public sealed record ThreePointContact
{
    private readonly double _halfSpan;

    private readonly double _stroke;

    private readonly double _nominal;

    private readonly double _shift;

    private readonly double _moment;

    private readonly double _facet;

    private readonly double _give;

    internal ThreePointContact(double halfSpan, double stroke, double nominalCurvature, double shift, double moment, bool wrapsNose,
        double facetRise = 0, double give = 0)
    {
        _give = give;
        _halfSpan = halfSpan;
        _stroke = stroke;
        _nominal = nominalCurvature;
        _shift = shift;
        _moment = moment;
        _facet = facetRise;
        WrapsNose = wrapsNose;
    }

    /// <summary>Distance from the nose to each support, along the bar.</summary>
    public Length HalfSpan => Length.FromMeters(_halfSpan);

    /// <summary>How far the supports advance past the line tangent to the nose, while they bear on the bar.</summary>
    public Length Stroke => Length.FromMeters(_stroke);

    /// <summary>How far the bender gives under the force of the nose, F/k; zero for a bender taken as rigid.</summary>
    public Length Give => Length.FromMeters(_give);

    /// <summary>The stroke to set: what closes on the bar and what the bender gives.</summary>
    /// <remarks>
    /// Equation: δ_set = δ + F/k.
    /// Range: a bender that gives in proportion to the force; the stroke itself where no stiffness is given.
    /// Source: <see cref="Sources.FormingModels"/>
    /// </remarks>
    public Length SetStroke => Length.FromMeters(_stroke + _give);

    /// <summary>Radius of the circle through the three contacts.</summary>
    public Length ThreeContactRadius => Length.FromMeters(1 / _nominal);

    /// <summary>How far the contact at the nose moves toward the incoming side; zero when the bar wraps the nose.</summary>
    public Length ContactShift => Length.FromMeters(_shift);

    /// <summary>Whether the bar lies on the nose instead of touching it at one point: then the ring follows the nose radius.</summary>
    public bool WrapsNose { get; }

    /// <summary>Force of the incoming support, M₀/(a − x).</summary>
    public Force IncomingSupportForce => Force.FromNewtons(_moment / (_halfSpan - _shift));

    /// <summary>Force of the outgoing support, M₀/(a + x).</summary>
    public Force OutgoingSupportForce => Force.FromNewtons(_moment / (_halfSpan + _shift));

    /// <summary>Force of the nose, the sum of both supports. For a bar that wraps the nose it is the force that starts the wrap.</summary>
    public Force NoseForce => IncomingSupportForce + OutgoingSupportForce;

    /// <summary>Moment under the nose, M₀.</summary>
    public Torque PeakMoment => Torque.FromNewtonMeters(_moment);

    /// <summary>
    /// How far the ring bulges between one bump and the next, from the valley to the ridge of the facets; zero in the steady state of small
    /// feeds.
    /// </summary>
    public Length FacetRise => Length.FromMeters(_facet);

    /// <summary>Straight end the bender leaves where a support has no bar to push on; the half-span is the safe figure.</summary>
    public Length StraightTail => Length.FromMeters(_halfSpan);

    /// <summary>The same setting under so many times the moment at the nose.</summary>
    internal ThreePointContact Times(double share) => new(_halfSpan, _stroke, _nominal, _shift, share * _moment, WrapsNose, _facet, _give);

    /// <summary>Stroke and nose force.</summary>
    public override string ToString() =>
        Invariant($"stroke {_stroke * 1e3:0.##} mm over a half-span of {_halfSpan * 1e3:0.##} mm, nose force {NoseForce.Newtons:0} N");
}
