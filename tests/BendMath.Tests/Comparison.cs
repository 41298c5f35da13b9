using System.Globalization;

namespace BendMath.Tests;

/// <summary>Holds computed values against the columns of one row and reports every column that disagrees, not only the first.</summary>
internal sealed class Comparison(ReferenceRow row)
{
    private readonly List<string> _faults = [];

    private int _checks;

    /// <summary>The difference over the size of the reference value, or of a scale for columns that may be zero.</summary>
    public Comparison Relative(string column, double actual, double tolerance, double? scale = null)
    {
        double expected = row.Number(column);
        return Check(column, actual, expected, Math.Abs(actual - expected) / Math.Abs(scale ?? expected), tolerance);
    }

    public Comparison Absolute(string column, double actual, double tolerance)
    {
        double expected = row.Number(column);
        return Check(column, actual, expected, Math.Abs(actual - expected), tolerance);
    }

    /// <summary>A column the source does not print for every row.</summary>
    public Comparison RelativeWherePrinted(string column, double actual, double tolerance) =>
        row.Has(column) ? Relative(column, actual, tolerance) : this;

    /// <summary>Within half a unit of the last printed digit.</summary>
    public Comparison Printed(string column, double actual) => Absolute(column, actual, row.PrintRounding(column));

    public void Verify(int leastChecks)
    {
        Assert.True(_faults.Count == 0, string.Join(Environment.NewLine, _faults));
        Assert.True(_checks >= leastChecks, string.Create(CultureInfo.InvariantCulture, $"{row}: only {_checks} columns were compared"));
    }

    private Comparison Check(string column, double actual, double expected, double deviation, double tolerance)
    {
        _checks++;
        if (!(deviation <= tolerance))
        {
            _faults.Add(string.Create(
                CultureInfo.InvariantCulture,
                    $"{row}, {column}: {actual:R} instead of {expected:R}, off by {deviation:E2}, allowed {tolerance:E2}"));
        }

        return this;
    }
}
