using BendMath.Evidence;
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

    public WorkedStep Of(DistortionFinding finding, bool inInches) =>
        new($"{finding.Check}, what the bend asks", Symbol, Equation, [.. Terms.Select(term => term.In(inInches))], finding.Demand,
            string.Empty, finding.Source);
}

/// <summary>One number put in: a length, which is shown in the unit of the reader, or a number with its unit.</summary>
internal sealed record DemandTerm
{
    private readonly string _symbol;

    private readonly string _meaning;

    private readonly Length? _length;

    private readonly double _number;

    private readonly string _unit;

    public DemandTerm(string symbol, string meaning, Length length)
        : this(symbol, meaning, length.Millimeters, "mm") => _length = length;

    public DemandTerm(string symbol, string meaning, double number, string unit)
    {
        _symbol = symbol;
        _meaning = meaning;
        _number = number;
        _unit = unit;
    }

    public WorkedTerm In(bool inches) =>
        inches && _length is { } length ? new(_symbol, _meaning, length.Inches, "in") : new(_symbol, _meaning, _number, _unit);
}
