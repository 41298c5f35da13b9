using System.Globalization;
using System.Text;
using BendMath.Guards;

namespace BendMath.Evidence;

/// <summary>One number that is put into an equation: its symbol, what it means, its value in its unit. Immutable and thread-safe.</summary>
public sealed record WorkedTerm
{
    /// <summary>Makes a term.</summary>
    /// <param name="symbol">As it stands in the equation: a letter, then letters, digits and underscores.</param>
    /// <param name="meaning">What it is, in a few words; not empty.</param>
    /// <param name="value">Its value in that unit, finite.</param>
    /// <param name="unit">Its unit; empty for a plain number.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The symbol is not one, or the meaning is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public WorkedTerm(string symbol, string meaning, double value, string unit)
    {
        Symbol = Guard.NotEmpty(symbol, nameof(symbol));
        if (!char.IsLetter(symbol[0]) || !symbol.All(WorkedStep.IsPartOfSymbol))
        {
            throw Guard.Refused(nameof(symbol), "must be a letter, then letters, digits and underscores", $"is \"{Quoted.Short(symbol)}\"");
        }

        Meaning = Guard.Line(meaning, nameof(meaning));
        Value = Guard.Number(value, nameof(value));
        Unit = Guard.NotNull(unit, nameof(unit));
    }

    /// <summary>As it stands in the equation.</summary>
    public string Symbol { get; }

    /// <summary>What it is.</summary>
    public string Meaning { get; }

    /// <summary>Its value in <see cref="Unit"/>.</summary>
    public double Value { get; }

    /// <summary>Its unit; empty for a plain number.</summary>
    public string Unit { get; }

    /// <summary>Symbol, value and unit.</summary>
    public override string ToString() => $"{Symbol} = {WorkedStep.Number(Value)}{(Unit.Length > 0 ? " " + Unit : string.Empty)}";
}

/// <summary>
/// How a number came about: the equation, the numbers put into it, the result with its unit, the source. A number that is found by a search
/// has the condition it satisfies in place of an equation. Immutable and thread-safe.
/// </summary>
public sealed record WorkedStep
{
    /// <summary>Makes a working.</summary>
    /// <param name="name">What the number is; not empty.</param>
    /// <param name="symbol">Its symbol; not empty.</param>
    /// <param name="equation">The right side of its equation in the symbols of the terms, or, for a number found by a search, the condition
    /// it satisfies; not empty.</param>
    /// <param name="terms">The numbers put in.</param>
    /// <param name="value">The number in its unit, finite.</param>
    /// <param name="unit">Its unit; empty for a plain number.</param>
    /// <param name="source">What the equation rests on.</param>
    /// <param name="isSearched">Whether the number is found by a search for which the equation is the condition.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public WorkedStep(string name, string symbol, string equation, IReadOnlyList<WorkedTerm> terms, double value, string unit,
        Source source, bool isSearched = false)
    {
        Name = Guard.Line(name, nameof(name));
        Symbol = Guard.NotEmpty(symbol, nameof(symbol));
        Equation = Guard.NotEmpty(equation, nameof(equation));
        Terms = [.. Guard.NotNull(terms, nameof(terms)).Select(term => Guard.NotNull(term, nameof(terms)))];
        Value = Guard.Number(value, nameof(value));
        Unit = Guard.NotNull(unit, nameof(unit));
        Source = Guard.NotNull(source, nameof(source));
        IsSearched = isSearched;
    }

    /// <summary>What the number is.</summary>
    public string Name { get; }

    /// <summary>Its symbol.</summary>
    public string Symbol { get; }

    /// <summary>The right side of its equation, or the condition it satisfies.</summary>
    public string Equation { get; }

    /// <summary>The numbers put in.</summary>
    public IReadOnlyList<WorkedTerm> Terms { get; }

    /// <summary>The number in <see cref="Unit"/>.</summary>
    public double Value { get; }

    /// <summary>Its unit; empty for a plain number.</summary>
    public string Unit { get; }

    /// <summary>What the equation rests on.</summary>
    public Source Source { get; }

    /// <summary>Whether the number is found by a search; <see cref="Equation"/> is then the condition it satisfies.</summary>
    public bool IsSearched { get; }

    /// <summary>
    /// The equation with the numbers put in, in the units of the terms; the condition itself where the number is searched.
    /// </summary>
    public string Substituted => IsSearched ? Equation : Substitute();

    /// <summary>The number with its unit.</summary>
    public string Result => Number(Value) + (Unit.Length > 0 ? " " + Unit : string.Empty);

    /// <summary>Equal when everything that is printed is equal.</summary>
    /// <param name="other">Another working.</param>
    public bool Equals(WorkedStep? other) => other is not null
        && (Name, Symbol, Equation, Value, Unit, Source, IsSearched)
            == (other.Name, other.Symbol, other.Equation, other.Value, other.Unit, other.Source, other.IsSearched)
                && Terms.SequenceEqual(other.Terms);

    /// <inheritdoc/>
    public override int GetHashCode() => (Name, Symbol, Equation, Value, Unit, Terms.Count).GetHashCode();

    /// <summary>Symbol, equation, numbers put in and result in one line.</summary>
    public override string ToString() =>
        IsSearched ? $"{Symbol} = {Result}, so that {Equation}" : $"{Symbol} = {Equation} = {Substituted} = {Result}";

    internal static bool IsPartOfSymbol(char c) => char.IsLetterOrDigit(c) && c is not ('²' or '³' or '⁴') || c == '_';

    /// <summary>Six significant digits: enough to do the sum again.</summary>
    internal static string Number(double value)
    {
        double size = Math.Abs(value);
        return size is 0 or >= 1e-3 and < 1e7
            ? value.ToString(size >= 1e5 ? "0" : size >= 100 ? "0.###" : size >= 1 ? "0.#####" : "0.########", CultureInfo.InvariantCulture)
            : value.ToString("0.#####e0", CultureInfo.InvariantCulture);
    }

    private string Substitute()
    {
        StringBuilder text = new();
        for (int i = 0; i < Equation.Length;)
        {
            int start = i;
            while (i < Equation.Length && IsPartOfSymbol(Equation[i]))
            {
                i++;
            }

            if (i == start)
            {
                text.Append(Equation[i++]);
                continue;
            }

            string word = Equation.Substring(start, i - start);
            WorkedTerm? term = Terms.FirstOrDefault(one => one.Symbol == word);
            text.Append(term is null ? word : term.Value < 0 ? $"({Number(term.Value)})" : Number(term.Value));
        }

        return text.ToString();
    }
}
