using System.Text.RegularExpressions;

namespace BendMath.Tests.Layers;

/// <summary>
/// A namespace is a folder, so that who knows one finds the other; what the first lines of a program need stands in the root.
/// </summary>
public sealed partial class NamespaceTests
{
    private const int MostInRoot = 70;

    private const int MostFilesInFolder = 20;

    /// <summary>Folders of the library whose public types stand in the root.</summary>
    private static readonly string[] Root =
        ["Materials", "Guards", "Sections", "Stock", "Bending", "Forming", "Forming/Dies", "Layout", "Planning"];

    [Fact]
    public void A_namespace_is_its_folder()
    {
        IEnumerable<string> wrong = Sources()
            .Where(source => source.Folder != "Polyfills")
            .Select(source => (source.File, Namespace: NamespaceLine().Match(source.Text).Groups[1].Value, source.Wanted))
            .Where(source => source.Namespace != source.Wanted)
            .Select(source => $"{source.File} has the namespace {source.Namespace} instead of {source.Wanted}");
        Assert.Empty(wrong);
    }

    [Fact]
    public void No_folder_holds_more_than_a_reader_takes_in() => Assert.Empty(Sources()
        .GroupBy(source => $"{source.Package}/{source.Folder}")
        .Where(folder => folder.Count() > MostFilesInFolder)
        .Select(folder => $"{folder.Key} holds {folder.Count()} files"));

    [Fact]
    public void The_root_holds_what_a_plan_needs() =>
        Assert.InRange(typeof(BendAnalysis).Assembly.GetExportedTypes().Count(type => type.Namespace == "BendMath"), 1, MostInRoot);

    private static IEnumerable<Source> Sources() =>
        from package in Directory.EnumerateDirectories(Path.Combine(Repository.Root, "src"))
        from path in Directory.EnumerateFiles(package, "*.cs", SearchOption.AllDirectories)
        let local = Path.GetRelativePath(package, path).Replace('\\', '/')
        where !local.StartsWith("obj/", StringComparison.Ordinal) && !local.StartsWith("bin/", StringComparison.Ordinal)
        select new Source(Path.GetFileName(package), local, File.ReadAllText(path));

    [GeneratedRegex(@"^namespace ([\w.]+);", RegexOptions.Multiline)]
    private static partial Regex NamespaceLine();

    [GeneratedRegex(@"^public [\w ]*(class|record|struct|enum|interface|delegate)\b", RegexOptions.Multiline)]
    private static partial Regex PublicType();

    private sealed record Source(string Package, string File, string Text)
    {
        public string Folder => Path.GetDirectoryName(File)!.Replace('\\', '/');

        public string Wanted =>
            Folder.Length == 0 || (Package == "BendMath" && Root.Contains(Folder) && PublicType().IsMatch(Text)) ? Package
                : $"{Package}.{Folder.Replace('/', '.')}";
    }
}
