using System.Buffers.Binary;
using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using BendMath.Plotting;
using BendMath.Plotting.Drawing;
using BendMath.Sections.Outlines;
using BendMath.Stock.Standard;
using BendMath.Tests.Sections;
using ScottPlot;
using UnitsNet;
using Text = ScottPlot.Plottables.Text;

namespace BendMath.Tests.Plotting;

/// <summary>The figure of a section, against the exact section and against what a reader needs.</summary>
public sealed class SectionFigureTests
{
    private static readonly EqualAngle Angle = new(Mm(30), Mm(3), AngleFillets.Of(root: Mm(5), toe: Mm(2.5)));

    private static readonly CustomBar WithHoles =
        new("plate with holes", new Outline([Drawn.Slot(), Drawn.Circle(8, 5, 2), Drawn.Circle(32, 5, 3)]));

    public static TheoryData<OrientedSection> Sections =>
        [.. Stock.Shapes.All.SelectMany(bar => bar.Orientations), WithHoles.AsDrawn, WithHoles.TurnedBy(UnitsNet.Angle.FromDegrees(30))];

    /// <summary>
    /// A chord with a rise s takes at most two thirds of s times the arc from the area (or adds it, on a hole or fillet).
    /// </summary>
    [Theory]
    [MemberData(nameof(Sections))]
    public void Drawn_area_is_the_area_of_the_section_but_for_the_chords(OrientedSection section)
    {
        using Plot plot = new SectionFigure(section, inInches: true).ToPlot();
        double area = Assert.Single(plot.GetPlottables<SectionArea>()).Polygons.Sum(Shoelace) * 25.4 * 25.4;
        double arcs = section.Outline.Loops.SelectMany(loop => loop.Edges).Where(edge => edge.IsArc).Sum(edge => edge.Length.Millimeters);
        double rise = SectionShape.Sagitta * Math.Max(section.Properties.Width.Millimeters, section.Properties.Depth.Millimeters);
        double exact = section.Properties.Area.SquareMillimeters;
        Assert.InRange(area - exact, -(2 / 3.0 * rise * arcs) - (1e-12 * exact), (2 / 3.0 * rise * arcs) + (1e-12 * exact));
        Assert.Equal(arcs == 0, Math.Abs(area - exact) < 1e-12 * exact);
    }

    /// <summary>Everything has its name, numbers come from the exact section, and no word covers another or leaves the picture.</summary>
    [Theory]
    [MemberData(nameof(Sections))]
    public void Every_name_is_there_and_none_covers_another(OrientedSection section)
    {
        using Plot plot = new SectionFigure(section, inInches: false).ToPlot();
        plot.GetSvgXml(640, 480);
        Text[] words = [.. plot.GetPlottables<Text>()];
        string all = string.Join('|', words.Select(word => word.LabelStyle.Text.Replace('\n', ' ')));
        SectionProperties p = section.Properties;
        Assert.Contains("inside face, y = 0", all, StringComparison.Ordinal);
        Assert.Contains($"outside face, y = {Number(p.Depth)}", all, StringComparison.Ordinal);
        Assert.Contains($"equal-area axis, y = {Number(p.EqualAreaAxisFromInside)}", all, StringComparison.Ordinal);
        Assert.Contains("centroid", all, StringComparison.Ordinal);
        Assert.Contains("to the center of the bend", all, StringComparison.Ordinal);
        Assert.Contains(Number(p.Width), all.Split('|'));
        Assert.Contains(Number(p.Depth), all.Split('|'));
        Assert.Contains(plot.GetPlottables<ScottPlot.Plottables.Marker>(),
            mark => Near(mark.X, p.CentroidAxial) && Near(mark.Y, p.CentroidFromInside));
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

    /// <summary>A name is text in the file, whatever else it looks like.</summary>
    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("\" onload=\"alert(1)")]
    [InlineData("]]></text><b>&amp;")]
    [InlineData("url(#cl_1a) id=\"cl_1b\"")]
    public void A_name_is_text_and_nothing_else(string name)
    {
        XDocument plain = XDocument.Parse(new SectionFigure(Angle.FlangeOut, inInches: false, "plain").ToSvg());
        XDocument named = XDocument.Parse(new SectionFigure(Angle.FlangeOut, inInches: false, name).ToSvg());
        Assert.Equal(plain.Descendants().Select(element => element.Name), named.Descendants().Select(element => element.Name));
        Assert.Contains(named.Descendants(), element => element.Name.LocalName == "text" && element.Value.Trim() == $"{name}, flange out");
        Assert.DoesNotContain(named.Descendants().Attributes(),
            attribute => attribute.Name.LocalName.StartsWith("on", StringComparison.Ordinal));
    }

    [Fact]
    public void Title_and_axes_say_what_lies_how_and_in_which_unit()
    {
        using Plot metric = new SectionFigure(Angle.FlangeOut, inInches: false).ToPlot();
        Assert.Equal("angle 30 × 30 × 3 mm, flange out", metric.Axes.Title.Label.Text);
        Assert.Equal("z, along the axis of the ring (mm)", metric.Axes.Bottom.Label.Text);
        Assert.Equal("y, outward from the inside face (mm)", metric.Axes.Left.Label.Text);
        StandardSize size = StandardSizes.Find("L2X2X1/8");
        using Plot inches = new SectionFigure(size.Stock.Orientations[1], inInches: true, size.FullName).ToPlot();
        Assert.Equal("AISC v16.0 L2X2X1/8, flange in", inches.Axes.Title.Label.Text);
        Assert.Equal("y, outward from the inside face (in)", inches.Axes.Left.Label.Text);
        Assert.Contains(inches.GetPlottables<Text>(), word => word.LabelStyle.Text == "0.125");
        Assert.Contains(inches.GetPlottables<Text>(), word => word.LabelStyle.Text == "outside face, y = 2");
    }

    /// <summary>
    /// Leg and thickness of an angle on its bisector, side of a square on the diagonal, wall of a round tube: distances that are no
    /// extents.
    /// </summary>
    [Fact]
    public void Sizes_that_are_bought_are_dimensioned()
    {
        Assert.Equal(["22.3", "3", "30", "42.43"], Numbers(Angle.HeelIn));
        Assert.Equal(["16", "22.63", "22.63"], Numbers(new SquareBar(Mm(16)).OnDiagonal));
        Assert.Equal(["3", "33.7", "33.7"], Numbers(new RoundTube(Mm(33.7), Mm(3)).Section));
        Assert.Equal(["45", "6", "8", "80"], Numbers(new Channel(Mm(80), Mm(45), Mm(6), Mm(8), FlangeFillets.OfRoot(Mm(8))).FlangesOut));
    }

    [Theory]
    [InlineData(640, 480)]
    [InlineData(1280, 960)]
    [InlineData(1500, 400)]
    [InlineData(320, 900)]
    public void Scales_are_equal_and_sizes_are_those_asked_for(int width, int height)
    {
        SectionFigure figure = new(new FlatBar(Mm(60), Mm(4)).HardWay, inInches: false);
        using Plot plot = figure.ToPlot(width, height);
        plot.RenderInMemory(width, height);
        Assert.Equal(1, plot.LastRender.PxPerUnitX / plot.LastRender.PxPerUnitY, 1e-6);
        byte[] png = figure.ToPng(width, height);
        Assert.Equal((width, height),
            (BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(16)), BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(20))));
        Assert.Contains($"width=\"{width}\" height=\"{height}\"", figure.ToSvg(width, height), StringComparison.Ordinal);
    }

    [Fact]
    public void Pictures_do_not_depend_on_culture_or_on_what_was_drawn_before()
    {
        SectionFigure figure = new(Angle.FlangeOut, inInches: true);
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            string[] pictures = [.. new[] { "", "de-DE", "tr-TR", "ar-SA" }.Select(culture =>
            {
                CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
                return figure.ToSvg() + Convert.ToHexString(figure.ToPng());
            })];
            Assert.Single(pictures.Distinct());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    /// <summary>Black, white and gray only.</summary>
    [Fact]
    public void Nothing_is_told_by_color()
    {
        string svg = new SectionFigure(Angle.FlangeOut, inInches: false).ToSvg();
        string[] colors = [.. Regex.Matches(svg, "(?:fill|stroke)=\"([^\"]+)\"").Select(match => match.Groups[1].Value).Distinct()];
        Assert.NotEmpty(colors);
        Assert.All(colors,
            color =>
                Assert.Matches("^(?:none|black|white|#(?<hex>[0-9A-Fa-f]{2})\\k<hex>\\k<hex>|rgb\\((?<part>\\d+),\\k<part>,\\k<part>\\))$",
                    color));
    }

    [Fact]
    public void Settings_of_the_plotting_library_stay_as_they_are()
    {
        string font = Fonts.Default;
        new SectionFigure(Angle.FlangeOut, inInches: false).ToPng();
        Assert.Equal(font, Fonts.Default);
        using Plot plain = new();
        Assert.True(plain.Axes.Right.IsVisible);
    }

    [Fact]
    public void A_picture_goes_to_a_stream_that_stays_open()
    {
        SectionFigure figure = new(Angle.FlangeOut, inInches: false);
        using MemoryStream stream = new();
        figure.SaveSvg(stream);
        Assert.Equal(figure.ToSvg(), System.Text.Encoding.UTF8.GetString(stream.ToArray()));
        stream.SetLength(0);
        figure.SavePng(stream);
        Assert.Equal(figure.ToPng(), stream.ToArray());
    }

    [Fact]
    public void Bad_arguments_are_refused_by_name()
    {
        SectionFigure figure = new(Angle.FlangeOut, inInches: false);
        Assert.Throws<ArgumentNullException>("section", () => new SectionFigure(null!, inInches: true));
        Assert.Throws<ArgumentException>("name", () => new SectionFigure(Angle.FlangeOut, inInches: true, " "));
        Assert.Throws<ArgumentException>("name", () => new SectionFigure(Angle.FlangeOut, inInches: true, "two\nlines"));
        Assert.Throws<ArgumentOutOfRangeException>("width", () => figure.ToPng(319));
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>("height", () => figure.ToSvg(640, 6001));
        Assert.StartsWith("height must be 240 to 6000 pixels, but is 6001.", refused.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentNullException>("stream", () => figure.SavePng(null!));
    }

    private static string[] Numbers(OrientedSection section)
    {
        using Plot plot = new SectionFigure(section, inInches: false).ToPlot();
        return [
            .. plot.GetPlottables<Text>().Select(word => word.LabelStyle.Text).Where(text => char.IsAsciiDigit(text[0]))
                .Order(StringComparer.Ordinal)];
    }

    private static double Shoelace(IReadOnlyList<Coordinates> polygon) =>
        polygon.Select((a, i) => (a, b: polygon[(i + 1) % polygon.Count])).Sum(edge => (edge.a.X * edge.b.Y) - (edge.b.X * edge.a.Y)) / 2;

    private static bool Meet(PixelRect a, PixelRect b) => a.Left < b.Right && b.Left < a.Right && a.Top < b.Bottom && b.Top < a.Bottom;

    private static bool Near(double drawn, Length exact) => Math.Abs(drawn - exact.Millimeters) < 1e-9;

    private static string Number(Length length) => length.Millimeters.ToString("0.##", CultureInfo.InvariantCulture);

    private static Length Mm(double value) => Length.FromMillimeters(value);
}
