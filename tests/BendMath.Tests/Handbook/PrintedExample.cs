using System.Globalization;
using System.Runtime.CompilerServices;

namespace BendMath.Tests.Handbook;

/// <summary>The printed answers of one worked example, found by the name of the test; every one of them must be compared.</summary>
internal sealed class PrintedExample
{
    private readonly List<ReferenceRow> _open;

    private readonly List<string> _faults = [];

    public PrintedExample([CallerMemberName] string test = "") => _open = [.. Table.Where(row => row["test"] == test)];

    public static ReferenceTable Table { get; } = ReferenceTable.Load("Handbook/worked-examples.csv");

    public PrintedExample Holds(string quantity, double actual)
    {
        ReferenceRow row = _open.Single(candidate => candidate["quantity"] == quantity);
        _open.Remove(row);
        double printed = row.Number("printed");
        double rounding = row.Number("rounding");
        if (!(Math.Abs(actual - printed) <= rounding + (1e-12 * Math.Abs(printed))))
        {
            _faults.Add(
                string.Create(CultureInfo.InvariantCulture,
                    $"{quantity}: {actual:R} {row["unit"]}, printed {printed:R} ± {rounding:R} ({row["source"]})"));
        }

        return this;
    }

    public void Verify()
    {
        Assert.True(_faults.Count == 0, string.Join(Environment.NewLine, _faults));
        Assert.Empty(_open);
    }
}
