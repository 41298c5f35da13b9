using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using BendMath.Fuzz.Making;

namespace BendMath.Fuzz.Sizes;

/// <summary>
/// The text of a job file about the rings of a ring file: the bar, the metal and the dies of the first ring, and the words of a job.
/// </summary>
internal static class JobText
{
    private static readonly JsonSerializerOptions Indented =
        new() { WriteIndented = true, Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private static readonly string[] Sizes =
        ["inside diameter", "centroid diameter", "outside diameter", "inside radius", "centroid radius", "outside radius"];

    public static string Of(JsonObject rings, Maker maker)
    {
        Tape tape = maker.Tape;
        double inside = maker.Scene.InsideRadius;
        JsonObject first = rings["rings"]![0]!.AsObject();
        string size = tape.Of(Sizes);
        JsonObject job = new()
        {
            ["name"] = tape.Of(["planter rim", "=1+1", "<b>", "Reif, „groß“"]),
            ["stock"] = first["stock"]!.DeepClone(),
            ["material"] = first["material"]!.DeepClone(),
            ["wanted"] =
                new JsonObject
                {
                    [size] =
                    Length(tape, (size.EndsWith("diameter", StringComparison.Ordinal) ? 2 : 1) * (inside + 1.01 * maker.Scene.Height))
                },
            ["forming"] = Forming(tape, maker.Scene),
            ["dies"] = rings["dies"]!.DeepClone(),
            ["ends"] = tape.Index(3) switch
            {
                0 => "none",
                1 => new JsonObject { ["start"] = Length(tape, 0.1 * inside), ["end"] = Length(tape, 0.1 * inside), ["trim"] = "0 mm" },
                _ => new JsonObject { ["from"] = "the model", ["trim"] = Length(tape, 0.01 * inside) },
            },
        };
        if (first["orientation"] is { } lies)
        {
            job["orientation"] = lies.DeepClone();
        }

        foreach ((string word, Func<JsonNode> value) in Words(tape, inside))
        {
            if (tape.Chance(0.3))
            {
                job[word] = value();
            }
        }

        if (tape.Chance(0.5))
        {
            job["measured rings"] = rings["rings"]!.DeepClone();
            job["correction"] = tape.Of(["none", "stamped face", "curvature ratio"]);
        }

        return job.ToJsonString(Indented);
    }

    private static JsonObject Forming(Tape tape, Scene scene) => !scene.HoldsBack && tape.Chance(0.3)
        ? new()
        {
            ["model"] = tape.Of(["three-point", "pair"]) is var model ? model : null,
            ["half-span"] = model == "pair" ? null : Length(tape, 3 * scene.Height),
            ["nose radius"] = model == "pair" ? null : "0 mm"
        }
        : new() { ["model"] = "wrap" };

    private static IEnumerable<(string Word, Func<JsonNode> Value)> Words(Tape tape, double inside) =>
    [
        ("note", () => "invented"),
        ("arc", () => tape.Of(["full ring", "90 deg", "0.5 rad", "359°"])),
        ("kerf", () => Length(tape, 0.01 * inside)),
        ("bar length", () => Length(tape, 20 * inside)),
        ("lever length", () => "900 mm"),
        ("mechanical advantage", () => "12 times"),
        ("pull limit", () => "200 N"),
        ("tolerance", () => Length(tape, 0.02 * inside)),
        ("measuring error", () => "1 mm"),
        ("quantity", () => 1 + tape.Index(20)),
        ("closing",
            () => new JsonObject { ["cut"] = tape.Of(["together", "one by one"]), ["root opening"] = Length(tape, 0.001 * inside) }),
        ("scatter", () => new JsonObject { ["curvature"] = "1 %" }),
        ("distortion",
            () =>
                new JsonObject { ["axial leg"] = "backed", ["distance between supports"] = Length(tape, inside),
                    ["used"] = tape.Of(["free", "held flat"]) }),
    ];

    private static string Length(Tape tape, double meters) => tape.Index(3) switch
    {
        0 => Text(meters * 1e3) + " mm",
        1 => Text(meters) + " m",
        _ => Text(meters / 0.0254) + " in",
    };

    private static string Text(double number) => Math.Clamp(number, 1e-3, 1e9).ToString("0.######", CultureInfo.InvariantCulture);
}
