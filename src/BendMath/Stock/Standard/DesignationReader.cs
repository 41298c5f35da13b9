using System.Globalization;
using System.Text;
using BendMath.Lengths;

namespace BendMath.Stock.Standard;

/// <summary>
/// Reads a designation as people type it: words in any order, and numbers with an x between them. It knows words and marks only; whether
/// such a size is listed is for <see cref="SizeCatalog"/> to say. Numbers and units are read by <see cref="LengthReader"/>.
/// </summary>
internal sealed class DesignationReader
{
    private readonly SizeSpelling _spelling = new();

    private readonly StringBuilder _number = new();

    private string? _unknownWord;

    private bool _afterWord;

    private bool _afterSeparator;

    private bool _scheduleIsNext;

    private bool _isNominalDiameter;

    private DesignationReader()
    {
    }

    /// <summary>Null and what the text says; or what is wrong, as the rest of a sentence that starts with the text.</summary>
    public static string? Read(string text, out SizeSpelling spelling)
    {
        DesignationReader reader = new();
        spelling = reader._spelling;
        if (text.Length > LengthReader.LongestText)
        {
            return Invariant($"is longer than {LengthReader.LongestText} characters");
        }

        string? fault = reader.ReadAll(WithoutSystem(text.Replace('(', ' ').Replace(')', ' ').Trim(), spelling)) ?? reader.Close();
        spelling.Numbers.Sort(static (left, right) => right.CompareTo(left));
        return reader._unknownWord is { } word ? $"has the word {word}, which is no shape, unit or schedule known here" : fault;
    }

    /// <summary>The text without the name of a system before or behind the designation.</summary>
    private static string WithoutSystem(string text, SizeSpelling spelling)
    {
        foreach (SizeSystem system in StandardSizes.Systems)
        {
            foreach (string name in system.Names)
            {
                int rest = text.Length - name.Length;
                bool before = rest > 0 && text.StartsWith(name, StringComparison.OrdinalIgnoreCase) && IsGap(text[name.Length]);
                bool behind = rest > 0 && text.EndsWith(name, StringComparison.OrdinalIgnoreCase) && IsGap(text[rest - 1]);
                if (before || behind)
                {
                    spelling.System = system;
                    return before ? text.Substring(name.Length + 1) : text.Substring(0, rest - 1);
                }
            }
        }

        return text;
    }

    private static bool IsGap(char c) => char.IsWhiteSpace(c) || c is ',' or ':' or ';';

    private string? ReadAll(string text)
    {
        for (int at = 0; at < text.Length;)
        {
            int start = at++;
            char c = text[start];
            if (char.IsLetter(c))
            {
                while (at < text.Length && char.IsLetter(text[at]))
                {
                    at++;
                }
            }

            string? fault = c is '×' or '*' or '✕' or '∗' ? Separator()
                : char.IsLetter(c) || SizeWords.IsSign(c) ? Word(text.Substring(start, at - start))
                : Append(c);
            if (fault is not null)
            {
                return fault;
            }
        }

        return EndNumber();
    }

    private string? Append(char c)
    {
        _number.Append(c);
        return null;
    }

    private string? Word(string word)
    {
        if (LengthTokens.IsUnit(word))
        {
            _number.Append(word);
            return null;
        }

        if (IsCross(word))
        {
            return Separator();
        }

        int last = word.Length - 1;
        if (IsCross(word.Substring(last)) && LengthTokens.IsUnit(word.Substring(0, last)))
        {
            _number.Append(word, 0, last);
            return Separator();
        }

        if (EndNumber() is { } fault)
        {
            return fault;
        }

        _afterWord = true;
        if (SizeWords.TryFind(word, out SizeWord known))
        {
            return Apply(known);
        }

        // Read on, so that the message can name the sizes nearest to all dimensions.
        _unknownWord ??= word;
        return null;
    }

    /// <summary>A Cyrillic х looks the same.</summary>
    private static bool IsCross(string word) =>
        word is "x" or "X" or "х" or "Х" || string.Equals(word, "by", StringComparison.OrdinalIgnoreCase);

    private string? Apply(SizeWord word)
    {
        _spelling.Kinds &= word.Kinds;
        _isNominalDiameter |= word.Role == SizeWordRole.NominalDiameter;
        _scheduleIsNext |= word.Role == SizeWordRole.Schedule;
        if (word.Weight.Length > 0 && _spelling.Schedule.Length > 0)
        {
            return "names the wall of a pipe twice";
        }

        if (word.Weight.Length > 0)
        {
            _spelling.Schedule = word.Weight;
            _scheduleIsNext = false;
        }

        if (word.System is not null && _spelling.System is not null && word.System != _spelling.System)
        {
            return $"names {_spelling.System} and a shape of {word.System}";
        }

        _spelling.System = word.System ?? _spelling.System;
        return null;
    }

    private string? Separator()
    {
        if (EndNumber() is { } fault)
        {
            return fault;
        }

        if (_afterSeparator || _spelling.Numbers.Count == 0)
        {
            return "has no number before an x";
        }

        _afterSeparator = true;
        _afterWord = false;
        return null;
    }

    private string? EndNumber()
    {
        string text = _number.ToString().Trim().TrimEnd('-', '_', ',', ';', ':', ' ');
        _number.Clear();
        if (_afterWord)
        {
            text = text.TrimStart('-', '_', ',', ';', ':', ' ');
            bool isAbbreviation = text.Length > 0 && text[0] == '.' && (_scheduleIsNext || text.Length == 1 || text[1] is < '0' or > '9');
            text = isAbbreviation ? text.Substring(1).TrimStart() : text;
        }

        if (text.Length == 0)
        {
            return null;
        }

        _afterWord = false;
        int gap = _scheduleIsNext ? text.IndexOf(' ') : -1;
        return gap < 0 ? AddNumber(text) : AddNumber(text.Substring(0, gap)) ?? AddNumber(text.Substring(gap + 1));
    }

    private string? AddNumber(string text)
    {
        if (LengthReader.ReadNumber(WithDecimalPoint(text), out LengthReader.WrittenNumber number) is { } fault)
        {
            return fault;
        }

        return _scheduleIsNext ? AddSchedule(number) : AddDimension(number);
    }

    /// <summary>A comma between two digits is a decimal comma: no listed size has thousands.</summary>
    private static string WithDecimalPoint(string text)
    {
        int comma = text.IndexOf(',');
        bool isDecimal = comma > 0 && comma == text.LastIndexOf(',') && text.IndexOf('.') < 0
            && IsDigit(text[comma - 1]) && comma + 1 < text.Length && IsDigit(text[comma + 1]);
        return isDecimal ? text.Replace(',', '.') : text;
    }

    private static bool IsDigit(char c) => c is >= '0' and <= '9';

    private string? AddSchedule(LengthReader.WrittenNumber number)
    {
        _scheduleIsNext = false;
        if (number.Unit is not null || number.HasFraction || _spelling.Schedule.Length > 0)
        {
            return _spelling.Schedule.Length > 0 ? "names the wall of a pipe twice" : "has a schedule that is not a plain number";
        }

        _spelling.Schedule = number.Value.ToDouble().ToString(CultureInfo.InvariantCulture);
        return null;
    }

    private string? AddDimension(LengthReader.WrittenNumber number)
    {
        if (_spelling.Numbers.Count > 0 && !_afterSeparator)
        {
            return "has two dimensions without an x between them";
        }

        if (_spelling.Numbers.Count == 3)
        {
            return "has more than three dimensions";
        }

        if (number.Unit is { } unit && unit != LengthTokens.Millimeter && unit != LengthTokens.Inch)
        {
            return "has a unit other than mm and in, the units of designations";
        }

        bool? metric = number.Unit is { } written ? written == LengthTokens.Millimeter : number.HasFraction ? false : null;
        if (metric is not null && _spelling.IsMetric is not null && metric != _spelling.IsMetric)
        {
            return "has both millimeters and inches";
        }

        _spelling.IsMetric = metric ?? _spelling.IsMetric;
        _spelling.Numbers.Add(number.Value.ToDouble());
        _afterSeparator = false;
        return null;
    }

    private string? Close()
    {
        if (_afterSeparator)
        {
            return "ends where a number belongs";
        }

        if (_scheduleIsNext)
        {
            return "has no number behind its schedule";
        }

        if (_spelling.Numbers.Count == 0)
        {
            return "has no dimensions";
        }

        if (_isNominalDiameter)
        {
            double given = _spelling.Numbers[0];
            _spelling.IsMetric = null;
            if (_spelling.Numbers.Count > 1 || !SizeWords.TryNominalPipeSize(given, out double size))
            {
                // About as many inches, for the nearest sizes.
                _spelling.Numbers[0] = given / 25;
                return "has no nominal diameter known here behind DN";
            }

            _spelling.Numbers[0] = size;
        }

        return null;
    }
}
