using BendMath.Json.Parts;
using BendMath.Json.Words;
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
        Func<Pressure, StressStrainLaw>? law = LawWords.Read(material);
        (Pressure Low, Pressure High)? range = material.OptionalPressures("yield range");
        Density? density = material.Density("density", "7850 kg/m3");
        Ratio? elongation = material.OptionalPercent("elongation", "23 %");
        Ratio? unloading = material.OptionalPercent("unloading share", "85 %");
        double? poisson = material.OptionalNumber("Poisson's ratio", "0.3");
        BarMaterial? made = null;
        if (material.Sound && law is not null)
        {
            StressStrainLaw? built = material.Build(
                () => law(modulus!.Value),
                [("elasticModulus", "elastic modulus"), .. LawWords.All.SelectMany(words => words.Parameters)]);
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
}
