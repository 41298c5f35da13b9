using BendMath.Evidence;
using BendMath.Json;
using BendMath.Planning.Worksheets;
using RingPlanner;
using UnitsNet;

namespace BendMath.Tests.Samples;

/// <summary>
/// Every equation a plan prints gives the number printed beside it when the numbers printed with it are put in, by a calculator that knows
/// nothing of the library.
/// </summary>
public sealed class PlanWorkingsTests
{
    public static TheoryData<int, bool> Plans =>
        [.. from job in Enumerable.Range(0, 3) from inches in new[] { false, true } select (job, inches)];

    [Theory]
    [MemberData(nameof(Plans))]
    public void Every_equation_gives_its_number(int job, bool inches)
    {
        IReadOnlyList<WorkedStep> workings = Workings(job, inches);
        Assert.True(workings.Count >= 20, $"only {workings.Count} workings");
        foreach (WorkedStep working in workings.Where(working => !working.IsSearched))
        {
            double value =
                Arithmetic.Evaluate(working.Equation, symbol => Assert.Single(working.Terms, term => term.Symbol == symbol).Value);
            Assert.True(Math.Abs(value - working.Value) <= 1e-9 * Math.Max(Math.Abs(working.Value), Scale(working)),
                $"{working}: the equation gives {value:R}, not {working.Value:R}");
        }
    }

    /// <summary>
    /// Six digits are printed; a sum of them is good to a few units of its sixth digit, and less where large numbers cancel.
    /// </summary>
    [Theory]
    [MemberData(nameof(Plans))]
    public void Every_sum_can_be_done_again_from_the_digits_on_paper(int job, bool inches)
    {
        foreach (WorkedStep working in Workings(job, inches).Where(working => !working.IsSearched))
        {
            double value = Arithmetic.Evaluate(working.Substituted, symbol => throw new FormatException($"{symbol} is left in {working}"));
            double tolerance =
                working.Symbol is "n" ? 0
                    : working.Symbol is "L_c" ? 1e-5 * working.Value : 2e-5 * Math.Max(Math.Abs(working.Value), Scale(working));
            Assert.True(Math.Abs(value - working.Value) <= tolerance, $"{working}: on paper {value:R}");
        }
    }

    [Fact]
    public void The_result_of_one_sum_is_what_goes_into_the_next()
    {
        IReadOnlyList<WorkedStep> workings = Workings(0, false);
        Dictionary<string, double> known = [];
        foreach (WorkedStep working in workings)
        {
            foreach (WorkedTerm term in working.Terms.Where(term => known.ContainsKey(term.Symbol)))
            {
                Near.Relative(known[term.Symbol], term.Value, 1e-12, $"{term.Symbol} in {working.Name}");
            }

            known.TryAdd(working.Symbol, working.Value);
        }

        Assert.Equal(workings.Count, workings.Select(working => working.Symbol).Distinct().Count());
        Assert.All(workings, working => Assert.Equal(working.Terms.Count, working.Terms.Select(term => term.Symbol).Distinct().Count()));
    }

    /// <summary>
    /// What the sheet prints besides the ring: both rings, marks, handbook rule, work, what springs back, the lever at the limit, where the
    /// radius comes from.
    /// </summary>
    [Theory]
    [InlineData(0, "R κ_p D_p m_2 L_h w W u l_l f_1")]
    [InlineData(1, "R_3 R m_2 w W u f_1")]
    [InlineData(2, "R κ_p D_p m_2 L_h w W u f_1")]
    public void What_is_printed_has_a_working(int job, string symbols) =>
        Assert.Empty(symbols.Split(' ').Except(Workings(job, false).Select(working => working.Symbol)));

    /// <summary>Joules and joules per meter in both systems: N·mm and inch-pounds, each from the definition of its unit.</summary>
    [Theory]
    [InlineData(false, 1e3, 1)]
    [InlineData(true, 1 / (0.45359237 * 9.80665 * 0.0254), 1 / (0.45359237 * 9.80665))]
    public void Work_is_in_the_units_of_the_sheet(bool inches, double ofEnergy, double ofEnergyPerLength)
    {
        RingJob planned = RingJobFile.Read(Planner.Demo()).Jobs[0].Job;
        PlannedRing ring = RingPlan.For(planned).Ring!;
        Dictionary<string, double> values =
            PlanWorksheet.Of(planned, ring, inches).ToDictionary(working => working.Symbol, working => working.Value);
        Near.Relative(ring.Work.Joules * ofEnergy, values["W"], 1e-12);
        Near.Relative(ring.Effort.StoredEnergyPerLength.Newtons * ofEnergyPerLength, values["u"], 1e-12);
        Near.Relative(ring.Flattened.InsideDiameter.Meters / (inches ? 0.0254 : 0.001), values["D_p"], 1e-12);
    }

    [Fact]
    public void A_working_prints_as_a_student_would_write_it()
    {
        WorkedStep working =
            new("loaded curvature", "κ", "1/(R + y_n)", [new("R", "loaded radius", 240, "mm"), new("y_n", "neutral axis", -8.5, "mm")],
                1 / 231.5, "1/mm", Sources.Mechanics);
        Assert.Equal("κ = 1/(R + y_n) = 1/(240 + (-8.5)) = 0.00431965 1/mm", working.ToString());
        Assert.Equal("R = 240 mm", working.Terms[0].ToString());
        WorkedStep searched = new("neutral axis", "y_n", "∫σ dA = 0", [], 8.5, "mm", Sources.Mechanics, isSearched: true);
        Assert.Equal("y_n = 8.5 mm, so that ∫σ dA = 0", searched.ToString());
        Assert.Contains("symbol must be a letter", Assert.Throws<ArgumentException>(() => new WorkedTerm("2x", "twice", 1, "mm")).Message,
            StringComparison.Ordinal);
    }

    /// <summary>A pinched arc, a measured ring's correction and a bar of another shape: symbols stay defined.</summary>
    [Fact]
    public void A_corrected_plan_has_workings_too()
    {
        RingJob job = RingJobFile.Read(Planner.Demo()).Jobs[2].Job;
        RingPlan plan = RingPlan.For(job);
        Assert.NotEmpty(PlanWorksheet.Of(job, plan.Ring!));
        IReadOnlyList<WorkedStep> alone = PlanWorksheet.Of(plan.Ring!.Prediction.Formed!.Loaded);
        Assert.Contains(alone, working => working.Symbol == "D_i");
    }

    private static double Scale(WorkedStep working) => working.Symbol switch
    {
        // The radius is a small difference of numbers near one over a curvature; what is left of a bar one of two long lengths.
        "r" => working.Terms.Max(term => term.Value),
        "f" or "ΔD" => working.Terms.Max(term => term.Value),
        "f_1" => working.Terms.Single(term => term.Symbol == "f").Value,
        "Δκ" or "Δκ_r" or "κ_f" or "β" => Math.Abs(working.Value) * 10,
        _ => 0,
    };

    private static IReadOnlyList<WorkedStep> Workings(int job, bool inches)
    {
        RingJob planned = RingJobFile.Read(Planner.Demo()).Jobs[job].Job;
        return PlanWorksheet.Of(RingPlan.For(planned), inches);
    }
}
