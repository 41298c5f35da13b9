using System.Globalization;
using BendMath.Bending;
using BendMath.Numerics;
using UnitsNet;

namespace BendMath;

/// <summary>A bar after it was let go: the ring it has become, or the news that it sprang back straight, and the stress that stays in it. Immutable and thread-safe.</summary>
/// <remarks>
/// Equation: (κ_f, −Δκ_r) = I⁻¹·(∫e_p·(y − ȳ) dA, ∫e_p·(z − z̄) dA) with e_p = e − σ/E; κ_t = √(κ_f² + Δκ_r²). With a softer release κ − (κ − κ_f)/η stays of each curvature.
/// Range: elastic unloading with the stiffness of the straight section, or a share η of it (<see cref="BarMaterial.WithSofterUnloading"/>).
/// Source: <see cref="Sources.Mechanics"/>
/// </remarks>
public sealed class ReleasedBend
{
    private readonly FinishedRing? _ring;

    private readonly double _inPlane;

    private readonly double _outOfPlane;

    private readonly (double InPlane, double OutOfPlane) _permanent;

    private IReadOnlyList<Advisory>? _advisories;

    internal ReleasedBend(LoadedBend loaded, Release release)
    {
        Loaded = loaded;
        Kind = release;
        ref readonly BentState state = ref loaded.State;
        _permanent = state.Permanent(loaded.Analysis.Moments, release == Release.Free);
        (_inPlane, _outOfPlane) = state.Left(loaded.Analysis.Moments, release == Release.Free, loaded.Analysis.Unloading);
        double total = Math.Sqrt(_inPlane * _inPlane + _outOfPlane * _outOfPlane);
        IsStraight = total < HeldFlat.StraightRatio * state.Curvature;
        if (!IsStraight)
        {
            _ring = RingOf(loaded, total);
        }
    }

    /// <summary>The loaded state it was released from.</summary>
    public LoadedBend Loaded { get; }

    /// <summary>Whether it was released free or held flat.</summary>
    public Release Kind { get; }

    /// <summary>Whether the bar springs back straight: its finished curvature is below one millionth of the loaded one.</summary>
    public bool IsStraight { get; }

    /// <summary>The ring or arc it has become.</summary>
    /// <exception cref="InvalidOperationException">The bar springs back straight; see <see cref="IsStraight"/>.</exception>
    public FinishedRing Ring => _ring ?? throw new InvalidOperationException($"The bar springs back straight and leaves no ring: {Loaded}.");

    /// <summary>Share of the loaded curvature that stays, κ_t/κ: 1 without springback, 0 for a bar that stays elastic.</summary>
    public double CurvatureKept => IsStraight ? 0 : _ring!.TotalCurvature / Loaded.State.Curvature;

    /// <summary>How the finished inside radius answers to small changes of the loaded radius and of the yield.</summary>
    /// <exception cref="InvalidOperationException">The bar springs back straight, or it was not held flat, or was pulled, while it was loaded.</exception>
    public RingSensitivity Sensitivity => IsStraight || !Loaded.IsHeldFlat || Loaded.IsPulled
        ? throw new InvalidOperationException($"The sensitivity exists for a ring that was bent held flat and without pull, not for this bar: {this}.")
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

    /// <summary>Gap between the ends of a ring that was closed while loaded, after release: the chord between the end sections at the centroid; zero when it closes on itself.</summary>
    /// <exception cref="InvalidOperationException">The bar springs back straight.</exception>
    /// <remarks>
    /// Equation: Δθ = 2π(1 − κ_t/κ), gap = 2R_f·sin(Δθ/2).
    /// Range: a full turn bent in one loading; a negative opening cannot occur, since release only opens the ring.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public Length EndGapOfClosedRing => Length.FromMeters(2 * Ring.CentroidRadius.Meters * Math.Sin(Math.PI * Math.Max(0, 1 - CurvatureKept)));

    /// <summary>The ring, or that the bar is straight.</summary>
    public override string ToString() => string.Format(
        CultureInfo.InvariantCulture, "{0}: {1}", Kind == Release.Free ? "released free" : "held flat", IsStraight ? "straight" : Ring);

    internal double Residual(double y, double z)
    {
        AreaMoments m = Loaded.Analysis.Moments;
        StressStrainLaw law = Loaded.Analysis.Law;
        double strain = Loaded.Strain(y, z);
        double plastic = Math.Sign(strain) * law.PlasticStrain(Math.Abs(strain));
        double stays = Loaded.State.Sums.P0 / m.Area + _permanent.InPlane * (y - m.CentroidY) + _permanent.OutOfPlane * (z - m.CentroidZ);
        return law.E * (stays - plastic);
    }

    private FinishedRing RingOf(LoadedBend loaded, double total)
    {
        ref readonly AreaMoments m = ref loaded.Analysis.Moments;
        double height = loaded.Analysis.Section.Height;
        double axial = 1 + loaded.State.Stretch(m, loaded.Analysis.Unloading);
        double inside = axial - _inPlane * m.CentroidY;
        double radius = 1 / total;
        return new(
            total,
            inside * radius,
            (inside - _outOfPlane * m.CentroidZ) * radius,
            axial * radius,
            (axial + _inPlane * (height - m.CentroidY)) * radius,
            _outOfPlane,
            _inPlane);
    }
}
