using System.Globalization;
using BendMath;
using BendMath.Fuzz;
using BendMath.Fuzz.Making;
using BendMath.Fuzz.Stages;

const int Stack = 64 << 20;
TimeSpan patience = TimeSpan.FromMinutes(1);

CultureInfo.DefaultThreadCurrentCulture = CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
if (Options.Read(args) is not { } options)
{
    Console.Error.WriteLine(Options.Help);
    return 2;
}

Stage[] stages =
[
    new JobStage("wrap", 0.5, [typeof(WrapBending)]),
    new JobStage("models", 0.2, [.. Doors.KindsOf(typeof(FormingModel)).Where(model => model != typeof(WrapBending))]),
    new FaultStage(0.1),
    new FileStage(0.1),
    new DoorStage(0.1),
];
Run run = new(options, [.. stages.Where(stage => options.Only is null || stage.Name == options.Only)]);
Thread worker = new(run.All, Stack) { IsBackground = true };
worker.Start();
while (!worker.Join(TimeSpan.FromSeconds(1)))
{
    if (run.Current.For > patience)
    {
        Report.PrintStuck(run, patience, Console.Out);
        return 1;
    }
}

Report.Print(run, Console.Out);
return run.Findings.Count + run.Never.Count > 0 ? 1 : 0;
