using System.Globalization;
using BendMath;
using BendMath.Fuzz;
using BendMath.Fuzz.Making;
using BendMath.Fuzz.Stages;

CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
if (Options.Read(args) is not { } options)
{
    Console.Error.WriteLine(Options.Help);
    return 2;
}

Stage[] stages =
[
    new JobStage("wrap", 0.5, [typeof(WrapBending)]),
    new JobStage("models", 0.2, [.. Doors.KindsOf(typeof(FormingModel)).Where(model => model != typeof(WrapBending))]),
];
if (options.Only is not null)
{
    stages = [.. stages.Where(stage => stage.Name == options.Only)];
}

Run run = new(options, stages);
if (options.Again is { } number)
{
    run.One(stages[0], number);
}
else
{
    run.All();
}

Report.Print(run, Console.Out);
return run.Findings.Count > 0 ? 1 : 0;
