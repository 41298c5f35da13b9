using BendMath.Cutting;
using BendMath.Sections.Outlines;
using BendMath.Tests.Forming;
using BendMath.Tests.Layout;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using UnitsNet;

namespace BendMath.Tests.Cutting;

public sealed class CutListTests
{
    /// <summary>
    /// V. Chvátal, Linear Programming (1983), ch. 13, from memory: rolls of 100 in; 97 of 45 in, 610 of 36 in, 395 of 31 in and 211 of 14
    /// in. The linear program gives 452.25 rolls, so 453 are least, and rounding its solution reaches them.
    /// </summary>
    [Fact]
    public void Chvatals_rolls()
    {
        CutList list = Cut(
            [Inches("45", 45, 97), Inches("36", 36, 610), Inches("31", 31, 395), Inches("14", 14, 211)], [new(Length.FromInches(100))],
                Length.Zero, Length.Zero);
        CutGroup group = list.Groups.Single();
        Assert.Equal(453, group.BarCount);
        Assert.True(group.IsProven);
        Near.Relative(45300, group.LowerBound.Inches, 1e-9);
        CuttingBound bound = CuttingBound.Of(new([45, 36, 31, 14], [97, 610, 395, 211], [100], [int.MaxValue], 0), CancellationToken.None);
        Near.Relative(45225, bound.Value, 1e-6, "length of the linear program");
        static CutPiece Inches(string name, double length, int quantity) => new(name, Length.FromInches(length), quantity);
    }

    /// <summary>
    /// Where nine bars are least, first-fit decreasing can take eleven (D. S. Johnson 1973, from memory): sizes 1/2 + ε, 1/4 + 2ε, 1/4 + ε
    /// and 1/4 − 2ε of a bar, here with ε = 1/60. Least are six bars of 31 + 16 + 13 and three of 17 + 17 + 13 + 13.
    /// </summary>
    [Fact]
    public void Where_the_longest_first_rule_takes_a_bar_too_many()
    {
        CuttingProblem problem = new([31, 17, 16, 13], [6, 6, 6, 12], [60], [int.MaxValue], 0);
        Assert.Equal(11, CuttingGreedy.Decreasing(problem, 0, bestFit: false).Bars.Count);
        CuttingOutcome outcome = CuttingSolver.Solve(problem, CancellationToken.None);
        Assert.Equal(9, outcome.Plan.Bars.Count);
        Assert.Equal(CutSearchStatus.Proven, outcome.End);
    }

    /// <summary>First-fit decreasing takes at most 11/9 of the least number of bars and 6/9 of one (G. Dósa 2007, from memory).</summary>
    [Property(MaxTest = 300)]
    public Property First_fit_decreasing_keeps_its_published_bound() => Prop.ForAll(
        Gen.ListOf(Gen.Choose(5, 70)).Select(list => list.Take(25).ToArray()).Where(list => list.Length > 0).ToArbitrary(), sizes =>
        {
            (double[] lengths, int[] demand) = Counted(sizes);
            CuttingProblem problem = new(lengths, demand, [100], [int.MaxValue], 0);
            CuttingOutcome least = CuttingSolver.Solve(problem, CancellationToken.None);
            Assert.Equal(CutSearchStatus.Proven, least.End);
            Assert.InRange(CuttingGreedy.Decreasing(problem, 0, bestFit: false).Bars.Count, least.Plan.Bars.Count,
                Math.Floor(11.0 / 9 * least.Plan.Bars.Count + 6.0 / 9));
        });

    [Property(MaxTest = 300)]
    public Property Small_lists_are_as_good_as_trying_everything() => Prop.ForAll(
        Gen.ListOf(Gen.Choose(20, 90)).Select(list => list.Take(7).ToArray()).Where(list => list.Length > 0).ToArbitrary(),
        Gen.Elements(new[] { (100, 7) }, [(100, 7), (150, 7)], [(100, 1), (130, 2)], [(95, 2), (110, 1), (200, 1)]).ToArbitrary(),
        Gen.Choose(0, 4).ToArbitrary(),
        (pieces, bars, kerf) =>
        {
            (int leftOut, double length) = BruteForceCutting.Least(pieces, bars, kerf);
            CutGroup group = Cut(
                [.. pieces.Select(piece => new CutPiece("p", Length.FromMillimeters(piece), 1))],
                    [.. bars.Select(bar => new BarSupply(Length.FromMillimeters(bar.Item1), bar.Item2))], Length.FromMillimeters(kerf),
                        Length.Zero).Groups[0];
            Assert.True(group.IsProven);
            Assert.Equal(leftOut, group.Missing.Sum(piece => piece.Quantity));
            Near.Absolute(length, group.BarLength.Millimeters, 1e-6, "length of bars");
        });

    [TieredProperty(plain: 15, full: 60)]
    public Property Pieces_cuts_and_offcuts_make_up_the_bars() => Prop.ForAll(
        Gen.ListOf(Gen.Choose(200, 2900)).Select(list => list.Take(30).ToArray()).Where(list => list.Length > 0).ToArbitrary(),
        Gen.Choose(0, 40).ToArbitrary(), (sizes, kerfTenths) =>
        {
            CutPiece[] pieces = [.. sizes.Select((size, i) => new CutPiece($"piece {i}", Length.FromMillimeters(size), 1 + i % 3))];
            Length kerf = Length.FromMillimeters(kerfTenths / 10d);
            CutList list = Cut(pieces, [new(Length.FromMeters(6), 4), new(Length.FromMeters(3))], kerf, Length.FromMillimeters(500));
            CutGroup group = list.Groups.Single();
            Assert.True(list.IsComplete);
            foreach (CutPiece piece in pieces)
            {
                Assert.Equal(piece.Quantity, group.Bars.Sum(bar => bar.Count * bar.Pieces.Count(other => other == piece)));
            }

            Assert.InRange(group.Bars.Where(bar => bar.Supply.Length.Meters == 6).Sum(bar => bar.Count), 0, 4);
            foreach (CutBar bar in group.Bars)
            {
                double used = bar.Pieces.Sum(piece => piece.Length.Millimeters);
                Near.Relative(bar.Supply.Length.Millimeters, used + bar.SawLoss.Millimeters + bar.Offcut.Millimeters, 1e-12, "bar");
                Assert.InRange(bar.SawLoss.Millimeters, (bar.Pieces.Count - 1) * kerf.Millimeters - 1e-6,
                    bar.Pieces.Count * kerf.Millimeters + 1e-6);
                Assert.Equal(bar.Offcut >= list.LeastUsefulOffcut, bar.IsOffcutUseful);
                Near.Absolute(used + (bar.Pieces.Count - 1) * kerf.Millimeters, bar.Marks[bar.Marks.Count - 1].Millimeters, 1e-6,
                    "last mark");
            }

            Near.Relative(group.BarLength.Meters, (group.PieceLength + group.SawLoss + group.UsefulOffcuts + group.Scrap).Meters, 1e-12,
                "all bars");
            Assert.InRange(group.LowerBound.Meters, group.PieceLength.Meters, group.BarLength.Meters);
        });

    /// <summary>One mechanism: as many pieces of one length come from a bar as the layout says.</summary>
    [Fact]
    public void Equal_pieces_come_as_the_layout_counts_them()
    {
        DevelopedLayout layout = DevelopedLayout.For(
            Workshop.RimSteel.LoadedFor(Workshop.Inside(250), Release.Free).Release(Release.Free).Ring, Workshop.Rim,
                ArcExtent.Of(Angle.FromDegrees(100)), EndAllowance.None, Length.FromMillimeters(2));
        Length exact = 5 * layout.BlankLength + 4 * layout.Kerf;
        foreach (Length bar in new[] { exact, exact - Length.FromMillimeters(0.01), exact + Length.FromMillimeters(1) })
        {
            BarUtilization yield = layout.PiecesFrom(bar);
            CutBar cut = Cut([new("arc", layout.BlankLength, yield.Pieces)], [new(bar)], layout.Kerf, Length.Zero).Groups[0].Bars.Single();
            Assert.Equal((1, yield.Pieces), (cut.Count, cut.Pieces.Count));
            Near.Absolute(yield.Offcut.Millimeters, cut.Offcut.Millimeters, 1e-9);
            Assert.Equal(2,
                Cut([new("arc", layout.BlankLength, yield.Pieces + 1)], [new(bar)], layout.Kerf, Length.Zero).Groups[0].BarCount);
        }
    }

    [Fact]
    public void Groups_are_cut_from_their_own_bars()
    {
        BarKind angle = new(Workshop.Rim.Stock, Workshop.Steel), flat = new(new FlatBar(Mm(25), Mm(5)), Workshop.Steel);
        CutList list = Cut(
            [new("rim", Length.FromMeters(2), 3, angle), new("hoop", Length.FromMeters(1), 2, flat),
                new("brace", Length.FromMeters(1), 2, angle)],
            [new(Length.FromMeters(4), null, angle), new(Length.FromMeters(3), 1, flat)],
            Length.Zero,
            Length.FromMillimeters(500));
        Assert.Equal(["angle 30 × 30 × 3 mm, mild steel", "flat 25 × 5 mm, mild steel"], list.Groups.Select(group => group.Name));
        Assert.Equal([2, 1], list.Groups.Select(group => group.BarCount));
        Assert.True(list.IsProven);
        Near.Relative(11, list.BarLength.Meters, 1e-12);
        Near.Relative(1, list.Groups[1].UsefulOffcuts.Meters, 1e-12);
        Near.Relative(8 * 1.36, list.Groups[0].BarMass(Workshop.Rim, Workshop.Steel.Density).Kilograms, 0.005,
            "1.36 kg/m in EN 10056-1, from memory");
        Assert.Throws<ArgumentException>("pieces",
            () => Cut([new("rim", Length.FromMeters(2), 3, flat)], [new(Length.FromMeters(4))], Length.Zero, Length.Zero));
        Assert.Throws<ArgumentException>("pieces",
            () => Cut([new("rim", Length.FromMeters(5), 3)], [new(Length.FromMeters(4))], Length.Zero, Length.Zero));
    }

    [Fact]
    public void Pieces_the_bars_do_not_suffice_for_are_missing()
    {
        CutGroup group =
            Cut([new("rim", Length.FromMeters(2), 3), new("hoop", Length.FromMeters(1), 3)], [new(Length.FromMeters(4), 2)], Length.Zero,
                Length.Zero).Groups[0];
        Assert.True(group.IsProven);
        Assert.Equal(1, group.Missing.Sum(piece => piece.Quantity));
        Assert.Equal(2, group.BarCount);
        CutGroup enough =
            Cut([new("rim", Length.FromMeters(2), 3), new("hoop", Length.FromMeters(1), 2)], [new(Length.FromMeters(4), 2)], Length.Zero,
                Length.Zero).Groups[0];
        Assert.Empty(enough.Missing);
        Assert.Equal(0, enough.Scrap.Meters, 1e-9);
    }

    /// <summary>A list no greedy rule solves, of many kinds: it ends by itself, the same twice, with a stated gap.</summary>
    [Fact]
    public void Large_lists_end_with_a_gap_and_come_out_the_same_twice()
    {
        Random random = new(20240229);
        CutPiece[] pieces =
            [.. Enumerable.Range(0, 150).Select(i => new CutPiece($"p{i}", Length.FromMillimeters(random.Next(300, 2900)), random.Next(1, 6)))];
        BarSupply[] bars = [new(Length.FromMeters(6)), new(Length.FromMeters(7.5), 20), new(Length.FromMeters(4))];
        CutGroup[] twice =
            [.. Enumerable.Range(0, 2).Select(_ => Cut(pieces, bars, Length.FromMillimeters(2.5), Length.FromMillimeters(500)).Groups[0])];
        Assert.Equal(twice[0].Bars.Select(bar => bar.ToString()), twice[1].Bars.Select(bar => bar.ToString()));
        Assert.InRange(twice[0].Gap.Percent, 0, 1);
        Assert.Empty(twice[0].Missing);
    }

    [Fact]
    public void A_stopped_search_hands_out_what_it_has()
    {
        using CancellationTokenSource source = new();
        source.Cancel();
        CutPiece[] pieces = [.. Enumerable.Range(0, 40).Select(i => new CutPiece("p", Length.FromMillimeters(301 + 53 * i), 3))];
        CutGroup stopped = CutList.For(pieces, [new(Length.FromMeters(6))], Length.FromMillimeters(3), Length.Zero, source.Token).Groups[0];
        CutGroup whole = Cut(pieces, [new(Length.FromMeters(6))], Length.FromMillimeters(3), Length.Zero).Groups[0];
        Assert.Equal(120, stopped.Bars.Sum(bar => bar.Count * bar.Pieces.Count));
        Assert.True(stopped.IsProven || stopped.WasStopped);
        Assert.True(whole.BarLength <= stopped.BarLength);
        Assert.True(stopped.LowerBound <= whole.BarLength);
    }

    [Fact]
    public void Lists_beyond_the_limits_are_refused_by_name()
    {
        BarSupply bar = new(Length.FromMeters(6));
        CutPiece piece = new("p", Length.FromMeters(1), 1);
        Assert.Throws<ArgumentOutOfRangeException>("pieces",
            () => Cut([.. Enumerable.Repeat(piece, 501)], [bar], Length.Zero, Length.Zero));
        Assert.Throws<ArgumentOutOfRangeException>("pieces",
            () => Cut([new("p", Length.FromMeters(1), 3000), new("q", Length.FromMeters(1), 3000)], [bar], Length.Zero, Length.Zero));
        Assert.Throws<ArgumentOutOfRangeException>("bars", () => Cut([piece], [.. Enumerable.Repeat(bar, 21)], Length.Zero, Length.Zero));
        Assert.Throws<ArgumentOutOfRangeException>("quantity", () => new CutPiece("p", Length.FromMeters(1), 0));
        Assert.Throws<ArgumentOutOfRangeException>("quantity", () => new BarSupply(Length.FromMeters(1), 0));
    }

    /// <summary>
    /// Two drawn bars of one name and two angles of one size, sharp and filleted: each is cut from bars of its own, and each list says
    /// which in words of its own. Invented sizes.
    /// </summary>
    [Fact]
    public void Bars_of_one_name_that_differ_are_cut_apart_and_told_apart()
    {
        BarKind[] kinds =
            [.. new BarStock[] { Trim(10, 5), Trim(40, 20), Fifty(AngleFillets.Sharp), Fifty(AngleFillets.Of(Mm(7), Mm(3.5))) }.Select(stock => new BarKind(stock, Workshop.Steel))];
        CutList list = Cut(
            [.. kinds.Select((kind, i) => new CutPiece($"piece {i}", Length.FromMeters(1 + i), 1, kind))],
                [.. kinds.Select(kind => new BarSupply(Length.FromMeters(6), kind: kind))], Length.Zero, Length.Zero);
        Assert.Equal(kinds, list.Groups.Select(group => group.Kind!));
        Assert.All(list.Groups, group => Assert.Equal(1, group.BarCount));
        Assert.Equal(
            [
                "edge trim, drawn 10 × 5 mm, 50 mm²",
                "edge trim, drawn 40 × 20 mm, 800 mm²",
                "angle 50 × 50 × 5 mm, root 0 mm, toe 0 mm",
                "angle 50 × 50 × 5 mm, root 7 mm, toe 3.5 mm",
            ],
            list.Groups.Select(group => group.Name.Split(", mild steel")[0]));
    }

    [Fact]
    public void Bars_that_differ_in_words_only_are_cut_together()
    {
        BarKind flat = new(new FlatBar(Mm(10), Mm(5)), Workshop.Steel), drawn = new(Trim(10, 5), Workshop.Mild(290, null)),
            inches = new(new FlatBar(Length.FromInches(10 / 25.4), Mm(5)), Workshop.Steel);
        CutList list =
            Cut([new("a", Length.FromMeters(2), 1, flat), new("b", Length.FromMeters(2), 1, drawn), new("c", Length.FromMeters(2), 1, inches)], [new(Length.FromMeters(6), kind: drawn)], Length.Zero, Length.Zero);
        Assert.Equal("flat 10 × 5 mm, mild steel", Assert.Single(list.Groups).Name);
        Assert.Equal(1, list.Groups[0].BarCount);
        Assert.False(flat.IsSame(new(flat.Stock, Workshop.Mild(355, null))));
        Assert.Throws<ArgumentException>("pieces",
            () => Cut([new("a", Length.FromMeters(2), 1, flat)], [new(Length.FromMeters(6))], Length.Zero, Length.Zero));
        Assert.Throws<ArgumentException>("pieces",
            () => Cut([new("a", Length.FromMeters(2), 1)], [new(Length.FromMeters(6), kind: flat)], Length.Zero, Length.Zero));
    }

    /// <summary>
    /// Outlines of one extent and area, the groove in another place: a number tells them apart where all words are used up.
    /// </summary>
    [Fact]
    public void Bars_whose_descriptions_are_alike_get_a_number()
    {
        CustomBar first = Grooved(5), second = Grooved(12);
        Assert.Equal(first.Description, second.Description);
        CutList list = Cut(
            [.. new[] { first, second }.Select(bar => new CutPiece("p", Length.FromMeters(1), 1, new(bar, Workshop.Steel)))],
            [.. new[] { first, second }.Select(bar => new BarSupply(Length.FromMeters(6), kind: new(bar, Workshop.Steel)))],
            Length.Zero,
            Length.Zero);
        Assert.EndsWith(" (1)", list.Groups[0].Name, StringComparison.Ordinal);
        Assert.EndsWith(" (2)", list.Groups[1].Name, StringComparison.Ordinal);

        static CustomBar Grooved(double at) =>
            Drawn("seal strip", (0, 0), (30, 0), (30, 10), (at + 2, 10), (at + 2, 8), (at, 8), (at, 10), (0, 10));
    }

    private static CustomBar Trim(double width, double height) => Drawn("edge trim", (0, 0), (width, 0), (width, height), (0, height));

    private static CustomBar Drawn(string name, params (double X, double Y)[] corners) =>
        new(name, new([OutlineLoop.Polygon([.. corners.Select(at => new OutlinePoint(Mm(at.X), Mm(at.Y)))])]));

    private static EqualAngle Fifty(AngleFillets fillets) => new(Mm(50), Mm(5), fillets);

    private static Length Mm(double value) => Length.FromMillimeters(value);

    private static CutList Cut(IReadOnlyList<CutPiece> pieces, IReadOnlyList<BarSupply> bars, Length kerf, Length leastUseful) =>
        CutList.For(pieces, bars, kerf, leastUseful, TestContext.Current.CancellationToken);

    private static (double[] Lengths, int[] Demand) Counted(int[] sizes)
    {
        (double Length, int Count)[] kinds =
            [.. sizes.GroupBy(size => size).OrderByDescending(kind => kind.Key).Select(kind => ((double)kind.Key, kind.Count()))];
        return ([.. kinds.Select(kind => kind.Length)], [.. kinds.Select(kind => kind.Count)]);
    }
}
