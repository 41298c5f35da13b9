namespace BendMath.Materials;

/// <summary>
/// The root u of e = u + uⁿ over many strains: with z = ln u, a table of z over ln e with its slopes, 1/(1 + (n − 1)·σ), σ = uⁿ⁻¹/(1 +
/// uⁿ⁻¹), cubic between; one step of Halley's method from there leaves rounding, a second one where a sharp knee falls between two rows.
/// Immutable and thread-safe.
/// </summary>
internal sealed class SmoothRoots
{
    private const int Rows = 256;

    private const double Largest = 1e5;

    private const double Near = 1e-5;

    private readonly double _exponent;

    private readonly double _from;

    private readonly double _step;

    private Row[]? _rows;

    /// <param name="exponent">n, greater than 1.</param>
    /// <param name="smallest">Strain at which the table begins.</param>
    public SmoothRoots(double exponent, double smallest)
    {
        _exponent = exponent;
        _from = Math.Log(smallest);
        _step = (Math.Log(Largest) - _from) / Rows;
    }

    /// <summary>u and uⁿ⁻¹.</summary>
    public (double Level, double Power) At(double strain)
    {
        double x = (Math.Log(strain) - _from) / _step;
        if (!(x >= 0 && x < Rows))
        {
            double root = Plain(strain);
            return (root, Math.Pow(root, _exponent - 1));
        }

        Row[] rows = _rows ??= Tabulate();
        ref readonly Row low = ref rows[(int)x];
        ref readonly Row high = ref rows[(int)x + 1];
        x -= (int)x;
        double y = 1 - x;
        double z = y * y * ((1 + 2 * x) * low.Level + x * low.Slope) + x * x * ((1 + 2 * y) * high.Level - y * high.Slope);
        double level = Math.Exp(z);
        double power = Math.Exp((_exponent - 1) * z);
        for (int k = 0; k < 40; k++)
        {
            double slope = 1 + _exponent * power;
            double newton = (1 + power - strain / level) / slope;
            double change = newton / (1 - newton * _exponent * (_exponent - 1) * power / (2 * slope));
            level -= level * change;
            double spread = (_exponent - 1) * change;
            if (Math.Abs(spread) < Near)
            {
                return (level, power * (1 - spread * (1 - (spread - change) / 2)));
            }

            power = Math.Pow(level, _exponent - 1);
        }

        return (level, power);
    }

    private Row[] Tabulate()
    {
        Row[] rows = new Row[Rows + 1];
        for (int i = 0; i < rows.Length; i++)
        {
            double level = Plain(Math.Exp(_from + i * _step));
            double power = Math.Pow(level, _exponent - 1);
            rows[i] = new(Math.Log(level), _step * (1 + power) / (1 + _exponent * power));
        }

        return rows;
    }

    /// <summary>Newton from the right of the root of a convex function, so it falls monotonically onto it.</summary>
    private double Plain(double strain)
    {
        double level = Math.Min(strain, Math.Pow(strain, 1 / _exponent));
        for (int i = 0; i < 60; i++)
        {
            double power = Math.Pow(level, _exponent - 1);
            double step = (level + power * level - strain) / (1 + _exponent * power);
            level -= step;
            if (step <= 1e-15 * level)
            {
                break;
            }
        }

        return level;
    }

    private readonly struct Row(double level, double slope)
    {
        public double Level { get; } = level;

        public double Slope { get; } = slope;
    }
}
