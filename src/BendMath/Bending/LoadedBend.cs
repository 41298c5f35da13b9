using System.Globalization;
using BendMath.Bending;
using UnitsNet;

namespace BendMath;

/// <summary>
/// A bar bent and still held: strain e(y) = (y − y_n)·κ with y from the inside face outward, tension positive, no axial force, kept flat.
/// Immutable and thread-safe.
/// </summary>
public sealed class LoadedBend
{
    private readonly BentState _state;

    internal LoadedBend(BendAnalysis analysis, BentState state)
    {
        Analysis = analysis;
        _state = state;
        Advisories = BendAdvisories.ForLoaded(analysis, state);
    }

    /// <summary>Section, material and law the state belongs to.</summary>
    public BendAnalysis Analysis { get; }

    /// <summary>Radius of the inside face while loaded.</summary>
    public Length InsideRadius => Length.FromMeters(_state.InsideRadius);

    /// <summary>Curvature κ: turn angle per unit of unbent length.</summary>
    public ReciprocalLength Curvature => ReciprocalLength.FromInverseMeters(_state.Curvature);

    /// <summary>Distance y_n of the neutral axis from the inside face.</summary>
    /// <remarks>
    /// Equation: N(y_n) = ∫σ((y − y_n)/(R_i + y_n)) dA = 0.
    /// Range: any radius; exactly one root in (0, h).
    /// Source: <see cref="Sources.Mechanics"/>
    /// </remarks>
    public Length NeutralAxisFromInside => Length.FromMeters(_state.NeutralAxis);

    /// <summary>Bending moment M_b about the bending axis.</summary>
    /// <remarks>
    /// Equation: M_b = ∫σ·(y − ȳ) dA.
    /// Range: any radius.
    /// Source: <see cref="Sources.Mechanics"/>
    /// </remarks>
    public Torque BendingMoment => Torque.FromNewtonMeters(Moment);

    /// <summary>Moment M_r about the radial axis that keeps an unsymmetric section flat; zero for a section symmetric about the plane of the ring.</summary>
    /// <remarks>
    /// Equation: M_r = ∫σ·(z − z̄) dA.
    /// Range: any radius; the hold-down must also supply the couple κ·M_r per unit length.
    /// Source: <see cref="Sources.Mechanics"/>
    /// </remarks>
    public Torque HoldDownMoment => Torque.FromNewtonMeters(HoldDown);

    /// <summary>Couple per unit length κ·M_r the hold-down supplies along the bent part, as a force: newton-metres per metre.</summary>
    public Force HoldDownCouplePerLength => Force.FromNewtons(_state.Curvature * HoldDown);

    /// <summary>Strain at the outside face: the largest tension.</summary>
    public Ratio OuterFiberStrain => Ratio.FromDecimalFractions(Strain(Analysis.Section.Height));

    /// <summary>Strain at the inside face, negative: compression.</summary>
    public Ratio InnerFiberStrain => Ratio.FromDecimalFractions(Strain(0));

    /// <summary>Whether no fiber has yielded.</summary>
    public bool IsElastic => _state.Sums.C0 == 0;

    /// <summary>What is doubtful about this state.</summary>
    public IReadOnlyList<Advisory> Advisories { get; }

    internal BentState State => _state;

    internal double Moment => _state.BendingMoment(Analysis.Moments, Analysis.Law.E);

    internal double HoldDown => _state.HoldDownMoment(Analysis.Moments, Analysis.Law.E);

    /// <summary>Strain of the fiber at a distance from the inside face, tension positive.</summary>
    /// <param name="fromInside">Between zero and the depth of the section.</param>
    /// <exception cref="ArgumentOutOfRangeException">The fiber lies outside the section.</exception>
    public Ratio StrainAt(Length fromInside) => Ratio.FromDecimalFractions(Strain(Level(fromInside, nameof(fromInside))));

    /// <summary>Stress in the fiber at a distance from the inside face, tension positive.</summary>
    /// <param name="fromInside">Between zero and the depth of the section.</param>
    /// <exception cref="ArgumentOutOfRangeException">The fiber lies outside the section.</exception>
    public Pressure StressAt(Length fromInside) => Pressure.FromPascals(Analysis.Law.Stress(Strain(Level(fromInside, nameof(fromInside)))));

    /// <summary>Lets the bar go; it unloads elastically.</summary>
    /// <param name="release">Free or held flat.</param>
    /// <exception cref="ArgumentOutOfRangeException">The release is not a defined value.</exception>
    public ReleasedBend Release(Release release) => new(this, Guard.Defined(release, nameof(release)));

    /// <summary>Loaded radius and neutral axis.</summary>
    public override string ToString() => string.Format(
        CultureInfo.InvariantCulture,
        "{0} held at an inside radius of {1:0.###} mm, neutral axis {2:0.###} mm from the inside face",
        Analysis.Section,
        _state.InsideRadius * 1e3,
        _state.NeutralAxis * 1e3);

    internal double Strain(double level) => (level - _state.NeutralAxis) * _state.Curvature;

    internal double Level(Length fromInside, string name)
    {
        double level = Guard.NonNegative(fromInside, name);
        double height = Analysis.Section.Height;
        return level <= height * (1 + 1e-12)
            ? Math.Min(level, height)
            : throw Guard.Fault(name, fromInside, $"must not be greater than the depth of the section, {Guard.MillimetersText(height)}");
    }
}
