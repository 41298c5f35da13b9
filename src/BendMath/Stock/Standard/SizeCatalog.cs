using System.Globalization;
using BendMath.Guards;

namespace BendMath.Stock.Standard;

/// <summary>Every size, found by its own designation or by any spelling of it. Built once, at the first use.</summary>
internal sealed class SizeCatalog
{
    private static readonly Lazy<SizeCatalog> Lazy = new(static () => new SizeCatalog());

    private static readonly Func<string> NoFault = static () => string.Empty;

    private readonly Dictionary<string, StandardSize[]> _byText;

    private readonly Dictionary<SizeKey, StandardSize[]> _byKey;

    private readonly Dictionary<SizeKey, StandardSize[]> _byShortKey;

    private SizeCatalog()
    {
        (StandardSize Size, SizeSpelling Spelling)[] rows = [.. SizeGroups.All.SelectMany(RowsOf)];
        All = Array.AsReadOnly([.. rows.Select(row => row.Size)]);
        _byText = All.SelectMany(size => new[] { (Text: size.Designation, size), (Text: size.FullName, size) })
            .GroupBy(pair => pair.Text, pair => pair.size, StringComparer.OrdinalIgnoreCase)
            .ToDictionary(sizes => sizes.Key, sizes => sizes.ToArray(), StringComparer.OrdinalIgnoreCase);
        _byKey = rows.GroupBy(row => row.Spelling.Key, row => row.Size).ToDictionary(sizes => sizes.Key, sizes => sizes.ToArray());
        _byShortKey = All.Where(size => size.Kind is SizeKind.EqualAngle or SizeKind.SquareTube)
            .GroupBy(size => SizeKey.Of([size.DesignatedNumbers[0], size.DesignatedNumbers[2]], string.Empty))
            .ToDictionary(sizes => sizes.Key, sizes => sizes.ToArray());
    }

    public static SizeCatalog Instance => Lazy.Value;

    public IReadOnlyList<StandardSize> All { get; }

    /// <summary>
    /// The one size a text means; or null and one sentence that says why there is none. The sentence is made only when it is asked for.
    /// </summary>
    public StandardSize? Find(string text, SizeSystem? system, out Func<string> fault)
    {
        if (_byText.TryGetValue(text, out StandardSize[]? listed) && Only(listed, system) is { } exact)
        {
            fault = NoFault;
            return exact;
        }

        return Read(text, system, out fault);
    }

    private StandardSize? Read(string text, SizeSystem? system, out Func<string> fault)
    {
        if (DesignationReader.Read(text, out SizeSpelling spelling) is { } unreadable)
        {
            fault =
                () =>
                    $"must be written like L2X2X1/8, but \"{Quoted.Short(text.Trim())}\" {unreadable}; {NearestSizes.Sentence(NearestSizes.Of(text, spelling, system))}";
            return null;
        }

        StandardSize[] found = Matches(spelling, system);
        if (found.Length == 1)
        {
            fault = NoFault;
            return found[0];
        }

        fault = found.Length > 1
            ? () =>
                $"must mean one size, but \"{Quoted.Short(text.Trim())}\" may "
                    + $"be {string.Join(" or ", found.Select(size => size.FullName))}; write it like that, or name the system"
            : () =>
                $"must be a listed size, but is \"{Quoted.Short(text.Trim())}\"{NoWall(spelling)}; {NearestSizes.Sentence(NearestSizes.Of(spelling, system))}";
        return null;
    }

    /// <summary>A loop, because a closure would cost every look-up an allocation.</summary>
    private static StandardSize? Only(StandardSize[] sizes, SizeSystem? system)
    {
        if (system is null)
        {
            return sizes.Length == 1 ? sizes[0] : null;
        }

        foreach (StandardSize size in sizes)
        {
            if (size.System == system)
            {
                return size;
            }
        }

        return null;
    }

    private static string NoWall(SizeSpelling spelling) =>
        spelling.Kinds == SizeSpelling.Bit(SizeKind.RoundTube) && spelling.Numbers.Count == 1 && spelling.Schedule.Length == 0
            ? ", which has no wall and no schedule" : string.Empty;

    private StandardSize[] Matches(SizeSpelling spelling, SizeSystem? system)
    {
        StandardSize[] found = Matches(_byKey, spelling.FittingKinds);
        return found.Length == 0 && spelling.MayBeShort ? Matches(_byShortKey, spelling.Kinds) : found;

        StandardSize[] Matches(Dictionary<SizeKey, StandardSize[]> index, int kinds) =>
            index.TryGetValue(spelling.Key, out StandardSize[]? sizes)
            ? Array.FindAll(sizes, size => (SizeSpelling.Bit(size.Kind) & kinds) != 0 && spelling.Allows(size, system))
            : [];
    }

    private static IEnumerable<(StandardSize Size, SizeSpelling Spelling)> RowsOf(SizeGroup group) =>
        group.Rows.Split([';', '\n'], StringSplitOptions.RemoveEmptyEntries).Select(row => RowOf(group, row.Trim().Split('|')));

    private static (StandardSize Size, SizeSpelling Spelling) RowOf(SizeGroup group, string[] cells)
    {
        string designation = cells[0];
        if (DesignationReader.Read(designation, out SizeSpelling spelling) is { } fault)
        {
            throw new InvalidOperationException($"{group.System}: {designation} {fault}.");
        }

        double[] figures = [.. cells.Skip(1).Select(cell => double.Parse(cell, NumberStyles.Float, CultureInfo.InvariantCulture))];
        SizeFigures read = group.Columns switch
        {
            SizeColumns.Fillet => new(spelling.Numbers, figures[0]),
            SizeColumns.DesignWall => new(spelling.Numbers, designWall: figures[0]),
            SizeColumns.Pipe => new([figures[0], figures[1]], designWall: figures.Length > 2 ? figures[2] : null),
            _ => new(spelling.Numbers),
        };
        return (new StandardSize(group, designation, KindOf(spelling), spelling, read), spelling);
    }

    private static SizeKind KindOf(SizeSpelling spelling)
    {
        int kinds = spelling.FittingKinds;
        return Enumerable.Range(0, (int)SizeKind.FlatBar + 1).Select(kind => (SizeKind)kind)
            .Single(kind => SizeSpelling.Bit(kind) == kinds);
    }
}
