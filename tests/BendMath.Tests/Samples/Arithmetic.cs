namespace BendMath.Tests.Samples;

/// <summary>
/// A pocket calculator for printed equations: + - · / ² √( ) sin cos atan2 floor ceil max π and numbers. Knows nothing of the library.
/// </summary>
internal sealed class Arithmetic
{
    private readonly string _text;

    private readonly Func<string, double> _symbol;

    private int _at;

    private Arithmetic(string text, Func<string, double> symbol)
    {
        _text = text.Replace(" ", string.Empty, StringComparison.Ordinal);
        _symbol = symbol;
    }

    public static double Evaluate(string text, Func<string, double> symbol)
    {
        Arithmetic arithmetic = new(text, symbol);
        double value = arithmetic.Sum();
        return arithmetic._at == arithmetic._text.Length ? value
            : throw new FormatException($"\"{text}\" cannot be read from {arithmetic._at} on");
    }

    private double Sum()
    {
        double value = Product();
        while (Peek is '+' or '-')
        {
            value += Next() == '+' ? Product() : -Product();
        }

        return value;
    }

    private double Product()
    {
        double value = Factor();
        while (Peek is '·' or '/')
        {
            value = Next() == '·' ? value * Factor() : value / Factor();
        }

        return value;
    }

    private double Factor()
    {
        if (Peek == '-')
        {
            Next();
            return -Factor();
        }

        double value = Peek == '√' ? Root() : Peek == '(' ? Parenthesis()[0] : char.IsAsciiDigit(Peek) ? Number() : Word();
        while (Peek is '²' or '³')
        {
            value = Next() == '²' ? value * value : value * value * value;
        }

        return value;
    }

    private double Root()
    {
        Next();
        return Math.Sqrt(Parenthesis()[0]);
    }

    private List<double> Parenthesis()
    {
        Expect('(');
        List<double> values = [Sum()];
        while (Peek == ',')
        {
            Next();
            values.Add(Sum());
        }

        Expect(')');
        return values;
    }

    private double Number()
    {
        int start = _at;
        while (char.IsAsciiDigit(Peek) || Peek == '.' || (Peek == 'e' && _at > start) || (Peek == '-' && _text[_at - 1] == 'e'))
        {
            _at++;
        }

        return double.Parse(_text[start.._at], System.Globalization.CultureInfo.InvariantCulture);
    }

    private double Word()
    {
        int start = _at;
        while ((char.IsLetterOrDigit(Peek) && Peek is not ('²' or '³')) || Peek == '_')
        {
            _at++;
        }

        return _text[start.._at] switch
        {
            "π" => Math.PI,
            "sin" => Math.Sin(Parenthesis()[0]),
            "cos" => Math.Cos(Parenthesis()[0]),
            "floor" => Math.Floor(Parenthesis()[0] + 1e-9),
            "ceil" => Math.Ceiling(Parenthesis()[0] - 1e-4),
            "atan2" => Parenthesis() is [var y, var x] ? Math.Atan2(y, x) : throw new FormatException("atan2 takes two numbers"),
            "max" => Parenthesis().Max(),
            string name => _symbol(name),
        };
    }

    private char Peek => _at < _text.Length ? _text[_at] : '\0';

    private char Next() => _text[_at++];

    private void Expect(char c)
    {
        if (Peek != c)
        {
            throw new FormatException($"\"{_text}\" lacks {c} at {_at}");
        }

        _at++;
    }
}
