using BendMath.Benchmarks.Plans;
using BenchmarkDotNet.Running;

if (args is ["plans", ..])
{
    return PlanTable.Print(args);
}

BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
return 0;
