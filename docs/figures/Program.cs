using Figures;

// Draws the pictures of the documentation: dotnet run --project docs/figures [FOLDER], by default docs/images of the current folder.
string folder = args.Length > 0 ? args[0] : Path.Combine("docs", "images");
if (args.Length > 1 || !Directory.Exists(folder))
{
    Console.Error.WriteLine(
        $"One folder at most, and it must exist, but it is \"{string.Join(' ', args.DefaultIfEmpty(folder))}\". Run this in the root of "
            + $"the tree.");
    return 2;
}

foreach (Picture picture in Picture.All)
{
    string path = Path.Combine(folder, picture.File);
    File.WriteAllBytes(path, picture.Png());
    Console.WriteLine($"{path}: {picture.Title}");
}

return 0;
