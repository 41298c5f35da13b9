using BendMath.Json.Parts;
using UnitsNet;

namespace BendMath.Json.Reading;

/// <summary>
/// Reads the material: perfectly plastic after yield, hardening with a tangent modulus, a power law, or a curve of three parameters.
/// </summary>
internal static class MaterialReader
{
    public const string Example =
        "\"material\": { \"name\": \"mild steel\", \"elastic modulus\": \"210 GPa\", \"yield\": \"280 MPa\", \"density\": \"7850 kg/m3\" }";

    public static BarMaterial? Read(JobObject owner)
    {
        if (owner.Object("material", Example) is not { } material)
        {
            return null;
        }

        string? name = material.Text("name", "\"mild steel\"");
        Pressure? modulus = material.Pressure("elastic modulus", "210 GPa");
        Func<StressStrainLaw>? law = Law(material, modulus);
        (Pressure Low, Pressure High)? range = material.OptionalPressures("yield range");
        Density? density = material.Density("density", "7850 kg/m3");
        Ratio? elongation = material.OptionalPercent("elongation", "23 %");
        Ratio? unloading = material.OptionalPercent("unloading share", "85 %");
        double? poisson = material.OptionalNumber("Poisson's ratio", "0.3");
        BarMaterial? made = null;
        if (material.Sound && law is not null)
        {
            StressStrainLaw? built = material.Build(
                law,
                ("elasticModulus", "elastic modulus"),
                ("yieldStress", "yield"),
                ("tangentModulus", "tangent modulus"),
                ("strengthCoefficient", "strength coefficient"),
                ("hardeningExponent", "hardening exponent"),
                ("proofStress", "proof stress"));
            PressureRange? yields = range is { } given
                ? material.Build(() => new PressureRange(given.Low, given.High), ("low", "yield range"), ("high", "yield range"))
                : null;
            made = built is null || !material.Sound
                ? null
                : material.Build(
                    () =>
                        new BarMaterial(name!, built, density!.Value, elongation, yields, poisson).WithSofterUnloading(
                            unloading ?? Ratio.FromPercent(100)),
                    ("yieldRange", "yield range"),
                    ("poissonsRatio", "Poisson's ratio"),
                    ("share", "unloading share"));
        }

        material.Close();
        return made;
    }

    /// <summary>
    /// A power law by its strength coefficient, a curve of three parameters by its proof stress, otherwise a yield with or without a
    /// tangent modulus.
    /// </summary>
    private static Func<StressStrainLaw>? Law(JobObject material, Pressure? modulus)
    {
        if (material.OptionalPressure("strength coefficient", "600 MPa") is { } strength)
        {
            double? exponent = Required(material, "hardening exponent", "0.2");
            return () => new PowerHardening(modulus!.Value, strength, exponent!.Value);
        }

        if (material.OptionalPressure("proof stress", "240 MPa") is { } proof)
        {
            double? exponent = Required(material, "exponent", "12");
            return () => new RambergOsgood(modulus!.Value, proof, exponent!.Value);
        }

        Pressure? yield = material.Pressure("yield", "280 MPa");
        Pressure? tangent = material.OptionalPressure("tangent modulus", "2 GPa", orZero: true);
        return () =>
            tangent is { } slope ? new LinearHardening(modulus!.Value, yield!.Value, slope)
                : new PerfectlyPlastic(modulus!.Value, yield!.Value);
    }

    private static double? Required(JobObject material, string name, string example)
    {
        material.Require(name, $"\"{name}\": {example}");
        return material.OptionalNumber(name, example);
    }
}
