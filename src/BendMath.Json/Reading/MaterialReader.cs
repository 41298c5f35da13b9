using UnitsNet;

namespace BendMath.Json.Reading;

/// <summary>Reads the material: perfectly plastic after yield, or hardening with a tangent modulus.</summary>
internal static class MaterialReader
{
    public const string Example = "\"material\": { \"name\": \"mild steel\", \"elastic modulus\": \"210 GPa\", \"yield\": \"280 MPa\", \"density\": \"7850 kg/m3\" }";

    public static BarMaterial? Read(JobObject owner)
    {
        if (owner.Object("material", Example) is not { } material)
        {
            return null;
        }

        string? name = material.Text("name", "\"mild steel\"");
        Pressure? modulus = material.Pressure("elastic modulus", "210 GPa");
        Pressure? yield = material.Pressure("yield", "280 MPa");
        Pressure? tangent = material.OptionalPressure("tangent modulus", "2 GPa");
        (Pressure Low, Pressure High)? range = material.OptionalPressures("yield range");
        Density? density = material.Density("density", "7850 kg/m3");
        Ratio? elongation = material.OptionalPercent("elongation", "23 %");
        Ratio? unloading = material.OptionalPercent("unloading share", "85 %");
        BarMaterial? made = null;
        if (material.Sound)
        {
            StressStrainLaw? law = material.Build<StressStrainLaw>(
                () => tangent is { } slope ? new LinearHardening(modulus!.Value, yield!.Value, slope) : new PerfectlyPlastic(modulus!.Value, yield!.Value),
                ("elasticModulus", "elastic modulus"),
                ("yieldStress", "yield"),
                ("tangentModulus", "tangent modulus"));
            PressureRange? yields = range is { } given
                ? material.Build(() => new PressureRange(given.Low, given.High), ("low", "yield range"), ("high", "yield range"))
                : null;
            made = law is null || !material.Sound
                ? null
                : material.Build(
                    () => new BarMaterial(name!, law, density!.Value, elongation, yields).WithSofterUnloading(unloading ?? Ratio.FromPercent(100)),
                    ("yieldRange", "yield range"),
                    ("share", "unloading share"));
        }

        material.Close();
        return made;
    }
}
