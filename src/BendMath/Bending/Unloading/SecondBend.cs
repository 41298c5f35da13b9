using BendMath.Evidence;
using BendMath.Guards;
using BendMath.Numerics;
using BendMath.Numerics.Geometry;
using BendMath.Numerics.Integrals;
using UnitsNet;

namespace BendMath.Bending.Unloading;

/// <summary>
/// A bar with memory that was bent, let go and bent again, tighter and held flat: every fiber starts from what the first bend and its
/// release left in it. Immutable and thread-safe.
/// </summary>
public sealed class SecondBend
{
    /// <summary>Share of the largest force that is left where two fine steps of Newton's method find the balance to rounding.</summary>
    private const double Near = 1e-6;

    private readonly BackStress _metal;

    private readonly SectionField[] _legs;

    private readonly FiberSums _sums;

    private readonly double _inside;

    private readonly double _largest;

    internal SecondBend(ReleasedBend first, in BackStress metal, double insideRadius)
    {
        First = first;
        _metal = metal;
        _inside = insideRadius;
        LoadedBend loaded = first.Loaded;
        AreaMoments m = loaded.Analysis.Moments;
        BentState state = loaded.State;
        SectionField bent = new(state.Curvature * (m.CentroidY - state.NeutralAxis), state.Curvature, state.OutOfPlane);
        SectionField let = first.Kept;
        BentState direct = loaded.Analysis.StateAtRadius(insideRadius);
        double height = loaded.Analysis.Section.Height;
        double largest = Math.Max(direct.NeutralAxis, height - direct.NeutralAxis) * direct.Curvature;
        _largest = Math.Abs(metal.Respond(metal.Untouched, largest).Stress);
        MemoryReplay replay = new(metal, loaded.Analysis.Section, [bent, let], _largest);
        double curvature = CurvatureAt(replay, direct.Curvature, insideRadius + m.CentroidY, _largest * m.Area);
        SectionField again = Bent(curvature, insideRadius + m.CentroidY);
        _sums = replay.Under(again, isFine: true);
        _legs = [bent, let, again];
    }

    /// <summary>The first bend and its release.</summary>
    public ReleasedBend First { get; }

    /// <summary>Radius of the inside face while loaded again.</summary>
    public Length InsideRadius => Length.FromMeters(_inside);

    /// <summary>Curvature κ while loaded again: turn angle per unit of unbent length.</summary>
    public ReciprocalLength Curvature => ReciprocalLength.FromInverseMeters(_legs[2].InPlane);

    /// <summary>Distance of the fiber without strain from the inside face, while loaded again.</summary>
    /// <remarks>
    /// Equation: N = ∫σ dA = 0 of fibers that remember.
    /// Range: tighter than the first bend.
    /// Source: <see cref="Sources.Mechanisms"/>
    /// </remarks>
    public Length NeutralAxisFromInside => Length.FromMeters(1 / _legs[2].InPlane - _inside);

    /// <summary>Bending moment M_b while loaded again.</summary>
    /// <remarks>
    /// Equation: M_b = ∫σ·(y − ȳ) dA.
    /// Range: tighter than the first bend.
    /// Source: <see cref="Sources.Mechanisms"/>
    /// </remarks>
    public Torque BendingMoment => Torque.FromNewtonMeters(_sums.Bending);

    /// <summary>Moment M_r about the radial axis that holds an unsymmetric section flat while loaded again.</summary>
    /// <remarks>
    /// Equation: M_r = ∫σ·(z − z̄) dA.
    /// Range: tighter than the first bend.
    /// Source: <see cref="Sources.Mechanisms"/>
    /// </remarks>
    public Torque HoldDownMoment => Torque.FromNewtonMeters(_sums.HoldDown);

    /// <summary>Lets the bar go with its memory: the ring it has become.</summary>
    /// <param name="release">Free or held flat.</param>
    /// <exception cref="ArgumentOutOfRangeException">The release is not a defined value.</exception>
    /// <remarks>
    /// Equation: N = M_b = M_r = 0, or N = M_b = 0 and κ_rf = 0 held flat.
    /// Range: every fiber goes straight from its loaded strain to its final one.
    /// Source: <see cref="Sources.Mechanisms"/>
    /// </remarks>
    public FinishedRing Release(Release release)
    {
        bool free = Guard.Defined(release, nameof(release)) == BendMath.Release.Free;
        BendAnalysis analysis = First.Loaded.Analysis;
        AreaMoments m = analysis.Moments;
        MemoryReplay replay = new(_metal, analysis.Section, _legs, _largest);
        (double f, double r) = BentState.Unloaded(m, free, _sums.Bending / _metal.Modulus, _sums.HoldDown / _metal.Modulus);
        SectionField kept = FiberRelease.Balance(
            m, _metal.Modulus, _largest * m.Area, replay.Reach, free, new(_legs[2].Axial, _legs[2].InPlane - f, free ? -r : 0),
                (trial, fine) => replay.Under(trial, fine));
        return FinishedRing.Of(analysis.Section, kept);
    }

    /// <summary>Both radii.</summary>
    public override string ToString() => Invariant(
        $"{First.Loaded.Analysis.Section} bent to {1e3 * First.Loaded.State.InsideRadius:0.###} mm, let go, and held again at an inside "
            + $"radius of {1e3 * _inside:0.###} mm");

    private static SectionField Bent(double curvature, double arm) => new(curvature * arm - 1, curvature, 0);

    /// <summary>N rises with κ at a fixed radius, since every strain does: a bracket, a rough root, and two fine steps.</summary>
    private static double CurvatureAt(MemoryReplay replay, double guess, double arm, double force)
    {
        double low = guess;
        double high = guess;
        AxialForce balance = new(replay, arm, isFine: false);
        while (balance.At(low).Value > 0)
        {
            low *= 0.98;
        }

        while (balance.At(high).Value < 0)
        {
            high *= 1.02;
        }

        double curvature = low < high ? Newton.Root(ref balance, low, high, guess, rises: true, Near * force) : guess;
        balance = new(replay, arm, isFine: true);
        for (int i = 0; i < 2; i++)
        {
            (double value, double slope) = balance.At(curvature);
            curvature -= value / slope;
        }

        return curvature;
    }

    private readonly struct AxialForce(MemoryReplay replay, double arm, bool isFine) : IDifferentiable
    {
        public (double Value, double Slope) At(double x)
        {
            FiberSums sums = replay.Under(Bent(x, arm), isFine);
            return (sums.Force, arm * sums.S + sums.Sd);
        }
    }
}
