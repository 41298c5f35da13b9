using BendMath.Bending;
using BendMath.Bending.Unloading;
using BendMath.Evidence;
using BendMath.Guards;
using BendMath.Materials.Unloading;
using BendMath.Numerics.Geometry;
using BendMath.Numerics.Integrals;
using UnitsNet;

namespace BendMath;

/// <summary>
/// A bar after it was let go: the ring it has become, or the news that it sprang back straight, and the stress that stays in it. Immutable
/// and thread-safe.
/// </summary>
/// <remarks>
/// Equation: (κ_f, −Δκ_r) = I⁻¹·(∫e_p·(y − ȳ) dA, ∫e_p·(z − z̄) dA) with e_p = e − σ/E; κ_t = √(κ_f² + Δκ_r²). With a softer release κ − (κ
/// − κ_f)/η stays of each curvature.
/// Range: elastic unloading with the stiffness of the straight section, or a share η of it (<see cref="BarMaterial.WithSofterUnloading"/>).
/// Source: <see cref="Sources.Mechanics"/>
/// </remarks>
public sealed class ReleasedBend
{
    private readonly FinishedRing? _ring;

    private readonly (double InPlane, double OutOfPlane) _permanent;

    private readonly FiberRelease? _fibers;

    private IReadOnlyList<Advisory>? _advisories;

    internal ReleasedBend(LoadedBend loaded, Release release)
        : this(loaded, release, UnloadingRule.Elastic, null)
    {
    }

    internal ReleasedBend(LoadedBend loaded, Release release, UnloadingRule rule, FiberRelease? fibers)
    {
        Loaded = loaded;
        Kind = release;
        Rule = rule;
        _fibers = fibers;
        ref readonly BentState state = ref loaded.State;
        ref readonly AreaMoments m = ref loaded.Analysis.Moments;
        bool free = release == Release.Free;
        _permanent = state.Permanent(m, free);
        if (fibers is null)
        {
            (double inPlane, double outOfPlane) = state.Left(m, free, loaded.Analysis.Unloading);
            Kept = new(state.Stretch(m, loaded.Analysis.Unloading), inPlane, outOfPlane);
        }
        else
        {
            Kept = fibers.Kept;
        }

        double total = Math.Sqrt(Kept.InPlane * Kept.InPlane + Kept.OutOfPlane * Kept.OutOfPlane);
        IsStraight = (fibers is not null && Kept.InPlane <= 0) || total < HeldFlat.StraightRatio * state.TotalCurvature;
        _ring = IsStraight ? null : FinishedRing.Of(loaded.Analysis.Section, Kept);
    }

    /// <summary>The loaded state it was released from.</summary>
    public LoadedBend Loaded { get; }

    /// <summary>Whether it was released free or held flat.</summary>
    public Release Kind { get; }

    /// <summary>What its fibers did on the way back.</summary>
    public UnloadingRule Rule { get; }

    /// <summary>Whether the bar springs back straight: its finished curvature is below one millionth of the loaded one.</summary>
    public bool IsStraight { get; }

    /// <summary>The ring or arc it has become.</summary>
    /// <exception cref="InvalidOperationException">The bar springs back straight; see <see cref="IsStraight"/>.</exception>
    public FinishedRing Ring =>
        _ring ?? throw new InvalidOperationException($"The bar springs back straight and leaves no ring: {Loaded}.");

    /// <summary>Share of the loaded curvature that stays, κ_t/κ: 1 without springback, 0 for a bar that stays elastic.</summary>
    public double CurvatureKept => IsStraight ? 0 : _ring!.TotalCurvature / Loaded.State.TotalCurvature;

    /// <summary>How the finished inside radius answers to small changes of the loaded radius and of the yield.</summary>
    /// <exception cref="InvalidOperationException">The bar springs back straight, or it was not held flat, or was pulled, while it was
    /// loaded, or was not let go elastically.</exception>
    public RingSensitivity Sensitivity => IsStraight || !Loaded.IsHeldFlat || Loaded.IsPulled || _fibers is not null
        ? throw new InvalidOperationException(
            $"The sensitivity exists for a ring that was bent held flat and without pull and let go elastically, not for this bar: {this}.")
        : RingSensitivity.Of(this);

    /// <summary>What is doubtful about this result.</summary>
    public IReadOnlyList<Advisory> Advisories => _advisories ??= BendAdvisories.ForReleased(this);

    /// <summary>Stress left at a point of the section after release, tension positive.</summary>
    /// <param name="fromInside">Distance from the inside face, between zero and the depth.</param>
    /// <param name="axial">Position z along the axis of the ring, between zero and the width.</param>
    /// <exception cref="ArgumentOutOfRangeException">The point lies outside the bounding box of the section.</exception>
    /// <remarks>
    /// Equation: σ_r = E·(e_f − e_p), with e_f the linear strain of the bar released with E: a softer release lets go of the same stress.
    /// Range: elastic unloading; free: in equilibrium with N, M_b and M_r; held flat: with N and M_b only.
    /// Source: <see cref="Sources.Mechanics"/>
    /// </remarks>
    public Pressure ResidualStressAt(Length fromInside, Length axial)
    {
        double y = Loaded.Level(fromInside, nameof(fromInside));
        return Pressure.FromPascals(Residual(y, Loaded.Position(axial, nameof(axial))));
    }

    /// <summary>
    /// Gap between the ends of a ring that was closed while loaded, after release: the chord between the end sections at the centroid; zero
    /// when it closes on itself.
    /// </summary>
    /// <exception cref="InvalidOperationException">The bar springs back straight.</exception>
    /// <remarks>
    /// Equation: Δθ = 2π(1 − κ_t/κ), gap = 2R_f·sin(Δθ/2).
    /// Range: a full turn bent in one loading; a negative opening cannot occur, since release only opens the ring.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public Length EndGapOfClosedRing =>
        Length.FromMeters(2 * Ring.CentroidRadius.Meters * Math.Sin(Math.PI * Math.Max(0, 1 - CurvatureKept)));

    /// <summary>Bends the bar again, tighter and held flat, from what this bend and its release with memory left in it.</summary>
    /// <param name="radius">The radius, tighter than that of this bend.</param>
    /// <exception cref="ArgumentNullException">The radius is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The radius is not tighter than that of this bend, or makes the metal
    /// soften.</exception>
    /// <exception cref="InvalidOperationException">The bar was not released with memory alone.</exception>
    public SecondBend BendAgainTo(BendRadius radius)
    {
        double inside = Guard.NotNull(radius, nameof(radius)).InsideOf(Loaded.Analysis.Section, nameof(radius));
        if (Rule is not { HasMemory: true, Chord: null } || Loaded.Analysis.Law is not KinematicHardening law)
        {
            throw new InvalidOperationException(
                $"A bar is bent again from its memory, which needs a release with memory alone, not {Rule}.");
        }

        if (inside >= Loaded.State.InsideRadius)
        {
            throw Guard.Fault(nameof(radius), radius.Value,
                $"must be tighter than the first bend, to an inside radius below {Guard.MillimetersText(Loaded.State.InsideRadius)}");
        }

        return Loaded.Analysis.Section.Height / inside <= law.DataStrain
            ? new(this, law.Metal, inside)
            : throw Guard.Fault(nameof(radius), radius.Value,
                Invariant($"must leave strains below the {100 * law.DataStrain:0.##} % at which the metal softens"));
    }

    /// <summary>The ring, or that the bar is straight.</summary>
    public override string ToString() =>
        $"{(Kind == Release.Free ? "released free" : "held flat")}: {(IsStraight ? "straight" : Ring.ToString())}";

    /// <summary>The linear strain the bar keeps.</summary>
    internal SectionField Kept { get; }

    internal double Residual(double y, double z)
    {
        AreaMoments m = Loaded.Analysis.Moments;
        StressStrainLaw law = Loaded.Analysis.Law;
        double strain = Loaded.Strain(y, z);
        if (_fibers is not null)
        {
            return _fibers.Stress(strain, _fibers.Kept.At(y - m.CentroidY, z - m.CentroidZ));
        }

        double plastic = Math.Sign(strain) * law.PlasticStrain(Math.Abs(strain));
        double stays = Loaded.State.Sums.P0 / m.Area + _permanent.InPlane * (y - m.CentroidY) + _permanent.OutOfPlane * (z - m.CentroidZ);
        return law.E * (stays - plastic);
    }
}
