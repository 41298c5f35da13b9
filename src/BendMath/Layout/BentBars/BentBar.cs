using BendMath.Cutting;
using BendMath.Evidence;
using BendMath.Forming.ThreePoint;
using BendMath.Guards;
using BendMath.Lengths;
using BendMath.Sections.Outlines;
using UnitsNet;

namespace BendMath.Layout.BentBars;

/// <summary>
/// A bar with several bends and straights between: blank, marks in the order they are bent, and the finished shape. The straights of the
/// list belong to the finished piece; the ends given beside it are cut off. The shape is that of bends in one plane: a dished ring leaves
/// it, and an advisory says so. Springback between bends is in their rings. Immutable and thread-safe.
/// </summary>
public sealed class BentBar
{
    private readonly double _kerf;

    private readonly double _grip;

    private readonly OrientedSection _section;

    private readonly BentPath _path;

    private BentBar(BarPart[] parts, EndAllowance ends, double kerf, double grip, int[] order)
    {
        Parts = Array.AsReadOnly(parts);
        Ends = ends;
        _kerf = kerf;
        _grip = grip;
        _section = parts.First(part => part.IsBend).Section!;
        _path = new(parts, _section.Height);
        Bends = Array.AsReadOnly(Marked(order));
        (AlongX, AlongY) = _path.Envelope();
        Advisories = [.. Doubts()];
    }

    /// <summary>Straights and bends along the bar, from its start.</summary>
    public IReadOnlyList<BarPart> Parts { get; }

    /// <summary>Extra length at the ends, which is cut off.</summary>
    public EndAllowance Ends { get; }

    /// <summary>Width of a saw cut.</summary>
    public Length Kerf => Length.FromMeters(_kerf);

    /// <summary>Straight bar the bender needs on each side of a bend.</summary>
    public Length Grip => Length.FromMeters(_grip);

    /// <summary>The bends with their marks, in the order they are bent.</summary>
    public IReadOnlyList<BendMark> Bends { get; }

    /// <summary>Length of straight bar that becomes the finished piece.</summary>
    /// <remarks>
    /// Equation: L₀ = Σ of the straights and of θ/κ_t of the bends.
    /// Range: exact, because curvature is per unit of unbent length.
    /// Source: <see cref="Sources.Mechanics"/>
    /// </remarks>
    public Length DevelopedLength => Length.FromMeters(_path.Length);

    /// <summary>Length to cut: developed length and ends.</summary>
    public Length BlankLength => Length.FromMeters(Blank);

    /// <summary>The end of the finished piece, at its left face.</summary>
    public BarPlace End => _path.Place(_path.Length, 0, Ends.StartMeters);

    /// <summary>Where the finished shape lies along x, both faces of the bar included.</summary>
    /// <remarks>
    /// Equation: the least and greatest x over the ends of all parts and the points of their arcs where the bar runs along y, on both
    /// faces.
    /// Range: exact for even bends in one plane.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public LengthRange AlongX { get; }

    /// <summary>Where the finished shape lies along y, both faces of the bar included.</summary>
    /// <remarks>
    /// Equation: the least and greatest y over the ends of all parts and the points of their arcs where the bar runs along x, on both
    /// faces.
    /// Range: exact for even bends in one plane.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public LengthRange AlongY { get; }

    /// <summary>What is doubtful about the layout.</summary>
    public IReadOnlyList<Advisory> Advisories { get; }

    internal double Blank => _path.Length + Ends.TotalMeters;

    /// <summary>Lays out a bar with several bends.</summary>
    /// <param name="parts">From 1 to 1,000 straights and bends along the bar, at least one bend. Bends to one side show the same section as
    /// it lies; bends to the other side the same bar turned over.</param>
    /// <param name="ends">Extra length at the ends; <see cref="EndAllowance.None"/> for none.</param>
    /// <param name="kerf">Width of a saw cut, zero or more.</param>
    /// <param name="grip">Straight bar the bender needs on each side of a bend, zero or more, such as
    /// <see cref="ThreePointContact.StraightTail"/>; null for none.</param>
    /// <param name="order">The bends in the order of the work, counted along the bar from 1; null for from start to end.</param>
    /// <exception cref="ArgumentNullException">Parts or ends are null.</exception>
    /// <exception cref="ArgumentException">There is no bend, a part is missing, the ends are those of a forming model, a section is not the
    /// same bar, or the order does not name every bend once.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A length is negative or not finite, there are too many parts, or they are too long
    /// together.</exception>
    public static BentBar For(IReadOnlyList<BarPart> parts, EndAllowance ends, Length kerf, Length? grip = null,
        IReadOnlyList<int>? order = null)
    {
        BarPart[] list = Guard.Items(parts, nameof(parts), 1);
        BarPart[] bends = [.. list.Where(part => part.IsBend)];
        if (list.Length > 1000)
        {
            throw Guard.Fault(nameof(parts), list.Length, "must hold at most 1,000 parts");
        }

        if (bends.Length == 0)
        {
            throw Guard.Refused(nameof(parts), "must hold at least one bend", "holds none");
        }

        if (list.Sum(part => part.Developed) is > Guard.MostMeters and var length)
        {
            throw Guard.OutOfRange(nameof(parts), $"must be at most {Guard.MillimetersText(Guard.MostMeters)} long together",
                $"are {Guard.MillimetersText(length)}");
        }

        if (Array.Find(bends, bend => !IsSameBar(bends[0], bend)) is { } other)
        {
            throw Guard.Refused(nameof(parts), "must be one bar, turned over where it bends to the other side (flange in for flange out)",
                $"{other.Section} for a {other} does not go with {bends[0].Section} for a {bends[0]}");
        }

        int[] steps = order is null ? [.. Enumerable.Range(1, bends.Length)] : [.. order];
        return steps.OrderBy(number => number).SequenceEqual(Enumerable.Range(1, bends.Length))
            ? new(list, EndAllowance.Given(ends, nameof(ends)), Guard.NonNegative(kerf, nameof(kerf)),
                grip is { } held ? Guard.NonNegative(held, nameof(grip)) : 0, steps)
            : throw Guard.Refused(nameof(order), Invariant($"must name each of the bends 1 to {bends.Length} once"),
                $"is {string.Join(", ", steps.Take(20))}");
    }

    /// <summary>Where a point of the straight bar comes to lie.</summary>
    /// <param name="along">From the start of the blank, on the finished piece.</param>
    /// <param name="fromLeft">From the left face of the bar, between zero and its depth.</param>
    /// <exception cref="ArgumentOutOfRangeException">The point does not lie on the finished piece.</exception>
    public BarPlace PlaceAt(Length along, Length fromLeft)
    {
        double place = Guard.Place(along, nameof(along));
        double s = place - Ends.StartMeters;
        double slack = 1e-12 * (Blank + Ends.StartMeters);
        return s >= -slack && s <= _path.Length + slack
            ? _path.Place(Math.Min(Math.Max(s, 0), _path.Length), _section.LevelOf(fromLeft, nameof(fromLeft)), Ends.StartMeters)
            : throw Guard.Fault(nameof(along), along,
                $"must lie on the finished piece, from {Guard.MillimetersText(Ends.StartMeters)} "
                    + $"to {Guard.MillimetersText(Ends.StartMeters + _path.Length)}");
    }

    /// <summary>Where on the straight bar a point of the finished piece comes from: the inverse of <see cref="PlaceAt"/>.</summary>
    /// <param name="part">The part it lies on, counted from the start: 1 for the first.</param>
    /// <param name="alongFiber">Finished length from the start of that part, measured along the bar through the point.</param>
    /// <param name="fromLeft">From the left face of the bar, between zero and its depth.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such part, or the point does not lie on it.</exception>
    public BarPlace PlaceOn(int part, Length alongFiber, Length fromLeft)
    {
        if (part < 1 || part > Parts.Count)
        {
            throw Guard.Fault(nameof(part), part, $"must be from 1 to {Parts.Count}");
        }

        double level = _section.LevelOf(fromLeft, nameof(fromLeft));
        double whole = _path.FinishedLength(part - 1, level);
        double on = Guard.Place(alongFiber, nameof(alongFiber));
        return on <= whole * (1 + 1e-12)
            ? _path.PlaceOn(part - 1, Math.Min(on, whole), level, Ends.StartMeters)
            : throw Guard.Fault(nameof(alongFiber), alongFiber, $"must not be beyond the part, {Guard.MillimetersText(whole)}");
    }

    /// <summary>The finished shape along one fiber: the ends of every part, and within bends at even steps of their turn.</summary>
    /// <param name="fromLeft">From the left face of the bar, between zero and its depth; zero for the inside face of left bends.</param>
    /// <param name="step">Largest step of the turn, from 0.1° to 90°.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public IReadOnlyList<OutlinePoint> Points(Length fromLeft, Angle step)
    {
        double radians = Guard.Positive(step, nameof(step));
        return radians is >= Math.PI / 1800 * (1 - 1e-12) and <= Math.PI / 2 * (1 + 1e-12)
            ? _path.Points(_section.LevelOf(fromLeft, nameof(fromLeft)), radians).AsReadOnly()
            : throw Guard.Fault(nameof(step), step, "must be from 0.1° to 90°");
    }

    /// <summary>The blank as it is cut: the blank length rounded up to what a rule shows.</summary>
    /// <param name="style">Smallest step of the rule; it rounds up.</param>
    /// <exception cref="ArgumentNullException">The style is null.</exception>
    /// <exception cref="ArgumentException">The style does not round up: the blank would be short.</exception>
    public Length CutLengthIn(LengthStyle style) => Length.FromMeters(BarCuts.Rounded(Blank, style, nameof(style)));

    /// <summary>How many blanks a bar gives and what is left of it.</summary>
    /// <param name="barLength">Length of the bar, greater than zero.</param>
    /// <param name="cutStyle">What each piece is rounded up to when it is cut; null for the exact blank.</param>
    /// <exception cref="ArgumentException">The style does not round up.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The bar length is not positive and finite, or would give more than a million
    /// pieces.</exception>
    public BarUtilization PiecesFrom(Length barLength, LengthStyle? cutStyle = null) =>
        BarCuts.Pieces(cutStyle is null ? Blank : BarCuts.Rounded(Blank, cutStyle, nameof(cutStyle)), _kerf, barLength, nameof(barLength));

    /// <summary>Mass of the blank.</summary>
    /// <param name="density">Density of the material, greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The density is not positive and finite.</exception>
    public Mass MassOf(Density density) => Mass.FromKilograms(Blank * _section.Properties.MassPerLength(density).KilogramsPerMeter);

    /// <summary>Bends and lengths.</summary>
    public override string ToString() =>
        Invariant($"{Counted.Text(Bends.Count, "bend")}: developed {_path.Length * 1e3:0.##} mm, blank {Blank * 1e3:0.##} mm");

    /// <summary>
    /// Whether two bends show the same bar: as it lies when they turn to one side, turned over about its own axis when they do not.
    /// </summary>
    private static bool IsSameBar(BarPart one, BarPart other) => one.IsLeft == other.IsLeft
        ? one.Section!.IsSameBar(other.Section!, Length.Zero)
        : one.Section!.IsSameBarTurnedOver(other.Section!, Length.Zero);

    private BendMark[] Marked(int[] order)
    {
        List<(BarPart Part, double Start)> bends = [];
        double along = Ends.StartMeters;
        foreach (BarPart part in Parts)
        {
            if (part.IsBend)
            {
                bends.Add((part, along));
            }

            along += part.Developed;
        }

        bool[] made = new bool[bends.Count];
        BendMark[] marks = new BendMark[bends.Count];
        for (int step = 0; step < order.Length; step++)
        {
            int i = order[step] - 1;
            (BarPart part, double start) = bends[i];
            int before = i - 1;
            while (before >= 0 && !made[before])
            {
                before--;
            }

            int after = i + 1;
            while (after < made.Length && !made[after])
            {
                after++;
            }

            double left = start - (before < 0 ? 0 : bends[before].Start + bends[before].Part.Developed);
            double right = (after == made.Length ? Blank : bends[after].Start) - start - part.Developed;
            marks[step] = new(step + 1, i + 1, part, start, before < 0, after == made.Length, Math.Max(0, left), Math.Max(0, right));
            made[i] = true;
        }

        return marks;
    }

    private IEnumerable<Advisory> Doubts() => BentBarDoubts.Of(this, _grip);
}
