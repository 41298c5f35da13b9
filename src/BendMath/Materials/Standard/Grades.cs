using System.Globalization;
using BendMath.Guards;

namespace BendMath.Materials.Standard;

/// <summary>
/// Grades of metal for bars and tubes, as standards and handbooks print them. A grade has as many rows as it has conditions and size
/// ranges. For a grade of your own, use the constructor of <see cref="Grade"/>.
/// </summary>
public static partial class Grades
{
    /// <summary>Every row, in the order steel, stainless steel, aluminum, copper and brass, titanium.</summary>
    public static IReadOnlyList<Grade> All { get; } = Array.AsReadOnly(Rows());

    /// <summary>Every row of a designation, such as the two size ranges of <c>S235JR</c>; none when it is not listed.</summary>
    /// <param name="name">
    /// Designation, in upper or lower case. One that is not listed itself may stop short of the quality (<c>S235</c> for <c>S235JR</c>), of
    /// the grade (<c>A500</c> for its grades B and C) or of the temper (<c>6061</c> for <c>6061-T6</c>) and means all that go on so.
    /// </param>
    /// <exception cref="ArgumentNullException">The name is null.</exception>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    public static IReadOnlyList<Grade> Named(string name)
    {
        string wanted = Guard.NotEmpty(name, nameof(name)).Trim();
        Grade[] exact = [.. All.Where(grade => string.Equals(grade.Name, wanted, StringComparison.OrdinalIgnoreCase))];
        return Array.AsReadOnly(exact.Length > 0 ? exact : [.. All.Where(grade => IsShortOf(wanted, grade.Name))]);
    }

    /// <summary>The one row of a designation, or of a designation and a detail where it has several.</summary>
    /// <param name="name">Designation such as <c>A36</c> or <c>S235</c>, as <see cref="Named"/> takes it, or a
    /// <see cref="Grade.FullName"/>; in upper or lower case.</param>
    /// <param name="detail">Part of the condition or of the size range, such as <c>t &lt;= 16 mm</c>; null where the name alone is
    /// enough.</param>
    /// <exception cref="ArgumentNullException">The name is null.</exception>
    /// <exception cref="ArgumentException">A text is empty, or no row or more than one row fits; the message lists what there
    /// is.</exception>
    public static Grade Find(string name, string? detail = null)
    {
        IReadOnlyList<Grade> named = Named(name);
        Grade[] found =
            detail is null ? [.. named] : [.. named.Where(grade => Mentions(grade, Guard.NotEmpty(detail, nameof(detail)).Trim()))];
        if (found.Length == 0 && detail is null)
        {
            found = [.. All.Where(grade => string.Equals(grade.FullName, name.Trim(), StringComparison.OrdinalIgnoreCase))];
        }

        return found.Length == 1 ? found[0]
            : named.Count == 0
                ? throw Guard.Refused(nameof(name),
                    $"must be a grade of the list, one of {string.Join(", ", All.Select(grade => grade.Name).Distinct())}",
                    $"is '{Quoted.Short(name.Trim())}'")
            : throw Guard.Refused(
                detail is null ? nameof(name) : nameof(detail),
                $"must leave one of these rows: {string.Join("; ", named.Select(grade => grade.FullName))}",
                $"is '{Quoted.Short((detail ?? name).Trim())}', which leaves {(found.Length == 0 ? "none" : "several")}");
    }

    /// <summary>
    /// Whether a name goes on behind a text with a word, a temper, or one of the qualities of EN 10025-2 (impact energy, EN 10027-1).
    /// </summary>
    private static bool IsShortOf(string text, string name) => name.StartsWith(text, StringComparison.OrdinalIgnoreCase)
        && name.Substring(text.Length) is { Length: > 0 } rest && (rest[0] is ' ' or '-' || rest is "JR" or "J0" or "J2" or "K2");

    private static bool Mentions(Grade grade, string detail) =>
        Holds(grade.Condition, detail) || Holds(grade.SizeRange ?? string.Empty, detail);

    private static bool Holds(string text, string part) =>
        CultureInfo.InvariantCulture.CompareInfo.IndexOf(text, part, CompareOptions.OrdinalIgnoreCase) >= 0;
}
