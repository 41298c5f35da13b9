using BendMath.Distortion;
using BendMath.Forming.Effort;
using BendMath.Forming.Variation;
using BendMath.Json.Parts;
using BendMath.Learning;
using BendMath.Lengths;
using UnitsNet;

namespace BendMath.Json.Reading;

/// <summary>Reads a whole file.</summary>
internal static class JobFileReader
{
    private const string EndsExample = "\"ends\": \"none\" or \"ends\": { \"start\": \"60 mm\", \"end\": \"60 mm\", \"trim\": \"4 mm\" }";

    public static IReadOnlyList<RingJobEntry> Read(JsonPart root, FaultList faults, out Length? leastUsefulOffcut)
    {
        leastUsefulOffcut = null;
        if (JobObject.Of(root, string.Empty, "The file", faults) is not { } file)
        {
            return [];
        }

        if (!file.Has("jobs"))
        {
            return ReadJob(file, null, faults) is { } only ? [only] : [];
        }

        JsonPart? list = file.Find("jobs");
        if (list is { Kind: not JsonKind.List } && file.HasOtherThan("jobs", "note", "least useful offcut"))
        {
            file.Fault("jobs", $"\"jobs\" must be left out beside the words of a single job, but is {list.Described}.");
            ReadJob(file, null, faults);
            return [];
        }

        string? note = file.OptionalText("note", "\"a note\"");
        leastUsefulOffcut = file.OptionalLength("least useful offcut", "300 mm", zero: true);
        List<RingJobEntry> entries = [];
        foreach ((JsonPart part, string place) in file.Items(list, "jobs"))
        {
            if (JobObject.Of(part, place, "A job", faults) is { } job && ReadJob(job, note, faults) is { } entry)
            {
                entries.Add(entry);
            }
        }

        if (list is { Kind: JsonKind.List, Items.Count: 0 })
        {
            file.Fault("jobs", "\"jobs\" must hold at least one job.");
        }

        file.Close();
        return entries;
    }

    private static RingJobEntry? ReadJob(JobObject job, string? fileNote, FaultList faults)
    {
        string? name = job.Text("name", "\"name\": \"planter rim\"");
        string? note = job.OptionalText("note", "\"a note\"") ?? fileNote;
        OrientedSection? section = StockReader.Read(job);
        BarMaterial? material = MaterialReader.Read(job);
        bool inches = false;
        BendRadius? wanted = null;
        if (job.Object("wanted", SizeReader.Example) is { } size)
        {
            wanted = SizeReader.Read(size, out inches);
            size.Close();
        }

        ArcExtent? arc = Arc(job);
        FormingModel? model = BenderReader.Forming(job);
        DieShelf dies = BenderReader.Dies(job, faults);
        EndAllowance? ends = Ends(job);
        JointPreparation? joint = Closing(job);
        Length? error = job.OptionalLength("measuring error", "1 mm");
        Length kerf = job.OptionalLength("kerf", "2 mm", zero: true) ?? Length.Zero;
        Length? bar = job.OptionalLength("bar length", "6 m");
        Length? lever = job.OptionalLength("lever length", "800 mm");
        double? advantage = job.OptionalMultiple("mechanical advantage", "12 times");
        Force? limit = job.OptionalForce("pull limit", "200 N");
        Length? tolerance = job.OptionalLength("tolerance", "5 mm");
        int? quantity = job.OptionalCount("quantity");
        InputVariation? scatter = ShopReader.Scatter(job, section, material);
        DistortionSettings? distortion = ShopReader.Distortion(job);
        BendAnalysis? analysis = section is not null && material is not null ? BendAnalysis.Of(section, material) : null;
        IReadOnlyList<MeasuredRing> rings = BenderReader.Measured(job, dies, analysis, faults);
        HypothesisKind? correction = BenderReader.Correction(job, model?.Setup is not null || job.Has("bender"));
        DieRack? rack = dies.Sound.Count == 0 ? null : job.Build(() => new DieRack(dies.Sound));
        job.Close();
        if (name is null || section is null || material is null || wanted is null || rack is null || model is null || arc is null
            || ends is null)
        {
            return null;
        }

        LengthStyle rule = inches ? LengthStyle.FractionalInches(16, LengthRounding.Up) : LengthStyle.Millimeters(0, LengthRounding.Up);

        WantedRing? ring = job.Build(() => new WantedRing(wanted, arc, quantity ?? 1, tolerance, joint));
        HandDrive? drive =
            job.Build(() => new HandDrive(lever, advantage, limit), ("leverLength", "lever length"), ("advantage", "mechanical advantage"),
                ("pullLimit", "pull limit"));
        CuttingRules? cutting = job.Build(() => new CuttingRules(ends, kerf, bar, rule), ("barLength", "bar length"));

        // A ring or a bender that could not be read is a fault already; without it the correction would be refused a second time.
        bool isLost = rings.Count == 0 || (correction == HypothesisKind.Stroke && model.Setup is null);
        Calibration? calibration =
            job.Build(() => new Calibration(rings, isLost ? null : correction, error), ("measuringError", "measuring error"));
        if (analysis is null || ring is null || drive is null || cutting is null || calibration is null)
        {
            return null;
        }

        RingJob? made =
            job.Build(() => new RingJob(name, analysis, ring, new Bender(rack, model, drive), cutting, scatter, calibration, distortion),
                ("calibration", "correction"), ("cutting", "kerf"));
        return made is null ? null : new(made, note, inches);
    }

    private static ArcExtent? Arc(JobObject job)
    {
        JsonPart? part = job.Find("arc");
        if (part is null or { Kind: JsonKind.Text, Text: "full ring" })
        {
            return ArcExtent.FullRing;
        }

        return job.Angle(part, "arc", "full ring\" or \"90 deg") is { } radians
            ? job.Build(() => ArcExtent.Of(Angle.FromRadians(radians)), ("turn", "arc"))
            : null;
    }

    private static EndAllowance? Ends(JobObject job)
    {
        JsonPart? part = job.Require("ends", EndsExample);
        if (part is null or { Kind: JsonKind.Text, Text: "none" })
        {
            return part is null ? null : EndAllowance.None;
        }

        if (part.Kind != JsonKind.Object)
        {
            job.Fault("ends", $"\"ends\" must be \"none\" or an object with \"start\", \"end\" and \"trim\", but is {part.Described}.");
            return null;
        }

        JobObject ends = job.OptionalObject("ends")!;
        bool fromModel = ends.Has("from") && ends.Word("from", "the model") is not null;
        Length? start = fromModel ? Length.Zero : ends.Length("start", "60 mm", zero: true);
        Length? end = fromModel ? Length.Zero : ends.Length("end", "60 mm", zero: true);
        Length? trim = ends.Length("trim", "4 mm", zero: true);
        ends.Close();
        return start is not { } s || end is not { } e || trim is not { } t ? null
            : ends.Build(() => fromModel ? EndAllowance.FromModel(t) : new EndAllowance(s, e, t));
    }

    private static JointPreparation? Closing(JobObject job)
    {
        if (job.OptionalObject("closing") is not { } closing)
        {
            return null;
        }

        string? cut = closing.OptionalWord("cut", "together", "one by one");
        Length? opening = closing.OptionalLength("root opening", "2 mm", zero: true);
        closing.Close();
        return cut is null && opening is null ? null
            : closing.Build(
                () =>
                    cut == "together" ? JointPreparation.CutTogether(opening ?? Length.Zero)
                        : JointPreparation.CutOneByOne(opening ?? Length.Zero),
                ("rootOpening", "root opening"));
    }
}
