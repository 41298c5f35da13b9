using BendMath.Bending;
using BendMath.Evidence;
using BendMath.Guards;
using UnitsNet;

namespace BendMath;

/// <summary>
/// Which law to reach for when hot-rolled steel is bent: on the plateau, perfectly plastic at its stress; beyond, a law that hardens
/// after it. Immutable and thread-safe.
/// </summary>
/// <remarks>
/// Equation: largest |e| of the bar beside ε_sh.
/// Range: hot-rolled steel. The plateau of a heat may be longer than the law says; a power law is good only over strains it was fitted to.
/// Source: <see cref="Sources.YunGardner2017"/>
/// </remarks>
public sealed record LawAdvice
{
    private readonly double _largest;

    private LawAdvice(double largest, HotRolledSteel steel)
    {
        _largest = largest;
        Steel = steel;
        IsOnPlateau = largest <= steel.PlateauEnd.DecimalFractions;
        Law = IsOnPlateau ? new PerfectlyPlastic(steel.ElasticModulus, steel.PlateauStress) : steel;
    }

    /// <summary>The steel.</summary>
    public HotRolledSteel Steel { get; }

    /// <summary>The largest strain of the bar, of either sign.</summary>
    public Ratio LargestStrain => Ratio.FromDecimalFractions(_largest);

    /// <summary>Whether no fiber is strained beyond the plateau, so that there is nothing to gain from hardening.</summary>
    public bool IsOnPlateau { get; }

    /// <summary>The law to bend with.</summary>
    public StressStrainLaw Law { get; }

    /// <summary>The advice for a loaded bar.</summary>
    /// <param name="loaded">The bar, loaded as it will be; its own law only says how large its strains are.</param>
    /// <param name="steel">The steel: plateau as measured, otherwise typical, and ultimate strength.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static LawAdvice For(LoadedBend loaded, HotRolledSteel steel) => new(
        new LoadedField(Guard.NotNull(loaded, nameof(loaded))).LargestStrain, Guard.NotNull(steel, nameof(steel)));

    /// <summary>The advice in one sentence, with the largest strain.</summary>
    public override string ToString() => IsOnPlateau
        ? Invariant($"The largest strain is {100 * _largest:0.##} %, on the plateau, which ends at {Steel.PlateauEnd.Percent:0.##} %: bend "
            + $"with perfectly plastic steel at the measured plateau, otherwise at a typical one ({Steel.PlateauStress.Megapascals:0} MPa "
            + $"here); hardening adds nothing.")
        : Invariant($"The largest strain is {100 * _largest:0.##} %, beyond the plateau, which ends at {Steel.PlateauEnd.Percent:0.##} %: "
            + $"bend with hot-rolled steel that hardens, or with a measured curve; with a power law only if it was fitted over these "
            + $"strains.");
}
