using BendMath.Bending;
using BendMath.Bending.Unloading;
using BendMath.Evidence;
using BendMath.Guards;
using BendMath.Numerics.Geometry;
using BendMath.Numerics.Integrals;
using UnitsNet;

namespace BendMath;

/// <summary>
/// A bar bent and still under load: strain e = (y − y_n)·κ + (z − z̄)·κ_r with y from the inside face outward, tension positive. Held flat,
/// κ_r is zero and the strain depends on y alone. Immutable and thread-safe.
/// </summary>
public sealed class LoadedBend
{
    private readonly BentState _state;

    private IReadOnlyList<Advisory>? _advisories;

    private LoadedBend[]? _otherwise;

    internal LoadedBend(BendAnalysis analysis, in BentState state, bool isPulled = false)
    {
        IsPulled = isPulled;
        Analysis = analysis;
        _state = state;
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

    /// <summary>
    /// Moment M_r about the radial axis that keeps an unsymmetric section flat, positive where it puts the fibers of large z in tension;
    /// zero for a section symmetric about the plane of the ring.
    /// </summary>
    /// <remarks>
    /// Equation: M_r = ∫σ·(z − z̄) dA.
    /// Range: any radius; the hold-down must also supply the couple κ·M_r per unit length.
    /// Source: <see cref="Sources.Mechanics"/>
    /// </remarks>
    public Torque HoldDownMoment => Torque.FromNewtonMeters(HoldDown);

    /// <summary>
    /// Couple per unit length the hold-down supplies along the bent part, signed as its moment: newton-meters per meter of bar.
    /// </summary>
    /// <remarks>
    /// Equation: m = κ·M_r.
    /// Range: any held-flat bend; zero for a section symmetric about the plane of the ring.
    /// Source: <see cref="Sources.Mechanics"/>
    /// </remarks>
    public Force HoldDownCouplePerLength => Force.FromNewtons(_state.Curvature * HoldDown);

    /// <summary>Whether the bar is held flat: no curvature out of the plane of the ring.</summary>
    public bool IsHeldFlat => _state.OutOfPlane == 0;

    /// <summary>Curvature κ_r out of the plane of the ring; zero when held flat.</summary>
    public ReciprocalLength OutOfPlaneCurvature => ReciprocalLength.FromInverseMeters(_state.OutOfPlane);

    /// <summary>Lean of the bending of a bar without hold-down; zero when held flat.</summary>
    /// <remarks>
    /// Equation: atan2(κ_r, κ).
    /// Range: a short length kept from turning.
    /// Source: <see cref="Sources.Mechanics"/>
    /// </remarks>
    public Angle RollOverAngle => Angle.FromRadians(Math.Atan2(_state.OutOfPlane, _state.Curvature));

    /// <summary>Axial force, positive in tension; zero unless the bar is pulled.</summary>
    public Force AxialForce
    {
        get
        {
            AreaMoments m = Analysis.Moments;
            double force = Analysis.Law.E * (_state.Curvature * m.Area * (m.CentroidY - _state.NeutralAxis) - _state.Sums.P0);
            return Force.FromNewtons(force);
        }
    }

    /// <summary>
    /// How much moment one more unit of curvature takes, held flat at constant axial force: dM_b/dκ, in newton square meters.
    /// </summary>
    /// <remarks>
    /// Equation: dM_b/dκ = ∫E_t(y − ȳ)² dA − (∫E_t(y − ȳ) dA)²/∫E_t dA.
    /// Range: held flat; E·I_b while elastic, near zero when fully plastic without hardening.
    /// Source: <see cref="Sources.Mechanics"/>
    /// </remarks>
    /// <exception cref="InvalidOperationException">The bar is not held flat.</exception>
    public double TangentBendingStiffness
    {
        get
        {
            RequireFlat();
            AreaMoments m = Analysis.Moments;
            PlasticSums sums = Analysis.Law.Integrate(Analysis.Section.Profile, _state.Curvature, _state.NeutralAxis);
            double s0 = m.Area - sums.C0;
            double s1 = -sums.C1;
            return Analysis.Law.E * (m.SecondY - sums.C2 - (s0 > 0 ? s1 * s1 / s0 : 0));
        }
    }

    /// <summary>
    /// The part of the depth that has not yielded, from the inside face; null when a strong pull has made every fiber yield.
    /// </summary>
    /// <exception cref="InvalidOperationException">The bar is not held flat.</exception>
    public LengthRange? ElasticCore
    {
        get
        {
            RequireFlat();
            double half = Analysis.Law.YieldStrain / _state.Curvature;
            double low = Math.Max(0, _state.NeutralAxis - half);
            double high = Math.Min(Analysis.Section.Height, _state.NeutralAxis + half);
            return low < high ? new(Length.FromMeters(low), Length.FromMeters(high)) : null;
        }
    }

    /// <summary>Strain at the outside face, at the centroid's axial position: the largest tension when held flat.</summary>
    public Ratio OuterFiberStrain => Ratio.FromDecimalFractions(Strain(Analysis.Section.Height));

    /// <summary>The largest strain of the bar, without its sign.</summary>
    /// <remarks>
    /// Equation: largest |κ_t·(d − d_n)| over the outline, d across the axis the bar bends about and d_n where the strain is zero.
    /// Range: plane sections; the bar as it is held.
    /// Source: <see cref="Sources.Mechanics"/>
    /// </remarks>
    public Ratio LargestStrain => Ratio.FromDecimalFractions(new LoadedField(this).LargestStrain);

    /// <summary>
    /// Strain at the inside face, at the centroid's axial position; negative, unless a strong pull stretches every fiber.
    /// </summary>
    public Ratio InnerFiberStrain => Ratio.FromDecimalFractions(Strain(0));

    /// <summary>Whether no fiber has yielded.</summary>
    public bool IsElastic => _state.IsElastic;

    /// <summary>What is doubtful about this state.</summary>
    public IReadOnlyList<Advisory> Advisories => _advisories ??= BendAdvisories.ForLoaded(Analysis, _state);

    internal bool IsPulled { get; }

    /// <summary>The same bar in its other orientations, bent to the same inside radius.</summary>
    internal IReadOnlyList<LoadedBend> LaidOtherwise => _otherwise ??=
    [
        .. Analysis.Section.Stock.Orientations
            .Where(way => way.Orientation != Analysis.Section.Orientation)
            .Select(way => Analysis.With(section: way).LoadedToInside(_state.InsideRadius)),
    ];

    internal ref readonly BentState State => ref _state;

    internal double Moment => _state.BendingMoment(Analysis.Moments, Analysis.Law.E);

    internal double HoldDown => _state.HoldDownMoment(Analysis.Moments, Analysis.Law.E);

    /// <summary>Strain of the fiber at a distance from the inside face, at the centroid's axial position, tension positive.</summary>
    /// <param name="fromInside">Between zero and the depth of the section.</param>
    /// <exception cref="ArgumentOutOfRangeException">The fiber lies outside the section.</exception>
    public Ratio StrainAt(Length fromInside) => Ratio.FromDecimalFractions(Strain(Level(fromInside, nameof(fromInside))));

    /// <summary>Stress in the fiber at a distance from the inside face, at the centroid's axial position, tension positive.</summary>
    /// <param name="fromInside">Between zero and the depth of the section.</param>
    /// <exception cref="ArgumentOutOfRangeException">The fiber lies outside the section.</exception>
    public Pressure StressAt(Length fromInside) => Pressure.FromPascals(Analysis.Law.Stress(Strain(Level(fromInside, nameof(fromInside)))));

    /// <summary>Strain at a point of the section, tension positive.</summary>
    /// <param name="fromInside">Distance from the inside face, between zero and the depth.</param>
    /// <param name="axial">Position z along the axis of the ring, between zero and the width.</param>
    /// <exception cref="ArgumentOutOfRangeException">The point lies outside the bounding box of the section.</exception>
    public Ratio StrainAt(Length fromInside, Length axial) => Ratio.FromDecimalFractions(
        Strain(Level(fromInside, nameof(fromInside)), Position(axial, nameof(axial))));

    /// <summary>Stress at a point of the section, tension positive.</summary>
    /// <param name="fromInside">Distance from the inside face, between zero and the depth.</param>
    /// <param name="axial">Position z along the axis of the ring, between zero and the width.</param>
    /// <exception cref="ArgumentOutOfRangeException">The point lies outside the bounding box of the section.</exception>
    public Pressure StressAt(Length fromInside, Length axial) => Pressure.FromPascals(Analysis.Law.Stress(
        Strain(Level(fromInside, nameof(fromInside)), Position(axial, nameof(axial)))));

    /// <summary>Lets the bar go; it unloads elastically.</summary>
    /// <param name="release">Free or held flat.</param>
    /// <exception cref="ArgumentOutOfRangeException">The release is not a defined value.</exception>
    public ReleasedBend Release(Release release) => new(this, Guard.Defined(release, nameof(release)));

    /// <summary>
    /// The law to bend hot-rolled steel with: where no fiber of this bar is strained beyond the plateau, perfectly plastic at its stress,
    /// since hardening adds nothing there; else the steel itself. The law of this bar only says how large its strains are.
    /// </summary>
    /// <param name="steel">The steel: plateau as measured, otherwise typical, and ultimate strength.</param>
    /// <exception cref="ArgumentNullException">The steel is null.</exception>
    /// <remarks>
    /// Equation: largest |e| of the bar beside ε_sh.
    /// Range: hot-rolled steel. The plateau of a heat may be longer than the law says; a power law is good only over strains it was fitted
    /// to.
    /// Source: <see cref="Sources.YunGardner2017"/>
    /// </remarks>
    public StressStrainLaw LawFor(HotRolledSteel steel) => LargestStrain <= Guard.NotNull(steel, nameof(steel)).PlateauEnd
        ? new PerfectlyPlastic(steel.ElasticModulus, steel.PlateauStress)
        : steel;

    /// <summary>Lets the bar go; its fibers unload by a rule.</summary>
    /// <param name="release">Free or held flat.</param>
    /// <param name="rule">What the fibers do: elastic, with memory, along a falling modulus.</param>
    /// <exception cref="ArgumentNullException">The rule is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The release is not a defined value.</exception>
    /// <exception cref="ArgumentException">The rule asks for memory and the law has none or would soften, or the bar is pulled or of a
    /// material with a softer release of its own.</exception>
    /// <remarks>
    /// Equation: N = M_b = M_r = 0, or N = M_b = 0 and κ_rf = 0 held flat, of the stresses each fiber has at its final strain.
    /// Range: every fiber goes straight from its loaded strain to its final one: exact for symmetric sections, close for angles.
    /// Source: <see cref="Sources.Mechanisms"/>
    /// </remarks>
    public ReleasedBend Release(Release release, UnloadingRule rule)
    {
        bool free = Guard.Defined(release, nameof(release)) == BendMath.Release.Free;
        return new(this, release, Guard.NotNull(rule, nameof(rule)), rule.Released(this, free, nameof(rule)));
    }

    /// <summary>Loaded radius and neutral axis.</summary>
    public override string ToString() =>
        Invariant(
            $"{Analysis.Section} held at an inside radius of {_state.InsideRadius * 1e3:0.###} mm, neutral "
                + $"axis {_state.NeutralAxis * 1e3:0.###} mm from the inside face");

    internal double Strain(double level) => (level - _state.NeutralAxis) * _state.Curvature;

    internal double Strain(double level, double axial) => Strain(level) + (axial - Analysis.Moments.CentroidZ) * _state.OutOfPlane;

    internal double Level(Length fromInside, string name) => Analysis.Section.LevelOf(fromInside, name);

    internal double Position(Length axial, string name)
    {
        double z = Guard.Place(axial, name);
        double width = Analysis.Section.Properties.Breadth;
        return z <= width * (1 + 1e-12)
            ? Math.Min(z, width)
            : throw Guard.Fault(name, axial, $"must not be greater than the width of the section, {Guard.MillimetersText(width)}");
    }

    private void RequireFlat()
    {
        if (!IsHeldFlat)
        {
            throw new InvalidOperationException("The bar is not held flat; ask for the strain at a point instead.");
        }
    }
}
