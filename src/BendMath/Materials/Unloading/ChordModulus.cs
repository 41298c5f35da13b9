using BendMath.Evidence;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Materials.Unloading;

/// <summary>
/// The slope along which a metal unloads, which falls with the plastic strain it has had: the chord from the loaded point to zero stress,
/// as a test measures it. Immutable and thread-safe.
/// </summary>
/// <remarks>
/// Equation: E_u = E₀ − (E₀ − E_a)·(1 − exp(−ξ·|e_p|)).
/// Range: 0 &lt; E_a ≤ E₀, ξ ≥ 0; one S355J2 has E_a/E₀ ≈ 0.80 and ξ ≈ 50 by eye through four measured points. A measured chord already
/// holds part of the early yielding on reversal.
/// Source: <see cref="Sources.UnloadingModulus"/>
/// </remarks>
public sealed record ChordModulus
{
    private readonly double _saturated;

    /// <summary>Makes the rule.</summary>
    /// <param name="saturatedShare">E_a/E₀, the share of Young's modulus left after much plastic strain; greater than zero and not
    /// greater than 100 %.</param>
    /// <param name="rate">Rate ξ per plastic strain, zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public ChordModulus(Ratio saturatedShare, double rate)
    {
        _saturated = Guard.Positive(saturatedShare, nameof(saturatedShare));
        if (_saturated > 1)
        {
            throw Guard.Fault(nameof(saturatedShare), saturatedShare, "must not be greater than 100 %");
        }

        Rate = Guard.NonNegative(rate, nameof(rate));
    }

    /// <summary>E_a/E₀, the share of Young's modulus left after much plastic strain.</summary>
    public Ratio SaturatedShare => Ratio.FromDecimalFractions(_saturated);

    /// <summary>Rate ξ per plastic strain.</summary>
    public double Rate { get; }

    /// <summary>Share of Young's modulus a fiber unloads with.</summary>
    /// <param name="plasticStrain">Plastic strain of the fiber, of either sign.</param>
    /// <exception cref="ArgumentOutOfRangeException">The strain is not finite.</exception>
    /// <remarks>
    /// Equation: E_u/E₀ = 1 − (1 − E_a/E₀)·(1 − exp(−ξ·|e_p|)).
    /// Range: plastic strain of first loading, e − σ/E₀.
    /// Source: <see cref="Sources.UnloadingModulus"/>
    /// </remarks>
    public Ratio ShareAt(Ratio plasticStrain) => Ratio.FromDecimalFractions(Share(Guard.Finite(plasticStrain, nameof(plasticStrain))));

    /// <summary>Saturated share and rate.</summary>
    public override string ToString() => Invariant($"unloading modulus falling to {100 * _saturated:0.##} % at a rate of {Rate:0.##}");

    internal double Share(double plasticStrain) => 1 - (1 - _saturated) * (1 - Math.Exp(-Rate * Math.Abs(plasticStrain)));
}
