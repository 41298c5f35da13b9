using System.Globalization;
using System.Text.RegularExpressions;
using BendMath;
using BendMath.Lengths;
using UnitsNet;

namespace RingPlanner.Pages;

/// <summary>
/// Quantities as this job wants to read them: metric, with inches and pounds beside for a job written in inches or where fractions are
/// asked for.
/// </summary>
/// <param name="inches">Whether inches and pounds stand beside.</param>
/// <param name="cutStyle">The rule blanks are cut by.</param>
/// <param name="fraction">Finest fraction of an inch for sizes; null for decimals.</param>
internal sealed partial class Units(bool inches, LengthStyle cutStyle, int? fraction = null)
{
    private readonly LengthStyle _sizes =
        fraction is { } finest ? LengthStyle.FractionalInches(finest, LengthRounding.Nearest) : Thousandths;

    private static readonly LengthStyle Tenths = LengthStyle.Millimeters(1);

    private static readonly LengthStyle Thousandths = LengthStyle.DecimalInches(3);

    public string Size(Length length) => Beside(LengthText.Format(length, Tenths), LengthText.Format(length, _sizes));

    /// <summary>Without units, for a column that names them.</summary>
    public string Cell(Length length) =>
        Size(length).Replace(" mm", string.Empty, StringComparison.Ordinal).Replace(" in)", ")", StringComparison.Ordinal);

    public string Signed(Length length)
    {
        string sign = length.Meters > 0 ? "+" : string.Empty;
        string text = sign + LengthText.Format(length, Tenths).Replace(" mm", string.Empty, StringComparison.Ordinal);
        return inches ? $"{text} ({sign}{LengthText.Format(length, _sizes).Replace(" in", string.Empty, StringComparison.Ordinal)})" : text;
    }

    public bool AreInches => inches;

    /// <summary>How lengths are rounded, or null where decimals say it.</summary>
    public string? Rounding =>
        fraction is { } finest
            ? $"sizes in inches to the nearest 1/{finest}, the ends of ranges outward, small ones in decimals; blanks are rounded up to "
                + $"what the rule shows" : null;

    public string ColumnUnit => inches ? "mm (in)" : "mm";

    /// <summary>To two decimals: a rise is small.</summary>
    public string Fine(Length length) =>
        Beside(LengthText.Format(length, LengthStyle.Millimeters(2)), LengthText.Format(length, Thousandths));

    /// <summary>From the least to the greatest: fractions are rounded away from the middle, so that the range holds what it held.</summary>
    public string Range(LengthRange range)
    {
        string metric = $"{Bare(range.Low, Tenths, " mm")} to {LengthText.Format(range.High, Tenths)}";
        LengthStyle low = fraction is { } finest ? LengthStyle.FractionalInches(finest, LengthRounding.Down) : Thousandths;
        LengthStyle high = fraction is { } same ? LengthStyle.FractionalInches(same, LengthRounding.Up) : Thousandths;
        return Beside(metric, $"{Bare(range.Low, low, " in")} to {LengthText.Format(range.High, high)}");
    }

    /// <summary>A length to cut: never short, so rounded up to what a rule shows.</summary>
    public string Cut(Length length)
    {
        string rounded = LengthText.Format(length, cutStyle);
        return inches
            ? $"{rounded} (rounded up to {LengthText.Format(cutStyle.Step, cutStyle)}; {LengthText.Format(length, Tenths)})"
            : $"{rounded} (rounded up from {LengthText.Format(length, Tenths)})";
    }

    /// <summary>A place on the bar, to what a rule shows.</summary>
    public string Mark(Length length) => inches
        ? $"{LengthText.Format(length, LengthStyle.FractionalInches(fraction ?? 16, LengthRounding.Nearest))} "
            + $"({LengthText.Format(length, Tenths)})"
        : LengthText.Format(length, Tenths);

    /// <summary>
    /// A sentence of the library, which speaks in millimeters, with inches beside each length for a job in inches; behind = where it stands
    /// in parentheses already.
    /// </summary>
    public string Sentence(string text) => inches
        ? InMillimeters().Replace(text, found =>
        {
            string beside = Number().Replace(found.Groups[1].Value, one => InInches(one.Value)) + " in";
            bool inParentheses = text[..found.Index].Count(c => c == '(') > text[..found.Index].Count(c => c == ')');
            return inParentheses ? $"{found.Value} = {beside}" : $"{found.Value} ({beside})";
        })
        : text;

    public string Moment(Torque torque) => Beside(Figures(torque.NewtonMeters, "N·m"), Figures(torque.PoundForceFeet, "lbf·ft"));

    public string Push(Force force) => Beside(
        force.Newtons >= 10000 ? Figures(force.Kilonewtons, "kN") : Figures(force.Newtons, "N"), Figures(force.PoundsForce, "lbf"));

    /// <summary>A couple per length of bar, held by the library as newtons.</summary>
    public string CouplePerLength(Force couple) =>
        Beside(Figures(couple.Newtons, "N·m per meter of bar"), Figures(couple.PoundsForce, "lbf·ft per foot"));

    public string Work(Energy energy) => Beside(Figures(energy.Joules, "J"), Figures(energy.FootPounds, "ft·lbf"));

    /// <summary>Work per length of bar, held by the library as newtons.</summary>
    public string WorkPerLength(Force work) =>
        Beside(Figures(work.Newtons, "J per meter of bar"), Figures(work.PoundsForce, "ft·lbf per foot"));

    public string Weight(Mass mass) => Beside(
        string.Format(CultureInfo.InvariantCulture, "{0:0.00} kg", mass.Kilograms),
            string.Format(CultureInfo.InvariantCulture, "{0:0.00} lb", mass.Pounds));

    public string Stress(Pressure pressure) => Beside(
        string.Format(CultureInfo.InvariantCulture, "{0:0} MPa", pressure.Megapascals),
            string.Format(CultureInfo.InvariantCulture, "{0:0.#} ksi", pressure.KilopoundsForcePerSquareInch));

    /// <summary>Three figures are as many as a forming model deserves.</summary>
    private static string Figures(double value, string unit)
    {
        double step = value == 0 ? 1 : Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(value))) - 2);
        double rounded = Math.Round(value / step) * step;
        return string.Format(CultureInfo.InvariantCulture, step >= 1 ? "{0:0} {1}" : step >= 0.1 ? "{0:0.0} {1}" : "{0:0.00} {1}", rounded,
            unit);
    }

    /// <summary>A tenth of a millimeter is some thousandths of an inch: as many digits as the sentence holds, and no more.</summary>
    private static string InInches(string millimeters)
    {
        int point = millimeters.IndexOf('.', StringComparison.Ordinal);
        int decimals = point < 0 ? 2 : Math.Min(3, millimeters.Length - point);
        return Bare(LengthText.Parse(millimeters + " mm"), LengthStyle.DecimalInches(decimals), " in");
    }

    private static string Bare(Length length, LengthStyle style, string unit) =>
        LengthText.Format(length, style).Replace(unit, string.Empty, StringComparison.Ordinal);

    private string Beside(string metric, string imperial) => inches ? $"{metric} ({imperial})" : metric;

    /// <summary>One length, a range, a list or the dimensions of a bar.</summary>
    [GeneratedRegex(@"(?<![\d.])(\d+(?:\.\d+)?(?:(?: × | to |, )\d+(?:\.\d+)?)*) mm(?![A-Za-z])")]
    private static partial Regex InMillimeters();

    [GeneratedRegex(@"\d+(?:\.\d+)?")]
    private static partial Regex Number();
}
