using System.Globalization;

namespace BendMath;

/// <summary>
/// Grades of metal for bars and tubes, as standards and handbooks print them. A grade has as many rows as it has conditions and size ranges.
/// For a grade of your own, use the constructor of <see cref="Grade"/>.
/// </summary>
public static partial class Grades
{
    /// <summary>Every row, in the order steel, stainless steel, aluminum, copper and brass, titanium.</summary>
    public static IReadOnlyList<Grade> All { get; } = Array.AsReadOnly(Rows());

    /// <summary>Every row of a designation, such as the two size ranges of <c>S235JR</c>; none when it is not listed.</summary>
    /// <param name="name">Designation, in upper or lower case.</param>
    /// <exception cref="ArgumentNullException">The name is null.</exception>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    public static IReadOnlyList<Grade> Named(string name)
    {
        string wanted = Guard.NotEmpty(name, nameof(name)).Trim();
        return Array.AsReadOnly([.. All.Where(grade => string.Equals(grade.Designation.Name, wanted, StringComparison.OrdinalIgnoreCase))]);
    }

    /// <summary>The one row of a designation, or of a designation and a detail where it has several.</summary>
    /// <param name="name">Designation such as <c>A36</c>, or a <see cref="GradeDesignation.FullName"/>; in upper or lower case.</param>
    /// <param name="detail">Part of the condition or of the size range, such as <c>t &lt;= 16 mm</c>; null where the name alone is enough.</param>
    /// <exception cref="ArgumentNullException">The name is null.</exception>
    /// <exception cref="ArgumentException">A text is empty, or no row or more than one row fits; the message lists what there is.</exception>
    public static Grade Find(string name, string? detail = null)
    {
        IReadOnlyList<Grade> named = Named(name);
        Grade[] found = detail is null ? [.. named] : [.. named.Where(grade => Mentions(grade, Guard.NotEmpty(detail, nameof(detail)).Trim()))];
        if (found.Length == 0 && detail is null)
        {
            found = [.. All.Where(grade => string.Equals(grade.Designation.FullName, name.Trim(), StringComparison.OrdinalIgnoreCase))];
        }

        return found.Length == 1 ? found[0]
            : named.Count == 0 ? throw new ArgumentException($"name must be a grade of the list, one of {string.Join(", ", All.Select(grade => grade.Designation.Name).Distinct())}, but is '{name}'.", nameof(name))
            : throw new ArgumentException($"{(detail is null ? "name" : "detail")} must leave one of these rows: {string.Join("; ", named.Select(grade => grade.Designation.FullName))}, but is '{detail ?? name}', which leaves {(found.Length == 0 ? "none" : "several")}.", detail is null ? nameof(name) : nameof(detail));
    }

    private static bool Mentions(Grade grade, string detail) => Holds(grade.Designation.Condition, detail) || Holds(grade.Designation.SizeRange ?? string.Empty, detail);

    private static bool Holds(string text, string part) => CultureInfo.InvariantCulture.CompareInfo.IndexOf(text, part, CompareOptions.OrdinalIgnoreCase) >= 0;
}
