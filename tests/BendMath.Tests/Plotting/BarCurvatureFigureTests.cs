using System.Globalization;
using BendMath.Forming.Bumps;
using BendMath.Plotting;
using BendMath.Tests.Forming;
using ScottPlot;
using ScottPlot.Plottables;
using UnitsNet;
using Text = ScottPlot.Plottables.Text;

namespace BendMath.Tests.Plotting;

/// <summary>The figure of a bumped bar, against the bar and against what a reader needs.</summary>
public sealed class BarCurvatureFigureTests
{
    private static readonly BumpBending Model = BumpCase.Feeding(0.015);

    private static readonly BumpedBar Kinked = Model.BendWhole(BumpCase.Hardening, BumpCase.M(0.66), BumpCase.Stroke(BumpCase.Nominal));

    private static readonly BumpedBar Backward =
        Model.Bend(BumpCase.Hardening, BumpCase.M(0.66), [.. Kinked.Outcomes.Select(outcome => outcome.Bump).Reverse()]);

    private static readonly BumpedBar Even = Model.Bend(
        BumpCase.Hardening, BumpCase.M(0.66),
            Model.PassWithLighterFirstBites(BumpCase.Hardening, BumpCase.M(0.66), BumpCase.Stroke(BumpCase.Nominal)));

    private static readonly BumpedBar Straight = Model.Bend(BumpCase.Hardening, BumpCase.M(0.3), []);

    private static readonly BumpedBar Once =
        Model.Bend(BumpCase.Hardening, BumpCase.M(0.12), [new(BumpCase.M(0.06), BumpCase.Stroke(BumpCase.Nominal))]);

    private static readonly BumpedBar Fine =
        BumpCase.Feeding(0.002).BendWhole(BumpCase.WithoutHardening, BumpCase.M(0.6), BumpCase.Stroke(BumpCase.Nominal));

    public static TheoryData<string> Bars => [.. Named.Keys];

    private static Dictionary<string, BumpedBar> Named { get; } =
        new() { ["kinked"] = Kinked, ["backward"] = Backward, ["even"] = Even, ["straight"] = Straight, ["once"] = Once, ["fine"] = Fine };

    [Theory]
    [InlineData(false, 1000, 1)]
    [InlineData(true, 1 / 0.0254, 0.0254)]
    public void The_curve_is_the_curvature_of_the_bar_and_meets_every_peak_and_valley(bool unit, double perMeter,
        double perInverseMeter)
    {
        using Plot plot = new BarCurvatureFigure(Kinked, unit).ToPlot();
        Coordinates[] curve =
            [.. plot.GetPlottables<Scatter>().Select(scatter => scatter.Data.GetScatterPoints()).MaxBy(points => points.Count)!];
        Assert.All(curve, point => Near.Absolute(
            Kinked.PermanentCurvatureAt(Length.FromMeters(Math.Min(0.66, point.X / perMeter))).InverseMeters * perInverseMeter, point.Y,
                1e-9, FormattableString.Invariant($"curvature at {point.X:R}")));
        double[] bumps = [.. Kinked.Outcomes.Select(outcome => outcome.Bump.Position.Meters)];
        Assert.All(bumps.Concat(bumps.Zip(bumps.Skip(1), (a, b) => (a + b) / 2)),
            at => Assert.Contains(curve, point => Math.Abs(point.X - (at * perMeter)) < 1e-9));
        AxisLimits limits = plot.Axes.GetLimits();
        Assert.All(curve,
            point => Assert.True(limits.Contains(point.X, point.Y) || point.X >= limits.Right - 1e-9 || point.X <= limits.Left + 1e-9));
    }

    /// <summary>Tails, mean radius and kink are named with the numbers of the bar; no word covers another or leaves the picture.</summary>
    [Theory]
    [MemberData(nameof(Bars))]
    public void Words_say_what_the_bar_says_and_none_covers_another(string which)
    {
        BumpedBar bar = Named[which];
        using Plot plot = new BarCurvatureFigure(bar, inInches: false).ToPlot();
        plot.GetSvgXml(640, 480);
        Text[] words = [.. plot.GetPlottables<Text>()];
        string all = string.Join('|', words.Select(word => word.LabelStyle.Text.Replace('\n', ' ')));
        Assert.Equal(!bar.IsStraight, all.Contains($"tail {Number(bar.LeadingTail.Millimeters)} mm", StringComparison.Ordinal));
        Assert.Equal(!bar.IsStraight, all.Contains($"tail {Number(bar.TrailingTail.Millimeters)} mm", StringComparison.Ordinal));
        Assert.Equal(!bar.IsStraight,
            all.Contains($"radius {Number(1 / bar.MeanCurvature.InverseMillimeters)} mm", StringComparison.Ordinal));
        Assert.Equal(bar.FirstBiteKink > 1.5, all.Contains("kink of the first bite", StringComparison.Ordinal));
        PixelRect paper = plot.LastRender.DataRect;
        for (int i = 0; i < words.Length; i++)
        {
            PixelRect one = words[i].LabelStyle.LastRenderPixelRect;
            Assert.True(one.Left >= paper.Left && one.Right <= paper.Right && one.Top >= paper.Top && one.Bottom <= paper.Bottom,
                words[i].LabelStyle.Text);
            Assert.All(words.Take(i),
                other =>
                    Assert.False(Meet(one, other.LabelStyle.LastRenderPixelRect),
                        $"{words[i].LabelStyle.Text} on {other.LabelStyle.Text}"));
        }
    }

    [Fact]
    public void Title_and_axes_say_what_is_drawn_and_in_which_unit()
    {
        using Plot inches = new BarCurvatureFigure(Kinked, inInches: true).ToPlot();
        Assert.Equal("flat 20 × 8 mm, easy way, 37 bumps", inches.Axes.Title.Label.Text);
        Assert.Equal("place along the unbent bar (in)", inches.Axes.Bottom.Label.Text);
        Assert.Equal("curvature that stays (1/in)", inches.Axes.Left.Label.Text);
        Assert.EndsWith(", 1 bump", new BarCurvatureFigure(Once, inInches: false).Title, StringComparison.Ordinal);
        BarCurvatureFigure named = new(Even, inInches: false, "hoop 7");
        Assert.Equal("hoop 7", named.ToString());
        Assert.Same(Even, named.Bar);
        Assert.False(named.IsInInches);
    }

    [Fact]
    public void Pictures_are_black_and_gray_and_do_not_depend_on_the_culture() =>
        InkRules.Hold(new BarCurvatureFigure(Kinked, inInches: false));

    [Fact]
    public void Bad_arguments_are_refused_by_name()
    {
        Assert.Throws<ArgumentNullException>("bar", () => new BarCurvatureFigure(null!, inInches: true));
        Assert.Throws<ArgumentException>("name", () => new BarCurvatureFigure(Even, inInches: true, "two\nlines"));
        Assert.Throws<ArgumentOutOfRangeException>("width", () => new BarCurvatureFigure(Even, inInches: true).ToPng(319));
    }

    private static bool Meet(PixelRect a, PixelRect b) => a.Left < b.Right && b.Left < a.Right && a.Top < b.Bottom && b.Top < a.Bottom;

    private static string Number(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);
}
