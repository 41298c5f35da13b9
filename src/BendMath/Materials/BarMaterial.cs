using BendMath.Evidence;
using BendMath.Guards;
using BendMath.Materials;
using UnitsNet;

namespace BendMath;

/// <summary>
/// A bar's material: a stress–strain law, the range its yield may lie in, density, Poisson's ratio and elongation.
/// The yield range matters: the minimum of the standard is not what the mill delivers, and springback follows the real yield. Immutable and
/// thread-safe.
/// </summary>
public sealed record BarMaterial
{
    private readonly double _density;

    private readonly double? _elongation;

    /// <summary>Makes a material.</summary>
    /// <param name="name">What to call it in reports; not empty.</param>
    /// <param name="law">The stress–strain law; its yield is the most likely one.</param>
    /// <param name="density">Density, greater than zero.</param>
    /// <param name="elongation">Elongation after fracture, greater than zero; null when unknown.</param>
    /// <param name="yieldRange">The range the yield of the bar at hand may lie in; it must contain the law's yield. Null when no range is
    /// known.</param>
    /// <param name="poissonsRatio">Poisson's ratio ν, 0 to 0.5; null when unknown. Nothing in the bending of a narrow bar depends on
    /// it.</param>
    /// <exception cref="ArgumentNullException">Name or law is null.</exception>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public BarMaterial(string name, StressStrainLaw law, Density density, Ratio? elongation = null, PressureRange? yieldRange = null,
        double? poissonsRatio = null)
    {
        Name = Guard.Line(name, nameof(name));
        Law = Guard.NotNull(law, nameof(law));
        _density = Guard.Positive(density, nameof(density));
        _elongation = elongation is { } e ? Guard.Positive(e, nameof(elongation)) : null;
        PoissonsRatio = poissonsRatio is { } nu ? LawRules.PoissonsRatio(nu, nameof(poissonsRatio)) : null;
        YieldRange = yieldRange;
        if (yieldRange is null)
        {
            return;
        }

        if (!law.Allows(yieldRange.High))
        {
            throw Guard.Fault(nameof(yieldRange), yieldRange.High, $"must lie below the elastic modulus, {LawRules.Gigapascals(law.E)}");
        }

        double yield = law.YieldStress.Pascals;
        double low = Guard.Positive(yieldRange.Low, nameof(yieldRange));
        double high = Guard.Positive(yieldRange.High, nameof(yieldRange));
        if (yield < low * (1 - 1e-12) || yield > high * (1 + 1e-12))
        {
            throw Guard.OutOfRange(
                nameof(yieldRange),
                Invariant($"must contain the yield stress of the law, {yield / 1e6:0.###} MPa"),
                Invariant($"is {low / 1e6:0.###} to {high / 1e6:0.###} MPa"));
        }
    }

    /// <summary>What to call it in reports.</summary>
    public string Name { get; }

    /// <summary>The stress–strain law.</summary>
    public StressStrainLaw Law { get; }

    /// <summary>Density.</summary>
    public Density Density => Density.FromKilogramsPerCubicMeter(_density);

    /// <summary>Elongation after fracture, or null when unknown.</summary>
    public Ratio? Elongation => _elongation is { } e ? Ratio.FromDecimalFractions(e) : null;

    /// <summary>Poisson's ratio ν, or null when unknown.</summary>
    public double? PoissonsRatio { get; }

    /// <summary>The range the yield of the bar at hand may lie in, or null.</summary>
    public PressureRange? YieldRange { get; }

    /// <summary>Stiffness on release over Young's modulus, η; 100 % unless <see cref="WithSofterUnloading"/> says otherwise.</summary>
    public Ratio UnloadingShare => Ratio.FromDecimalFractions(Unloading);

    internal double Unloading { get; private init; } = 1;

    /// <summary>
    /// The same material with a softer release: after a few percent of strain steel unloads along a line 10 to 20 % flatter than Young's
    /// modulus. Loading stays as it is.
    /// </summary>
    /// <param name="share">Stiffness on release over Young's modulus, greater than zero and not greater than 100 %; for steel after a few
    /// percent of strain 80 to 90 %.</param>
    /// <remarks>
    /// Equation: Δκ = M/(η·E·I), never more than the loaded curvature; the stress that stays does not depend on η.
    /// Range: 0 &lt; η ≤ 1, one share for the whole section; fibers that stayed elastic really unload with E.
    /// Source: <see cref="Sources.UnloadingModulus"/>
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside its range.</exception>
    public BarMaterial WithSofterUnloading(Ratio share)
    {
        double eta = Guard.Positive(share, nameof(share));
        return eta <= 1 ? this with { Unloading = eta } : throw Guard.Fault(nameof(share), share, "must not be greater than 100 %");
    }

    /// <summary>The same material with a known yield, as from a mill certificate; the range is dropped.</summary>
    /// <param name="yieldStress">Yield stress of the bar at hand.</param>
    /// <exception cref="ArgumentOutOfRangeException">The yield is not positive and finite, or the law allows none so high.</exception>
    public BarMaterial WithYield(Pressure yieldStress) =>
        new(Name, Law.WithYield(yieldStress), Density, Elongation, poissonsRatio: PoissonsRatio) { Unloading = Unloading };

    /// <summary>Name and law, and the share on release where it is softer.</summary>
    public override string ToString() =>
        Unloading == 1 ? $"{Name} ({Law})" : Invariant($"{Name} ({Law}, unloading at {100 * Unloading:0.##} % of E)");
}
