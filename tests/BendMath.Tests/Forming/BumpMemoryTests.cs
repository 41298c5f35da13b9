using BendMath.Forming.Bumps;

namespace BendMath.Tests.Forming;

/// <summary>Bending allocates nothing but what it hands out, and what is kept grows with the places bumped, not with the bumps.</summary>
public sealed class BumpMemoryTests
{
    private const double A = BumpCase.HalfSpan;

    [Fact]
    public void The_inner_loop_allocates_nothing()
    {
        BumpBending model = BumpCase.Feeding(0.005);
        BumpEquilibrium equilibrium = new(BumpCase.Hardening, model.Setup);
        Bump[] bumps = [.. Bump.Pass(BumpCase.M(A), BumpCase.M(0.94), BumpCase.M(0.001), BumpCase.Stroke(BumpCase.Nominal))];
        Assert.Equal(881, bumps.Length);
        Assert.Equal(0, Allocated());
        Assert.Equal(0, Allocated());

        long Allocated()
        {
            MomentEnvelope bar = new(equilibrium.Curve, 1);
            BumpMomentDiagram[] tents = new BumpMomentDiagram[bumps.Length];
            double[] permanent = new double[bumps.Length];
            bar.Reserve(bumps.Length);
            BumpedBar runner = BumpedBar.Straight(model, BumpCase.Hardening, equilibrium, 1);
            long before = GC.GetAllocatedBytesForCurrentThread();
            runner.Run(bar, bumps, tents, permanent);
            long after = GC.GetAllocatedBytesForCurrentThread();
            Assert.All(tents, tent => Assert.True(tent.Peak > 0));
            return after - before;
        }
    }

    /// <summary>Results and corners take the same for every bump, however many there are.</summary>
    [Fact]
    public void A_bump_takes_the_same_memory_among_few_and_among_many()
    {
        _ = Allocated(100);
        double few = Allocated(200) / 200.0;
        double many = Allocated(2000) / 2000.0;
        Assert.InRange(many, 0.8 * few, 1.01 * few);
        Assert.InRange(many, 0, 600);

        static long Allocated(int count)
        {
            IReadOnlyList<Bump> bumps =
                Bump.Pass(BumpCase.M(A), BumpCase.M(A + 0.9), BumpCase.M(0.9 / (count - 0.5)), BumpCase.Stroke(BumpCase.Nominal));
            Assert.Equal(count, bumps.Count);
            BumpBending model = BumpCase.Feeding(0.01);
            long before = GC.GetAllocatedBytesForCurrentThread();
            BumpedBar bar = model.Bend(BumpCase.Hardening, BumpCase.M(1.1), bumps);
            long after = GC.GetAllocatedBytesForCurrentThread();
            Assert.Equal(count, bar.Outcomes.Count);
            return after - before;
        }
    }

    /// <summary>Twenty passes, each tighter, over the same hundred places.</summary>
    [Fact]
    public void What_is_kept_of_the_bar_does_not_grow_with_the_passes()
    {
        BumpBending model = BumpCase.Feeding(0.005);
        BumpedBar bar = model.BendWhole(BumpCase.Hardening, BumpCase.M(0.62), BumpCase.Stroke(0.5 * BumpCase.Nominal));
        int places = bar.Outcomes.Count;
        for (int pass = 1; pass < 20; pass++)
        {
            double nominal = BumpCase.Nominal * (0.5 + (0.07 * pass));
            bar = bar.Again([.. bar.Outcomes.Take(places).Select(outcome => new Bump(outcome.Bump.Position, BumpCase.Stroke(nominal)))]);
            Assert.InRange(bar.Corners, places, (2 * places) + 20);
        }

        Assert.Equal(20 * places, bar.Outcomes.Count);
    }
}
