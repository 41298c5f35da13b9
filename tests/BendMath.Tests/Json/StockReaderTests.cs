using BendMath.Json;
using BendMath.Json.Words;
using BendMath.Stock.Standard;
using UnitsNet;

namespace BendMath.Tests.Json;

/// <summary>The bar of a job file: every shape, every way it lies, and standard sizes. Invented data.</summary>
public sealed class StockReaderTests
{
    private static readonly Dictionary<string, BarStock> Bars = new(StringComparer.Ordinal)
    {
        ["""{ "shape": "equal angle", "leg": "30 mm", "thickness": "3 mm", "root radius": "5 mm", "toe radius": "2.5 mm" }"""] =
            new EqualAngle(Mm(30), Mm(3), AngleFillets.Of(Mm(5), Mm(2.5))),
        ["""{ "shape": "unequal angle", "long leg": "60 mm", "short leg": "40 mm", "thickness": "5 mm", "root radius": "6 mm", "toe radius": "3 mm" }"""] = new UnequalAngle(Mm(60), Mm(40), Mm(5), AngleFillets.Of(Mm(6), Mm(3))),
        ["""{ "shape": "flat", "width": "25 mm", "thickness": "5 mm", "corner radius": "1 mm" }"""] = new FlatBar(Mm(25), Mm(5), Mm(1)),
        ["""{ "shape": "square", "side": "12 mm", "corner radius": "0.5 mm" }"""] = new SquareBar(Mm(12), Mm(0.5)),
        ["""{ "shape": "round", "diameter": "10 mm" }"""] = new RoundBar(Mm(10)),
        ["""{ "shape": "hexagon", "across flats": "17 mm" }"""] = new HexagonBar(Mm(17)),
        ["""{ "shape": "round tube", "outside diameter": "33.7 mm", "wall": "3 mm" }"""] = new RoundTube(Mm(33.7), Mm(3)),
        ["""{ "shape": "square tube", "side": "40 mm", "wall": "3 mm", "outside corner radius": "5 mm", "inside corner radius": "2 mm" }"""] = new SquareTube(Mm(40), Mm(3), CornerRadii.Of(Mm(5), Mm(2))),
        ["""{ "shape": "rectangular tube", "height": "60 mm", "width": "40 mm", "wall": "3 mm", "corners": "cold formed" }"""] =
            new RectangularTube(Mm(60), Mm(40), Mm(3), CornerRadii.ColdFormed(Mm(3))),
        ["""{ "shape": "channel", "depth": "80 mm", "flange width": "45 mm", "web thickness": "6 mm", "flange thickness": "8 mm", "root radius": "8 mm", "toe radius": "4 mm", "outer radius": "1 mm" }"""] =
            new Channel(Mm(80), Mm(45), Mm(6), Mm(8), FlangeFillets.Of(Mm(8), Mm(4), Mm(1))),
        ["""{ "shape": "tee", "depth": "40 mm", "flange width": "50 mm", "stem thickness": "5 mm", "flange thickness": "6 mm", "corners": "sharp" }"""] = new Tee(Mm(40), Mm(50), Mm(5), Mm(6), FlangeFillets.Sharp),
    };

    public static TheoryData<string, BarStock> Others => new()
    {
        { """{ "shape": "equal angle", "leg": "30 mm", "thickness": "3 mm", "corners": "sharp" }""",
            new EqualAngle(Mm(30), Mm(3), AngleFillets.Sharp) },
        { """{ "shape": "unequal angle", "long leg": "60 mm", "short leg": "40 mm", "thickness": "5 mm", "corners": "sharp" }""",
            new UnequalAngle(Mm(60), Mm(40), Mm(5), AngleFillets.Sharp) },
        { """{ "shape": "square tube", "side": "40 mm", "wall": "3 mm", "corners": "hot finished" }""",
            new SquareTube(Mm(40), Mm(3), CornerRadii.HotFinished(Mm(3))) },
        { """{ "shape": "square tube", "side": "40 mm", "wall": "3 mm", "corners": "sharp" }""",
            new SquareTube(Mm(40), Mm(3), CornerRadii.Sharp) },
        { """{ "shape": "channel", "depth": "80 mm", "flange width": "45 mm", "web thickness": "6 mm", "flange thickness": "8 mm", "corners": "sharp" }""", new Channel(Mm(80), Mm(45), Mm(6), Mm(8), FlangeFillets.Sharp) },
        { """{ "size": "L 50x50x5" }""", StandardSizes.Find("L 50x50x5").Stock },
        { """{ "size": "2 x 2 x 1/8 angle" }""", StandardSizes.Find("L2X2X1/8").Stock },
        { """{ "size": "CHS 42.4x3.2", "system": "EN 10210-2" }""", StandardSizes.Find("CHS 42.4x3.2", SizeSystem.En10210).Stock },
        { """{ "size": "EN 10219-2 CHS 42.4x3.2" }""", StandardSizes.Find("CHS 42.4x3.2", SizeSystem.En10219).Stock },
        { """{ "size": "HSS2X2X1/8" }""",
            new SquareTube(Length.FromInches(2), Length.FromInches(0.125), CornerRadii.Hss(Length.FromInches(0.125))) },
    };

    /// <summary>Each shape of the library in each of its orientations, written out and read back.</summary>
    [Fact]
    public void Every_shape_comes_back_in_every_orientation()
    {
        Assert.Equal(ShapeWords.All.Count, Bars.Count);
        foreach ((string text, BarStock bar) in Bars)
        {
            foreach (OrientedSection section in bar.Orientations)
            {
                OrientedSection read = Read(text, section.Orientation.ToString());
                Assert.Equal(bar, read.Stock);
                Assert.Equal(section.ToString(), read.ToString());
            }
        }
    }

    [Fact]
    public void Orientations_of_the_file_are_those_of_the_stock() => Assert.Equal(
        Bars.Values.Select(bar => string.Join('|', bar.Orientations.Select(section => section.Orientation.ToString()))),
        ShapeWords.All.Select(words => string.Join('|', words.Orientations)));

    [Theory]
    [MemberData(nameof(Others))]
    public void Words_for_corners_and_sizes_make_the_stock_of_the_library(string text, BarStock bar)
    {
        Assert.Equal(bar, Read(text, bar.Orientations[0].Orientation.ToString()).Stock);
        Assert.Equal(bar.Orientations[^1].ToString(), Read(text, bar.Orientations[^1].Orientation.ToString()).ToString());
    }

    [Theory]
    [InlineData("""{ "size": "L 50x50x5.5" }""", "flange out", "stock.size",
        "The designation must be a listed size, but is \"L 50x50x5.5\"; the nearest sizes are EN 10056-1 L50x50x6, EN 10056-1 L50x50x5, "
            + "EN 10056-1 L50x50x7.")]
    [InlineData("""{ "size": "CHS 42.4x3.2" }""", null, "stock.size",
        "The designation must mean one size, but \"CHS 42.4x3.2\" may be EN 10219-2 CHS 42.4x3.2 or EN 10210-2 CHS 42.4x3.2; write it "
            + "like that, or name the system.")]
    [InlineData("""{ "size": "L50x50x5", "system": "EN" }""", "flange out", "stock.system", null)]
    [InlineData("""{ "size": 50 }""", "flange out", "stock.size",
        "\"size\" must be text in quotes, as \"size\": \"L 50x50x5\", but is the number 50 without quotes.")]
    [InlineData("""{ "size": "L50x50x5", "leg": "50 mm" }""", "flange out", "stock.leg",
        "\"leg\" is not a word of this part; its words are \"size\" and \"system\".")]
    [InlineData("""{ "size": "L50x50x5" }""", "sideways", "orientation",
        "\"orientation\" must be \"flange out\", \"flange in\", \"heel in\" or \"heel out\", but is \"sideways\".")]
    [InlineData("""{ "size": "SHS 40x2.5" , "system": "EN 10219-2"}""", "easy way", "orientation",
        "\"orientation\" must be left out, because EN 10219-2 SHS 40x40x2.5 lies one way only, but is \"easy way\".")]
    [InlineData("""{ "shape": "unequal angle", "long leg": "40 mm", "short leg": "41 mm", "thickness": "5 mm", "corners": "sharp" }""",
        "long leg radial, flange out", "stock.short leg", "\"short leg\" must not be longer than the long leg, 40 mm, but is 41 mm.")]
    [InlineData("""{ "shape": "square tube", "side": "40 mm", "wall": "3 mm" }""", null, "stock",
        "A tube needs both \"outside corner radius\" and \"inside corner radius\", or \"corners\": \"sharp\", \"cold formed\" or \"hot "
            + "finished\".")]
    [InlineData("""{ "shape": "square tube", "side": "40 mm", "wall": "20 mm", "corners": "sharp" }""", null, "stock.wall", null)]
    [InlineData("""{ "shape": "tee", "depth": "40 mm", "flange width": "4 mm", "stem thickness": "5 mm", "flange thickness": "6 mm", "corners": "sharp" }""", "stem out", "stock.flange width", null)]
    [InlineData("""{ "shape": "channel", "depth": "80 mm", "flange width": "45 mm", "web thickness": "6 mm", "flange thickness": "8 mm", "root radius": "8 mm" }""", "hard way", "stock", "A channel needs \"root radius\", \"toe radius\" and \"outer radius\", or \"corners\": \"sharp\" for none.")]
    [InlineData("""{ "shape": "channel", "depth": "80 mm", "flange width": "45 mm", "web thickness": "6 mm", "flange thickness": "8 mm", "root radius": "8 mm", "toe radius": "9 mm", "outer radius": "0 mm" }""", "hard way", "stock", "fillets must have a toe radius not greater than the flange thickness, 8 mm, but is 9 mm.")]
    [InlineData("""{ "shape": "flat", "width": "25 mm", "thickness": "5 mm", "corner radius": "3 mm" }""", "easy way",
        "stock.corner radius", "\"corner radius\" must not be greater than half the thickness, 2.5 mm, but is 3 mm.")]
    [InlineData("""{ "shape": "hexagon", "across flats": "-17 mm" }""", "on the flat", "stock.across flats", null)]
    public void Faults_say_where_and_what(string text, string? orientation, string place, string? rule)
    {
        JsonFault fault = Assert.Single(RingJobFile.Read(File(text, orientation)).Faults);
        Assert.Equal(place, fault.Place);
        Assert.Equal(place == "orientation" ? 5 : 4, fault.Line);
        if (rule is not null)
        {
            Assert.Equal(rule, fault.Rule);
        }
    }

    private static OrientedSection Read(string stock, string orientation)
    {
        RingJobFile reading = RingJobFile.Read(File(stock, orientation.Length == 0 ? null : orientation));
        Assert.Empty(reading.Faults);
        return reading.Jobs[0].Job.Analysis.Section;
    }

    private static string File(string stock, string? orientation)
    {
        string[] lines = JobTexts.With("\"inside diameter\": \"500 mm\"", "\"inside diameter\": \"900 mm\"").Split('\n');
        lines[3] = $"\"stock\": {stock},";
        lines[4] = orientation is null ? string.Empty : $"\"orientation\": \"{orientation}\",";
        return string.Join('\n', lines);
    }

    private static Length Mm(double value) => Length.FromMillimeters(value);
}
