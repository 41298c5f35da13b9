using System.Text;
using System.Text.Json;
using BendMath.Json;

namespace BendMath.Tests.Json;

public sealed class RingPlanJsonTests
{
    private static readonly RingPlan Plan = JobTexts.Plan(JobTexts.Sound);

    [Fact]
    public void The_numbers_of_the_plan_stand_in_the_document()
    {
        using JsonDocument document = JsonDocument.Parse(RingPlanJson.Write(Plan));
        JsonElement root = document.RootElement;
        PlannedRing ring = Plan.Ring!;
        Assert.Equal(Plan.Model.Name, root.GetProperty("model").GetProperty("name").GetString());
        JsonElement planned = root.GetProperty("ring");
        Assert.Equal(ring.Prediction.Die.Name, planned.GetProperty("die").GetString());
        Assert.Equal(ring.Free.InsideDiameter.Millimeters,
            planned.GetProperty("free").GetProperty("insideDiameterMillimeters").GetDouble());
        Assert.Equal(ring.Flattened.OutsideRadius.Millimeters,
            planned.GetProperty("heldFlat").GetProperty("outsideRadiusMillimeters").GetDouble());
        Assert.Equal(ring.Layout.BlankLength.Millimeters, planned.GetProperty("cut").GetProperty("blankLengthMillimeters").GetDouble());
        Assert.Equal(ring.Bar!.Pieces, planned.GetProperty("cut").GetProperty("piecesFromBar").GetInt32());
        Assert.Equal(ring.Effort.HandForce!.Value.Newtons, planned.GetProperty("effort").GetProperty("handForceNewtons").GetDouble());
        Assert.Equal(JsonValueKind.Null, planned.GetProperty("effort").GetProperty("noseForceNewtons").ValueKind);
        Assert.Equal(ring.Check.Rise.Millimeters, planned.GetProperty("check").GetProperty("riseMillimeters").GetDouble());
        Assert.Equal(ring.Range.InsideDiameter!.High.Millimeters,
            planned.GetProperty("bounds").GetProperty("highestInsideDiameterMillimeters").GetDouble());
        Assert.Equal(2, root.GetProperty("dies").GetArrayLength());
        Assert.Equal(1, root.GetProperty("dies").EnumerateArray().Count(die => die.GetProperty("isBest").GetBoolean()));
        Assert.Equal(3, root.GetProperty("corrections")[0].GetProperty("explanations").GetArrayLength());
        Assert.Equal(
            Plan.Advisories.Select(advisory => advisory.Code),
            root.GetProperty("advisories").EnumerateArray().Select(advisory => advisory.GetProperty("code").GetString()));
        Assert.Equal(
            SafetyNotices.Bend.Count,
            root.GetProperty("cautions").GetProperty("bend").GetArrayLength());
    }

    [Fact]
    public void Stream_writer_and_text_say_the_same()
    {
        string text = RingPlanJson.Write(Plan);
        using MemoryStream stream = new();
        RingPlanJson.Write(Plan, stream);
        Assert.Equal(text, Encoding.UTF8.GetString(stream.ToArray()));
        using StringWriter writer = new();
        RingPlanJson.Write(Plan, writer);
        Assert.Equal(text, writer.ToString());
        using JsonDocument all = JsonDocument.Parse(RingPlanJson.WriteAll([Plan, Plan]));
        Assert.Equal(2, all.RootElement.GetProperty("plans").GetArrayLength());
        Assert.False(all.RootElement.TryGetProperty("cutList", out _));
    }

    [Fact]
    public void One_cut_list_stands_beside_the_plans()
    {
        PlanCuts cuts = PlanCuts.For([Plan], UnitsNet.Length.Zero, TestContext.Current.CancellationToken);
        using JsonDocument all = JsonDocument.Parse(RingPlanJson.WriteAll([Plan], cuts));
        JsonElement group = Assert.Single(all.RootElement.GetProperty("cutList").GetProperty("groups").EnumerateArray());
        Assert.Equal(cuts.List!.Groups[0].BarCount, group.GetProperty("bars").GetInt32());
        Assert.Equal(Plan.Ring!.CutLength.Millimeters,
            group.GetProperty("patterns")[0].GetProperty("pieces")[0].GetProperty("lengthMillimeters").GetDouble());
        Assert.True(group.GetProperty("isProven").GetBoolean());
    }

    [Fact]
    public void A_plan_without_a_ring_writes_null()
    {
        string file = JobTexts.With("\"inside of the bar\"", "{ \"offset\": \"240 mm\" }")
            .Replace("{ \"offset\": \"3 mm\" }", "{ \"offset\": \"280 mm\" }", StringComparison.Ordinal)
            .Replace("{ \"die\": \"A\", \"inside diameter\": \"490 mm\", \"state\": \"free\" }", string.Empty, StringComparison.Ordinal)
            .Replace("\"correction\": \"curvature ratio\"", "\"correction\": \"none\"", StringComparison.Ordinal);
        using JsonDocument document = JsonDocument.Parse(RingPlanJson.Write(JobTexts.Plan(file)));
        Assert.Equal(JsonValueKind.Null, document.RootElement.GetProperty("ring").ValueKind);
        Assert.All(document.RootElement.GetProperty("dies").EnumerateArray(),
            die => Assert.Equal("the stamp leaves no inside radius for this bar", die.GetProperty("refusal").GetString()));
    }
}
