using BenchmarkDotNet.Running;
using BendMath.Benchmarks.Plans;

if (args is ["plans", ..])
{
    return PlanTable.Print(args);
}

BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
return 0;
