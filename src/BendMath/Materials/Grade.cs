using System.Globalization;
using BendMath.Materials;
using UnitsNet;

namespace BendMath;

/// <summary>
/// A grade of metal as a standard or handbook prints it: one row for one condition and one range of sizes. It is not the bar at hand; a mill
/// certificate is, see <see cref="BarMaterial.WithYield"/>. Immutable and thread-safe.
/// </summary>
public sealed class Grade
{
    private readonly double _modulus;

    private readonly double _density;

    private readonly double _yield;

    private readonly double? _highYield;

    private readonly double? _ultimate;

    private readonly double? _highUltimate;

    private readonly double? _elongation;

    /// <summary>Makes a grade; the library's own are in <see cref="Grades"/>.</summary>
    /// <param name="name">Designation, such as <c>S235JR</c>; not empty.</param>
    /// <param name="condition">Form and heat treatment, such as <c>hot rolled</c>; not empty.</param>
    /// <param name="standard">The standard or list that prints it; not empty.</param>
    /// <param name="elasticModulus">Young's modulus E, greater than zero.</param>
    /// <param name="poissonsRatio">Poisson's ratio ν, 0 to 0.5.</param>
    /// <param name="density">Density, greater than zero.</param>
    /// <param name="yieldStrength">The printed yield or proof strength, the lower one of a range; greater than zero and less than E.</param>
    /// <param name="valueKind">What the printed strength promises.</param>
    /// <param name="maximumYield">Upper end of the yield, not below the lower; null when none is printed.</param>
    /// <param name="ultimateStrength">The printed ultimate strength, the lower one of a range, not below the yield; null when unknown.</param>
    /// <param name="maximumUltimate">Upper end of the ultimate strength, not below the lower; needs a lower one; null when none is printed.</param>
    /// <param name="elongation">Elongation after fracture, greater than zero; null when unknown.</param>
    /// <param name="elongationGauge">Gauge length the elongation belongs to, such as <c>2 in</c>; null when unknown.</param>
    /// <param name="sizeRange">Sizes the row holds for, such as <c>t &lt;= 16 mm</c>; null for all.</param>
    /// <param name="hardeningPairs">Pairs of K and n of metal like this, the preferred one first; those that imply less than the ultimate strength are refused. Null for none.</param>
    /// <param name="note">A sentence worth knowing; null for none.</param>
    /// <param name="source">Where the strengths are printed; null for data of your own.</param>
    /// <param name="elasticSource">Where modulus and density are printed; null for data of your own.</param>
    /// <exception cref="ArgumentNullException">A text that must be given is null.</exception>
    /// <exception cref="ArgumentException">A text is empty, or a pair is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Grade(
        string name,
        string condition,
        string standard,
        Pressure elasticModulus,
        double poissonsRatio,
        Density density,
        Pressure yieldStrength,
        GradeValueKind valueKind,
        Pressure? maximumYield = null,
        Pressure? ultimateStrength = null,
        Pressure? maximumUltimate = null,
        Ratio? elongation = null,
        string? elongationGauge = null,
        string? sizeRange = null,
        IEnumerable<HardeningPair>? hardeningPairs = null,
        string? note = null,
        Source? source = null,
        Source? elasticSource = null)
    {
        Name = Guard.NotEmpty(name, nameof(name));
        Condition = Guard.NotEmpty(condition, nameof(condition));
        Standard = Guard.NotEmpty(standard, nameof(standard));
        _modulus = Guard.Positive(elasticModulus, nameof(elasticModulus));
        PoissonsRatio = LawRules.PoissonsRatio(poissonsRatio, nameof(poissonsRatio));
        _density = Guard.Positive(density, nameof(density));
        _yield = Guard.Positive(yieldStrength, nameof(yieldStrength));
        if (_yield >= _modulus)
        {
            throw Guard.Fault(nameof(yieldStrength), yieldStrength, $"must be smaller than the elastic modulus, {LawRules.Gigapascals(_modulus)}");
        }

        ValueKind = Guard.Defined(valueKind, nameof(valueKind));
        _highYield = AtLeast(maximumYield, _yield, nameof(maximumYield), "the yield strength");
        if (_highYield >= _modulus)
        {
            throw Guard.Fault(nameof(maximumYield), maximumYield!.Value, $"must be smaller than the elastic modulus, {LawRules.Gigapascals(_modulus)}");
        }

        _ultimate = AtLeast(ultimateStrength, _yield, nameof(ultimateStrength), "the yield strength");
        _highUltimate = AtLeast(maximumUltimate, _ultimate ?? double.PositiveInfinity, nameof(maximumUltimate), "the ultimate strength");
        _elongation = elongation is { } e ? Guard.Positive(e, nameof(elongation)) : null;
        ElongationGauge = elongationGauge is null ? null : Guard.NotEmpty(elongationGauge, nameof(elongationGauge));
        SizeRange = sizeRange is null ? null : Guard.NotEmpty(sizeRange, nameof(sizeRange));
        Note = note is null ? null : Guard.NotEmpty(note, nameof(note));
        Source = source;
        ElasticSource = elasticSource;
        HardeningPair[] pairs = [.. hardeningPairs ?? []];
        if (Array.IndexOf(pairs, null!) >= 0)
        {
            throw Guard.Refused(nameof(hardeningPairs), "must not contain null");
        }

        Hardening = Array.Find(pairs, pair => !IsTooWeak(pair));
        RefusedPairs = Array.AsReadOnly([.. pairs.Where(IsTooWeak).Select(pair => new RefusedPair(pair, WeakText(pair)))]);
    }

    /// <summary>Designation, such as <c>S235JR</c>; several rows may share it.</summary>
    public string Name { get; }

    /// <summary>Form and heat treatment.</summary>
    public string Condition { get; }

    /// <summary>The standard or list that prints it.</summary>
    public string Standard { get; }

    /// <summary>Young's modulus E.</summary>
    public Pressure ElasticModulus => Pressure.FromPascals(_modulus);

    /// <summary>Poisson's ratio ν.</summary>
    public double PoissonsRatio { get; }

    /// <summary>Density.</summary>
    public Density Density => Density.FromKilogramsPerCubicMeter(_density);

    /// <summary>The printed yield or proof strength, the lower one of a range; <see cref="ValueKind"/> says what it promises.</summary>
    public Pressure YieldStrength => Pressure.FromPascals(_yield);

    /// <summary>Upper end of the yield, or null when none is printed, which is the rule.</summary>
    public Pressure? MaximumYield => Stress(_highYield);

    /// <summary>The printed ultimate strength, the lower one of a range, or null.</summary>
    public Pressure? UltimateStrength => Stress(_ultimate);

    /// <summary>Upper end of the ultimate strength, or null when none is printed.</summary>
    public Pressure? MaximumUltimate => Stress(_highUltimate);

    /// <summary>Elongation after fracture, or null when unknown.</summary>
    public Ratio? Elongation => _elongation is { } e ? Ratio.FromDecimalFractions(e) : null;

    /// <summary>Gauge length the elongation belongs to, or null; a short gauge gives a larger elongation.</summary>
    public string? ElongationGauge { get; }

    /// <summary>What the printed strength promises.</summary>
    public GradeValueKind ValueKind { get; }

    /// <summary>Sizes the row holds for, or null for all.</summary>
    public string? SizeRange { get; }

    /// <summary>The first credible pair of K and n, or null: its implied ultimate strength is not below the printed one.</summary>
    public HardeningPair? Hardening { get; }

    /// <summary>Pairs of K and n of metal like this that imply less than the printed ultimate strength, with the reason.</summary>
    public IReadOnlyList<RefusedPair> RefusedPairs { get; }

    /// <summary>A sentence worth knowing, or null.</summary>
    public string? Note { get; }

    /// <summary>Where the strengths are printed; null for data of your own.</summary>
    public Source? Source { get; }

    /// <summary>Where modulus and density are printed; null for data of your own.</summary>
    public Source? ElasticSource { get; }

    /// <summary>Name, condition and sizes: unique among <see cref="Grades.All"/>.</summary>
    public string FullName => SizeRange is null ? $"{Name}, {Condition}" : $"{Name}, {Condition}, {SizeRange}";

    /// <summary>A material of this grade, perfectly plastic at the printed yield; where a highest yield is printed too, both are its yield range.</summary>
    public BarMaterial ToMaterial() => ToMaterial(GradeLaw.PerfectlyPlastic);

    /// <summary>A material of this grade with a law of choice; <see cref="LawNote"/> says what was assumed.</summary>
    /// <param name="law">Perfectly plastic at the printed yield, or the power law of <see cref="Hardening"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The law is not a defined value.</exception>
    /// <exception cref="InvalidOperationException">The power law is asked for and the grade has no credible pair of K and n, or its pair meets no elastic line.</exception>
    public BarMaterial ToMaterial(GradeLaw law)
    {
        if (Guard.Defined(law, nameof(law)) == GradeLaw.PowerHardening)
        {
            return new(FullName, PowerLaw(), Density, Elongation, poissonsRatio: PoissonsRatio);
        }

        PressureRange? range = MaximumYield is { } high ? new(YieldStrength, high) : null;
        return new(FullName, new PerfectlyPlastic(ElasticModulus, YieldStrength), Density, Elongation, range, PoissonsRatio);
    }

    /// <summary>One sentence that says which law and which yield <see cref="ToMaterial(GradeLaw)"/> means.</summary>
    /// <param name="law">The law asked for.</param>
    /// <exception cref="ArgumentOutOfRangeException">The law is not a defined value.</exception>
    /// <exception cref="InvalidOperationException">The power law is asked for and the grade has no credible pair of K and n, or its pair meets no elastic line.</exception>
    public string LawNote(GradeLaw law)
    {
        if (Guard.Defined(law, nameof(law)) == GradeLaw.PowerHardening)
        {
            return $"Power law of {Hardening}, typical of one heat; it leaves the elastic line at {Text(PowerLaw().YieldStress.Pascals)}, not at the grade's yield of {Text(_yield)}, so use it at strains of a few percent and not with the yield of a certificate.";
        }

        string yields = _highYield is { } high ? $"{Text(_yield)} ({Text(high)} at most)" : Text(_yield);
        return ValueKind switch
        {
            GradeValueKind.StandardMinimum => $"Perfectly plastic at the minimum yield of the standard, {yields}; the mill delivers more, and more yield springs back more: give the yield of the certificate.",
            GradeValueKind.EstimatedMinimum => $"Perfectly plastic at an estimated minimum yield, {yields}, which no standard guarantees; bars often have more, and more yield springs back more: give the yield of the certificate.",
            _ => $"Perfectly plastic at a typical yield, {yields}; the bar at hand may be softer or harder: give the yield of the certificate.",
        };
    }

    /// <summary>Full name, standard and yield.</summary>
    public override string ToString() => $"{FullName} ({Standard}): yield {Text(_yield)}";

    private static double? AtLeast(Pressure? value, double least, string name, string what)
    {
        if (value is not { } given)
        {
            return null;
        }

        double stress = Guard.Positive(given, name);
        return stress >= least ? stress
            : throw Guard.Fault(name, given, double.IsInfinity(least) ? $"must come with {what}" : $"must not be below {what}, {Text(least)}");
    }

    private static Pressure? Stress(double? pascals) => pascals is { } value ? Pressure.FromPascals(value) : null;

    private static string Text(double pascals) => string.Format(CultureInfo.InvariantCulture, "{0:0.#} MPa", pascals / 1e6);

    private bool IsTooWeak(HardeningPair pair) => _ultimate is { } ultimate && pair.ImpliedUltimate.Pascals < ultimate;

    private string WeakText(HardeningPair pair) =>
        $"it implies an ultimate strength of {Text(pair.ImpliedUltimate.Pascals)}, below the {Text(_ultimate!.Value)} of {FullName}.";

    private PowerHardening PowerLaw()
    {
        HardeningPair pair = Hardening ?? throw new InvalidOperationException($"{FullName} has no credible pair of K and n; use the perfectly plastic law, or a law of your own.");
        try
        {
            return new PowerHardening(ElasticModulus, pair.StrengthCoefficient, pair.HardeningExponent);
        }
        catch (ArgumentOutOfRangeException refused)
        {
            throw new InvalidOperationException($"The pair {pair} meets no elastic line of {LawRules.Gigapascals(_modulus)}.", refused);
        }
    }
}
