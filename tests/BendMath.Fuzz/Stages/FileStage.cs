using System.Text.Json.Nodes;
using BendMath.Csv;
using BendMath.Fuzz.Making;
using BendMath.Fuzz.Sizes;
using BendMath.Fuzz.Walking;
using BendMath.Json;

namespace BendMath.Fuzz.Stages;

/// <summary>
/// Files as the library writes them, and files spoiled in one place: a reader answers with what it read or with faults, and what it read
/// can be planned.
/// </summary>
internal sealed class FileStage(double share) : Stage("files", share)
{
    /// <summary>A fault shortens what it quotes.</summary>
    private const int LongestFault = 2000;

    private static readonly string[] Readers = [nameof(RingJobFile), nameof(MeasuredRingFile), nameof(MeasuredRingCsv)];

    public override IEnumerable<(string Group, string Kind)> Expected =>
    [
        .. Readers.Select(reader => ("reader", reader)),
        .. FileSpoiler.Kinds.Select(kind => ("fault of a file", kind)),
    ];

    protected override Outcome Try(Tape tape, Ledger ledger)
    {
        Maker maker = new(tape, AllSizes.Usual);
        maker.Scene.Laws = [.. maker.Scene.Laws.Where(law => law != typeof(MeasuredCurve))];
        maker.Scene.Shapes = [.. maker.Scene.Shapes.Where(shape => shape != typeof(CustomBar))];
        string reader = tape.Of(Readers);
        bool isCsv = reader == nameof(MeasuredRingCsv);
        string text = (string)maker.CallWith(
            (isCsv ? typeof(MeasuredRingCsv) : typeof(MeasuredRingFile)).GetMethods()
                .First(method => method.Name == "Write" && method.ReturnType == typeof(string)),
            isCsv ? [maker.Scene.Rings, maker.Make(typeof(bool), null)] : [maker.Scene.Rings]).Value!;
        if (reader == nameof(RingJobFile))
        {
            text = JobText.Of(JsonNode.Parse(text)!.AsObject(), maker);
        }

        bool isSound = !tape.Chance(0.8);
        if (!isSound)
        {
            (string kind, text) = isCsv ? FileSpoiler.Csv(text, tape) : FileSpoiler.Json(text, tape);
            ledger.Count("fault of a file", kind);
        }

        ledger.Count("reader", reader);
        tape.Trying = () => text;
        return Outcome.Of(Check(reader, text, isSound));
    }

    private static Failure? Check(string reader, string text, bool isSound)
    {
        try
        {
            (object reading, IReadOnlyList<object> faults) = Read(reader, text);
            return new PublicWalk(Judge.MayThrow).FaultOf(reading) is { } fault ? new(fault, reader, text)
                : faults.FirstOrDefault(found => found.ToString()!.Length > LongestFault) is { } lengthy
                    ? new($"a fault of more than {LongestFault} letters: {lengthy.ToString()![..80]}…", reader, text)
                : isSound && faults.Count > 0 && reader != nameof(RingJobFile)
                    ? new($"a file the library wrote has the fault: {faults[0]}", reader, text)
                : reading is RingJobFile jobs
                    ? jobs.Jobs.Select(entry => PlanCheck.Of(entry.Job, () => text, out _)).FirstOrDefault(failure => failure is not null)
                : null;
        }
        catch (Exception thrown)
        {
            return Failure.Of(thrown, reader, text);
        }
    }

    private static (object Reading, IReadOnlyList<object> Faults) Read(string reader, string text)
    {
        switch (reader)
        {
            case nameof(RingJobFile):
                RingJobFile jobs = RingJobFile.Read(text);
                return (jobs, jobs.Faults);
            case nameof(MeasuredRingFile):
                MeasuredRingFile rings = MeasuredRingFile.Read(text);
                return (rings, rings.Faults);
            default:
                MeasuredRingCsv rows = MeasuredRingCsv.Read(text);
                return (rows, rows.Faults);
        }
    }
}
