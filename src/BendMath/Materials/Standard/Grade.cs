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
    /// <param name="designation">What the row is called.</param>
    /// <param name="physical">Modulus, Poisson's ratio and density.</param>
    /// <param name="tensile">Strengths and elongation; the yield, and its upper end, less than the elastic modulus.</param>
    /// <param name="hardeningPairs">Pairs of K and n of metal like this, the preferred one first; those that imply less than the ultimate
    /// strength are refused. Null for none.</param>
    /// <param name="note">A sentence worth knowing; null for none.</param>
    /// <exception cref="ArgumentNullException">An argument without a default is null.</exception>
    /// <exception cref="ArgumentException">The note is empty, or a pair is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A yield is not smaller than the elastic modulus.</exception>
    public Grade(GradeDesignation designation, PhysicalProperties physical, TensileProperties tensile,
        IEnumerable<HardeningPair>? hardeningPairs = null, string? note = null)
    {
        Designation = Guard.NotNull(designation, nameof(designation));
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
        RefusedPairs = Array.AsReadOnly([.. pairs.Where(IsTooWeak).Select(pair => new RefusedPair(pair, WeakText(pair)))]);
        _pairs = pairs;
    }

    /// <summary>What the row is called.</summary>
    public GradeDesignation Designation { get; }

    /// <summary>Modulus, Poisson's ratio and density.</summary>
    public PhysicalProperties Physical { get; }

    /// <summary>Strengths and elongation.</summary>
    public TensileProperties Tensile { get; }

    /// <summary>The first credible pair of K and n, or null: its implied ultimate strength is not below the printed one.</summary>
    public HardeningPair? Hardening { get; }

    /// <summary>Pairs of K and n of metal like this that imply less than the printed ultimate strength, with the reason.</summary>
    public IReadOnlyList<RefusedPair> RefusedPairs { get; }

    /// <summary>A sentence worth knowing, or null.</summary>
    public string? Note { get; }

    /// <summary>The same grade with some of it changed, checked as a new one; what is left out stays.</summary>
    /// <param name="designation">Another designation, or null.</param>
    /// <param name="physical">Other physical properties, or null.</param>
    /// <param name="tensile">Other tensile properties, or null.</param>
    /// <param name="hardeningPairs">Other pairs of K and n, or null.</param>
    /// <param name="note">Another note, or null.</param>
    /// <exception cref="ArgumentException">The note is empty, or a pair is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A yield is not smaller than the elastic modulus.</exception>
    public Grade With(
        GradeDesignation? designation = null, PhysicalProperties? physical = null, TensileProperties? tensile = null,
        IEnumerable<HardeningPair>? hardeningPairs = null, string? note = null) =>
        new(designation ?? Designation, physical ?? Physical, tensile ?? Tensile, hardeningPairs ?? _pairs, note ?? Note);

    /// <summary>
    /// A material of this grade, perfectly plastic at the printed yield; where a highest yield is printed too, both are its yield range.
    /// </summary>
    public BarMaterial ToMaterial() => ToMaterial(GradeLaw.PerfectlyPlastic);

    /// <summary>A material of this grade with a law of choice; <see cref="LawNote"/> says what was assumed.</summary>
    /// <param name="law">Perfectly plastic at the printed yield, or the power law of <see cref="Hardening"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The law is not a defined value.</exception>
    /// <exception cref="InvalidOperationException">The power law is asked for and the grade has no credible pair of K and n, or its pair
    /// meets no elastic line.</exception>
    public BarMaterial ToMaterial(GradeLaw law)
    {
        if (Guard.Defined(law, nameof(law)) == GradeLaw.PowerHardening)
        {
            return new(Designation.FullName, PowerLaw(), Physical.Density, Tensile.Elongation, poissonsRatio: Physical.PoissonsRatio);
        }

        PressureRange? range = Tensile.MaximumYield is { } high ? new(Tensile.YieldStrength, high) : null;
        return new(Designation.FullName, new PerfectlyPlastic(Physical.ElasticModulus, Tensile.YieldStrength), Physical.Density,
            Tensile.Elongation, range, Physical.PoissonsRatio);
    }

    /// <summary>One sentence that says which law and which yield <see cref="ToMaterial(GradeLaw)"/> means.</summary>
    /// <param name="law">The law asked for.</param>
    /// <exception cref="ArgumentOutOfRangeException">The law is not a defined value.</exception>
    /// <exception cref="InvalidOperationException">The power law is asked for and the grade has no credible pair of K and n, or its pair
    /// meets no elastic line.</exception>
    public string LawNote(GradeLaw law)
    {
        if (Guard.Defined(law, nameof(law)) == GradeLaw.PowerHardening)
        {
            return $"Power law of {Hardening}, typical of one heat; it leaves the elastic line "
                + $"at {TensileProperties.Text(PowerLaw().YieldStress.Pascals)}, not at the grade's yield "
                + $"of {TensileProperties.Text(Tensile.Yield)}, so use it at strains of a few percent and not with the yield of a "
                + $"certificate.";
        }

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
    public override string ToString() => $"{Designation}: yield {TensileProperties.Text(Tensile.Yield)}";

    private bool IsTooWeak(HardeningPair pair) =>
        Tensile.UltimateStrength is { } ultimate && pair.ImpliedUltimate.Pascals < ultimate.Pascals;

    private string WeakText(HardeningPair pair) =>
        $"it implies an ultimate strength of {TensileProperties.Text(pair.ImpliedUltimate.Pascals)}, below "
            + $"the {TensileProperties.Text(Tensile.UltimateStrength!.Value.Pascals)} of {Designation.FullName}.";

    private PowerHardening PowerLaw()
    {
        HardeningPair pair =
            Hardening
                ?? throw new InvalidOperationException(
                    $"{Designation.FullName} has no credible pair of K and n; use the perfectly plastic law, or a law of your own.");
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
