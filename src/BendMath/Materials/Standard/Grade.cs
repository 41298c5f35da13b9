using BendMath.Evidence;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Materials.Standard;

/// <summary>
/// A grade of metal as a standard or handbook prints it: one row for one condition and one range of sizes. It is not the bar at hand; a
/// mill certificate is, see <see cref="BarMaterial.WithYield"/>. Immutable and thread-safe.
/// </summary>
public sealed class Grade
{
    private readonly HardeningPair[] _pairs;

    /// <summary>Makes a grade; the library's own are in <see cref="Grades"/>.</summary>
    /// <param name="name">Designation, such as <c>S235JR</c>; not empty.</param>
    /// <param name="condition">Form and heat treatment, such as <c>hot rolled</c>; not empty.</param>
    /// <param name="standard">The standard or list that prints it; not empty.</param>
    /// <param name="physical">Modulus, Poisson's ratio and density.</param>
    /// <param name="tensile">Strengths and elongation; the yield, and its upper end, less than the elastic modulus.</param>
    /// <param name="sizeRange">Sizes the row holds for, such as <c>t &lt;= 16 mm</c>; null for all.</param>
    /// <param name="hardeningPairs">Pairs of K and n of metal like this, the preferred one first; those that imply less than the ultimate
    /// strength are refused. Null for none.</param>
    /// <param name="note">A sentence worth knowing; null for none.</param>
    /// <exception cref="ArgumentNullException">An argument without a default is null.</exception>
    /// <exception cref="ArgumentException">A text is empty, or a pair is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A yield is not smaller than the elastic modulus.</exception>
    public Grade(string name, string condition, string standard, PhysicalProperties physical, TensileProperties tensile,
        string? sizeRange = null, IEnumerable<HardeningPair>? hardeningPairs = null, string? note = null)
    {
        Name = Guard.Line(name, nameof(name));
        Condition = Guard.Line(condition, nameof(condition));
        Standard = Guard.Line(standard, nameof(standard));
        SizeRange = sizeRange is null ? null : Guard.Line(sizeRange, nameof(sizeRange));
        Physical = Guard.NotNull(physical, nameof(physical));
        Tensile = Guard.NotNull(tensile, nameof(tensile));
        if (tensile.HighestYield >= physical.E)
        {
            throw Guard.Fault(nameof(tensile), Pressure.FromPascals(tensile.HighestYield),
                $"must have a yield smaller than the elastic modulus, {LawRules.Gigapascals(physical.E)}");
        }

        Note = note is null ? null : Guard.Line(note, nameof(note));
        HardeningPair[] pairs = [.. hardeningPairs ?? []];
        if (Array.IndexOf(pairs, null!) >= 0)
        {
            throw Guard.Refused(nameof(hardeningPairs), "must not contain null");
        }

        Hardening = Array.Find(pairs, pair => !IsTooWeak(pair));
        RefusedPairs = Array.AsReadOnly([.. pairs.Where(IsTooWeak)]);
        _pairs = pairs;
    }

    /// <summary>Designation, such as <c>S235JR</c>; several rows may share it.</summary>
    public string Name { get; }

    /// <summary>Form and heat treatment.</summary>
    public string Condition { get; }

    /// <summary>The standard or list that prints it.</summary>
    public string Standard { get; }

    /// <summary>Sizes the row holds for, or null for all.</summary>
    public string? SizeRange { get; }

    /// <summary>Name, condition and sizes: unique among <see cref="Grades.All"/>.</summary>
    public string FullName => SizeRange is null ? $"{Name}, {Condition}" : $"{Name}, {Condition}, {SizeRange}";

    /// <summary>Modulus, Poisson's ratio and density.</summary>
    public PhysicalProperties Physical { get; }

    /// <summary>Strengths and elongation.</summary>
    public TensileProperties Tensile { get; }

    /// <summary>
    /// What the mill usually delivers of a hot-rolled grade, beside the minimum its standard guarantees: expected yield and ultimate
    /// strength, or null where the library knows of none. Springback follows the real yield, so a bend planned with the minimum comes off
    /// too wide. A certificate of the bar at hand is better than either.
    /// </summary>
    /// <remarks>
    /// Equation: f_y = R_y·F_y, f_u = R_t·F_u of the printed minima; for European grades f_u is the middle of the printed range.
    /// Range: hot-rolled shapes and bars of the grades listed; plates of A36 have less.
    /// Source: <see cref="Sources.Aisc341"/>, <see cref="Sources.En1998Randomness"/>
    /// </remarks>
    public TensileProperties? Typical => TypicalStrength.Of(this);

    /// <summary>The first credible pair of K and n, or null: its implied ultimate strength is not below the printed one.</summary>
    public HardeningPair? Hardening { get; }

    /// <summary>
    /// Pairs of K and n of metal like this that imply less than the printed ultimate strength; <see cref="ReasonAgainst"/> says it in
    /// words.
    /// </summary>
    public IReadOnlyList<HardeningPair> RefusedPairs { get; }

    /// <summary>A sentence worth knowing, or null.</summary>
    public string? Note { get; }

    /// <summary>The same grade with some of it changed, checked as a new one; what is left out stays.</summary>
    /// <param name="name">Another designation, or null.</param>
    /// <param name="condition">Another form or heat treatment, or null.</param>
    /// <param name="standard">Another standard, or null.</param>
    /// <param name="physical">Other physical properties, or null.</param>
    /// <param name="tensile">Other tensile properties, or null.</param>
    /// <param name="sizeRange">Other sizes, or null.</param>
    /// <param name="hardeningPairs">Other pairs of K and n, or null.</param>
    /// <param name="note">Another note, or null.</param>
    /// <exception cref="ArgumentException">A text is empty, or a pair is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A yield is not smaller than the elastic modulus.</exception>
    public Grade With(string? name = null, string? condition = null, string? standard = null, PhysicalProperties? physical = null,
        TensileProperties? tensile = null, string? sizeRange = null, IEnumerable<HardeningPair>? hardeningPairs = null,
        string? note = null) => new(
            name ?? Name, condition ?? Condition, standard ?? Standard, physical ?? Physical, tensile ?? Tensile, sizeRange ?? SizeRange,
            hardeningPairs ?? _pairs, note ?? Note);

    /// <summary>
    /// A material of this grade, perfectly plastic at the printed yield; where a highest yield is printed too, both are its yield range.
    /// </summary>
    public BarMaterial ToMaterial() => ToMaterial(
        FullName, new PerfectlyPlastic(Physical.ElasticModulus, Tensile.YieldStrength),
        Tensile.MaximumYield is { } high ? new(Tensile.YieldStrength, high) : null);

    /// <summary>
    /// A material of this grade with the power law of <see cref="Hardening"/>; its yield is where it meets the elastic line, not that of
    /// the grade.
    /// </summary>
    /// <exception cref="InvalidOperationException">The grade has no credible pair of K and n, or its pair meets no elastic
    /// line.</exception>
    public BarMaterial ToPowerHardening() => ToMaterial(FullName, PowerLaw());

    /// <summary>
    /// A material with the plateau and the hardening of hot-rolled steel of the strengths of <see cref="Typical"/>; its name says that it
    /// is typical. Null where the library knows of none.
    /// </summary>
    public BarMaterial? ToTypicalMaterial() => Typical is { } typical
        ? ToMaterial($"{FullName}, typical",
            new HotRolledSteel(Physical.ElasticModulus, typical.YieldStrength, typical.UltimateStrength!.Value))
        : null;

    /// <summary>What speaks against a pair of K and n for this grade, with the numbers; null for a credible one.</summary>
    /// <param name="pair">The pair.</param>
    /// <exception cref="ArgumentNullException">The pair is null.</exception>
    public string? ReasonAgainst(HardeningPair pair) => IsTooWeak(Guard.NotNull(pair, nameof(pair)))
        ? $"it implies an ultimate strength of {TensileProperties.Text(pair.ImpliedUltimate.Pascals)}, below "
            + $"the {TensileProperties.Text(Tensile.UltimateStrength!.Value.Pascals)} of {FullName}."
        : null;

    /// <summary>One sentence that says which law and which yield <see cref="ToPowerHardening"/> means.</summary>
    /// <exception cref="InvalidOperationException">The grade has no credible pair of K and n, or its pair meets no elastic
    /// line.</exception>
    public string PowerHardeningNote() =>
        $"Power law of {Hardening}, typical of one heat; it leaves the elastic line "
            + $"at {TensileProperties.Text(PowerLaw().YieldStress.Pascals)}, not at the grade's yield "
            + $"of {TensileProperties.Text(Tensile.Yield)}, so use it at strains of a few percent and not with the yield of a "
            + $"certificate.";

    /// <summary>One sentence that says which law and which yield <see cref="ToMaterial()"/> means.</summary>
    public string LawNote()
    {
        string yields = Tensile.YieldText;
        return Tensile.ValueKind switch
        {
            GradeValueKind.StandardMinimum =>
                $"Perfectly plastic at the minimum yield of the standard, {yields}; the mill delivers more, and more yield springs back "
                    + $"more: give the yield of the certificate.",
            GradeValueKind.EstimatedMinimum =>
                $"Perfectly plastic at an estimated minimum yield, {yields}, which no standard guarantees; bars often have more, and more "
                    + $"yield springs back more: give the yield of the certificate.",
            _ =>
                $"Perfectly plastic at a typical yield, {yields}; the bar at hand may be softer or harder: give the yield of the "
                    + $"certificate.",
        };
    }

    /// <summary>Full name, standard and yield.</summary>
    public override string ToString() => $"{FullName} ({Standard}): yield {TensileProperties.Text(Tensile.Yield)}";

    private bool IsTooWeak(HardeningPair pair) =>
        Tensile.UltimateStrength is { } ultimate && pair.ImpliedUltimate.Pascals < ultimate.Pascals;

    private BarMaterial ToMaterial(string name, StressStrainLaw law, PressureRange? yields = null) =>
        new(name, law, Physical.Density, Tensile.Elongation, yields, Physical.PoissonsRatio);

    private PowerHardening PowerLaw()
    {
        HardeningPair pair =
            Hardening
                ?? throw new InvalidOperationException(
                    $"{FullName} has no credible pair of K and n; use the perfectly plastic law, or a law of your own.");
        try
        {
            return new PowerHardening(Physical.ElasticModulus, pair.StrengthCoefficient, pair.HardeningExponent);
        }
        catch (ArgumentOutOfRangeException refused)
        {
            throw new InvalidOperationException($"The pair {pair} meets no elastic line of {LawRules.Gigapascals(Physical.E)}.", refused);
        }
    }
}
