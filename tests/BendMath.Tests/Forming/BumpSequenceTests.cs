using BendMath.Forming.Bumps;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using UnitsNet;

namespace BendMath.Tests.Forming;

/// <summary>
/// Any sequence of bumps against the straightforward way (<see cref="SlowBumps"/>): a grid of 600 steps in a half-span, good to about 1e-4.
/// </summary>
public sealed class BumpSequenceTests
{
    private const double A = BumpCase.HalfSpan, Step = A / 600;

    private static readonly BumpBending Model = BumpCase.Feeding(0.006);

    [Fact]
    public void A_pass_and_a_tighter_one_over_the_curved_bar_are_those_of_the_straightforward_way()
    {
        IReadOnlyList<Bump> pass = Bump.Pass(BumpCase.M(A), BumpCase.M(0.24), BumpCase.M(0.006), BumpCase.Stroke(BumpCase.Nominal));
        BumpedBar once = Model.Bend(BumpCase.Hardening, BumpCase.M(0.3), pass);
        SlowBumps slow = new(BumpCase.Closed, A, 0.3, 600);
        Same(once, 0, slow, pass.Select(bump => (bump.Position.Meters, BumpCase.Nominal)));

        const double Tighter = 2 * BumpCase.Nominal;
        BumpedBar twice = once.Again([.. pass.Select(bump => new Bump(bump.Position, BumpCase.Stroke(Tighter)))]);
        Same(twice, pass.Count, slow, pass.Select(bump => (bump.Position.Meters, Tighter)));
        Assert.True(twice.MeanCurvature.InverseMeters > 1.2 * once.MeanCurvature.InverseMeters);
    }

    /// <summary>Up to eight bumps of any stroke at any place, there and back again.</summary>
    [Property(MaxTest = 25)]
    public Property Any_sequence_is_that_of_the_straightforward_way() => Prop.ForAll(
        Gen.Choose(600, 1800).Zip(Gen.Choose(5, 200)).ListOf().Where(list => list.Count is > 0 and <= 8).ToArbitrary(), list =>
        {
            (double At, double Nominal)[] bumps = [.. list.Select(bump => (bump.Item1 * Step, bump.Item2 / 100.0 * BumpCase.Nominal))];
            BumpedBar bar =
                Model.Bend(BumpCase.Hardening, BumpCase.M(4 * A),
                    [.. bumps.Select(bump => new Bump(BumpCase.M(bump.At), BumpCase.Stroke(bump.Nominal)))]);
            Same(bar, 0, new(BumpCase.Closed, A, 4 * A, 600), bumps);
        });

    /// <summary>
    /// A bar that is bent enough clears both supports: with a ring tighter than the contacts a second pass of the same stroke does nothing,
    /// and one bites only beyond the ring's own curvature.
    /// </summary>
    [Fact]
    public void A_second_pass_of_the_same_stroke_changes_nothing()
    {
        IReadOnlyList<Bump> pass = Bump.Pass(BumpCase.M(A), BumpCase.M(0.54), BumpCase.M(0.006), BumpCase.Stroke(BumpCase.Nominal));
        BumpedBar once = Model.Bend(BumpCase.Hardening, BumpCase.M(0.6), pass);
        BumpedBar twice = once.Again(pass);
        for (double place = 0; place <= 0.6; place += 0.001)
        {
            Near.Relative(once.PermanentCurvatureAt(BumpCase.M(place)).InverseMeters,
                twice.PermanentCurvatureAt(BumpCase.M(place)).InverseMeters, 1e-9, "permanent curvature");
        }

        Assert.True(twice.Outcomes.Skip(pass.Count).Count(outcome => !outcome.Touches) > 60);
        Bump middle(double nominal) => new(BumpCase.M(0.3), BumpCase.Stroke(nominal));
        double ring = once.TurnBetween(BumpCase.M(0.24), BumpCase.M(0.36)).Radians / 0.12;
        Assert.False(once.Again([middle(0.99 * ring)]).Outcomes[^1].Touches);
        Assert.True(once.Again([middle(1.01 * ring)]).Outcomes[^1].Touches);
        Assert.True(ring > 1.5 * BumpCase.Nominal);
    }

    /// <summary>
    /// Every bump ends where the bar touches both supports, wherever bumps lie to each other: here the feeds at which rounding puts the
    /// foot of one bump beside that of another. A bump of an even pass that leaves less than the one before would show it.
    /// </summary>
    [Fact]
    public void No_feed_loses_a_bump()
    {
        for (double feed = A / 2; feed > A / 30; feed *= 0.98)
        {
            BumpedBar bar = BumpCase.Feeding(feed).BendWhole(BumpCase.Hardening, BumpCase.M(16 * A), BumpCase.Stroke(BumpCase.Nominal));
            Assert.All(bar.Outcomes, outcome => Assert.True(outcome.Touches, $"{outcome} at a feed of {feed:R} m"));
            double[] settled =
                [.. bar.Outcomes.Where(outcome => outcome.Bump.Position.Meters > 11 * A).Select(outcome => outcome.PeakMoment.NewtonMeters)];
            Assert.True(settled.Length > 4);
            Near.Relative(settled.Min(), settled.Max(), 1e-6, FormattableString.Invariant($"moment at a feed of {feed:R} m"));
        }
    }

    [Fact]
    public void Bumps_that_cannot_be_are_refused()
    {
        Length stroke = BumpCase.Stroke(BumpCase.Nominal);
        Length bar = BumpCase.M(0.3);
        ArgumentOutOfRangeException refused =
            Assert.Throws<ArgumentOutOfRangeException>("bumps", () => Model.Bend(BumpCase.Hardening, bar, [new(BumpCase.M(0.05), stroke)]));
        Assert.StartsWith("bumps must have bar under both supports, from 60 mm to 240 mm", refused.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>("bumps",
            () => Model.Bend(BumpCase.Hardening, bar, [new(BumpCase.M(0.1), BumpCase.M(0.07))]));
        Assert.Throws<ArgumentOutOfRangeException>("barLength", () => Model.BendWhole(BumpCase.Hardening, BumpCase.M(0.1), stroke));
        Assert.Throws<ArgumentOutOfRangeException>("feed", () => BumpCase.Feeding(1.01 * A));
        Assert.Throws<ArgumentOutOfRangeException>("feed", () => BumpCase.Feeding(0.99e-4 * A));
        Assert.Throws<ArgumentException>("bumps", () => Model.Bend(BumpCase.Hardening, bar, [null!]));
        Assert.Empty(Model.Bend(BumpCase.Hardening, bar, []).Outcomes);
    }

    private static void Same(BumpedBar bar, int done, SlowBumps slow, IEnumerable<(double At, double Nominal)> bumps)
    {
        double[] slowly = [.. bumps.Select(bump => slow.Bump(bump.At, bump.Nominal))];
        double most = Math.Max(slowly.Max(), bar.Outcomes.Max(outcome => outcome.PeakMoment.NewtonMeters));
        for (int i = 0; i < slowly.Length; i++)
        {
            Near.Absolute(slowly[i], bar.Outcomes[done + i].PeakMoment.NewtonMeters, 1e-4 * most, $"moment of bump {done + i}");
        }

        double tightest = slow.Permanent.Max();
        for (int i = 0; i < slow.Permanent.Length; i++)
        {
            double place = Math.Min(i * slow.Step, bar.BarLength.Meters);
            Near.Absolute(slow.Permanent[i], bar.PermanentCurvatureAt(BumpCase.M(place)).InverseMeters, 1e-3 * tightest,
                FormattableString.Invariant($"permanent curvature at {place:R} m"));
        }
    }
}
