using BendMath.Evidence;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Forming.ThreePoint;

/// <summary>
/// The bar is pinched between a nose and two supports, fed a little, pinched again. Curvature concentrates under a nose sharper than the
/// ring, so the ring can come out tighter than the circle through the three contacts.
/// </summary>
/// <remarks>
/// Equation: √D·(1/√q₁ + 1/√q₂) = 2a with D = a²/(2R_n) − d, d = κ_nom·a²/2, κ_nom = 2δ/(a² + δ²), q = 1/(2R_n) − B, R_n = r_nose + y_n.
/// With a bender that gives, δ + F/k is the stroke as set, F the force of the nose.
/// Range: small feed; slopes cost about 0.3 % at δ/a = 0.1, 1 % at 0.2, 2 % at 0.3; half-span at least four depths.
/// Source: <see cref="Sources.FormingModels"/>
/// </remarks>
public sealed class IncrementalThreePointBending : FormingModel
{
    private readonly double _share = 1;

    private readonly double _extra;

    /// <summary>
    /// The model without any measured ring; a die closes until the circle through the three contacts is its inside-face radius.
    /// </summary>
    /// <param name="setup">Half-span and nose of the bender.</param>
    /// <exception cref="ArgumentNullException">The setup is null.</exception>
    public IncrementalThreePointBending(ThreePointSetup setup)
        : base([]) => Setup = Guard.NotNull(setup, nameof(setup));

    internal IncrementalThreePointBending(ThreePointSetup setup, double closingShare, MeasuredRing evidence)
        : base([evidence])
    {
        Setup = setup;
        _share = closingShare;
    }

    private IncrementalThreePointBending(IncrementalThreePointBending model, ThreePointSetup setup, double extra)
        : base(model.Evidence)
    {
        Setup = setup;
        _share = model._share;
        _extra = model._extra + extra;
    }

    /// <summary>Half-span and nose of the bender.</summary>
    public override ThreePointSetup Setup { get; }

    /// <summary>
    /// Share of the stroke the die's radius implies that the bender really closes; 1 unless a measured ring says otherwise.
    /// </summary>
    public double ClosingShare => _share;

    /// <inheritdoc/>
    public override string Name => "incremental three-point bending";

    /// <inheritdoc/>
    public override string Assumption =>
        Invariant(
            $"The bar is moved on in small steps and pinched at each between a nose and two supports ({Setup}); each pinch closes {(_share == 1 ? "until" : Invariant($"{100 * _share:0.#} % of the stroke at which"))} the circle through the contacts has the die's inside-face radius.");

    internal override double LeastInsideRadius => Setup.A;

    internal override bool IsMonotone => false;

    internal override FormingModel? WithExtraStroke(double meters) => new IncrementalThreePointBending(this, Setup, meters);

    /// <summary>The model with a die in the bender: a die that has a nose of its own brings it along.</summary>
    internal IncrementalThreePointBending With(Die die) => new(this, Setup.With(die), 0);

    /// <summary>The bar after pinching with a given stroke.</summary>
    /// <param name="analysis">Section and material.</param>
    /// <param name="stroke">How far the supports are set past the line tangent to the nose; greater than zero and not greater than the
    /// half-span. What the bender gives comes off it.</param>
    /// <exception cref="ArgumentNullException">The analysis is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The stroke is outside its range.</exception>
    public FormedBend FormAtStroke(BendAnalysis analysis, Length stroke)
    {
        OrientedSection section = Guard.NotNull(analysis, nameof(analysis)).Section;
        double closed = Guard.Positive(stroke, nameof(stroke));
        return Setup.Refusal(section) is not null
            ? throw Guard.Fault(nameof(analysis), section.Depth,
                $"must be of a bar less deep than the half-span, {Guard.MillimetersText(Setup.A)}")
            : closed > Setup.A
                ? throw Guard.Fault(nameof(stroke), stroke, $"must not be greater than the half-span, {Guard.MillimetersText(Setup.A)}")
            : Pinch(analysis, null, closed).Formed
                ?? throw Guard.Fault(nameof(stroke), stroke, $"must not fold {section} flat over an edge");
    }

    /// <summary>
    /// The stroke to set for the wanted ring, in closed form once the loaded state is known; what the bender gives is in it.
    /// </summary>
    /// <param name="analysis">Section and material.</param>
    /// <param name="wanted">The wanted ring.</param>
    /// <param name="release">How the ring is let go.</param>
    /// <returns>The stroke, or null when the bar would have to be bent tighter than the nose allows or the supports cannot close so
    /// far.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The wanted radius leaves no inside radius, or the release is not a defined
    /// value.</exception>
    public Length? StrokeFor(BendAnalysis analysis, BendRadius wanted, Release release)
    {
        Guard.NotNull(analysis, nameof(analysis));
        Guard.NotNull(wanted, nameof(wanted)).InsideOf(analysis.Section, nameof(wanted));
        Guard.Defined(release, nameof(release));
        return StrokeFor(analysis.TryLoadedFor(wanted, release));
    }

    /// <summary>The stroke under which the bar is in a loaded state at the nose, or null when there is none.</summary>
    internal Length? StrokeFor(LoadedBend? peak)
    {
        if (peak is null || peak.State.InsideRadius <= Setup.Nose)
        {
            return null;
        }

        ThreePointEquilibrium equilibrium = new(peak.Analysis, Setup);
        double nominal = equilibrium.NominalFor(peak.State);
        if (!(nominal > 0 && nominal * Setup.A < 1))
        {
            return null;
        }

        double stroke = Setup.StrokeOf(nominal);
        double set = Setup.K is { } stiffness ? stroke + equilibrium.NoseForce(peak.State) / stiffness : stroke;
        return set <= Setup.A ? Length.FromMeters(set) : null;
    }

    internal override FormingTrial Try(BendAnalysis analysis, Die die)
    {
        if (Setup.Refusal(analysis.Section) is { } refusal)
        {
            return FormingTrial.Refused(refusal);
        }

        if (die.InsideFace(analysis.Section, die.Face) <= Setup.A)
        {
            return FormingTrial.Refused(
                $"its inside-face radius must be greater than the half-span of the bender, {Guard.MillimetersText(Setup.A)}");
        }

        double stroke = StrokeForDie(analysis, die) + _extra;
        return stroke <= 0 ? FormingTrial.Refused("so much less stroke is none at all")
            : stroke > Setup.A
            ? FormingTrial.Refused($"the stroke of {Guard.MillimetersText(stroke)} would exceed the half-span")
            : Pinch(analysis, die, stroke);
    }

    internal override IReadOnlyList<FormingSetting> Settings(BendAnalysis analysis, Die die)
    {
        IncrementalThreePointBending model = With(die);
        return [new PinchStroke(model, analysis, die, model.Try(analysis, die).Formed?.Contact?.SetStroke.Meters)];
    }

    /// <summary>The bar at a stroke, or why not.</summary>
    internal FormingTrial PinchedAt(BendAnalysis analysis, double stroke) =>
        Setup.Refusal(analysis.Section) is { } refusal ? FormingTrial.Refused(refusal) : Pinch(analysis, null, stroke);

    internal double StrokeForDie(BendAnalysis analysis, Die die) => _share * Setup.StrokeOf(1 / die.InsideFace(analysis.Section, die.Face));

    private FormingTrial Pinch(BendAnalysis analysis, Die? die, double stroke) => ThreePointPinch.At(
        this, die is null ? Setup : Setup.With(die), analysis, die, stroke, EvidenceAdvisories(analysis, die), []);
}
