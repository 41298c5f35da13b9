using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace BendMath.Tests.Layers;

/// <summary>Nobody outside the library can add a shape, whose invariants nobody would check: tried with the compiler.</summary>
public sealed class ClosedStockTests
{
    private const string Members = """
        {
            public override string Shape => "T bar";
            public override string Name => "T bar";
            public override System.Collections.Generic.IReadOnlyList<BendMath.OrientedSection> Orientations => [];
        }
        """;

    /// <summary>The ways in: a constructor, a copy, a record, and a shape that is there.</summary>
    [Theory]
    [InlineData("public sealed class TBar : BendMath.BarStock " + Members, "CS0122")]
    [InlineData("public sealed class TBar() : BendMath.BarStock() " + Members, "CS0122")]
    [InlineData("public sealed class TBar(BendMath.BarStock existing) : BendMath.BarStock(existing) " + Members, "CS1729")]
    [InlineData("public sealed record TBar : BendMath.BarStock " + Members, "CS8864")]
    [InlineData("public sealed record TBar(BendMath.BarStock Existing) : BendMath.BarStock(Existing) " + Members, "CS8864")]
    [InlineData("public sealed class TBar(UnitsNet.Length size) : BendMath.RoundBar(size);", "CS0509")]
    [InlineData("public static class Copies { public static BendMath.BarStock Of(BendMath.RoundBar bar) => bar with { }; }", "CS8858")]
    public void A_shape_from_outside_does_not_compile(string code, string error) => Assert.Contains(error, Errors(code));

    [Fact]
    public void Code_that_only_uses_shapes_compiles() => Assert.Empty(Errors(
        "public static class Uses { public static bool Same(BendMath.OrientedSection one, BendMath.BarStock other) => one.Stock == other "
            + "&& one.Orientation == BendMath.Orientation.FlangeOut; }"));

    private static string[] Errors(string code)
    {
        IEnumerable<string> references = ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator);
        return
        [
            .. CSharpCompilation.Create(
                    "Outside",
                    [CSharpSyntaxTree.ParseText(code, new CSharpParseOptions(LanguageVersion.CSharp14), cancellationToken: TestContext.Current.CancellationToken)],
                    references.Select(path => MetadataReference.CreateFromFile(path)),
                    new CSharpCompilationOptions(OutputKind.DynamicallyLinkedLibrary))
                .GetDiagnostics(TestContext.Current.CancellationToken)
                .Where(finding => finding.Severity == DiagnosticSeverity.Error)
                .Select(finding => finding.Id),
        ];
    }
}
