using BendMath.Stock.Tolerances;

namespace BendMath.Json.Words;

/// <summary>The standards a bar can be rolled or drawn to, by shape.</summary>
internal sealed class MillWords
{
    private static readonly MillWords[] All =
    [
        Of<EqualAngle>("EN 10056-2", MillTolerance.En10056), Of<UnequalAngle>("EN 10056-2", MillTolerance.En10056),
        Of<FlatBar>("EN 10058", MillTolerance.En10058), Of<SquareBar>("EN 10059", MillTolerance.En10059),
        Of<RoundBar>("EN 10060", MillTolerance.En10060),
        Of<SquareTube>("EN 10210-2", MillTolerance.En10210), Of<RectangularTube>("EN 10210-2", MillTolerance.En10210),
        Of<SquareTube>("EN 10219-2", MillTolerance.En10219), Of<RectangularTube>("EN 10219-2", MillTolerance.En10219),
        Of<RoundTube>("EN 10219-2", MillTolerance.En10219),
        Of<EqualAngle>("ASTM A6", MillTolerance.AstmA6), Of<UnequalAngle>("ASTM A6", MillTolerance.AstmA6),
        Of<RoundTube>("ASTM A53", MillTolerance.AstmA53),
        Of<SquareTube>("ASTM A500", MillTolerance.AstmA500), Of<RectangularTube>("ASTM A500", MillTolerance.AstmA500),
    ];

    private readonly string _standard;

    private readonly Type _shape;

    private readonly Func<BarStock, MillTolerance> _make;

    private MillWords(string standard, Type shape, Func<BarStock, MillTolerance> make)
    {
        _standard = standard;
        _shape = shape;
        _make = make;
    }

    public static string[] Standards { get; } = [.. All.Select(words => words._standard).Distinct()];

    /// <summary>How to make the tolerance of a bar; null where the standard is not about its shape.</summary>
    public static Func<MillTolerance>? For(string standard, BarStock stock) =>
        Array.Find(All, words => words._standard == standard && words._shape == stock.GetType()) is { } found
            ? () => found._make(stock)
            : null;

    private static MillWords Of<T>(string standard, Func<T, MillTolerance> make)
        where T : BarStock => new(standard, typeof(T), stock => make((T)stock));
}
