using BendMath.Json;

namespace BendMath.Tests.Json;

/// <summary>Each kind of fault has its place, its line and a sentence with the value.</summary>
public sealed class JobFaultTests
{
    [Theory]
    [InlineData("\"leg\": \"30 mm\"", "\"leg\": 30", "stock.leg", 4,
        "\"leg\" must be a length with its unit in quotes, as \"30 mm\", but is the number 30 without quotes.")]
    [InlineData("\"leg\": \"30 mm\"", "\"leg\": \"30\"", "stock.leg", 4,
        "\"30\" has no unit; write for example \"30 mm\" or \"1 1/4 in\".")]
    [InlineData("\"leg\": \"30 mm\"", "\"leg\": \"0 mm\"", "stock.leg", 4, "\"leg\" must be greater than zero, but is \"0 mm\".")]
    [InlineData("\"leg\": \"30 mm\"", "\"leg\": \"9 mm\"", "stock.leg", 4,
        "\"leg\" must be longer than thickness, root radius and toe radius together, 10.5 mm, but is 9 mm.")]
    [InlineData("\"leg\": \"30 mm\", ", "", "stock.leg", 4, "\"leg\" is missing; write for example \"leg\": \"30 mm\".")]
    [InlineData("\"leg\": \"30 mm\"", "\"legg\": \"30 mm\", \"leg\": \"30 mm\"", "stock.legg", 4,
        "\"legg\" is not a word of this part; its words are \"shape\", \"leg\", \"thickness\", \"corners\", \"root radius\" and \"toe "
            + "radius\".")]
    [InlineData("\"leg\": \"30 mm\"", "\"leg\": \"30 mm\", \"leg\": \"40 mm\"", "stock.leg", 4,
        "\"leg\" must be given once, but is given 2 times, on lines 4, 4.")]
    [InlineData(", \"root radius\": \"5 mm\", \"toe radius\": \"2.5 mm\"", "", "stock", 4,
        "An angle needs both \"root radius\" and \"toe radius\", or \"corners\": \"sharp\" for none.")]
    [InlineData("\"toe radius\": \"2.5 mm\"", "\"toe radius\": \"2.5 mm\", \"corners\": \"sharp\"", "stock.corners", 4,
        "\"corners\" must be left out where \"root radius\" or \"toe radius\" is given.")]
    [InlineData("\"toe radius\": \"2.5 mm\"", "\"toe radius\": \"3.5 mm\"", "stock.toe radius", 4,
        "\"toe radius\" must have a toe radius not greater than the thickness, 3 mm, but is 3.5 mm.")]
    [InlineData("\"equal angle\"", "\"octagon\"", "stock.shape", 4,
        "\"shape\" must be \"equal angle\", \"unequal angle\", \"flat\", \"square\", \"round\", \"hexagon\", \"round tube\", \"square "
            + "tube\", \"rectangular tube\", \"channel\" or \"tee\", but is \"octagon\".")]
    [InlineData("\"orientation\": \"flange out\",", "", "orientation", 1,
        "\"orientation\" is missing; write for example \"orientation\": \"flange out\".")]
    [InlineData("\"flange out\"", "\"easy way\"", "orientation", 5,
        "\"orientation\" must be \"flange out\", \"flange in\", \"heel in\" or \"heel out\", but is \"easy way\".")]
    [InlineData("\"shape\": \"equal angle\", \"leg\": \"30 mm\", \"thickness\": \"3 mm\", \"root radius\": \"5 mm\", \"toe radius\": "
        + "\"2.5 mm\"", "\"shape\": \"round\", \"diameter\": \"10 mm\"", "orientation", 5,
            "\"orientation\" must be left out, because round lies one way only, but is \"flange out\".")]
    [InlineData("\"200 GPa\"", "\"200\"", "material.elastic modulus", 6,
        "\"elastic modulus\" must have a unit, \"MPa\", \"GPa\", \"N/mm2\", \"ksi\" or \"psi\", but is \"200\".")]
    [InlineData("\"200 GPa\"", "\"200 bar\"", "material.elastic modulus", 6,
        "\"elastic modulus\" must have the unit \"MPa\", \"GPa\", \"N/mm2\", \"ksi\" or \"psi\", but is \"200 bar\".")]
    [InlineData("\"200 GPa\"", "\"2,0 GPa\"", "material.elastic modulus", 6,
        "\"elastic modulus\" must be a pressure: a plain number with a decimal point where needed, then \"MPa\", \"GPa\", \"N/mm2\", "
            + "\"ksi\" or \"psi\", but is \"2,0 GPa\".")]
    [InlineData("\"200 GPa\"", "\"-200 GPa\"", "material.elastic modulus", 6,
        "\"elastic modulus\" must be a pressure: a plain number with a decimal point where needed, then \"MPa\", \"GPa\", \"N/mm2\", "
            + "\"ksi\" or \"psi\", but is \"-200 GPa\".")]
    [InlineData("\"23 %\"", "\"0 %\"", "material.elongation", 6, "\"elongation\" must be greater than zero and finite, but is \"0 %\".")]
    [InlineData("\"23 %\"", "0.23", "material.elongation", 6,
        "\"elongation\" must be a percentage with its unit in quotes, as \"23 %\", but is the number 0.23 without quotes.")]
    [InlineData("[\"235 MPa\", \"355 MPa\"]", "[\"235 MPa\"]", "material.yield range", 6,
        "\"yield range\" must be the lowest and the highest in square brackets, as [\"235 MPa\", \"355 MPa\"], but is a list of 1.")]
    [InlineData("[\"235 MPa\", \"355 MPa\"]", "[\"290 MPa\", \"355 MPa\"]", "material.yield range", 6,
        "\"yield range\" must contain the yield stress of the law, 280 MPa, but is 290 to 355 MPa.")]
    [InlineData("[\"235 MPa\", \"355 MPa\"]", "[\"235 MPa\", \"355\"]", "material.yield range[1]", 6,
        "\"yield range[1]\" must have a unit, \"MPa\", \"GPa\", \"N/mm2\", \"ksi\" or \"psi\", but is \"355\".")]
    [InlineData("[\"235 MPa\", \"355 MPa\"]", "[\n235, \"355 MPa\"]", "material.yield range[0]", 7,
        "\"yield range[0]\" must be a pressure with its unit in quotes, as \"235 MPa\", but is the number 235 without quotes.")]
    [InlineData("\"name\": \"planter rim\"", "\"jobs\": null, \"name\": \"planter rim\"", "jobs", 2,
        "\"jobs\" must be left out beside the words of a single job, but is null.")]
    [InlineData("\"inside diameter\": \"500 mm\"", "", "wanted", 7,
        "Exactly one of \"inside diameter\", \"centroid diameter\", \"outside diameter\", \"inside radius\", \"centroid radius\" or "
            + "\"outside radius\" must be given, but none is.")]
    [InlineData("\"inside diameter\": \"500 mm\"", "\"inside diameter\": \"500 mm\", \"outside radius\": \"280 mm\"", "wanted", 7,
        "Exactly one of \"inside diameter\", \"centroid diameter\", \"outside diameter\", \"inside radius\", \"centroid radius\" or "
            + "\"outside radius\" must be given, but \"inside diameter\" and \"outside radius\" are.")]
    [InlineData("\"inside diameter\": \"500 mm\"", "\"outside diameter\": \"50 mm\"", "wanted", 7,
        "\"wanted\" must leave an inside radius, but to the outside face of a bar 30 mm deep it is a radius of 25 mm, a diameter of 50 mm.")]
    [InlineData("\"90 deg\"", "\"400 deg\"", "arc", 8, "\"arc\" must not be greater than 360°, but is 400°.")]
    [InlineData("\"90 deg\"", "\"half\"", "arc", 8,
        "\"arc\" must be an angle: a plain number with a decimal point where needed, then \"deg\" or \"°\", but is \"half\".")]
    [InlineData("\"wrap\"", "\"magic\"", "forming.model", 9,
        "\"model\" must be \"wrap\", \"three-point\", \"pair\" or \"bumps\", but is \"magic\".")]
    [InlineData("\"wrap\"", "\"three-point\", \"half-span\": \"90 mm\", \"nose radius\": \"9 mm\"", "bender", 10,
        "\"bender\" must be left out where \"forming\" is \"three-point\", because its half-span and nose radius are used.")]
    [InlineData("\"inside of the bar\"", "\"the handle\"", "dies[0].stamp means", 12,
        "\"stamp means\" must be \"inside of the bar\" or \"outside of the bar\", or { \"offset\": \"3 mm\" } from the inside of the bar "
            + "outward, but is \"the handle\".")]
    [InlineData("\"name\": \"B\"", "\"name\": \"A\"", "dies[1].name", 13,
        "\"name\" must differ from die to die, but \"A\" is given before.")]
    [InlineData("\"ends\": { \"start\": \"60 mm\", \"end\": \"50 mm\", \"trim\": \"4 mm\" },", "", "ends", 1,
        "\"ends\" is missing; write for example \"ends\": \"none\" or \"ends\": { \"start\": \"60 mm\", \"end\": \"60 mm\", \"trim\": \"4 "
            + "mm\" }.")]
    [InlineData("{ \"start\": \"60 mm\", \"end\": \"50 mm\", \"trim\": \"4 mm\" }", "\"some\"", "ends", 15,
        "\"ends\" must be \"none\" or an object with \"start\", \"end\" and \"trim\", but is \"some\".")]
    [InlineData("\"kerf\": \"2 mm\"", "\"kerf\": \"-2 mm\"", "kerf", 16,
        "\"-2 mm\" has a minus sign, but a length here is never negative.")]
    [InlineData("\"die\": \"A\"", "\"die\": \"C\"", "measured rings[0].die", 20,
        "\"die\" must name one of the dies of the file (they are \"A\" and \"B\"), but is \"C\".")]
    [InlineData("\"state\": \"free\"", "\"state\": \"bent\"", "measured rings[0].state", 20,
        "\"state\" must be \"free\" or \"held flat\", but is \"bent\".")]
    [InlineData("{ \"die\": \"A\", \"inside diameter\": \"490 mm\", \"state\": \"free\" }", "", "correction", 22,
        "\"correction\" needs at least one ring under \"measured rings\", but is \"curvature ratio\" without one.")]
    [InlineData("\"name\": \"planter rim\"", "\"name\": \" \"", "name", 2,
        "\"name\" must not be empty; write for example \"name\": \"planter rim\".")]
    [InlineData("\"note\": \"invented data\"", "\"note\": null", "note", 3, "\"note\" must be text in quotes, as \"a note\", but is null.")]
    [InlineData("\"name\": \"planter rim\"", "\"name\": \"rim\\u001b[31m\"", "name", 2,
        "\"name\" must be one line of printable characters, but is \"rim\\u001b[31m\".")]
    [InlineData("\"bar length\": \"6 m\"", "\"bar length\": \"9999999 m\"", "bar length", 17, null)]
    [InlineData("\"inside diameter\": \"490 mm\"", "\"outside radius\": \"2 mm\"", "measured rings[0].outside radius", 20,
        "\"outside radius\" must leave an inside radius, but to the outside face of a bar 30 mm deep it is a radius of 2 mm, a diameter "
            + "of 4 mm.")]
    [InlineData("\"root radius\": \"5 mm\"", "\"root radius\": \"9999999 m\"", "stock.root radius", 4, null)]
    [InlineData("\"kerf\": \"2 mm\"", "\"kerf\": \"2 mm\", \"blade\": true", "blade", 16, null)]
    public void One_fault_gets_one_sentence(string old, string replacement, string place, int line, string? rule)
    {
        RingJobFile reading = RingJobFile.Read(JobTexts.With(old, replacement));
        JsonFault fault = Assert.Single(reading.Faults);
        Assert.Equal(place, fault.Place);
        Assert.Equal(line, fault.Line);
        if (rule is not null)
        {
            Assert.Equal(rule, fault.Rule);
        }

        Assert.Empty(reading.Jobs);
        Assert.False(reading.IsSound);
    }

    [Fact]
    public void A_correction_by_stroke_needs_the_bender()
    {
        string file =
            JobTexts.With("\"curvature ratio\"", "\"stroke\"")
                .Replace("\"bender\": { \"half-span\": \"100 mm\", \"nose radius\": \"20 mm\" },", string.Empty, StringComparison.Ordinal);
        JsonFault fault = Assert.Single(RingJobFile.Read(file).Faults);
        Assert.Equal("correction (line 22): \"correction\" \"stroke\" needs \"bender\" with its \"half-span\" and \"nose radius\".",
            fault.ToString());
    }

    [Fact]
    public void All_faults_of_a_file_come_at_once_in_the_order_of_its_lines()
    {
        string file = JobTexts.With("\"leg\": \"30 mm\"", "\"leg\": \"30\"")
            .Replace("\"flange out\"", "\"sideways\"", StringComparison.Ordinal)
            .Replace("\"280 MPa\"", "\"280\"", StringComparison.Ordinal)
            .Replace("\"wrap\"", "\"magic\"", StringComparison.Ordinal)
            .Replace("\"240 mm\"", "\"240 furlong\"", StringComparison.Ordinal)
            .Replace("\"kerf\"", "\"curf\"", StringComparison.Ordinal);
        RingJobFile reading = RingJobFile.Read($$"""{ "jobs": [{{file}}, {}] }""");
        string[] first =
            [.. reading.Faults.Select(fault => fault.Place).Where(place => place.StartsWith("jobs[0]", StringComparison.Ordinal))];
        Assert.Equal(
            ["jobs[0].stock.leg", "jobs[0].orientation", "jobs[0].material.yield", "jobs[0].forming.model",
                "jobs[0].dies[0].stamped radius", "jobs[0].curf"],
            first);
        Assert.Equal(
            ["name", "stock", "material", "wanted", "forming", "dies", "ends"],
            reading.Faults.Select(fault => fault.Place).Where(place => place.StartsWith("jobs[1].", StringComparison.Ordinal))
                .Select(place => place[8..]));
    }

    [Theory]
    [InlineData("", "The file is empty.")]
    [InlineData(" \n", "The file is empty.")]
    [InlineData("{\n  \"name\": \"é\" 5\n}",
        "The file is not JSON from line 2, column 15 on: a comma, or the brace or bracket that closes the part, must stand before \"5\".")]
    [InlineData("{ \"name\": \"\\ud800\" }", "The file is not JSON in line 1: a text holds half of a surrogate pair.")]
    [InlineData("{ \"name\": \"hoop\", }", "The file is not JSON from line 1, column 19 on: the comma before it is one too many.")]
    [InlineData("{ \"kerf\": none,\n\"tolerance\": 1 }", "The file is not JSON from line 1, column 11 on: \"none\" must stand in quotes.")]
    [InlineData("{ \"a\" 5 }", "The file is not JSON from line 1, column 7 on: a colon must stand before \"5\".")]
    [InlineData("{ a: 5 }", "The file is not JSON from line 1, column 3 on: \"a\" must stand in quotes.")]
    [InlineData("{ \"a\": 05 }",
        "The file is not JSON from line 1, column 8 on: \"05\" is neither a number, such as 25 or 0.25, nor a word in quotes.")]
    [InlineData("{ \"a\": \"tab\tin\" }",
        "The file is not JSON from line 1, column 8 on: a text must end on its line with a quotation mark, and a tab or a backslash "
            + "within it is written \\t or \\\\.")]
    [InlineData("{ \"a\": [1, ] }", "The file is not JSON from line 1, column 12 on: the comma before it is one too many.")]
    [InlineData("{ \"a\": }", "The file is not JSON from line 1, column 8 on: a word or a value belongs where \"}\" stands.")]
    [InlineData("{ \"a\": 1", "The file is not JSON from line 1, column 9 on: it ends before every brace and bracket is closed.")]
    [InlineData("{ \"a\": ", "The file is not JSON from line 1, column 8 on: it ends before every brace and bracket is closed.")]
    [InlineData("{ } { }",
        "The file is not JSON from line 1, column 5 on: nothing may follow the brace that closes the file, but \"{\" does.")]
    [InlineData("{ \"a\": \u001b[2J }",
        "The file is not JSON from line 1, column 8 on: a word or a value belongs where \"\\u001b\" stands.")]
    [InlineData("{\n  // a rim\n  \"name\": \"rim\" }",
        "The file is not JSON from line 2, column 3 on: a file like this holds no comments; write what you want to remember under \"note\".")]
    [InlineData("{ \"name\": \"rim\" /* ours */ }",
        "The file is not JSON from line 1, column 17 on: a file like this holds no comments; write what you want to remember under "
            + "\"note\".")]
    [InlineData("{ \"name\": \"rim\", // ours\n \"note\": \"\" }",
        "The file is not JSON from line 1, column 18 on: a file like this holds no comments; write what you want to remember under "
            + "\"note\".")]
    [InlineData("# a rim\n{ }",
        "The file is not JSON from line 1, column 1 on: a file like this holds no comments; write what you want to remember under \"note\".")]
    [InlineData("{ } // a rim",
        "The file is not JSON from line 1, column 5 on: a file like this holds no comments; write what you want to remember under \"note\".")]
    [InlineData("[]", "The file must be an object in braces, but is a list.")]
    [InlineData("{ \"jobs\": [] }", "\"jobs\" must hold at least one job.")]
    [InlineData("{ \"jobs\": {} }", "\"jobs\" must be a list in square brackets, but is an object.")]
    [InlineData("{ \"jobs\": [7] }", "A job must be an object in braces, but is the number 7 without quotes.")]
    public void A_file_of_another_kind_is_one_sentence(string text, string rule) =>
        Assert.Equal(rule, Assert.Single(RingJobFile.Read(text).Faults).Rule);

    [Fact]
    public void Text_cut_off_anywhere_is_a_fault_and_never_an_exception()
    {
        for (int length = 0; length < JobTexts.Sound.Length; length++)
        {
            Assert.NotEmpty(RingJobFile.Read(JobTexts.Sound[..length]).Faults);
        }
    }

    [Fact]
    public void Files_that_cannot_be_read_say_why()
    {
        string folder = Directory.CreateTempSubdirectory("bendmath").FullName;
        try
        {
            string missing = Path.Combine(folder, "none.json");
            Assert.Equal($"There is no file \"{missing}\".", Assert.Single(RingJobFile.ReadFile(missing).Faults).Rule);
            Assert.Equal($"\"{folder}\" is a folder, not a job file.", Assert.Single(RingJobFile.ReadFile(folder).Faults).Rule);
            Assert.Equal("The name of the file is empty.", Assert.Single(RingJobFile.ReadFile(string.Empty).Faults).Rule);
            string latin = Path.Combine(folder, "latin.json");
            File.WriteAllBytes(latin, [(byte)'{', 0xE9, (byte)'}']);
            Assert.Equal($"\"{latin}\" is not text in UTF-8; save it as UTF-8.", Assert.Single(RingJobFile.ReadFile(latin).Faults).Rule);
            string marked = Path.Combine(folder, "marked.json");
            File.WriteAllText(marked, JobTexts.Sound, new System.Text.UTF8Encoding(true));
            Assert.Empty(RingJobFile.ReadFile(marked).Faults);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
