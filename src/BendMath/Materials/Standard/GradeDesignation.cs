using BendMath.Guards;

namespace BendMath.Materials.Standard;

/// <summary>
/// What a row of a standard is called: designation, condition, standard and the sizes it holds for. Immutable and thread-safe.
/// </summary>
public sealed record GradeDesignation
{
    /// <summary>Names a row.</summary>
    /// <param name="name">Designation, such as <c>S235JR</c>; not empty.</param>
    /// <param name="condition">Form and heat treatment, such as <c>hot rolled</c>; not empty.</param>
    /// <param name="standard">The standard or list that prints it; not empty.</param>
    /// <param name="sizeRange">Sizes the row holds for, such as <c>t &lt;= 16 mm</c>; null for all.</param>
    /// <exception cref="ArgumentNullException">A text that must be given is null.</exception>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    public GradeDesignation(string name, string condition, string standard, string? sizeRange = null)
    {
        Name = Guard.Line(name, nameof(name));
        Condition = Guard.Line(condition, nameof(condition));
        Standard = Guard.Line(standard, nameof(standard));
        SizeRange = sizeRange is null ? null : Guard.Line(sizeRange, nameof(sizeRange));
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

    /// <summary>Full name and standard.</summary>
    public override string ToString() => $"{FullName} ({Standard})";
}
