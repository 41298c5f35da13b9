using BendMath.Evidence;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Materials.Standard;

/// <summary>
/// What the mill usually delivers of a hot-rolled grade, beside the minimum its standard guarantees: expected yield and ultimate
/// strength. Springback follows the real yield, so a bend
/// planned with the minimum comes off too wide. A certificate of the bar at hand is better than either. Immutable and thread-safe.
/// </summary>
/// <remarks>
/// Equation: f_y = R_y·F_y, f_u = R_t·F_u of the printed minima; for European grades f_u is the middle of the printed range.
/// Range: hot-rolled shapes and bars of the grades listed; plates of A36 have less.
/// Source: <see cref="Sources.Aisc341"/>, <see cref="Sources.En1998Randomness"/>
/// </remarks>
public sealed record TypicalStrength
{
    private static readonly (string Name, double Yield, double? Ultimate, Source Source)[] Factors =
    [
        ("A36", 1.5, 1.2, Sources.Aisc341),
        ("A572 Grade 50", 1.1, 1.1, Sources.Aisc341),
        ("S235JR", 1.45, null, Sources.En1998Randomness),
        ("S275JR", 1.35, null, Sources.En1998Randomness),
        ("S355J2", 1.25, null, Sources.En1998Randomness),
    ];

    private readonly double _yield;

    private readonly double _ultimate;

    private TypicalStrength(Grade grade, double yield, double ultimate, Source source)
    {
        Grade = grade;
        _yield = yield;
        _ultimate = ultimate;
        Source = source;
    }

    /// <summary>The grade.</summary>
    public Grade Grade { get; }

    /// <summary>Expected yield.</summary>
    public Pressure Yield => Pressure.FromPascals(_yield);

    /// <summary>Expected ultimate strength.</summary>
    public Pressure Ultimate => Pressure.FromPascals(_ultimate);

    /// <summary>Where the factor over the minimum comes from.</summary>
    public Source Source { get; }

    /// <summary>What is usually delivered of a grade, or null where the library knows of none.</summary>
    /// <param name="grade">The grade.</param>
    /// <exception cref="ArgumentNullException">The grade is null.</exception>
    public static TypicalStrength? Of(Grade grade)
    {
        Guard.NotNull(grade, nameof(grade));
        (string Name, double Yield, double? Ultimate, Source Source) found = Array.Find(Factors, row => row.Name == grade.Designation.Name);
        if (found.Name is null || grade.Tensile.ValueKind != GradeValueKind.StandardMinimum
            || grade.Tensile.UltimateStrength is not { } least)
        {
            return null;
        }

        double ultimate = found.Ultimate * least.Pascals ?? (least.Pascals + (grade.Tensile.MaximumUltimate ?? least).Pascals) / 2;
        double yield = found.Yield * grade.Tensile.YieldStrength.Pascals;
        return yield < ultimate ? new(grade, yield, ultimate, found.Source) : null;
    }

    /// <summary>
    /// A material with the plateau and the hardening of hot-rolled steel of these strengths; its name says that it is typical.
    /// </summary>
    public BarMaterial ToMaterial() => new(
        $"{Grade.Designation.FullName}, typical",
        new HotRolledSteel(Grade.Physical.ElasticModulus, Yield, Ultimate),
        Grade.Physical.Density,
        Grade.Tensile.Elongation,
        poissonsRatio: Grade.Physical.PoissonsRatio);

    /// <summary>Grade and strengths.</summary>
    public override string ToString() => Invariant(
        $"{Grade.Designation.FullName}, typical: yield {_yield / 1e6:0} MPa, ultimate {_ultimate / 1e6:0} MPa ({Source})");
}
