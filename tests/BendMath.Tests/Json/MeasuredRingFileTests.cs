using System.Globalization;
using BendMath.Json;
using UnitsNet;

namespace BendMath.Tests.Json;

public sealed class MeasuredRingFileTests
{
    private const string Sound = """
        {
          "note": "invented data",
          "stock": { "shape": "equal angle", "leg": "3/4 in", "thickness": "1/8 in", "corners": "sharp" },
          "orientation": "flange out",
          "material": { "name": "mild steel", "elastic modulus": "200 GPa", "yield": "280 MPa", "density": "7850 kg/m3" },
          "dies": [{ "name": "5 in", "stamped radius": "5 in", "stamp means": "inside of the bar" }],
          "rings": [
            { "die": "5 in", "inside diameter": "9 in", "state": "free", "note": "14 March" },
            { "die": "5 in", "tape around outside": "33 in", "state": "held flat", "marked length": { "before": "31.5 in", "turn": "360 deg" } },
            { "die": "5 in", "chord against inside": { "chord": "8 in", "rise": "2 1/2 in" }, "state": "free",
              "stock": { "shape": "round", "diameter": "10 mm" }, "material": { "name": "alloy", "elastic modulus": "70 GPa", "proof stress": "240 MPa", "exponent": 12, "Poisson's ratio": 0.33, "density": "2700 kg/m3" } }
          ]
        }
        """;

    [Fact]
    public void What_is_written_reads_back_the_same_to_the_last_digit()
    {
        string text = MeasuredRingFile.Write(RingSets.Every);
        MeasuredRingFile reading = MeasuredRingFile.Read(text);
        Assert.Empty(reading.Faults);
        Assert.Equal(RingSets.Every.Select(RingSets.Told), reading.Rings.Select(RingSets.Told));
        Assert.Equal(text, MeasuredRingFile.Write(reading.Rings));
    }

    /// <summary>Dies and materials are records of all they hold: what a later member adds is compared too.</summary>
    [Fact]
    public void Nothing_of_a_die_or_material_is_lost()
    {
        IReadOnlyList<MeasuredRing> rings = MeasuredRingFile.Read(MeasuredRingFile.Write(RingSets.Every)).Rings;
        Assert.Equal(RingSets.Every.Select(ring => ring.Die), rings.Select(ring => ring.Die));
        Assert.Equal(RingSets.Every.Select(ring => ring.Analysis.Material), rings.Select(ring => ring.Analysis.Material));
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    [InlineData("fr-CH")]
    public void The_text_is_the_same_in_every_culture(string culture)
    {
        string text = MeasuredRingFile.Write(RingSets.Every);
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo(culture);
            Assert.Equal(text, MeasuredRingFile.Write(RingSets.Every));
            Assert.Empty(MeasuredRingFile.Read(text).Faults);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void What_people_write_is_read()
    {
        MeasuredRingFile reading = MeasuredRingFile.Read(Sound);
        Assert.Empty(reading.Faults);
        Assert.Equal(3, reading.Rings.Count);
        Assert.Equal("14 March", reading.Rings[0].Note);
        Assert.Equal(4.5 * 25.4, reading.Rings[0].Measured.Value.Millimeters, 1e-12);
        Assert.Equal(33 * 25.4 / (2 * Math.PI), reading.Rings[1].Measured.Value.Millimeters, 1e-9);
        Assert.Equal(RadiusReference.OutsideFace, reading.Rings[1].Measured.Reference);
        Assert.Equal(31.5, reading.Rings[1].Marked!.Before.Inches, 1e-12);
        Assert.Equal((8.0 * 8 / (8 * 2.5) + 1.25) * 25.4, reading.Rings[2].Measured.Value.Millimeters, 1e-9);
        Assert.IsType<RambergOsgood>(reading.Rings[2].Analysis.Material.Law);
    }

    [Theory]
    [InlineData("\"inside diameter\": \"9 in\", ", "", "rings[0]", "Exactly one of \"inside diameter\"")]
    [InlineData("\"tape around outside\": \"33 in\"", "\"tape around outside\": \"33\"", "rings[1].tape around outside", "unit")]
    [InlineData("\"rise\": \"2 1/2 in\"", "\"rise\": \"0 in\"", "rings[2].chord against inside.rise", "greater than zero")]
    [InlineData("\"die\": \"5 in\", \"inside", "\"die\": \"6 in\", \"inside", "rings[0].die",
        "must name one of the dies of the file (they are \"5 in\")")]
    [InlineData("\"turn\": \"360 deg\"", "\"turn\": \"once\"", "rings[1].marked length.turn", "an angle")]
    [InlineData("\"state\": \"held flat\", ", "", "rings[1].state", "missing")]
    [InlineData("\"exponent\": 12", "\"exponent\": \"12\"", "rings[2].material.exponent",
        "must be a plain number without quotes, as 12, but is \"12\"")]
    [InlineData("\"inside diameter\": \"9 in\"", "\"outside diameter\": \"1 in\"", "rings[0].outside diameter",
        "must leave an inside radius")]
    [InlineData("\"note\": \"14 March\"", "\"date\": \"14 March\"", "rings[0].date", "is not a word of this part")]
    public void A_fault_is_told_with_its_place(string old, string replacement, string place, string rule)
    {
        Assert.Contains(old, Sound, StringComparison.Ordinal);
        MeasuredRingFile reading = MeasuredRingFile.Read(Sound.Replace(old, replacement, StringComparison.Ordinal));
        Assert.Empty(reading.Rings);
        Assert.False(reading.IsSound);
        Assert.Contains(reading.Faults, fault => fault.Place == place && fault.Rule.Contains(rule, StringComparison.Ordinal));
    }

    [Fact]
    public void All_faults_are_told_at_once_and_a_missing_bar_says_how_to_write_one()
    {
        string text =
            Sound.Replace(
                "\"stock\": { \"shape\": \"equal angle\", \"leg\": \"3/4 in\", \"thickness\": \"1/8 in\", \"corners\": \"sharp\" },\n  "
                    + "\"orientation\": \"flange out\",\n", string.Empty, StringComparison.Ordinal)
            .Replace("\"rise\": \"2 1/2 in\"", "\"rise\": 2", StringComparison.Ordinal);
        MeasuredRingFile reading = MeasuredRingFile.Read(text);
        Assert.Equal(["rings[0].stock", "rings[1].stock", "rings[2].chord against inside.rise"],
            reading.Faults.Select(fault => fault.Place));
        Assert.Contains("write for example", reading.Faults[0].Rule, StringComparison.Ordinal);
    }

    [Fact]
    public void Text_that_is_not_a_file_of_rings_is_a_fault()
    {
        Assert.Equal("The file is empty.", Assert.Single(MeasuredRingFile.Read(" ").Faults).Rule);
        Assert.Equal("rings",
            Assert.Single(
                MeasuredRingFile.Read(Sound[..Sound.IndexOf("\"rings\"", StringComparison.Ordinal)] + "\"rings\": [] }").Faults).Place);
        Assert.Contains("There is no file", Assert.Single(MeasuredRingFile.ReadFile("no such file.json").Faults).Rule,
            StringComparison.Ordinal);
    }

    /// <summary>A job reads its measured rings with the same words.</summary>
    [Fact]
    public void A_job_takes_tapes_marked_lengths_and_notes_too()
    {
        string ring = "\"die\": \"A\", \"inside diameter\": \"490 mm\", \"state\": \"free\"";
        RingJobFile reading = RingJobFile.Read(JobTexts.With(
            ring,
                "\"die\": \"A\", \"tape around inside\": \"1540 mm\", \"state\": \"free\", \"marked length\": { \"before\": \"1570 mm\", "
                    + "\"turn\": \"360 deg\" }, \"note\": \"14 March\""));
        Assert.Empty(reading.Faults);
        MeasuredRing read = Assert.Single(Assert.Single(reading.Jobs).Job.Calibration.Rings);
        Assert.Equal(1540 / (2 * Math.PI), read.Measured.Value.Millimeters, 1e-9);
        Assert.Equal("14 March", read.Note);
        Assert.NotNull(read.KeptFiberFromInside);
    }

    [Fact]
    public void What_a_file_has_no_words_for_is_refused_by_name()
    {
        MeasuredRing sound = RingSets.Every[0];
        Assert.Throws<ArgumentException>("rings", () => MeasuredRingFile.Write([]));
        Die twin = new(sound.Die.Name, Length.FromMillimeters(111), ReferenceFace.InsideOfBar);
        Assert.Contains("different names",
            Assert.Throws<ArgumentException>("rings",
                () => MeasuredRingFile.Write([sound, new(twin, sound.Analysis, sound.Measured, sound.Release)])).Message,
                    StringComparison.Ordinal);
        MeasuredCurve curve = MeasuredCurve.FromEngineering(
            Pressure.FromGigapascals(205),
                [(Ratio.FromPercent(0.1415), Pressure.FromMegapascals(290)), (Ratio.FromPercent(2), Pressure.FromMegapascals(330))]);
        BarMaterial measured = new("measured", curve, Density.FromKilogramsPerCubicMeter(7850));
        MeasuredRing ring = new(sound.Die, BendAnalysis.Of(sound.Analysis.Section, measured), sound.Measured, Release.Free);
        Assert.Contains("law a file has words for", Assert.Throws<ArgumentException>("rings", () => MeasuredRingFile.Write([ring])).Message,
            StringComparison.Ordinal);
        MeasuredRing blank =
            new(new(" A", Length.FromMillimeters(111), ReferenceFace.InsideOfBar), sound.Analysis, sound.Measured, Release.Free);
        Assert.Contains("the name of a die is \" A\"",
            Assert.Throws<ArgumentException>("rings", () => MeasuredRingFile.Write([blank])).Message, StringComparison.Ordinal);
    }
}
