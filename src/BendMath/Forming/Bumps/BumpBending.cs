using BendMath.Evidence;
using BendMath.Forming.ThreePoint;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Forming.Bumps;

/// <summary>
/// Three-point bending bump by bump, with a feed that is not small: each bump bends the bar where it is not bent enough yet. It gives what
/// a shop sees: straight tails, facets, the kink of a first bite at full stroke, and the lighter first bites that avoid it. The nose
/// touches at a point; where the bar would bend tighter than the nose, it lies on it.
/// </summary>
/// <remarks>
/// Equation: ∑ over both sides of ∫[max(κ_p, κ_p(M)) + M/(E·I_b)]·(a − x)dx = 2d, M = M₀·(1 − x/a), d = κ_nom·a²/2; then κ_p becomes the
/// running maximum.
/// Range: a nose much sharper than the ring; slopes cost about 0.3 % at δ/a = 0.1, 1 % at 0.2, 2 % at 0.3; half-span at least four depths;
/// within about 1 % for sections not symmetric about the bending axis.
/// Source: <see cref="Sources.FormingModels"/>
/// </remarks>
public sealed class BumpBending : FormingModel
{
    private const double FinestFeed = 1e-4;

    private readonly double _feed;

    private readonly double _extra;

    /// <summary>
    /// The model without any measured ring; a die closes until the circle through the three contacts is its inside-face radius.
    /// </summary>
    /// <param name="setup">Half-span and nose of the bender.</param>
    /// <param name="feed">Distance along the bar from bump to bump, from a ten-thousandth of the half-span to the half-span.</param>
    /// <exception cref="ArgumentNullException">The setup is null.</exception>
    /// <exception cref="ArgumentException">The setup has a stiffness: the give of single bumps is not included.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The feed is outside its range.</exception>
    public BumpBending(ThreePointSetup setup, Length feed)
        : base([])
    {
        Setup = Guard.NotNull(setup, nameof(setup));
        if (setup.K is not null)
        {
            throw Guard.Refused(nameof(setup), "must be of a bender taken as rigid, because the give of single bumps is not included",
                $"is \"{setup}\"");
        }

        _feed = Guard.Positive(feed, nameof(feed));
        if (_feed > setup.A || _feed < FinestFeed * setup.A)
        {
            throw Guard.Fault(nameof(feed), feed,
                $"must be from a ten-thousandth of the half-span to the half-span, {Guard.MillimetersText(setup.A)}");
        }
    }

    private BumpBending(BumpBending model, ThreePointSetup setup, double extra)
        : base(model.Evidence)
    {
        Setup = setup;
        _feed = model._feed;
        _extra = model._extra + extra;
    }

    private BumpBending(BumpBending model, double feed)
        : base(model.Evidence)
    {
        Setup = model.Setup;
        _feed = feed;
    }

    /// <summary>Half-span and nose of the bender.</summary>
    public override ThreePointSetup Setup { get; }

    /// <summary>Distance along the bar from bump to bump.</summary>
    public Length Feed => Length.FromMeters(_feed);

    /// <inheritdoc/>
    public override string Name => "bump-by-bump bending";

    /// <inheritdoc/>
    public override string Assumption =>
        Invariant(
            $"The bar is bumped every {_feed * 1e3:0.##} mm between a nose that touches at a point and two supports ({Setup}); each bump "
                + $"closes until the circle through the contacts has the die's inside-face radius.");

    internal override double LeastInsideRadius => Setup.A;

    internal override bool IsMonotone => false;

    internal override FormingModel? WithExtraStroke(double meters) => new BumpBending(this, Setup, meters);

    /// <summary>The model with a die in the bender: a die that has a nose of its own brings it along.</summary>
    internal BumpBending With(Die die) => new(this, Setup.With(die), 0);

    /// <summary>The bar far from its ends after equal bumps of a stroke.</summary>
    /// <param name="analysis">Section and material.</param>
    /// <param name="stroke">How far the supports advance past the line tangent to the nose; greater than zero, and the circle through the
    /// contacts wider than the nose.</param>
    /// <exception cref="ArgumentNullException">The analysis is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The bar is too deep for the span, or the stroke is outside its range.</exception>
    public FormedBend FormAtStroke(BendAnalysis analysis, Length stroke)
    {
        BumpEquilibrium equilibrium = Equilibrium(analysis);
        return Form(analysis, equilibrium, null, CheckedStroke(equilibrium, stroke, nameof(stroke)));
    }

    /// <summary>A straight bar after a sequence of bumps, in their order; the feed of the model does not matter here.</summary>
    /// <param name="analysis">Section and material.</param>
    /// <param name="barLength">Length of the bar, at least both half-spans.</param>
    /// <param name="bumps">Up to 100,000 bumps; each needs bar under both supports.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">A bump is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The bar is too deep for the span, too short, a bump has no bar under a support, closes
    /// too far, or there are too many.</exception>
    public BumpedBar Bend(BendAnalysis analysis, Length barLength, IReadOnlyList<Bump> bumps)
    {
        BumpEquilibrium equilibrium = Equilibrium(analysis);
        double length = BarLength(barLength);
        return BumpedBar.Straight(this, analysis, equilibrium, length).Again(bumps);
    }

    /// <summary>A straight bar after equal bumps from the first place where both supports have bar to the last.</summary>
    /// <param name="analysis">Section and material.</param>
    /// <param name="barLength">Length of the bar, at least both half-spans.</param>
    /// <param name="stroke">Stroke of each bump.</param>
    /// <exception cref="ArgumentNullException">The analysis is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The bar is too deep for the span or too short, the stroke is outside its range, or
    /// there would be too many bumps.</exception>
    public BumpedBar BendWhole(BendAnalysis analysis, Length barLength, Length stroke)
    {
        CheckedStroke(Equilibrium(analysis), stroke, nameof(stroke));
        return Bend(analysis, barLength, Whole(barLength, stroke.Meters));
    }

    /// <summary>
    /// The same pass with lighter first bites: every bump closes just far enough to bend the bar under the nose as the steady state does,
    /// and the stroke grows to the full one over about one half-span as the bent bar behind the nose takes its share.
    /// </summary>
    /// <param name="analysis">Section and material.</param>
    /// <param name="barLength">Length of the bar, at least both half-spans.</param>
    /// <param name="stroke">Full stroke.</param>
    /// <returns>The bumps of the whole pass, in order.</returns>
    /// <exception cref="ArgumentNullException">The analysis is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The bar is too deep for the span or too short, the stroke is outside its range, or
    /// there would be too many bumps.</exception>
    public IReadOnlyList<Bump> PassWithLighterFirstBites(BendAnalysis analysis, Length barLength, Length stroke)
    {
        BumpEquilibrium equilibrium = Equilibrium(analysis);
        double closed = CheckedStroke(equilibrium, stroke, nameof(stroke));
        double length = BarLength(barLength);
        IReadOnlyList<Bump> whole = Whole(barLength, closed);
        double nominal = Setup.NominalOf(closed);
        BumpMomentDiagram steady = equilibrium.Steady(nominal, _feed).Tent;
        MomentEnvelope bar = new(equilibrium.Curve, length);
        bar.Reserve(whole.Count);
        List<Bump> bumps = new(whole.Count);
        foreach (Bump bump in whole)
        {
            double reached = equilibrium.NominalOf(bar, bump.At, steady);
            if (reached >= nominal * (1 - 1e-9))
            {
                break;
            }

            bar.Raise(bump.At, steady);
            bumps.Add(new(bump.At, Setup.StrokeOf(reached)));
        }

        return Array.AsReadOnly([.. bumps, .. whole.Skip(bumps.Count)]);
    }

    internal override FormingTrial Try(BendAnalysis analysis, Die die)
    {
        if (die.NoseRadius is { } own && own.Meters != Setup.Nose)
        {
            return With(die).Try(analysis, die);
        }

        double radius = die.InsideFace(analysis.Section, die.Face);
        if (Setup.Refusal(analysis.Section) is { } refusal)
        {
            return FormingTrial.Refused(refusal);
        }

        if (analysis.Unloading < 1)
        {
            return FormingTrial.Refused(
                "bump-by-bump bending calculates with the whole of Young's modulus on release, and this material unloads along a softer "
                    + "line");
        }

        if (radius <= Setup.A)
        {
            return FormingTrial.Refused(
                $"its inside-face radius must be greater than the half-span of the bender, {Guard.MillimetersText(Setup.A)}");
        }

        BumpEquilibrium equilibrium = new(analysis, Setup);
        double stroke = Setup.StrokeOf(1 / radius) + _extra;
        return stroke <= 0 ? FormingTrial.Refused("so much less stroke is none at all")
            : stroke > Setup.A ? FormingTrial.Refused($"the stroke of {Guard.MillimetersText(stroke)} would exceed the half-span")
            : equilibrium.IsWiderThanNose(Setup.NominalOf(stroke)) ? Form(analysis, equilibrium, die, stroke)
            : FormingTrial.Refused($"its inside-face radius must be greater than that of the nose, {Guard.MillimetersText(Setup.Nose)}");
    }

    internal override IReadOnlyList<FormingSetting> Settings(BendAnalysis analysis, Die die)
    {
        BumpBending model = With(die);
        double? now = model.Try(analysis, die).Formed?.Contact?.SetStroke.Meters;
        return [new BumpStroke(model, analysis, die, model.MostStroke(analysis), now), new BumpFeed(model, analysis, now)];
    }

    /// <summary>The same bumps at another feed, their stroke as the die says.</summary>
    internal BumpBending WithFeed(double feed) => new(this, feed);

    /// <summary>The bar after equal bumps of a stroke, or null when the bender cannot take it so.</summary>
    internal FormedBend? BumpedAt(BendAnalysis analysis, double stroke)
    {
        if (Setup.Refusal(analysis.Section) is not null || analysis.Unloading < 1 || stroke > Setup.A)
        {
            return null;
        }

        BumpEquilibrium equilibrium = new(analysis, Setup);
        return equilibrium.IsWiderThanNose(Setup.NominalOf(stroke)) ? Form(analysis, equilibrium, null, stroke) : null;
    }

    internal double CheckedStroke(BumpEquilibrium equilibrium, Length stroke, string name)
    {
        double closed = Guard.Positive(stroke, name);
        return closed > Setup.A
            ? throw Guard.Fault(name, stroke, $"must not be greater than the half-span, {Guard.MillimetersText(Setup.A)}")
            : equilibrium.IsWiderThanNose(Setup.NominalOf(closed)) ? closed
            : throw Guard.Fault(name, stroke,
                $"must leave the circle through the contacts wider than the nose, {Guard.MillimetersText(Setup.Nose)} in radius");
    }

    internal IEnumerable<Advisory> EvidenceFor(BendAnalysis analysis) => EvidenceAdvisories(analysis, null);

    internal IEnumerable<Advisory> Validity(BendAnalysis analysis, double stroke, bool wraps, double meanCurvature)
    {
        foreach (Advisory advisory in Setup.Advisories(analysis.Section, stroke))
        {
            yield return advisory;
        }

        if (wraps)
        {
            yield return ThreePointSetup.WrapsNose;
        }
        else if (Setup.Nose * meanCurvature > 0.25)
        {
            yield return new("blunt-nose",
                Invariant(
                    $"The nose radius is {Setup.Nose * meanCurvature:0.##} of the ring's radius, but the nose is taken for a point: a "
                        + $"blunt nose leaves a wider ring, as incremental three-point bending calculates it."), Sources.FormingModels);
        }
    }

    private FormedBend Form(BendAnalysis analysis, BumpEquilibrium equilibrium, Die? die, double stroke)
    {
        double nominal = Setup.NominalOf(stroke);
        SteadyState steady = equilibrium.Steady(nominal, _feed);
        double peak = steady.Tent.Peak;
        bool wraps = steady.Tent.Flat > 0;
        LoadedBend loaded =
            BumpedBar.LoadedLeaving(analysis, steady.Mean)
                ?? analysis.LoadedAt(ReciprocalLength.FromInverseMeters(peak / (analysis.Law.E * analysis.Moments.SecondY)));
        ThreePointContact contact = new(Setup.A, stroke, nominal, 0, peak, wraps, steady.FacetRise);
        return new(this, die, loaded, contact, EvidenceAdvisories(analysis, die), Validity(analysis, stroke, wraps, steady.Mean));
    }

    /// <summary>Up to the half-span, or to the circle of the nose.</summary>
    private double MostStroke(BendAnalysis analysis)
    {
        double nose = new BumpEquilibrium(analysis, Setup).NoseCurvature;
        return (1 - 1e-9) * (nose * Setup.A < 1 ? Setup.StrokeOf(nose) : Setup.A);
    }

    private BumpEquilibrium Equilibrium(BendAnalysis analysis) =>
        Setup.Refusal(Guard.NotNull(analysis, nameof(analysis)).Section) is not null
        ? throw Guard.Fault(nameof(analysis), analysis.Section.Depth,
            $"must be of a bar less deep than the half-span, {Guard.MillimetersText(Setup.A)}")
        : analysis.Unloading < 1
            ? throw Guard.Fault(nameof(analysis), analysis.Material.UnloadingShare,
                "must be of a material that unloads with the whole of Young's modulus, 100 %")
        : new(analysis, Setup);

    private double BarLength(Length barLength)
    {
        double length = Guard.Positive(barLength, nameof(barLength));
        return length >= 2 * Setup.A ? length
            : throw Guard.Fault(nameof(barLength), barLength, $"must reach both supports, {Guard.MillimetersText(2 * Setup.A)}");
    }

    private IReadOnlyList<Bump> Whole(Length barLength, double stroke)
    {
        double last = BarLength(barLength) - Setup.A;
        return (last - Setup.A) / _feed < Bump.Most
            ? Bump.Pass(Setup.A, Math.Max(Setup.A, last), _feed, stroke)
            : throw Guard.Fault(nameof(barLength), barLength, $"must give at most 100,000 bumps, {Guard.MillimetersText(_feed)} apart");
    }
}
