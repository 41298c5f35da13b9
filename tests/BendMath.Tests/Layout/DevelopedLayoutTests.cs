using BendMath.Cutting;
using BendMath.Lengths;
using BendMath.Tests.Forming;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using UnitsNet;

namespace BendMath.Tests.Layout;

public sealed class DevelopedLayoutTests
{
    private static readonly FinishedRing Ring = Workshop.RimSteel.LoadedFor(Workshop.Inside(250), Release.Free).Release(Release.Free).Ring;

    [Fact]
    public void A_blank_is_the_arc_over_the_curvature_and_the_ends()
    {
        DevelopedLayout layout =
            Of(ArcExtent.Of(Angle.FromDegrees(90)),
                new EndAllowance(Length.FromMillimeters(60), Length.FromMillimeters(50), Length.FromMillimeters(5)), 2);
        double developed = Math.PI / 2 / Ring.Curvature.InverseMeters * 1e3;
        Assert.Equal(developed, layout.DevelopedLength.Millimeters, 1e-9);
        Assert.Equal(developed + 115, layout.BlankLength.Millimeters, 1e-9);
        Assert.Equal(60, layout.ArcStartMark.Millimeters, 1e-9);
        Assert.Equal(60 + developed, layout.ArcEndMark.Millimeters, 1e-9);
    }

    /// <summary>
    /// Area of a 30 × 30 × 3 mm angle, root 5 mm, toe 2.5 mm, is 1.74 cm² and its mass 1.36 kg/m in EN 10056-1, from memory.
    /// </summary>
    [Fact]
    public void Mass_is_blank_times_mass_per_length()
    {
        DevelopedLayout layout = Of(ArcExtent.FullRing, EndAllowance.None, 0);
        Assert.Equal(1.36 * layout.BlankLength.Meters, layout.MassOf(Workshop.Steel.Density).Kilograms, 0.01);
    }

    /// <summary>The last blank needs no cut when it ends where the bar ends, so n blanks fit into n blanks and n − 1 kerfs.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(7)]
    public void Blanks_that_fit_exactly_are_counted(int pieces)
    {
        DevelopedLayout layout = Of(ArcExtent.FullRing, EndAllowance.None, 2.5);
        Length bar = pieces * layout.BlankLength + (pieces - 1) * layout.Kerf;
        BarUtilization exact = layout.PiecesFrom(bar);
        Assert.Equal(pieces, exact.Pieces);
        Assert.Equal(0, exact.Offcut.Millimeters);
        Assert.Equal(pieces, layout.PiecesFrom(Length.FromInches(bar.Inches)).Pieces);
        Assert.Equal(pieces - 1, layout.PiecesFrom(bar - Length.FromMillimeters(0.001)).Pieces);
    }

    [Fact]
    public void A_bar_shorter_than_the_blank_is_all_offcut()
    {
        BarUtilization none = Of(ArcExtent.FullRing, EndAllowance.None, 2).PiecesFrom(Length.FromMeters(1));
        Assert.Equal(0, none.Pieces);
        Assert.Equal(1, none.Offcut.Meters, 1e-12);
    }

    /// <summary>Every part of the bar is blank, kerf or offcut; the last cut may run out of the bar; no further blank would fit.</summary>
    [Property(MaxTest = 500)]
    public Property Blanks_kerfs_and_offcut_make_up_the_bar() => Prop.ForAll(
        Gen.Choose(1, 360).ToArbitrary(), Gen.Choose(0, 50).ToArbitrary(), Gen.Choose(100, 12_000).ToArbitrary(),
        (degrees, kerfTenths, bar) =>
        {
            DevelopedLayout layout = Of(ArcExtent.Of(Angle.FromDegrees(degrees)), EndAllowance.None, kerfTenths / 10d);
            BarUtilization yield = layout.PiecesFrom(Length.FromMillimeters(bar));
            double kerf = layout.Kerf.Millimeters;
            double cuts = bar - yield.Pieces * layout.BlankLength.Millimeters - yield.Offcut.Millimeters;
            Assert.InRange(cuts, Math.Max(0, yield.Pieces - 1) * kerf - 1e-8, yield.Pieces * kerf + 1e-8);
            Assert.InRange(yield.Offcut.Millimeters, 0, layout.BlankLength.Millimeters + 1e-8);
            if (yield.Offcut > Length.Zero)
            {
                Assert.Equal(yield.Pieces * kerf, cuts, 1e-8);
            }
        });

    /// <summary>
    /// Pieces are cut to what the rule shows: three cuts of the rounded length and two kerfs must fit, not three exact blanks.
    /// </summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Pieces_are_counted_at_the_length_they_are_cut_to(bool inches)
    {
        LengthStyle rule = inches ? LengthStyle.FractionalInches(16, LengthRounding.Up) : LengthStyle.Millimeters(0, LengthRounding.Up);
        DevelopedLayout layout = Of(ArcExtent.FullRing, EndAllowance.None, 2);
        Length cut = layout.CutLengthIn(rule);
        Assert.InRange(cut.Millimeters, layout.BlankLength.Millimeters, layout.BlankLength.Millimeters + rule.Step.Millimeters);
        Assert.Equal(LengthText.Parse(LengthText.Format(layout.BlankLength, rule)).Meters, cut.Meters, 1e-12);
        Length exact = 3 * layout.BlankLength + 2 * layout.Kerf;
        Assert.Equal(3, layout.PiecesFrom(exact).Pieces);
        Assert.Equal(2, layout.PiecesFrom(exact, rule).Pieces);
        BarUtilization three = layout.PiecesFrom(3 * cut + 2 * layout.Kerf, rule);
        Assert.Equal(3, three.Pieces);
        Assert.Equal(0, three.Offcut.Millimeters, 1e-9);
        Assert.Throws<ArgumentException>("cutStyle", () => layout.PiecesFrom(exact, LengthStyle.Millimeters(0)));
        Assert.Throws<ArgumentException>("style", () => layout.CutLengthIn(LengthStyle.Millimeters(0)));
    }

    [Fact]
    public void Unlawful_lengths_are_refused_by_name()
    {
        Assert.Throws<ArgumentOutOfRangeException>("kerf", () => Of(ArcExtent.FullRing, EndAllowance.None, -1));
        Assert.Throws<ArgumentOutOfRangeException>("barLength", () => Of(ArcExtent.FullRing, EndAllowance.None, 0).PiecesFrom(Length.Zero));
        Assert.Throws<ArgumentOutOfRangeException>("end", () => new EndAllowance(Length.Zero, Length.FromMillimeters(-1), Length.Zero));
    }

    private static DevelopedLayout Of(ArcExtent arc, EndAllowance ends, double kerf) =>
        DevelopedLayout.For(Ring, Workshop.Rim, arc, ends, Length.FromMillimeters(kerf));
}
