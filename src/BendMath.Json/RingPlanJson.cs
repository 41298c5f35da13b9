using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Unicode;
using BendMath.Json.Writing;

namespace BendMath.Json;

/// <summary>
/// Writes ring plans as JSON for programs: every number of the plan, its unit in its name, as in <c>insideDiameterMillimeters</c>; what a
/// plan does not hold is null. The model and its assumption, the advisories with their sources and the cautions by step stand in every
/// plan.
/// </summary>
public static class RingPlanJson
{
    internal static readonly JsonWriterOptions Options =
        new() { Indented = true, Encoder = JavaScriptEncoder.Create(UnicodeRanges.All), NewLine = "\n" };

    /// <summary>One plan as text.</summary>
    /// <param name="plan">The plan.</param>
    /// <exception cref="ArgumentNullException">The plan is null.</exception>
    public static string Write(RingPlan plan)
    {
        using MemoryStream stream = new();
        Write(plan, stream);
        return Text(stream);
    }

    /// <summary>One plan to a stream, in UTF-8. The stream stays open.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="stream">The stream.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static void Write(RingPlan plan, Stream stream)
    {
        _ = plan ?? throw new ArgumentNullException(nameof(plan));
        _ = stream ?? throw new ArgumentNullException(nameof(stream));
        using Utf8JsonWriter json = new(stream, Options);
        new PlanWriter(json).Write(plan);
    }

    /// <summary>One plan to a text writer, which stays open.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="writer">The writer.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static void Write(RingPlan plan, TextWriter writer)
    {
        _ = plan ?? throw new ArgumentNullException(nameof(plan));
        _ = writer ?? throw new ArgumentNullException(nameof(writer));
        writer.Write(Write(plan));
    }

    /// <summary>Several plans as one document with the list <c>plans</c> and, where one is given, their <c>cutList</c>.</summary>
    /// <param name="plans">The plans; none is null.</param>
    /// <param name="cuts">One cut list for them; null for none.</param>
    /// <exception cref="ArgumentNullException">The plans or one of them are null.</exception>
    public static string WriteAll(IReadOnlyList<RingPlan> plans, PlanCuts? cuts = null)
    {
        _ = plans ?? throw new ArgumentNullException(nameof(plans));
        using MemoryStream stream = new();
        using (Utf8JsonWriter json = new(stream, Options))
        {
            PlanWriter writer = new(json);
            json.WriteStartObject();
            json.WriteStartArray("plans");
            foreach (RingPlan plan in plans)
            {
                writer.Write(plan ?? throw new ArgumentNullException(nameof(plans)));
            }

            json.WriteEndArray();
            if (cuts is not null)
            {
                new CutWriter(json).Write(cuts);
            }

            json.WriteEndObject();
        }

        return Text(stream);
    }

    private static string Text(MemoryStream stream) => Encoding.UTF8.GetString(stream.ToArray());
}
