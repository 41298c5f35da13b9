namespace BendMath.Tests;

/// <summary>Where the sources and the documentation lie, for tests that read them.</summary>
internal static class Repository
{
    public static string Root { get; } = Find(AppContext.BaseDirectory);

    private static string Find(string start)
    {
        for (DirectoryInfo? folder = new(start); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "BendMath.sln")))
            {
                return folder.FullName;
            }
        }

        throw new DirectoryNotFoundException($"BendMath.sln lies in no folder above {start}.");
    }
}
