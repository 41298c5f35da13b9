using System.Diagnostics.CodeAnalysis;
using BendMath.Guards;

namespace BendMath.Stock.Standard;

/// <summary>
/// Sizes of angles, tubes, pipe and bars as standards and merchants list them, found by the designation as people type it. A selection, not
/// the whole of any standard. Thread-safe; the list is read at its first use.
/// </summary>
/// <remarks>
/// <para>Accepted: <c>L30x30x3</c>, <c>30 × 30 × 3 mm angle</c>, <c>l 2 x 2 x 1/8</c>, <c>L2x2x.125</c>, <c>L1½x1½x⅛</c>, <c>2" x 2" x
/// 3/16" angle</c>, <c>SHS 40x3</c>, <c>CHS 88,9 x 3,5</c>, <c>2-1/2 std pipe</c>, <c>NPS 2 Sch 40</c>, <c>DN 50 Sch 40</c>, <c>Flat
/// 40x8</c>, <c>½ in round</c>. Capitals and spaces do not matter, nor does the order of dimensions. A comma between digits is a decimal
/// comma. The name of a shape may be left out where the dimensions fit one size only. Inch decimals may be rounded as tables round them:
/// 0.188 is 3/16.</para>
/// <para>A size that stands in two systems needs its system, as an argument or in the text: <c>EN 10219-2 CHS 42.4x3.2</c>. A bar in inches
/// needs its unit or a fraction, because <c>Round 3</c> would be 3 mm.</para>
/// </remarks>
public static class StandardSizes
{
    /// <summary>The systems, in the order European, American.</summary>
    public static IReadOnlyList<SizeSystem> Systems { get; } = Array.AsReadOnly(
    [
        SizeSystem.En10056, SizeSystem.En10219, SizeSystem.En10210, SizeSystem.EnBars,
        SizeSystem.Aisc, SizeSystem.AsmeB3610, SizeSystem.UsBarSizeAngles, SizeSystem.UsBars,
    ]);

    /// <summary>Every size, system by system in the order of <see cref="Systems"/>.</summary>
    public static IReadOnlyList<StandardSize> All => SizeCatalog.Instance.All;

    /// <summary>Every size of a system.</summary>
    /// <param name="system">One of <see cref="Systems"/>.</param>
    /// <exception cref="ArgumentNullException">The system is null.</exception>
    public static IReadOnlyList<StandardSize> BySystem(SizeSystem system)
    {
        Guard.NotNull(system, nameof(system));
        return Array.AsReadOnly([.. All.Where(size => size.System == system)]);
    }

    /// <summary>The size a designation means.</summary>
    /// <param name="designation">The designation as people type it, such as <c>2 x 2 x 1/8 angle</c>.</param>
    /// <exception cref="ArgumentNullException">The designation is null.</exception>
    /// <exception cref="ArgumentException">The text is no designation, no such size is listed, or more than one is; the message names the
    /// nearest sizes, or all that it may mean.</exception>
    public static StandardSize Find(string designation) => FindIn(designation, null);

    /// <summary>The size a designation means in one system.</summary>
    /// <param name="designation">The designation as people type it, such as <c>CHS 42.4x3.2</c>.</param>
    /// <param name="system">The system to look in, one of <see cref="Systems"/>.</param>
    /// <exception cref="ArgumentNullException">The designation or the system is null.</exception>
    /// <exception cref="ArgumentException">The text is no designation, the system lists no such size, or more than one; the message names
    /// the nearest sizes, or all that it may mean.</exception>
    public static StandardSize Find(string designation, SizeSystem system) => FindIn(designation, Guard.NotNull(system, nameof(system)));

    /// <summary>The size a designation means, if it means one.</summary>
    /// <param name="designation">The designation as people type it, or anything else.</param>
    /// <param name="size">The size; null if there is none or more than one.</param>
    /// <returns>Whether the designation means one size.</returns>
#if NETSTANDARD2_0
    public static bool TryFind(string? designation, out StandardSize? size)
#else
    public static bool TryFind(string? designation, [NotNullWhen(true)] out StandardSize? size)
#endif
    {
        size = string.IsNullOrWhiteSpace(designation) ? null : SizeCatalog.Instance.Find(designation!, null, out _);
        return size is not null;
    }

    /// <summary>The size a designation means, or why it means none, for a reader that reports every fault of a file.</summary>
    /// <param name="designation">The designation as people type it, or anything else.</param>
    /// <param name="system">The system to look in; null for all.</param>
    /// <param name="size">The size; null if there is none or more than one.</param>
    /// <param name="fault">One sentence that quotes the text and names the nearest sizes, or all that it may mean; null if the designation
    /// means one size.</param>
    /// <returns>Whether the designation means one size.</returns>
#if NETSTANDARD2_0
    public static bool TryFind(string? designation, SizeSystem? system, out StandardSize? size, out string? fault)
#else
    public static bool TryFind(string? designation, SizeSystem? system, [NotNullWhen(true)] out StandardSize? size,
        [NotNullWhen(false)] out string? fault)
#endif
    {
        if (string.IsNullOrWhiteSpace(designation))
        {
            size = null;
            fault = "There is no designation; write for example \"L30x30x3\".";
            return false;
        }

        size = SizeCatalog.Instance.Find(designation!, system, out Func<string> reason);
        fault = size is null ? $"The designation {reason()}." : null;
        return size is not null;
    }

    private static StandardSize FindIn(string designation, SizeSystem? system) =>
        SizeCatalog.Instance.Find(Guard.NotEmpty(designation, nameof(designation)), system, out Func<string> fault)
        ?? throw Guard.Refused(nameof(designation), fault());
}
