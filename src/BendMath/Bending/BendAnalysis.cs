using BendMath.Bending;
using BendMath.Bending.Guides;
using BendMath.Bending.MomentCurves;
using BendMath.Bending.Unloading;
using BendMath.Evidence;
using BendMath.Guards;
using BendMath.Numerics;
using BendMath.Numerics.Geometry;
using UnitsNet;

namespace BendMath;

/// <summary>
/// Bending of one section of one material: the place from which loaded states, moments and the inverse are asked.
/// Held flat by the bender (no curvature out of the plane of the ring), axial force zero. Immutable and thread-safe.
/// </summary>
public sealed partial class BendAnalysis
{
    private MomentCurve? _curve;

    private FirstLoadingCurve? _firstLoading;

    private BendAnalysis(OrientedSection section, BarMaterial material, StressState stressState)
    {
        Section = section;
        Material = material;
        StressState = stressState;
        Law = LawOf(material.Law);
        FirstGuess = (section.Profile.Moments.CentroidY + section.Properties.EqualArea) / 2;
    }

    /// <summary>The section as it lies in the bender.</summary>
    public OrientedSection Section { get; }

    /// <summary>The material.</summary>
    public BarMaterial Material { get; }

    /// <summary>Whether the bar is free to change its width.</summary>
    public StressState StressState { get; }

    /// <summary>The stress–strain law along the bar: the material's own, or what becomes of it in plane strain.</summary>
    public StressStrainLaw Law { get; }

    /// <summary>Curvature at which the outermost fiber first reaches the yield strain.</summary>
    /// <remarks>
    /// Equation: κ_y = e_y/max(ȳ, h − ȳ).
    /// Range: R ≫ h; the neutral axis still is the centroid.
    /// Source: <see cref="Sources.BeerJohnston4"/>
    /// </remarks>
    public ReciprocalLength YieldCurvature => ReciprocalLength.FromInverseMeters(FirstYield);

    /// <summary>Bending moment at first yield, held flat.</summary>
    public Torque YieldMoment => Torque.FromNewtonMeters(Law.E * FirstYield * Moments.SecondY);

    /// <summary>Moment of a fully plastic section without hardening.</summary>
    /// <remarks>
    /// Equation: M_p = σ_y·Z.
    /// Range: perfectly plastic material; with hardening the moment goes on rising past it.
    /// Source: <see cref="Sources.BeerJohnston4"/>
    /// </remarks>
    public Torque PlasticMoment => Torque.FromNewtonMeters(Law.E * Law.YieldStrain * Section.Properties.Plastic);

    /// <summary>First guess of a neutral axis: halfway between the elastic and the fully plastic one.</summary>
    internal double FirstGuess { get; }

    internal double FirstYield => Law.YieldStrain / Math.Max(Moments.CentroidY, Section.Height - Moments.CentroidY);

    /// <summary>The moment–curvature curve, for searches.</summary>
    internal MomentCurve Curve => _curve ?? Once.Keep(ref _curve, new(new(Section.Profile, Law, IsForSearch), Law.ReferenceStrain));

    /// <summary>Whether states may come from <see cref="Curve"/>, good to about 1e-12 and quick whatever the law.</summary>
    internal bool IsForSearch { get; private init; }

    internal FirstLoadingCurve FirstLoading => _firstLoading ?? Once.Keep(ref _firstLoading, new(this));

    internal ref readonly AreaMoments Moments => ref Section.Profile.Moments;

    /// <summary>Analysis of a section of a material.</summary>
    /// <param name="section">The section in its orientation.</param>
    /// <param name="material">The material.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static BendAnalysis Of(OrientedSection section, BarMaterial material) =>
        new(Guard.NotNull(section, nameof(section)), Guard.NotNull(material, nameof(material)), StressState.Uniaxial);

    /// <summary>Analysis of a section of a material, with an explicit choice for wide flats.</summary>
    /// <param name="section">The section in its orientation.</param>
    /// <param name="material">The material; in plane strain it must state Poisson's ratio.</param>
    /// <param name="stressState">Whether the bar is free to change its width.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">Plane strain is asked for and the material has no Poisson's ratio.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The stress state is not a defined value.</exception>
    /// <remarks>
    /// Equation: E′ = E/(1 − ν²), σ′ = 2/√3·σ at a plastic strain √3/2·e_p.
    /// Range: bars about ten thicknesses wide or more; between, the truth lies between both.
    /// Source: <see cref="Sources.PlaneStrainBending"/>
    /// </remarks>
    public static BendAnalysis Of(OrientedSection section, BarMaterial material, StressState stressState)
    {
        Guard.NotNull(section, nameof(section));
        return Guard.Defined(stressState, nameof(stressState)) == StressState.PlaneStrain
            && Guard.NotNull(material, nameof(material)).PoissonsRatio is null
            ? throw Guard.Refused(nameof(material), "must state Poisson's ratio for bending in plane strain")
            : new(section, Guard.NotNull(material, nameof(material)), stressState);
    }

    /// <summary>The same analysis with some of it changed, checked as a new one; what is left out stays.</summary>
    /// <param name="section">Another section, or null.</param>
    /// <param name="material">Another material, or null.</param>
    /// <param name="stressState">Another stress state, or null.</param>
    /// <exception cref="ArgumentException">The bar is in plane strain and the material has no Poisson's ratio.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The stress state is not a defined value.</exception>
    public BendAnalysis With(OrientedSection? section = null, BarMaterial? material = null, StressState? stressState = null) =>
        Of(section ?? Section, material ?? Material, stressState ?? StressState);

    /// <summary>The state of a bar bent to a radius and still held there.</summary>
    /// <param name="radius">The loaded radius; it must leave a positive inside radius.</param>
    /// <exception cref="ArgumentNullException">The radius is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The radius leaves no inside radius.</exception>
    /// <remarks>
    /// Equation: e = (y − y_n)/(R_i + y_n), N = ∫σ(e) dA = 0.
    /// Range: linear strain; advised below an inside radius of three depths.
    /// Source: <see cref="Sources.Mechanics"/>
    /// </remarks>
    public LoadedBend LoadedTo(BendRadius radius) => new(
        this, StateAtRadius(Guard.NotNull(radius, nameof(radius)).InsideOf(Section, nameof(radius))));

    /// <summary>The state of a bar bent to a radius, held flat, while it is pulled along its length.</summary>
    /// <param name="radius">The loaded radius; it must leave a positive inside radius.</param>
    /// <param name="pull">Axial force P, positive in tension; less than the section can carry.</param>
    /// <exception cref="ArgumentNullException">The radius is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The radius leaves no inside radius, or the section cannot carry the pull.</exception>
    /// <remarks>
    /// Equation: e = κ(R_i + y) − 1, N(κ) = ∫σ(e) dA = P; the neutral axis y_n = 1/κ − R_i may leave the section.
    /// Range: strains up to 100 %; release lets go of the pull together with the moment.
    /// Source: <see cref="Sources.Mechanics"/>
    /// </remarks>
    public LoadedBend LoadedTo(BendRadius radius, Force pull)
    {
        double inside = Guard.NotNull(radius, nameof(radius)).InsideOf(Section, nameof(radius));
        double force = Guard.Finite(pull, nameof(pull));
        return HeldFlat.WithPull(Section.Profile, Law, inside, force) is { } state
            ? new(this, state, isPulled: force != 0)
            : throw Guard.Fault(nameof(pull), pull, $"must be less than {Section} can carry at this radius");
    }

    /// <summary>
    /// The state of a short length bent to a radius without any hold-down: it leans until no moment about the radial axis is left.
    /// </summary>
    /// <param name="radius">The loaded radius, at the axial position of the centroid; it must leave an inside radius of at least the depth
    /// of the bar.</param>
    /// <exception cref="ArgumentNullException">The radius is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The inside radius is less than the depth of the bar.</exception>
    /// <remarks>
    /// Equation: e = κ(y − y_n) + κ_r(z − z̄), κ = 1/(R_i + y_n), N = 0 and M_r = 0.
    /// Range: direction and strength of the drift of a length kept from turning; a bar free to roll turns further. A warning, not an end
    /// state.
    /// Source: <see cref="Sources.Mechanics"/>
    /// </remarks>
    public LoadedBend LoadedUnheldTo(BendRadius radius)
    {
        double inside = Guard.NotNull(radius, nameof(radius)).InsideOf(Section, nameof(radius));
        return inside >= Section.Height
            ? new(this, LeaningState.AtRadius(Section, Law, inside, 0))
            : throw Guard.Fault(nameof(radius), radius.Value,
                $"must leave an inside radius of at least the depth of the bar, {Guard.MillimetersText(Section.Height)}");
    }

    /// <summary>The state of a bar bent to a curvature, turn angle per unit of unbent length.</summary>
    /// <param name="curvature">Greater than zero; the neutral axis must stay outside the center of the bend.</param>
    /// <exception cref="ArgumentOutOfRangeException">The curvature is not positive and finite, or so large that the inside face reaches the
    /// center.</exception>
    public LoadedBend LoadedAt(ReciprocalLength curvature) =>
        new(this, StateAt(Guard.Positive(curvature, nameof(curvature)), nameof(curvature)));

    /// <summary>Bending moment that holds the bar at a curvature: the moment–curvature curve.</summary>
    /// <param name="curvature">Zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The curvature is negative or not finite, or so large that the inside face reaches the
    /// center.</exception>
    public Torque MomentAt(ReciprocalLength curvature)
    {
        double value = Guard.Place(curvature, nameof(curvature));
        return Torque.FromNewtonMeters(value == 0 ? 0 : StateAt(value, nameof(curvature)).BendingMoment(Moments, Law.E));
    }

    /// <summary>The loaded state that, once released, leaves the wanted ring: the inverse of bending and release.</summary>
    /// <param name="finished">The wanted ring.</param>
    /// <param name="release">How the bar is let go.</param>
    /// <exception cref="ArgumentNullException">The finished radius is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The ring is tighter than the tightest bend leaves.</exception>
    /// <remarks>
    /// Equation: find R_i with R_f(R_i) = R_wanted; R_f grows with R_i.
    /// Range: laws whose slope nowhere exceeds E; the loaded radius is always smaller than the finished one.
    /// Source: <see cref="Sources.Mechanics"/>
    /// </remarks>
    public LoadedBend LoadedFor(BendRadius finished, Release release)
    {
        Guard.NotNull(finished, nameof(finished)).InsideOf(Section, nameof(finished));
        Guard.Defined(release, nameof(release));
        return TryLoadedFor(finished, release)
            ?? throw Guard.Fault(nameof(finished), finished.Value,
                Unloading == 1 ? Invariant($"must be wider than the ring the tightest possible bend of {Section} leaves")
                    : Invariant($"must be a ring some bend of {Section} leaves when it springs back along the softer line"));
    }

    /// <summary>The yield stress that makes a bar loaded to a radius finish as it was measured: what the mill really delivered.</summary>
    /// <param name="loaded">The radius the bar was bent to.</param>
    /// <param name="finished">The ring as measured.</param>
    /// <param name="release">Whether it was measured free or held flat.</param>
    /// <returns>The yield stress, the other numbers of the law kept as <see cref="StressStrainLaw.WithYield"/> keeps them.</returns>
    /// <exception cref="ArgumentNullException">A radius is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The finished ring is not wider than the loaded radius, or wider than any yield
    /// explains.</exception>
    /// <remarks>
    /// Equation: find σ_y with R_f(R_i; σ_y) = R_measured; R_f grows with σ_y from R_i without bound.
    /// Range: a bar that really was bent to the loaded radius, as by wrapping a die.
    /// Source: <see cref="Sources.Mechanics"/>
    /// </remarks>
    public Pressure YieldFrom(BendRadius loaded, BendRadius finished, Release release)
    {
        double inside = Guard.NotNull(loaded, nameof(loaded)).InsideOf(Section, nameof(loaded));
        Guard.NotNull(finished, nameof(finished)).InsideOf(Section, nameof(finished));
        bool free = Guard.Defined(release, nameof(release)) == Release.Free;
        double level = finished.LevelIn(Section);
        AreaMoments m = Moments;

        // ψ = κ_t·R − (1 + e_f): positive while the modeled ring is tighter than the measured one, −1 when it springs straight.
        double Residual(double yield)
        {
            BentState state =
                HeldFlat.AtRadius(Section.Profile, LawOf(Material.Law.WithYield(Pressure.FromPascals(yield))), inside, FirstGuess);
            (double f, double r) = state.Left(m, free, Unloading);
            return Math.Sqrt(f * f + r * r) * finished.Radius - (1 + state.Stretch(m, Unloading) + f * (level - m.CentroidY));
        }

        double low = 1e-6 * Law.E;
        double high = 0.4 * Law.E;
        return Residual(low) > 0 && Residual(high) < 0
            ? Pressure.FromPascals(Bracketed.Root(Residual, low, high))
            : throw Guard.Fault(nameof(finished), finished.Value,
                $"must be a ring some yield explains, wider than the inside radius of {Guard.MillimetersText(inside)} it was loaded to");
    }

    /// <summary>Section and material.</summary>
    public override string ToString() =>
        $"{Section} of {Material}{(StressState == StressState.PlaneStrain ? ", in plane strain" : string.Empty)}";

    /// <summary>Stiffness on release over E.</summary>
    internal double Unloading => Material.Unloading;

    internal BentState? StateForFinished(double radius, double level, bool free) =>
        Unloading < 1 ? SofterRelease.ForFinished(this, radius, level, free)
        : IsForSearch && Law.IsSmooth ? CurveInverse.ForFinished(this, radius, level, free)
        : HeldFlat.ForFinished(Section.Profile, Law, FirstGuess, radius, level, free);

    internal BentState StateAtRadius(double insideRadius) => IsForSearch && Law.IsSmooth
        ? Curve.StateAt(Curve.AtRadius(insideRadius, Section.Height))
        : HeldFlat.AtRadius(Section.Profile, Law, insideRadius, FirstGuess);

    /// <summary>
    /// The state at a point of the curve: the exact one, for which it is as good a first guess as there is, unless this is for a search.
    /// </summary>
    internal BentState StateNear(in MomentPoint point) => IsForSearch
        ? Curve.StateAt(point.Curvature)
        : HeldFlat.AtCurvature(Section.Profile, Law, point.Curvature, point.Axis);

    /// <summary>Another bar of the same material for a search over many.</summary>
    internal BendAnalysis ForSearch(OrientedSection section) => new(section, Material, StressState) { IsForSearch = true };

    /// <summary>The same bar for a search, with the same curve.</summary>
    internal BendAnalysis ForSearch() => IsForSearch ? this : new(Section, Material, StressState) { IsForSearch = true, _curve = Curve };

    /// <summary>The same bar of another yield, for a search; where the law keeps its shape, with the same table.</summary>
    internal BendAnalysis ForSearch(BarMaterial material)
    {
        BendAnalysis other = new(Section, material, StressState) { IsForSearch = true };
        if (Law.IsScaledByYield)
        {
            other._curve = new(Curve.Table, other.Law.ReferenceStrain);
        }

        return other;
    }

    /// <summary>
    /// Bent to a positive inside radius again and again: with a law whose sums cost much, the curve tells where the neutral axis lies.
    /// </summary>
    internal LoadedBend FormedToInside(double inside)
    {
        if (!Law.IsSmooth || IsForSearch)
        {
            return LoadedToInside(inside);
        }

        double axis = Curve.At(Curve.AtRadius(inside, Section.Height)).Axis;
        return new(this, HeldFlat.AtRadius(Section.Profile, Law, inside, axis));
    }

    /// <summary>Bent to any positive inside radius.</summary>
    internal LoadedBend LoadedToInside(double inside) => new(this, StateAtRadius(inside));

    /// <summary>The loaded state that leaves a ring, or null when even the tightest bend leaves a wider one.</summary>
    internal LoadedBend? TryLoadedFor(BendRadius finished, Release release) =>
        TryLoadedFor(finished.Radius, finished.LevelIn(Section), release);

    /// <summary>The same for a radius at a level of the section.</summary>
    internal LoadedBend? TryLoadedFor(double radius, double level, Release release) =>
        StateForFinished(radius, level, release == Release.Free) is { } state ? new(this, state) : null;

    internal BentState StateAt(double curvature, string name)
    {
        BentState state = curvature * Section.Height < 1e9 ? HeldFlat.AtCurvature(Section.Profile, Law, curvature, FirstGuess) : default;
        return state.Curvature > 0 && state.InsideRadius > 0
            ? state
            : throw Guard.Fault(name, ReciprocalLength.FromInverseMeters(curvature), "must leave a positive inside radius");
    }

    /// <summary>The law in use with the yield of the material multiplied.</summary>
    internal StressStrainLaw LawAtYield(double factor) => LawOf(Material.Law.WithYield(factor * Material.Law.YieldStress));

    private StressStrainLaw LawOf(StressStrainLaw tensile) =>
        StressState == StressState.PlaneStrain ? tensile.InPlaneStrain(Material.PoissonsRatio!.Value) : tensile;
}
