using BendMath.Guards;
using UnitsNet;

namespace BendMath.Materials;

/// <summary>Rules every law shares.</summary>
internal static class LawRules
{
    public static double YieldBelowModulus(Pressure yieldStress, double elasticModulus)
    {
        double yield = Guard.Positive(yieldStress, nameof(yieldStress));
        return yield < elasticModulus
            ? yield
            : throw Guard.Fault(nameof(yieldStress), yieldStress,
                $"must be smaller than the elastic modulus, {Gigapascals(elasticModulus)}");
    }

    public static double PoissonsRatio(double value, string name) => Guard.NonNegative(value, name) <= 0.5
        ? value
        : throw Guard.Fault(name, value, "must not be greater than 0.5");

    public static string Gigapascals(double pascals) => Invariant($"{pascals / 1e9:0.###} GPa");
}
