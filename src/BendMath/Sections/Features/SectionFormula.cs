using BendMath.Evidence;
using UnitsNet;

namespace BendMath.Sections.Features;

/// <summary>
/// The formula behind a figure that the outline of a section alone does not give, with its source and its error. Immutable and thread-safe.
/// </summary>
public sealed record SectionFormula
{
    private readonly double? _largestError;

    internal SectionFormula(string name, string equation, Source source, double? largestError, string errorBasis)
    {
        Name = name;
        Equation = equation;
        Source = source;
        _largestError = largestError;
        ErrorBasis = errorBasis;
    }

    /// <summary>Short name to print, such as <c>El Darwish and Johnston, c = 0.315</c>.</summary>
    public string Name { get; }

    /// <summary>The equation, with its symbols.</summary>
    public string Equation { get; }

    /// <summary>Where the equation comes from.</summary>
    public Source Source { get; }

    /// <summary>
    /// Largest error found in the range the library uses the formula in; zero where it is exact, null where no figure can be given.
    /// </summary>
    public Ratio? LargestError => _largestError is { } error ? Ratio.FromDecimalFractions(error) : null;

    /// <summary>What the error rests on.</summary>
    public string ErrorBasis { get; }

    /// <summary>Name, error and source.</summary>
    public override string ToString() =>
        Invariant(
            $"{Name} ({(_largestError is not { } error ? "error not known" : error > 0 ? Invariant($"error up to {error * 100:0.#} %") : "exact")}; {Source})");
}

/// <summary>
/// Torsion constant J of a shape: torque is G·J times the twist per length. It does not depend on how the bar lies. Immutable and
/// thread-safe.
/// </summary>
public sealed record TorsionConstant
{
    internal TorsionConstant(double value, SectionFormula formula)
    {
        Meters4 = value;
        Formula = formula;
    }

    /// <summary>The constant J.</summary>
    public AreaMomentOfInertia Value => AreaMomentOfInertia.FromMetersToTheFourth(Meters4);

    /// <summary>Formula, source and error.</summary>
    public SectionFormula Formula { get; }

    internal double Meters4 { get; }

    /// <summary>The constant in mm⁴ and its formula.</summary>
    public override string ToString() => Invariant($"J {Meters4 * 1e12:0.####} mm⁴, {Formula}");
}

/// <summary>
/// Shear center of a section in its bending position: a force through it bends without twisting. Immutable and thread-safe.
/// </summary>
public sealed record ShearCenter
{
    private readonly double _y;

    private readonly double _z;

    private readonly double _polar;

    internal ShearCenter(double y, double z, double polar, SectionFormula formula)
    {
        _y = y;
        _z = z;
        _polar = polar;
        Formula = formula;
    }

    /// <summary>Distance from the inside face; negative where the point lies closer to the center of the bend than that face.</summary>
    public Length FromInside => Length.FromMeters(_y);

    /// <summary>Position along the axis of the ring, measured like the axial position of the centroid; negative beyond the edge.</summary>
    public Length Axial => Length.FromMeters(_z);

    /// <summary>Polar radius of gyration about the shear center.</summary>
    /// <remarks>
    /// Equation: r₀² = (y_s − ȳ)² + (z_s − z̄)² + (I_b + I_r)/A.
    /// Range: any section.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public Length PolarRadiusOfGyration => Length.FromMeters(_polar);

    /// <summary>Formula, source and error.</summary>
    public SectionFormula Formula { get; }

    /// <summary>The position in mm and its formula.</summary>
    public override string ToString() =>
        Invariant($"shear center {_y * 1e3:0.###} mm from the inside face, {_z * 1e3:0.###} mm along the axis, {Formula}");
}
