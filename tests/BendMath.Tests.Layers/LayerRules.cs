using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace BendMath.Tests.Layers;

/// <summary>
/// The folders of the library are its layers: code in one may use only those before it in the list. References are taken from the
/// compiler's own understanding of the sources, not from names; doc comments do not count.
/// </summary>
internal static class LayerRules
{
    public static readonly string[] Order =
    [
        "Numerics", "Guards", "Evidence", "Lengths", "Materials", "Sections", "Stock", "Measurement", "Bending", "Distortion", "Forming",
        "Learning", "Cutting", "Layout", "Planning",
    ];

    /// <summary>
    /// Usable from everywhere: stand-ins for what an older runtime lacks, the checks at the door, and what results rest on.
    /// </summary>
    private static readonly string[] Free = ["Polyfills", "Guards", "Evidence"];

    /// <summary>The layer that uses nothing a user of the library could not use: the whole job shows that the parts suffice.</summary>
    private const string PublicOnly = "Planning";

    /// <summary>Checks an argument by the caller's name for it; what it returns is public as BendRadius.InsideRadiusOf.</summary>
    private const string ArgumentCheck = "BendMath.BendRadius.InsideOf";

    private static readonly string[] Implicit =
        ["System", "System.Collections.Generic", "System.IO", "System.Linq", "System.Threading", "System.Threading.Tasks"];

    /// <param name="files">Path below the library's folder, with slashes, and text of each file.</param>
    public static IReadOnlyList<string> Violations(IReadOnlyDictionary<string, string> files)
    {
        CSharpCompilation compilation = Compile(files);
        List<string> errors =
            [.. compilation.GetDiagnostics().Where(finding => finding.Severity == DiagnosticSeverity.Error).Select(finding => finding.ToString())];
        if (errors.Count > 0)
        {
            return errors;
        }

        SortedSet<string> violations = new(StringComparer.Ordinal);
        foreach (SyntaxTree tree in compilation.SyntaxTrees.Where(tree => tree.FilePath.Length > 0))
        {
            string layer = Folder(tree.FilePath);
            if (!Order.Contains(layer) && !Free.Contains(layer))
            {
                violations.Add($"{tree.FilePath} lies in no known layer");
                continue;
            }

            SemanticModel model = compilation.GetSemanticModel(tree);
            foreach (ISymbol symbol in tree.GetRoot().DescendantNodes().Where(IsReference).SelectMany(node => Referenced(model, node)))
            {
                violations.UnionWith(Check(tree.FilePath, layer, symbol));
            }
        }

        return [.. violations];
    }

    private static IEnumerable<string> Check(string file, string layer, ISymbol symbol)
    {
        if (layer == "Numerics" && symbol.ContainingAssembly?.Name == "UnitsNet")
        {
            yield return $"{file} uses {symbol.ToDisplayString()}: Numerics works on plain doubles";
        }

        string[] homes =
            [.. symbol.DeclaringSyntaxReferences.Select(reference => Folder(reference.SyntaxTree.FilePath)).Where(home => home.Length > 0)];
        if (layer == PublicOnly && homes.Length > 0 && !homes.Any(home => home == layer || Free.Contains(home)) && !IsPublic(symbol)
            && !symbol.ToDisplayString().StartsWith(ArgumentCheck, StringComparison.Ordinal))
        {
            yield return $"{file} uses {symbol.ToDisplayString()} of {homes[0]}, which is not public: {layer} is built from what every "
                + $"user has";
        }

        if (homes.Length > 0 && !homes.Any(home => Free.Contains(home) || Array.IndexOf(Order, home) <= Array.IndexOf(Order, layer)))
        {
            yield return $"{file} uses {symbol.ToDisplayString()} of {homes[0]}, a later layer than {layer}";
        }
    }

    private static bool IsPublic(ISymbol symbol)
    {
        for (ISymbol? part = symbol; part is not null and not INamespaceSymbol; part = part.ContainingSymbol)
        {
            if (part is IMethodSymbol or IPropertySymbol or IFieldSymbol or INamedTypeSymbol
                && part.DeclaredAccessibility != Accessibility.Public)
            {
                return false;
            }
        }

        return true;
    }

    private static bool IsReference(SyntaxNode node) =>
        node is SimpleNameSyntax or BaseObjectCreationExpressionSyntax or ConstructorInitializerSyntax;

    private static IEnumerable<ISymbol> Referenced(SemanticModel model, SyntaxNode node)
    {
        ISymbol? symbol = model.GetSymbolInfo(node).Symbol;
        if (symbol is null or INamespaceSymbol)
        {
            return [];
        }

        symbol = (symbol as IMethodSymbol)?.ReducedFrom ?? symbol;
        symbol = symbol.OriginalDefinition;
        ITypeSymbol? result = model.GetTypeInfo(node).Type?.OriginalDefinition;
        IEnumerable<ISymbol?> all = symbol.IsImplicitlyDeclared ? [symbol.ContainingType?.OriginalDefinition, result] : [symbol, result];
        return all.OfType<ISymbol>();
    }

    private static string Folder(string path) => path.Split('/') is [var folder, _, ..] ? folder : string.Empty;

    private static CSharpCompilation Compile(IReadOnlyDictionary<string, string> files)
    {
        CSharpParseOptions options =
            new(LanguageVersion.CSharp14, DocumentationMode.None,
                preprocessorSymbols: ["NET", "NET8_0_OR_GREATER", "NET10_0", "NET10_0_OR_GREATER"]);
        string[] texts = files.ContainsKey("Guards/InvariantTexts.cs") ? ["static BendMath.Guards.InvariantTexts"] : [];
        string usings = string.Concat(Implicit.Concat(texts).Select(space => $"global using {space};"));
        IEnumerable<string> references = ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!)
            .Split(Path.PathSeparator)
            .Where(path => !Path.GetFileName(path).StartsWith("BendMath", StringComparison.Ordinal));
        return CSharpCompilation.Create(
            "Layers",
            files.Select(file => CSharpSyntaxTree.ParseText(file.Value, options, file.Key))
                .Prepend(CSharpSyntaxTree.ParseText(usings, options)),
            references.Select(path => MetadataReference.CreateFromFile(path)),
            new CSharpCompilationOptions(OutputKind.DynamicallyLinkedLibrary, allowUnsafe: true,
                nullableContextOptions: NullableContextOptions.Enable));
    }
}
