using BendMath.Forming.ThreePoint;
using BendMath.Json;
using BendMath.Learning;

namespace BendMath.Tests.Json;

public sealed class RingJobFileTests
{
    [Fact]
    public void Every_word_of_a_sound_file_reaches_the_job()
    {
        RingJobEntry entry = Assert.Single(RingJobFile.Read(JobTexts.Sound).Jobs);
        RingJob job = entry.Job;
        Assert.Equal("planter rim", job.Name);
        Assert.Equal("invented data", entry.Note);
        Assert.False(entry.IsInInches);
        Assert.Equal("angle 30 × 30 × 3 mm, flange out", job.Analysis.Section.ToString());
        BarMaterial material = job.Analysis.Material;
        Assert.IsType<PerfectlyPlastic>(material.Law);
        Assert.Equal(200e9, material.Law.ElasticModulus.Pascals);
        Assert.Equal(280e6, material.Law.YieldStress.Pascals);
        Assert.Equal(235e6, material.YieldRange!.Low.Pascals);
        Assert.Equal(355e6, material.YieldRange.High.Pascals);
        Assert.Equal(7850, material.Density.KilogramsPerCubicMeter);
        Assert.Equal(0.23, material.Elongation!.Value.DecimalFractions, 15);
        Assert.Equal(RadiusReference.InsideFace, job.Wanted.Radius.Reference);
        Assert.Equal(0.25, job.Wanted.Radius.Value.Meters);
        Assert.Equal(90, job.Wanted.Arc.Turn.Degrees, 12);
        Assert.IsType<WrapBending>(job.Bender.Model);
        Assert.Equal(0.1, job.Bender.Model.Setup!.HalfSpan.Meters);
        Assert.Equal(["A", "B"], job.Bender.Rack.Select(die => die.Name));
        Assert.Equal(0.003, job.Bender.Rack[1].Face.OffsetFor(job.Analysis.Section).Meters);
        Assert.Equal(0.114, job.Cutting.Ends.Total.Meters, 15);
        Assert.Equal(0.002, job.Cutting.Kerf.Meters);
        Assert.Equal(6, job.Cutting.BarLength!.Value.Meters);
        Assert.Equal(0.9, job.Bender.Drive.LeverLength!.Value.Meters);
        MeasuredRing ring = Assert.Single(job.Calibration.Rings);
        Assert.Equal("A", ring.Die.Name);
        Assert.Equal(0.245, ring.Measured.Value.Meters);
        Assert.Equal(Release.Free, ring.Release);
        Assert.Equal(HypothesisKind.CurvatureRatio, job.Calibration.Correction);
    }

    [Theory]
    [InlineData("\"wanted\": { \"inside diameter\": \"500 mm\" }", "\"wanted\": { \"outside radius\": \"1 ft 3/4 in\" }",
        RadiusReference.OutsideFace, 0.32385, true)]
    [InlineData("\"wanted\": { \"inside diameter\": \"500 mm\" }", "\"wanted\": { \"centroid diameter\": \"½ m\" }",
        RadiusReference.Centroid, 0.25, false)]
    [InlineData("\"wanted\": { \"inside diameter\": \"500 mm\" }", "\"wanted\": { \"inside radius\": \"10\\\"\" }",
        RadiusReference.InsideFace, 0.254, true)]
    public void A_wanted_size_names_its_line_and_its_unit(string old, string replacement, RadiusReference line, double meters, bool inches)
    {
        RingJobEntry entry = Assert.Single(RingJobFile.Read(JobTexts.With(old, replacement)).Jobs);
        Assert.Equal(line, entry.Job.Wanted.Radius.Reference);
        Assert.Equal(meters, entry.Job.Wanted.Radius.Value.Meters, 15);
        Assert.Equal(inches, entry.IsInInches);
    }

    /// <summary>
    /// 1 ksi = 6.894 757 MPa, 1 lb/in³ = 27 679.90 kg/m³: NIST Special Publication 811, 2008 edition, appendix B.8, from memory; seven
    /// digits, so 36 ksi to 0.000 02 MPa.
    /// </summary>
    [Theory]
    [InlineData("36 ksi", 248.211252)]
    [InlineData("36000psi", 248.211252)]
    [InlineData("0.25 GPa", 250)]
    [InlineData("235 N/mm2", 235)]
    [InlineData(" 235  mpa ", 235)]
    public void Pressures_are_read_in_every_unit(string text, double megapascals)
    {
        string file =
            JobTexts.With("\"yield\": \"280 MPa\"", $"\"yield\": \"{text}\"")
                .Replace("\"yield range\": [\"235 MPa\", \"355 MPa\"],", string.Empty, StringComparison.Ordinal)
            .Replace("\"7850 kg/m3\"", "\"0.283 lb/in3\"", StringComparison.Ordinal);
        RingJobFile reading = RingJobFile.Read(file);
        Assert.Empty(reading.Faults);
        BarMaterial material = reading.Jobs[0].Job.Analysis.Material;
        Assert.Equal(megapascals, material.Law.YieldStress.Megapascals, 2e-5);
        Assert.Equal(0.283 * 27679.90, material.Density.KilogramsPerCubicMeter, 2);
    }

    [Theory]
    [InlineData("{ \"shape\": \"flat\", \"width\": \"25 mm\", \"thickness\": \"5 mm\" }", "easy way", "flat 25 × 5 mm, easy way")]
    [InlineData("{ \"shape\": \"flat\", \"width\": \"25 mm\", \"thickness\": \"5 mm\" }", "hard way", "flat 25 × 5 mm, hard way")]
    [InlineData("{ \"shape\": \"square\", \"side\": \"12 mm\" }", null, "square 12 mm")]
    [InlineData("{ \"shape\": \"square\", \"side\": \"12 mm\" }", "on the diagonal", "square 12 mm, on the diagonal")]
    [InlineData("{ \"shape\": \"equal angle\", \"leg\": \"30 mm\", \"thickness\": \"3 mm\", \"corners\": \"sharp\" }", "heel in",
        "angle 30 × 30 × 3 mm, heel in")]
    [InlineData("{ \"shape\": \"round\", \"diameter\": \"10 mm\" }", null, "round 10 mm")]
    [InlineData("{ \"shape\": \"round tube\", \"outside diameter\": \"21.3 mm\", \"wall\": \"2.6 mm\" }", null, "round tube 21.3 × 2.6 mm")]
    [InlineData("{ \"shape\": \"equal angle\", \"leg\": \"30 mm\", \"thickness\": \"3 mm\", \"corners\": \"sharp\" }", "flange in",
        "angle 30 × 30 × 3 mm, flange in")]
    public void Every_shape_is_read(string stock, string? orientation, string section)
    {
        string file = JobTexts.Sound.Replace(
            JobTexts.Sound.Split('\n').First(line => line.Contains("\"stock\"", StringComparison.Ordinal)), $"\"stock\": {stock},",
                StringComparison.Ordinal);
        file =
            file.Replace("\"orientation\": \"flange out\",", orientation is null ? string.Empty : $"\"orientation\": \"{orientation}\",",
                StringComparison.Ordinal);
        RingJobFile reading = RingJobFile.Read(file);
        Assert.Empty(reading.Faults);
        Assert.Equal(section, reading.Jobs[0].Job.Analysis.Section.ToString());
    }

    [Fact]
    public void A_ring_of_other_stock_is_read()
    {
        string own =
            "\"state\": \"held flat\", \"stock\": { \"shape\": \"flat\", \"width\": \"25 mm\", \"thickness\": \"5 mm\" }, "
                + "\"orientation\": \"hard way\"";
        RingJobFile reading = RingJobFile.Read(JobTexts.With("\"state\": \"free\"", own));
        Assert.Empty(reading.Faults);
        MeasuredRing ring = Assert.Single(reading.Jobs[0].Job.Calibration.Rings);
        Assert.Equal("flat 25 × 5 mm, hard way", ring.Analysis.Section.ToString());
        Assert.Equal(Release.HeldFlat, ring.Release);
    }

    [Fact]
    public void Several_jobs_share_the_note_of_the_file()
    {
        string other = JobTexts.With("\"note\": \"invented data\",", string.Empty);
        RingJobFile reading = RingJobFile.Read($$"""{ "note": "of the file", "jobs": [{{JobTexts.Sound}}, {{other}}] }""");
        Assert.Empty(reading.Faults);
        Assert.Equal(["invented data", "of the file"], reading.Jobs.Select(entry => entry.Note));
    }

    [Fact]
    public void What_may_be_left_out_has_its_stated_meaning()
    {
        string[] optional =
        [
            "\"arc\": \"90 deg\",",
            "\"bender\": { \"half-span\": \"100 mm\", \"nose radius\": \"20 mm\" },",
            "\"kerf\": \"2 mm\",",
            "\"bar length\": \"6 m\",",
            "\"lever length\": \"900 mm\",",
            "\"note\": \"invented data\",",
            ", \"elongation\": \"23 %\"",
            "\"yield range\": [\"235 MPa\", \"355 MPa\"],",
        ];
        string file = JobTexts.With("{ \"start\": \"60 mm\", \"end\": \"50 mm\", \"trim\": \"4 mm\" },", "\"none\" }");
        file = file[..(file.IndexOf("\"none\" }", StringComparison.Ordinal) + 7)];
        file = optional.Aggregate(file + "}", (text, part) => text.Replace(part, string.Empty, StringComparison.Ordinal));
        RingJob job = Assert.Single(RingJobFile.Read(file).Jobs).Job;
        Assert.True(job.Wanted.Arc.IsFullRing);
        Assert.Equal(0, job.Cutting.Kerf.Meters);
        Assert.Equal(0, job.Cutting.Ends.Total.Meters);
        Assert.Null(job.Cutting.BarLength);
        Assert.Null(job.Bender.Drive.LeverLength);
        Assert.Null(job.Bender.Model.Setup);
        Assert.Null(job.Analysis.Material.YieldRange);
        Assert.Null(job.Analysis.Material.Elongation);
        Assert.Null(job.Calibration.Correction);
        Assert.Empty(job.Calibration.Rings);
    }

    [Fact]
    public void Three_point_forming_explains_measured_rings_with_its_own_setup()
    {
        string file =
            JobTexts.With("{ \"model\": \"wrap\" }", "{ \"model\": \"three-point\", \"half-span\": \"90 mm\", \"nose radius\": \"0 mm\" }")
            .Replace("\"bender\": { \"half-span\": \"100 mm\", \"nose radius\": \"20 mm\" },", string.Empty, StringComparison.Ordinal);
        RingJob job = Assert.Single(RingJobFile.Read(file).Jobs).Job;
        Assert.IsType<IncrementalThreePointBending>(job.Bender.Model);
        Assert.Equal(0.09, job.Bender.Model.Setup!.HalfSpan.Meters);
        Assert.Equal(0, job.Bender.Model.Setup.NoseRadius.Meters);
    }
}
