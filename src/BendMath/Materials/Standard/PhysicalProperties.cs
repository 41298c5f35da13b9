using BendMath.Evidence;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Materials.Standard;

/// <summary>What a metal has whatever its strength: Young's modulus, Poisson's ratio, density. Immutable and thread-safe.</summary>
public sealed record PhysicalProperties
{
    private readonly double _density;

    /// <summary>States the properties.</summary>
    /// <param name="elasticModulus">Young's modulus E, greater than zero.</param>
    /// <param name="poissonsRatio">Poisson's ratio ν, 0 to 0.5.</param>
    /// <param name="density">Density, greater than zero.</param>
    /// <param name="source">Where they are printed; null for data of your own.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public PhysicalProperties(Pressure elasticModulus, double poissonsRatio, Density density, Source? source = null)
    {
        E = Guard.Positive(elasticModulus, nameof(elasticModulus));
        PoissonsRatio = LawRules.PoissonsRatio(poissonsRatio, nameof(poissonsRatio));
        _density = Guard.Positive(density, nameof(density));
        Source = source;
    }

    /// <summary>Young's modulus E.</summary>
    public Pressure ElasticModulus => Pressure.FromPascals(E);

    /// <summary>Poisson's ratio ν.</summary>
    public double PoissonsRatio { get; }

    /// <summary>Density.</summary>
    public Density Density => Density.FromKilogramsPerCubicMeter(_density);

    /// <summary>Where they are printed; null for data of your own.</summary>
    public Source? Source { get; }

    internal double E { get; }

    /// <summary>The three numbers.</summary>
    public override string ToString() => Invariant($"E {E / 1e9:0.#} GPa, ν {PoissonsRatio:0.##}, {_density:0.#} kg/m³");
}
