using BendMath.Evidence;
using UnitsNet;

namespace BendMath.Materials.Standard;

/// <summary>Expected yield and ultimate strength of hot-rolled grades over the minima of their standards.</summary>
internal static class TypicalStrength
{
    private static readonly (string Name, double Yield, double? Ultimate, Source Source)[] Factors =
    [
        ("A36", 1.5, 1.2, Sources.Aisc341),
        ("A572 Grade 50", 1.1, 1.1, Sources.Aisc341),
        ("S235JR", 1.45, null, Sources.En1998Randomness),
        ("S275JR", 1.35, null, Sources.En1998Randomness),
        ("S355J2", 1.25, null, Sources.En1998Randomness),
    ];

    public static TensileProperties? Of(Grade grade)
    {
        (string Name, double Yield, double? Ultimate, Source Source) found = Array.Find(Factors, row => row.Name == grade.Name);
        if (found.Name is null || grade.Tensile.ValueKind != GradeValueKind.StandardMinimum
            || grade.Tensile.UltimateStrength is not { } least)
        {
            return null;
        }

        double ultimate = found.Ultimate * least.Pascals ?? (least.Pascals + (grade.Tensile.MaximumUltimate ?? least).Pascals) / 2;
        double yield = found.Yield * grade.Tensile.YieldStrength.Pascals;
        return yield < ultimate
            ? new(Pressure.FromPascals(yield), GradeValueKind.Typical, ultimateStrength: Pressure.FromPascals(ultimate),
                source: found.Source)
            : null;
    }
}
