using System.Globalization;
using BendMath.Bending;
using BendMath.Forming;
using UnitsNet;

namespace BendMath;

/// <summary>
/// The bar is pinched between a nose and two supports, fed a little, pinched again. Curvature concentrates under a nose sharper than the ring,
/// so the ring can come out tighter than the circle through the three contacts.
/// </summary>
/// <remarks>
/// Equation: √D·(1/√q₁ + 1/√q₂) = 2a with D = a²/(2R_n) − d, d = κ_nom·a²/2, κ_nom = 2δ/(a² + δ²), q = 1/(2R_n) − B, R_n = r_nose + y_n.
/// Range: small feed; slopes cost about 0.3 % at δ/a = 0.1, 1 % at 0.2, 2 % at 0.3; half-span at least four depths.
/// Source: <see cref="Sources.FormingModels"/>
/// </remarks>
public sealed class IncrementalThreePointBending : FormingModel
{
    private readonly double _share = 1;

    private readonly double _extra;

    /// <summary>The model without any measured ring; a die closes until the circle through the three contacts is its inside-face radius.</summary>
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

    private IncrementalThreePointBending(IncrementalThreePointBending model, double extra)
        : base(model.Evidence)
    {
        Setup = model.Setup;
        _share = model._share;
        _extra = model._extra + extra;
    }

    /// <summary>Half-span and nose of the bender.</summary>
    public ThreePointSetup Setup { get; }

    /// <summary>Share of the stroke the die's radius implies that the bender really closes; 1 unless a measured ring says otherwise.</summary>
    public double ClosingShare => _share;

    /// <inheritdoc/>
    public override string Name => "incremental three-point bending";

    /// <inheritdoc/>
    public override string Assumption => string.Format(
        CultureInfo.InvariantCulture,
        "The bar is pinched forward bit by bit between a nose and two supports ({0}); each pinch closes {1} the circle through the contacts has the die's inside-face radius.",
        Setup,
        _share == 1 ? "until" : string.Format(CultureInfo.InvariantCulture, "{0:0.#} % of the stroke at which", 100 * _share));

    internal override double LeastInsideRadius => Setup.A;

    internal override bool IsMonotone => false;

    internal override FormingModel? WithExtraStroke(double meters) => new IncrementalThreePointBending(this, meters);

    /// <summary>The bar after pinching with a given stroke.</summary>
    /// <param name="analysis">Section and material.</param>
    /// <param name="stroke">How far the supports advance past the line tangent to the nose; greater than zero and not greater than the half-span.</param>
    /// <exception cref="ArgumentNullException">The analysis is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The stroke is outside its range.</exception>
    public FormedBend FormAtStroke(BendAnalysis analysis, Length stroke)
    {
        OrientedSection section = Guard.NotNull(analysis, nameof(analysis)).Section;
        double closed = Guard.Positive(stroke, nameof(stroke));
        return Setup.Refusal(section) is not null ? throw Guard.Fault(nameof(analysis), section.Depth, $"must be of a bar less deep than the half-span, {Guard.MillimetersText(Setup.A)}")
            : closed > Setup.A ? throw Guard.Fault(nameof(stroke), stroke, $"must not be greater than the half-span, {Guard.MillimetersText(Setup.A)}")
            : Pinch(analysis, null, closed).Formed ?? throw Guard.Fault(nameof(stroke), stroke, $"must not fold {section} flat over an edge");
    }

    /// <summary>The stroke that leaves the wanted ring, in closed form once the loaded state is known.</summary>
    /// <param name="analysis">Section and material.</param>
    /// <param name="wanted">The wanted ring.</param>
    /// <param name="release">How the ring is let go.</param>
    /// <returns>The stroke, or null when the bar would have to be bent tighter than the nose allows or the supports cannot close so far.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The wanted radius leaves no inside radius, or the release is not a defined value.</exception>
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

        double nominal = new ThreePointEquilibrium(peak.Analysis, Setup).NominalFor(peak.State);
        return nominal > 0 && nominal * Setup.A < 1 ? Length.FromMeters(Setup.StrokeOf(nominal)) : null;
    }

    internal override FormingTrial Try(BendAnalysis analysis, Die die)
    {
        if (Setup.Refusal(analysis.Section) is { } refusal)
        {
            return FormingTrial.Refused(refusal);
        }

        if (die.InsideFace(analysis.Section, die.Face) <= Setup.A)
        {
            return FormingTrial.Refused($"its inside-face radius must be greater than the half-span of the bender, {Guard.MillimetersText(Setup.A)}");
        }

        double stroke = StrokeForDie(analysis, die) + _extra;
        return stroke <= 0 ? FormingTrial.Refused("so much less stroke is none at all")
            : stroke > Setup.A
            ? FormingTrial.Refused($"the stroke of {Guard.MillimetersText(stroke)} would exceed the half-span")
            : Pinch(analysis, die, stroke);
    }

    internal double StrokeForDie(BendAnalysis analysis, Die die) => _share * Setup.StrokeOf(1 / die.InsideFace(analysis.Section, die.Face));

    private FormingTrial Pinch(BendAnalysis analysis, Die? die, double stroke)
    {
        double a = Setup.A;
        double nominal = Setup.NominalOf(stroke);
        (BentState Peak, double Shift)? found = new ThreePointEquilibrium(analysis, Setup).At(nominal);
        bool wraps = found is null;
        if (wraps && Setup.Nose == 0)
        {
            return FormingTrial.Refused("the stroke would fold the bar flat over the edge of the nose");
        }

        LoadedBend loaded = found is { } f ? new(analysis, f.Peak) : analysis.LoadedToInside(Setup.Nose);
        ThreePointContact contact = new(a, stroke, nominal, found?.Shift ?? 0, loaded.Moment, wraps);
        return new FormedBend(this, die, loaded, contact, EvidenceAdvisories(analysis, die), Validity(analysis, stroke, wraps));
    }

    private IEnumerable<Advisory> Validity(BendAnalysis analysis, double stroke, bool wraps) => wraps
        ? Setup.Advisories(analysis.Section, stroke).Append(ThreePointSetup.WrapsNose)
        : Setup.Advisories(analysis.Section, stroke);
}
