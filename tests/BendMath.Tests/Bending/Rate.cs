using System.Globalization;

namespace BendMath.Tests.Bending;

/// <summary>The order with which a difference vanishes when a parameter is halved again and again.</summary>
internal static class Rate
{
    /// <param name="order">The order derived.</param>
    /// <param name="difference">What must vanish, at a parameter.</param>
    /// <param name="start">The largest parameter.</param>
    /// <param name="tolerance">How far the order may be off between the two smallest parameters.</param>
    public static void Holds(double order, Func<double, double> difference, double start, double tolerance = 0.05)
    {
        double[] left = [.. Enumerable.Range(0, 4).Select(i => Math.Abs(difference(start * Math.Pow(0.5, i))))];
        Assert.True(left[3] > 1e-11, string.Create(CultureInfo.InvariantCulture, $"a difference of {left[3]:E2} shows no rate"));
        Assert.Equal(order, Math.Log2(left[2] / left[3]), tolerance);
        Assert.Equal(order, Math.Log2(left[1] / left[2]), 4 * tolerance);
    }
}
