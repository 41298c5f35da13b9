using BendMath.Fuzz.Making;
using BendMath.Fuzz.Sizes;
using BendMath.Fuzz.Walking;

namespace BendMath.Tests.Fuzzed;

/// <summary>
/// A few of the jobs BendMath.Fuzz draws: whatever the constructors take is planned, with finite numbers and clean texts throughout.
/// </summary>
public class JobTests
{
    [Fact]
    public void A_job_that_is_built_is_planned()
    {
        const ulong Seed = 20;
#if LIBRARY_NETSTANDARD
        const int Full = 200;
#else
        const int Full = 2000;
#endif
        int jobs = TestTier.Cases(plain: 200, Full);
        List<string> failures = [];
        int built = 0;
        for (ulong i = 0; i < (ulong)jobs; i++)
        {
            Maker maker = new(new Tape(Seed, i), AllSizes.Usual);
            maker.Scene.Models = [typeof(WrapBending)];
            maker.Scene.Laws = Scene.Quick;
            try
            {
                Made made = JobSizes.Make(maker);
                built++;
                if (PlanCheck.Of((RingJob)made.Value!, () => made.ToCode("job"), out _) is { } failure)
                {
                    failures.Add($"{failure.Text} at {failure.Place}{Environment.NewLine}{failure.Repro}");
                }
            }
            catch (Refused)
            {
                // What is drawn may contradict itself; how much of it is counted below.
            }
        }

        Assert.True(failures.Count == 0, $"{failures.Count} of {built} jobs fail; the first: {failures.FirstOrDefault()}");
        Assert.InRange(built, 0.9 * jobs, jobs);
    }
}
