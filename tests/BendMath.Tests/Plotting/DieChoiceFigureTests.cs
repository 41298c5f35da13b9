using BendMath.Forming.ThreePoint;
using BendMath.Learning;
using BendMath.Plotting;
using BendMath.Tests.Forming;
using BendMath.Tests.Learning;
using ScottPlot;
using ScottPlot.Plottables;
using UnitsNet;
using Text = ScottPlot.Plottables.Text;

namespace BendMath.Tests.Plotting;

/// <summary>The figure of an advice, against the advice and against what a reader needs. Invented rings of the invented workshop.</summary>
public sealed class DieChoiceFigureTests
{
    private static readonly MeasuredRing[] Even = Shop.Rings(("A", 0.1), ("B", 0.105), ("B", 0.095), ("C", 0.102), ("D", 0.099));

    private static readonly MeasuredRing[] WithOdd =
        [.. Shop.Rings(("A", 0.02), ("A", 0.021), ("B", 0.051), ("B", 0.05), ("C", 0.081), ("C", 0.15)),
            .. Shop.Rings(("D", 0.116), ("D", 0.115))];

    private static readonly MeasuredRing Other =
        Shop.Ring(Shop.Die("A"),
            BendAnalysis.Of(new FlatBar(Length.FromMillimeters(25), Length.FromMillimeters(5)).EasyWay, Workshop.Steel), 0.1);

    private static readonly BendAnalysis Ranged = BendAnalysis.Of(Workshop.Rim, Workshop.Mild(290, Workshop.Range(235, 355)));

    private static readonly ThreePointSetup Bender = new(Length.FromMillimeters(130), Length.FromMillimeters(10));

    public static TheoryData<string> Cases => [.. Named.Keys];

    private static Dictionary<string, DieChoiceFigure> Named { get; } = new()
    {
        ["ratio"] = Fitted(Even, 560),
        ["line with an odd ring"] = Fitted(WithOdd, 660),
        ["bounds"] = new(Advice(Ranged, Shop.Wrap, 540), inInches: true),
        ["nothing scatters"] = new(Advice(Workshop.RimSteel, Shop.Wrap, 540), inInches: false),
        ["one ring"] = Fitted(Shop.Rings(("B", 0.1)), 480),
        ["other bars too"] = Fitted([.. Shop.Rings(("B", 0.1)), Other, Other], 480),
        ["wanted far off"] = Fitted(Even, 2000),
        ["wanted to the outside"] = new(
            DieChoice.For(Workshop.Rack, Workshop.RimSteel, BendRadius.OutsideDiameter(Length.FromMillimeters(600)),
                Shop.Wrap, Release.HeldFlat, Length.FromMillimeters(4)), inInches: false),
        ["no ring at all"] =
            new(Advice(Workshop.RimSteel, Shop.Wrap, 540, new([Workshop.Die("tiny", 20, ReferenceFace.OutsideOfBar), Workshop.Die("vast", 60_000)])), inInches: false),
        ["one die"] = new(Advice(Ranged, Shop.Wrap, 540, new([Workshop.Die("the only die there is", 250)])), inInches: true),
        ["many dies"] =
            new(Advice(Ranged, Shop.Wrap, 540, new([.. Enumerable.Range(0, 40).Select(i => Workshop.Die($"number {i}", 200 + (5 * i)))])),
                inInches: false),
        ["other faces"] =
            new(Advice(Ranged, Shop.Wrap, 540, new([Workshop.Die("A", 250), Workshop.Die("B", 270, ReferenceFace.OutsideOfBar)])),
                inInches: false),
        ["other noses"] = new(Advice(Ranged, new IncrementalThreePointBending(Bender), 540, Noses), inInches: false),
        ["a stroke from one ring"] = new(Advice(Workshop.RimSteel, Stroke, 540), inInches: false),
    };

    private static DieRack Noses => new(
        [Workshop.Die("sharp", 250),
            new("blunt", Length.FromMillimeters(300), ReferenceFace.InsideOfBar, noseRadius: Length.FromMillimeters(30))]);

    private static FormingModel Stroke =>
        RingDiagnosis.Of(Shop.Ring(Shop.Die("B"), Workshop.RimSteel, 0.1), new WrapBending(Bender)).Find(HypothesisKind.Stroke)!.Model!;

    [Theory]
    [InlineData("ratio", 1000)]
    [InlineData("line with an odd ring", 1000)]
    [InlineData("bounds", 1 / 0.0254)]
    public void Lines_and_band_are_what_the_model_predicts(string which, double perMeter)
    {
        DieChoiceFigure figure = Named[which];
        DieChoice advice = figure.Choice;
        using Plot plot = figure.ToPlot();
        Coordinates[] fit =
            [.. Curves(plot, 1.8f).Where(points => points.Length > 2 || points[0].Y != points[1].Y).SelectMany(points => points)];
        Assert.True(fit.Length > 20);
        Assert.All(fit,
            point =>
                Near.Relative(Predicted(point.X).Ring!.InsideDiameter.Meters * perMeter, point.Y, 1e-9,
                    FormattableString.Invariant($"fit at {point.X:R}")));
        Coordinates[] plain = [.. Curves(plot, 1.2f).Where(points => points.Length > 2).SelectMany(points => points)];
        Assert.Equal(which != "bounds", plain.Length > 0);
        Assert.All(plain,
            point =>
                Near.Relative(Shop.Wrap.Form(advice.Analysis, At(point.X)).RingWhen(Release.Free).InsideDiameter.Meters * perMeter, point.Y,
                    1e-9, "uncorrected"));

        Polygon band = plot.GetPlottables<Polygon>().MaxBy(area => area.GetAxisLimits().HorizontalSpan)!;
        Coordinates[] edge = [.. band.Coordinates];
        Assert.All(advice.Predictions, one =>
        {
            double x = one.Die.StampedRadius.Meters * perMeter;
            double[] ends = [.. edge.Where(corner => Math.Abs(corner.X - x) < 1e-9 * x).Select(corner => corner.Y).OrderBy(y => y)];
            Near.Relative(one.Interval!.Low.Meters * perMeter, ends[0], 1e-12);
            Near.Relative(one.Interval.High.Meters * perMeter, ends[^1], 1e-12);
            Assert.Contains(fit, point => Math.Abs(point.X - x) < 1e-9 * x);
        });

        Die At(double x) => new("between", Length.FromMeters(x / perMeter), ReferenceFace.InsideOfBar);
        DiePrediction Predicted(double x) => DiePrediction.Of(advice.Model, advice.Analysis, At(x), Release.Free);
    }

    [Fact]
    public void Measured_rings_stand_where_they_were_measured_and_the_odd_one_apart()
    {
        DieChoiceFigure figure = Named["line with an odd ring"];
        Assert.Equal(6, figure.Fit!.OddRing!.Number);
        using Plot plot = figure.ToPlot();
        (double X, double Y)[] dots = Marks(plot, MarkerShape.FilledCircle, WithOdd.Length - 1);
        (double X, double Y)[] expected = [.. WithOdd.Where((_, i) => i != 5).Select(Place)];
        Assert.All(expected.Zip(dots), pair =>
        {
            Near.Relative(pair.First.X, pair.Second.X, 1e-12);
            Near.Relative(pair.First.Y, pair.Second.Y, 1e-9);
        });
        Assert.Contains(plot.GetPlottables<Scatter>(),
            marks => marks.MarkerShape == MarkerShape.Eks && Math.Abs(marks.Data.GetScatterPoints()[0].Y - Place(WithOdd[5]).Y) < 1e-6);
        string all = All(plot);
        Assert.Contains("7 measured rings|ring 6 does not fit with the others: look at it again|fit to the rings: a line", all,
            StringComparison.Ordinal);
        Assert.Contains("|6", all, StringComparison.Ordinal);

        static (double X, double Y) Place(MeasuredRing ring) => (ring.Die.StampedRadius.Millimeters, 2 * ring.Measured.Value.Millimeters);
    }

    /// <summary>The wanted ring with its tolerance, the best die on its line, every die on the axis.</summary>
    [Fact]
    public void The_wanted_ring_and_the_dies_stand_at_their_numbers()
    {
        DieChoiceFigure figure = Named["ratio"];
        using Plot plot = figure.ToPlot();
        double[] levels =
            [.. Curves(plot, 0.8f).Where(points => points[1].X - points[0].X > 150).Select(points => points[0].Y).OrderBy(y => y)];
        Assert.Equal([555, 560, 565], levels.Select(level => Math.Round(level, 6)));
        DiePrediction best = figure.Choice.Best!;
        (double x, double y) = Assert.Single(Marks(plot, MarkerShape.OpenCircle, 1));
        Near.Relative(best.Die.StampedRadius.Millimeters, x, 1e-12);
        Near.Relative(best.Ring!.InsideDiameter.Millimeters, y, 1e-12);
        AxisLimits limits = plot.Axes.GetLimits();
        double[] dies =
            [.. plot.GetPlottables<Scatter>().Where(marks => marks.MarkerShape is MarkerShape.OpenTriangleUp or MarkerShape.FilledTriangleUp)
            .Select(marks => marks.Data.GetScatterPoints()[0]).Where(point => point.Y < limits.Bottom + (0.05 * limits.VerticalSpan))
                .Select(point => Math.Round(point.X, 6)).OrderBy(place => place)];
        Assert.Equal([200, 250, 300, 360], dies);
        string all = All(plot);
        Assert.Contains("wanted: 560 ± 5 mm", all, StringComparison.Ordinal);
        Assert.Contains(FormattableString.Invariant($"best die: C, {best.Chance!.Value.Percent:0} of 100 within"), all,
            StringComparison.Ordinal);
    }

    /// <summary>A wanted ring given to the outside is drawn at the inside diameter of the ring that has that outside.</summary>
    [Fact]
    public void A_ring_wanted_to_the_outside_is_drawn_at_its_inside()
    {
        DieChoiceFigure figure = Named["wanted to the outside"];
        using Plot plot = figure.ToPlot();
        FinishedRing best = figure.Choice.Best!.Ring!;
        double inside = 600 - (best.OutsideDiameter - best.InsideDiameter).Millimeters;
        Assert.Contains(Curves(plot, 0.8f), points => Math.Abs(points[0].Y - inside) < 1e-6 && Math.Abs(points[1].Y - inside) < 1e-6);
        Assert.Contains("wanted: 600 ± 4 mm outside", All(plot), StringComparison.Ordinal);
        Assert.Equal("inside diameter of the ring, held flat (mm)", plot.Axes.Left.Label.Text);
    }

    [Theory]
    [InlineData("ratio",
        "5 measured rings|fit to the rings: one ratio|carried on beyond these rings|95 % of rings to come|wrap bending, uncorrected|")]
    [InlineData("bounds",
        "wrap bending|bounds for yield 235 to 355 MPa, not a measured scatter|wanted: 21.26 ± 0.197 in|die of the rack|best die: B")]
    [InlineData("nothing scatters", "no interval: no measured rings, so no scatter is known|")]
    [InlineData("one ring", "1 measured ring|corrected by one ring|no interval: one measured ring shows no scatter|")]
    [InlineData("other bars too", "1 measured ring|2 measured rings of another kind are not drawn|")]
    [InlineData("no ring at all", "wanted: 540 ± 5 mm|die of the rack|no die of the rack leaves a ring|")]
    [InlineData("a stroke from one ring", "1 measured ring|")]
    public void Words_say_what_is_drawn(string which, string said)
    {
        using Plot plot = Named[which].ToPlot();
        Assert.Contains(said, All(plot) + "|", StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void No_word_covers_another_or_a_line_or_leaves_the_picture(string which)
    {
        using Plot plot = Named[which].ToPlot();
        plot.GetSvgXml(640, 480);
        Text[] words = [.. plot.GetPlottables<Text>()];
        PixelRect paper = plot.LastRender.DataRect;
        Pixel[] points =
            [.. plot.GetPlottables<Scatter>().Where(curve => curve.MarkerSize == 0).SelectMany(curve => curve.Data.GetScatterPoints()).Select(point => plot.GetPixel(point))];
        for (int i = 0; i < words.Length; i++)
        {
            PixelRect one = words[i].LabelStyle.LastRenderPixelRect;
            string text = words[i].LabelStyle.Text;
            Assert.True(one.Left >= paper.Left && one.Right <= paper.Right && one.Top >= paper.Top && one.Bottom <= paper.Bottom, text);
            Assert.All(words.Take(i),
                other => Assert.False(Meet(one, other.LabelStyle.LastRenderPixelRect), $"{text} on {other.LabelStyle.Text}"));
            Assert.All(points,
                point =>
                    Assert.False(point.X > one.Left + 5 && point.X < one.Right && point.Y > one.Top && point.Y < one.Bottom,
                        $"a line runs through {text}"));
        }
    }

    [Theory]
    [InlineData("other faces", "radius of the inside of the bar on the die (mm)")]
    [InlineData("other noses", "radius stamped on the die (mm)")]
    [InlineData("bounds", "radius stamped on the die (in)")]
    public void The_axis_says_which_radius_it_counts(string which, string label)
    {
        using Plot plot = Named[which].ToPlot();
        Assert.Equal(label, plot.Axes.Bottom.Label.Text);
    }

    /// <summary>Between dies that differ in nose nothing is predicted: no line is longer than the dash of one die.</summary>
    [Fact]
    public void Dies_of_different_noses_stand_by_themselves()
    {
        using Plot plot = Named["other noses"].ToPlot();
        Assert.All(Curves(plot, 1.8f), points => Assert.True(points.Length == 2 && points[1].X - points[0].X < 5));
        DiePrediction[] prospects = [.. Named["other noses"].Choice.Predictions];
        Assert.All(prospects,
            one =>
                Assert.Contains(Curves(plot, 1.8f), points => Math.Abs(points[0].Y - one.Ring!.InsideDiameter.Millimeters) < 1e-6));
        Assert.All(prospects,
            one => Assert.Contains(Curves(plot, 6f), points => Math.Abs(points[0].Y - one.Interval!.Low.Millimeters) < 1e-6));
    }

    [Fact]
    public void Pictures_are_black_and_gray_and_do_not_depend_on_the_culture() => InkRules.Hold(Named["line with an odd ring"]);

    [Fact]
    public void Bad_arguments_are_refused_by_name()
    {
        DieChoice advice = Named["ratio"].Choice;
        Assert.Throws<ArgumentNullException>("choice", () => new DieChoiceFigure(null!, inInches: true));
        Assert.Throws<ArgumentException>("name", () => new DieChoiceFigure(advice, inInches: true, name: "two\nlines"));
        ArgumentException other =
            Assert.Throws<ArgumentException>("fit", () => new DieChoiceFigure(advice, inInches: true, Named["one ring"].Fit));
        Assert.StartsWith("fit must be the one whose model the choice was asked with, ", other.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>("height", () => new DieChoiceFigure(advice, inInches: true).ToPng(320, 239));
        Assert.Equal("angle 30 × 30 × 3 mm, flange out: ring against die", new DieChoiceFigure(advice, inInches: true).ToString());
    }

    private static DieChoiceFigure Fitted(MeasuredRing[] rings, double wanted)
    {
        RingFit fit = RingFit.Of(rings, Workshop.RimSteel, Shop.Wrap);
        return new(Advice(Workshop.RimSteel, fit.Model, wanted), inInches: false, fit);
    }

    private static DieChoice Advice(BendAnalysis bending, FormingModel model, double wanted, DieRack? rack = null) =>
        DieChoice.For(rack ?? Workshop.Rack, bending, BendRadius.InsideDiameter(Length.FromMillimeters(wanted)),
            model, Release.Free, Length.FromMillimeters(5));

    /// <summary>The lines of a width, at the usual size of a figure.</summary>
    private static IEnumerable<Coordinates[]> Curves(Plot plot, float width) => plot.GetPlottables<Scatter>()
        .Where(curve => curve.MarkerSize == 0 && curve.LineWidth == width).Select(curve => curve.Data.GetScatterPoints().ToArray());

    /// <summary>Marks of a shape in a set of so many, in order; the key has sets of one.</summary>
    private static (double X, double Y)[] Marks(Plot plot, MarkerShape shape, int count) => [.. plot.GetPlottables<Scatter>()
        .Where(marks => marks.MarkerSize > 0 && marks.MarkerShape == shape && marks.Data.GetScatterPoints().Count == count)
            .SelectMany(marks => marks.Data.GetScatterPoints()).Select(point => (point.X, point.Y))];

    private static string All(Plot plot) =>
        string.Join('|',
            plot.GetPlottables<Text>().Select(word => word.LabelStyle.Text.Replace('\n', ' ')).Where(text => text.Length > 2)
                .Concat(plot.GetPlottables<Text>().Select(word => word.LabelStyle.Text).Where(text => text.Length <= 2)));

    private static bool Meet(PixelRect a, PixelRect b) => a.Left < b.Right && b.Left < a.Right && a.Top < b.Bottom && b.Top < a.Bottom;
}
