using BendMath.Fuzz.Making;
using BendMath.Fuzz.Sizes;
using BendMath.Fuzz.Walking;
using BendMath.Learning;

namespace BendMath.Fuzz.Stages;

/// <summary>Jobs from constructors: each that is built must be planned.</summary>
internal sealed class JobStage(string name, double share, IReadOnlyList<Type> models) : Stage(name, share)
{
    public override IEnumerable<(string Group, string Kind)> Expected =>
    [
        .. models.Select(model => ("model", model.Name)),
        .. models.Contains(typeof(WrapBending)) ? Parts : [],
    ];

    private static IEnumerable<(string Group, string Kind)> Parts =>
    [
        .. Doors.KindsOf(typeof(BarStock)).Select(shape => ("shape", shape.Name)),
        .. Doors.KindsOf(typeof(BarStock))
            .SelectMany(shape => Doors.OrientationsOf(shape).Select(door => ("orientation", $"{shape.Name}.{door.Name}"))),
        .. Doors.KindsOf(typeof(StressStrainLaw)).Select(law => ("law", law.Name)),
        .. Enum.GetNames<HypothesisKind>().Append("none").Select(kind => ("correction", kind)),
    ];

    protected override Outcome Try(Tape tape, Ledger ledger)
    {
        Maker maker = new(tape, AllSizes.Usual);
        Type model = tape.Of(models);
        maker.Scene.Models = [model];
        if (model != typeof(WrapBending))
        {
            maker.Scene.Laws = Scene.Quick;
        }

        Made made = JobSizes.Make(maker);
        Count(made, maker.Scene, ledger);
        ledger.Count("held back for time", "jobs by wrapping whose law is smooth get no setup",
            model == typeof(WrapBending) && maker.Scene.HoldsBack ? 1 : 0);
        ledger.Count("held back for time", "jobs of other models get no smooth law", model == typeof(WrapBending) ? 0 : 1);
        tape.Trying = () => made.ToCode("job");
        Failure? failure = PlanCheck.Of((RingJob)made.Value!, () => made.ToCode("job"), out int cut);
        ledger.Count("not read", "objects behind too long a chain", cut);
        return Outcome.Of(failure);
    }

    public static void Count(Made made, Scene scene, Ledger ledger)
    {
        RingJob job = (RingJob)made.Value!;
        ledger.Count("shape", scene.Section.On!.Value!.GetType().Name);
        ledger.Count("orientation", Orientation(scene.Section));
        ledger.Count("law", ((BarMaterial)scene.Material.Value!).Law.GetType().Name);
        ledger.Count("model", scene.Model.Value!.GetType().Name);
        ledger.Count("correction", job.Calibration.Correction?.ToString() ?? "none");
    }

    private static string Orientation(Made section) => $"{section.On!.Value!.GetType().Name}.{section.Door!.Name}";
}
