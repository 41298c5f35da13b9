using BendMath.Evidence;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Materials.Standard;

/// <summary>
/// A published pair of strength coefficient K and hardening exponent n, true stress = K·εⁿ: typical, of one heat. Immutable and
/// thread-safe.
/// </summary>
public sealed record HardeningPair
{
    private readonly double _strength;

    /// <summary>Makes a pair.</summary>
    /// <param name="description">What was tested, such as <c>stainless 304, annealed</c>; not empty.</param>
    /// <param name="strengthCoefficient">Strength coefficient K, greater than zero.</param>
    /// <param name="hardeningExponent">Hardening exponent n, zero or more and less than one.</param>
    /// <param name="source">Where the pair is printed; null for a measurement of your own.</param>
    /// <exception cref="ArgumentNullException">The description is null.</exception>
    /// <exception cref="ArgumentException">The description is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">K or n is outside its range.</exception>
    public HardeningPair(string description, Pressure strengthCoefficient, double hardeningExponent, Source? source = null)
    {
        Description = Guard.Line(description, nameof(description));
        _strength = Guard.Positive(strengthCoefficient, nameof(strengthCoefficient));
        HardeningExponent = Guard.NonNegative(hardeningExponent, nameof(hardeningExponent));
        if (hardeningExponent >= 1)
        {
            throw Guard.Fault(nameof(hardeningExponent), hardeningExponent, "must be smaller than 1");
        }

        Source = source;
    }

    /// <summary>What was tested.</summary>
    public string Description { get; }

    /// <summary>Strength coefficient K.</summary>
    public Pressure StrengthCoefficient => Pressure.FromPascals(_strength);

    /// <summary>Hardening exponent n.</summary>
    public double HardeningExponent { get; }

    /// <summary>Where the pair is printed, or null.</summary>
    public Source? Source { get; }

    /// <summary>
    /// The engineering ultimate strength the pair implies; beside a grade's printed ultimate strength it exposes a poor pair.
    /// </summary>
    /// <remarks>
    /// Equation: R_m = K·(n/e)ⁿ, with e = 2.718…; K for n = 0.
    /// Range: the power law holds up to the uniform true strain, which then is n.
    /// Source: <see cref="Sources.Considere1885"/>
    /// </remarks>
    public Pressure ImpliedUltimate => Pressure.FromPascals(_strength * Math.Pow(HardeningExponent / Math.E, HardeningExponent));

    /// <summary>What was tested, K and n.</summary>
    public override string ToString() => Invariant($"{Description}: K {_strength / 1e6:0.#} MPa, n {HardeningExponent:0.###}");
}
