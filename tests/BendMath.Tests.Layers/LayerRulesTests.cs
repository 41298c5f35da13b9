namespace BendMath.Tests.Layers;

public sealed class LayerRulesTests
{
    private const string Stock =
        "namespace BendMath; public sealed class Bar { public static int Legs => 2; public override string ToString() => \"bar\"; }";

    [Fact]
    public void No_layer_of_the_library_uses_a_later_one()
    {
        string folder = Path.Combine(Repository.Root, "src", "BendMath");
        Dictionary<string, string> files = Directory.EnumerateFiles(folder, "*.cs", SearchOption.AllDirectories)
            .Select(path => (Full: path, Local: Path.GetRelativePath(folder, path).Replace('\\', '/')))
            .Where(
                path =>
                    !path.Local.StartsWith("obj/", StringComparison.Ordinal) && !path.Local.StartsWith("bin/", StringComparison.Ordinal))
            .ToDictionary(path => path.Local, path => File.ReadAllText(path.Full), StringComparer.Ordinal);
        Assert.True(files.Count > 20, $"only {files.Count} files under {folder}");
        IReadOnlyList<string> violations = LayerRules.Violations(files);
        Assert.True(violations.Count == 0, string.Join(Environment.NewLine, violations));
    }

    [Theory]
    [InlineData("Sections", "class Upward { public Bar? Held; }")]
    [InlineData("Numerics", "class Upward { public int Two() => Bar.Legs; }")]
    [InlineData("Materials", "class Upward { public object Made() { Bar made = new(); return made; } }")]
    [InlineData("Evidence", "class Upward : System.Collections.Generic.List<Bar>;")]
    public void An_upward_edge_is_reported_by_file_and_name(string layer, string code)
    {
        IReadOnlyList<string> violations =
            LayerRules.Violations(Files(("Stock/Bar.cs", Stock), ($"{layer}/Upward.cs", $"namespace BendMath; {code}")));
        Assert.Contains(violations, violation => violation.StartsWith($"{layer}/Upward.cs uses BendMath.Bar", StringComparison.Ordinal)
            && violation.EndsWith($"of Stock, a later layer than {layer}", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("Stock")]
    [InlineData("Planning")]
    public void A_downward_edge_is_lawful(string layer) => Assert.Empty(LayerRules.Violations(Files(
        ("Stock/Bar.cs", Stock), ($"{layer}/Downward.cs", "namespace BendMath; class Downward { public Bar? Held; /* Plan */ }"))));

    [Fact]
    public void Evidence_may_be_used_by_all() => Assert.Empty(LayerRules.Violations(Files(
        ("Evidence/Note.cs", "namespace BendMath; class Note;"),
            ("Numerics/Root.cs", "namespace BendMath.Numerics; class Root { public Note? Held; }"))));

    [Theory]
    [InlineData("internal static int Legs => 2;", "BendMath.Bar.Legs")]
    [InlineData("internal static int Legs() => 2;", "BendMath.Bar.Legs()")]
    public void Planning_may_not_use_what_is_not_public(string member, string name)
    {
        string use = member.Contains("()", StringComparison.Ordinal) ? "Bar.Legs()" : "Bar.Legs";
        IReadOnlyList<string> violations = LayerRules.Violations(Files(
            ("Stock/Bar.cs", $"namespace BendMath; public sealed class Bar {{ {member} }}"),
                ("Planning/Job.cs", $"namespace BendMath; class Job {{ public int Two() => {use}; }}")));
        Assert.Contains($"Planning/Job.cs uses {name} of Stock, which is not public: Planning is built from what every user has",
            violations);
    }

    [Fact]
    public void Numerics_may_not_see_units()
    {
        IReadOnlyList<string> violations = LayerRules.Violations(Files(
            ("Numerics/Root.cs", "namespace BendMath.Numerics; class Root { public UnitsNet.Length Depth; }")));
        Assert.Contains(violations, violation => violation.Contains("Numerics works on plain doubles", StringComparison.Ordinal));
    }

    [Fact]
    public void A_file_outside_the_layers_is_reported() => Assert.Contains(
        "Helpers/Misc.cs lies in no known layer", LayerRules.Violations(Files(("Helpers/Misc.cs", "namespace BendMath; class Misc;"))));

    private static Dictionary<string, string> Files(params (string Path, string Text)[] files) =>
        files.ToDictionary(file => file.Path, file => file.Text, StringComparer.Ordinal);
}
