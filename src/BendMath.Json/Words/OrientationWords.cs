namespace BendMath.Json.Words;

/// <summary>The words of a file for the ways a bar can lie.</summary>
internal static class OrientationWords
{
    private static readonly Dictionary<string, Orientation> ByWord = new(StringComparer.Ordinal)
    {
        [string.Empty] = Orientation.Usual,
        ["flange out"] = Orientation.FlangeOut,
        ["flange in"] = Orientation.FlangeIn,
        ["heel in"] = Orientation.HeelIn,
        ["heel out"] = Orientation.HeelOut,
        ["long leg radial, flange out"] = Orientation.LongLegFlangeOut,
        ["long leg radial, flange in"] = Orientation.LongLegFlangeIn,
        ["short leg radial, flange out"] = Orientation.ShortLegFlangeOut,
        ["short leg radial, flange in"] = Orientation.ShortLegFlangeIn,
        ["easy way"] = Orientation.EasyWay,
        ["hard way"] = Orientation.HardWay,
        ["on the diagonal"] = Orientation.OnDiagonal,
        ["on the flat"] = Orientation.OnFlat,
        ["on the corner"] = Orientation.OnCorner,
        ["flanges out (easy way)"] = Orientation.FlangesOut,
        ["flanges in (easy way)"] = Orientation.FlangesIn,
        ["stem out"] = Orientation.StemOut,
        ["stem in"] = Orientation.StemIn,
        ["stem up"] = Orientation.StemUp,
    };

    private static readonly Dictionary<Orientation, string> ByOrientation = ByWord.ToDictionary(pair => pair.Value, pair => pair.Key);

    /// <summary>The way a word means.</summary>
    public static Orientation Meant(string word) => ByWord[word];

    /// <summary>The word for a way; empty for the one that needs none.</summary>
    public static string Of(Orientation orientation) => ByOrientation[orientation];
}
