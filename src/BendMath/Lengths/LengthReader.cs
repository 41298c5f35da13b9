using BendMath.Guards;

namespace BendMath.Lengths;

/// <summary>
/// Reads one written length: a number and a unit, or whole feet and then inches. A number is whole, decimal, a fraction, or whole and
/// fraction.
/// </summary>
internal sealed class LengthReader
{
    public const int LongestText = 100;
    private const string HowToWrite = "write for example \"30 mm\" or \"1 1/4 in\"";
    private const string Negative = "has a minus sign, but a length here is never negative";
    private readonly List<LengthToken> _tokens = [];
    private int _at;

    private LengthReader()
    {
    }

    private LengthToken Current => _tokens[_at];

    /// <summary>Null and the length in meters; or one sentence that says why the text is no length, and zero.</summary>
    public static string? Read(string? text, out double meters)
    {
        meters = 0;
        if (string.IsNullOrWhiteSpace(text))
        {
            return $"There is no length; {HowToWrite}.";
        }

        var fault = text!.Length > LongestText
            ? Invariant($"is longer than {LongestText} characters")
            : new LengthReader().ReadAll(text, out meters);
        return fault is null ? null : $"\"{Quoted.Short(text!.Trim())}\" {fault}.";
    }

    /// <summary>
    /// Null and one number, with its unit if it has one; or what is wrong, as the rest of a sentence that starts with the text.
    /// For sizes such as <c>2 x 2 x 1/8</c>, whose numbers may go without a unit.
    /// </summary>
    public static string? ReadNumber(string text, out WrittenNumber number)
    {
        var reader = new LengthReader();
        var value = default(ExactFraction);
        number = default;
        if ((LengthTokens.Cut(text, reader._tokens) ?? reader.ReadNumber(out value, out _)) is { } fault)
        {
            return fault;
        }

        ExactFraction? unit = null;
        if (reader.Current.Kind == LengthTokenKind.Unit)
        {
            unit = reader.Current.Value;
            reader._at++;
        }

        number =
            new(value, unit, reader._tokens.Exists(token => token.Kind is LengthTokenKind.FractionBar or LengthTokenKind.VulgarFraction));
        return reader.Current.Kind == LengthTokenKind.End ? null
            : $"goes on with {reader.Current.Text} after {reader._tokens[reader._at - 1].Text}";
    }

    private string? ReadAll(string text, out double meters)
    {
        meters = 0;
        var first = default(Quantity);
        var second = default(Quantity);
        var fault = LengthTokens.Cut(text, _tokens) ?? ReadQuantity(out first);
        if (fault is not null)
        {
            return fault;
        }

        if (Current.Kind == LengthTokenKind.End)
        {
            meters = first.Meters.ToDouble();
            return null;
        }

        fault = SkipHyphenAfterFeet(first) ?? ReadQuantity(out second);
        if (fault is not null)
        {
            return fault;
        }

        fault = Together(first, second);
        if (fault is null)
        {
            meters = (first.Meters + second.Meters).ToDouble();
        }

        return fault;
    }

    private string? Together(Quantity feet, Quantity inches)
    {
        if (feet.IsInches && inches.IsFeet)
        {
            return "has its inches before its feet; write the feet first";
        }

        if (!feet.IsFeet || !inches.IsInches)
        {
            return "has two lengths in one, and only feet and then inches go together";
        }

        if (Current.Kind != LengthTokenKind.End)
        {
            return "goes on after its inches";
        }

        if (!feet.IsWhole)
        {
            return "has inches after feet that are not a whole number";
        }

        return inches.Number.IsLessThan(12) ? null : "has 12 or more inches beside its feet; add them to the feet";
    }

    private string? SkipHyphenAfterFeet(Quantity first)
    {
        var hyphen = Current;
        if (hyphen.Kind != LengthTokenKind.Hyphen)
        {
            return null;
        }

        _at++;
        if (Current.Kind == LengthTokenKind.End)
        {
            return "ends where a number belongs";
        }

        // 2'-3" and 2' - 3" join feet and inches; 2' -3" looks like a sign.
        return hyphen.AfterSpace == Current.AfterSpace && first.IsFeet ? null : Negative;
    }

    private string? ReadQuantity(out Quantity quantity)
    {
        quantity = default;
        if (ReadNumber(out var number, out var isWhole) is { } fault)
        {
            return fault;
        }

        switch (Current.Kind)
        {
            case LengthTokenKind.Unit:
                quantity = new(number, isWhole, Current.Value);
                _at++;
                return null;
            case LengthTokenKind.End:
                return _tokens.Exists(token => token.Kind == LengthTokenKind.Unit)
                    ? $"has no unit after its last number; {HowToWrite}"
                    : $"has no unit; {HowToWrite}";
            case LengthTokenKind.FractionBar:
                return "has a fraction bar where a unit belongs";
            case LengthTokenKind.MinusSign:
                return Negative;
            case LengthTokenKind.Hyphen:
                return "has a hyphen that does not join a whole number and a fraction, as in \"1-1/4 in\"";
            default:
                return $"has no unit between {_tokens[_at - 1].Text} and {Current.Text}; {HowToWrite}";
        }
    }

    private string? ReadNumber(out ExactFraction number, out bool isWhole)
    {
        var first = Current;
        number = first.Value;
        isWhole = first.Kind == LengthTokenKind.Integer;
        switch (first.Kind)
        {
            case LengthTokenKind.Integer or LengthTokenKind.Decimal or LengthTokenKind.VulgarFraction:
                break;
            case LengthTokenKind.Hyphen or LengthTokenKind.MinusSign:
                return Negative;
            case LengthTokenKind.End:
                return "ends where a number belongs";
            default:
                return $"has no number before {first.Text}";
        }

        if (IsFractionAt(_at))
        {
            isWhole = false;
            return ReadFraction(out number);
        }

        _at++;
        var joined = Current.Kind == LengthTokenKind.Hyphen && !Current.AfterSpace && !_tokens[_at + 1].AfterSpace;
        var fractionAt = joined ? _at + 1 : _at;
        if (first.Kind == LengthTokenKind.VulgarFraction
            || !(IsFractionAt(fractionAt) || _tokens[fractionAt].Kind == LengthTokenKind.VulgarFraction))
        {
            return null;
        }

        if (!isWhole)
        {
            return $"has a fraction after the decimal number {first.Text}";
        }

        isWhole = false;
        _at = fractionAt;
        return ReadFractionOfMixedNumber(first.Value, out number);
    }

    private string? ReadFractionOfMixedNumber(ExactFraction whole, out ExactFraction number)
    {
        number = default;
        if (ReadFraction(out var fraction) is { } fault)
        {
            return fault;
        }

        number = whole + fraction;
        return fraction.IsLessThan(1) ? null : "has a fraction of 1 or more after a whole number";
    }

    private bool IsFractionAt(int index)
        => _tokens[index].Kind is LengthTokenKind.Integer or LengthTokenKind.Decimal && _tokens[index + 1].Kind == LengthTokenKind.FractionBar;

    private string? ReadFraction(out ExactFraction fraction)
    {
        var numerator = Current;
        fraction = numerator.Value;
        _at++;
        if (numerator.Kind == LengthTokenKind.VulgarFraction)
        {
            return null;
        }

        _at++;
        var denominator = Current;
        if (numerator.Kind != LengthTokenKind.Integer || denominator.Kind != LengthTokenKind.Integer)
        {
            return "has a fraction bar that is not between two whole numbers";
        }

        if (denominator.Value.Numerator.IsZero)
        {
            return "has a fraction with the denominator 0";
        }

        _at++;
        fraction = new(numerator.Value.Numerator, denominator.Value.Numerator);
        return null;
    }

    /// <summary>A number, its unit in meters if one was written, and whether it was written with a fraction.</summary>
    public readonly record struct WrittenNumber
    {
        public WrittenNumber(ExactFraction value, ExactFraction? unit, bool hasFraction)
        {
            Value = value;
            Unit = unit;
            HasFraction = hasFraction;
        }

        public ExactFraction Value { get; }

        public ExactFraction? Unit { get; }

        public bool HasFraction { get; }
    }

    private readonly struct Quantity(ExactFraction number, bool isWhole, ExactFraction unit)
    {
        public ExactFraction Number { get; } = number;

        public bool IsWhole { get; } = isWhole;

        public ExactFraction Meters => Number * unit;

        public bool IsFeet => unit == LengthTokens.Foot;

        public bool IsInches => unit == LengthTokens.Inch;
    }
}
