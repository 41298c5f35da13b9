using BendMath.Fuzz.Making;

namespace BendMath.Fuzz.Sizes;

/// <summary>The usual rules, later ones over earlier ones.</summary>
internal static class AllSizes
{
    public static Rules Usual { get; } = Make();

    private static Rules Make()
    {
        Rules rules = new();
        OtherSizes.AddTo(rules);
        StockSizes.AddTo(rules);
        MetalSizes.AddTo(rules);
        BenderSizes.AddTo(rules);
        RingSizes.AddTo(rules);
        JobSizes.AddTo(rules);
        return rules;
    }
}
