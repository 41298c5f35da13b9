using BendMath.Numerics.Geometry;
using BendMath.Numerics.Integrals;

namespace BendMath.Bending.Unloading;

/// <summary>
/// A bar let go fiber by fiber: the linear strain it keeps, and the stress each fiber keeps at a loaded and a final strain.
/// </summary>
internal sealed class FiberRelease
{
    private const int Enough = 200;

    /// <summary>
    /// What is left of the balance, beside the largest stress on the whole section, from which on the sums are taken finely.
    /// </summary>
    private const double Near = 1e-5;

    /// <summary>What may be left for one more step, which squares it, to be the last.</summary>
    private const double Nearer = 1e-8;

    /// <summary>Share of the curvature in the plane below which one out of it is none.</summary>
    private const double Nothing = 1e-13;

    private readonly Func<double, double, double> _stress;

    private FiberRelease(in SectionField kept, Func<double, double, double> stress)
    {
        Kept = kept;
        _stress = stress;
    }

    public SectionField Kept { get; }

    /// <summary>Stress of a fiber that was loaded to one strain and came back to another.</summary>
    public double Stress(double loaded, double kept) => _stress(loaded, kept);

    /// <summary>
    /// Metal with memory: N = M_b = M_r = 0, or without the last and κ_r = 0, of the stresses the fibers have when each goes straight to
    /// its final strain. The stresses
    /// rise with the strains, so the three equations are the gradient of one convex function and have one solution; a Newton step that
    /// does not lessen what is left is replaced by one of the
    /// elastic stiffness, which is never too small.
    /// </summary>
    public static FiberRelease WithMemory(LoadedBend loaded, in BackStress metal, bool free, Func<double, double>? modulus)
    {
        LoadedField field = new(loaded);
        double largest = Math.Abs(metal.Respond(metal.Untouched, field.LargestStrain).Stress);
        MemoryUnloading fibers = new(metal, field, modulus, largest);
        ref readonly AreaMoments m = ref loaded.Analysis.Moments;
        (double f, double r) = loaded.State.Permanent(m, free);
        SectionField kept =
            Balance(m, metal.Modulus, largest * m.Area, field.Reach, free, new(loaded.State.Sums.P0 / m.Area, f, r),
                (trial, fine) => fibers.Under(trial, fine));
        BackStress copy = metal;
        return new(kept, (from, to) => copy.Respond(fibers.Loaded(from), to).Stress);
    }

    /// <summary>The field under which the sums vanish: searched with rough sums, then settled with fine ones.</summary>
    public static SectionField Balance(
        in AreaMoments m, double modulus, double force, double reach, bool free, in SectionField guess,
        Func<SectionField, bool, FiberSums> sums)
    {
        SectionField at = guess;
        bool fine = false;
        FiberSums now = sums(at, fine);
        for (int i = 0; i < Enough; i++)
        {
            double left = Left(now);
            if (left < Near && !fine)
            {
                fine = true;
                now = sums(at, fine);
                continue;
            }

            SectionField next = Plain(at.Plus(now.Solve(now.Force, now.Bending, now.HoldDown, free), -1));
            if (left < Nearer)
            {
                return next;
            }

            FiberSums then = sums(next, fine);
            if (!(Left(then) < 0.9 * left))
            {
                double stretch = now.Force / (modulus * m.Area);
                (double f, double r) = BentState.Unloaded(m, free, now.Bending / modulus, now.HoldDown / modulus);
                next = Plain(at.Plus(new(stretch, f, r), -1));
                then = sums(next, fine);
            }

            (at, now) = (next, then);
        }

        throw new InvalidOperationException(
            "The fibers of a bar found no balance; this is a defect of BendMath, please report it with the input.");

        // Symmetric sections keep no curvature out of the plane but what rounding leaves.
        static SectionField Plain(in SectionField of) =>
            Math.Abs(of.OutOfPlane) < Nothing * Math.Abs(of.InPlane) ? new(of.Axial, of.InPlane, 0) : of;

        double Left(in FiberSums of) => (Math.Abs(of.Force) + (Math.Abs(of.Bending) + (free ? Math.Abs(of.HoldDown) : 0)) / reach) / force;
    }

    /// <summary>
    /// Every fiber unloads along a line of its own slope E_u(e_p) through its loaded point, in both directions: [∫E_u·g·gᵀ dA]·(e₀, κ_f,
    /// κ_rf) = ∫(E_u·e − σ)·g dA. Fibers that
    /// stayed elastic have E_u = E, so that a bar without plastic strain comes back straight.
    /// </summary>
    public static FiberRelease WithModulus(LoadedBend loaded, bool free, Func<double, double> modulus)
    {
        LoadedField field = new(loaded);
        StressStrainLaw law = loaded.Analysis.Law;
        ChordUnloading fibers = new(law, field, modulus);
        FiberSums sums = fibers.Sums();
        SectionField kept = sums.Solve(sums.Force, sums.Bending, sums.HoldDown, free);
        return new(kept, (from, to) => law.Stress(from) + modulus(law.PlasticStrain(Math.Abs(from))) * (to - from));
    }
}
