using UnitsNet;

namespace BendMath.Distortion;

/// <summary>The demand of a check as an equation that can be done again on paper.</summary>
/// <param name="Symbol">Symbol of the demand.</param>
/// <param name="Equation">Its equation in the symbols of the terms.</param>
/// <param name="Terms">What is put in.</param>
internal sealed record DemandEquation(string Symbol, string Equation, params DemandTerm[] Terms)
{
    /// <summary>The inside radius of a bend, which most demands hold.</summary>
    public static DemandTerm LoadedRadius(double meters) => new("R", "loaded radius of the inside face", Length.FromMeters(meters));
}

/// <summary>One number put in: a length, which is shown in the unit of the reader, or a number with its unit.</summary>
internal sealed record DemandTerm
{
    public DemandTerm(string symbol, string meaning, Length length)
        : this(symbol, meaning, length.Millimeters, "mm") => Length = length;

    public DemandTerm(string symbol, string meaning, double number, string unit)
    {
        Symbol = symbol;
        Meaning = meaning;
        Number = number;
        Unit = unit;
    }

    public string Symbol { get; }

    public string Meaning { get; }

    public Length? Length { get; }

    public double Number { get; }

    public string Unit { get; }
}
