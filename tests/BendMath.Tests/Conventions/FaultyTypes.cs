#pragma warning disable CA1051, CA1305, CA2208, CA1711, CA1724, CA1805, IDE0032, IDE0060
using System.Globalization;
using BendMath.Evidence;
using UnitsNet;

// Each type breaks one convention on purpose: the convention tests must report it by name.
namespace BendMath.Tests.Conventions.Faulty;

/// <summary>Open to other assemblies.</summary>
public record OpenRecord
{
    public override string ToString() => "open";
}

/// <summary>Abstract, but with a constructor for everyone.</summary>
public abstract record OpenBase
{
    protected OpenBase()
    {
    }
}

/// <summary>Nothing is checked.</summary>
public sealed record PositionalRecord(double Depth);

/// <summary>Nothing is checked.</summary>
public readonly record struct PositionalStruct(double Depth);

/// <summary>Can be changed.</summary>
public sealed class Settable
{
    public double Width;

    public double Depth { get; set; }

    public IReadOnlyList<double> Depths { get; } = new[] { 1.0 };
}

/// <summary>Takes more at once than a person can fill, beside as much as one can.</summary>
public sealed class Crowded
{
    public Crowded(int a, int b, int c, int d, int e, int f, int g, int h, int i) => Sum = a + b + c + d + e + f + g + h + i;

    public Crowded(int a, int b, int c, int d, int e, int f, int g, int h) => Sum = a + b + c + d + e + f + g + h;

    public int Sum { get; }

    public override string ToString() => "crowded";
}

/// <summary>Prints with the culture of the moment.</summary>
public sealed class CultureBound
{
    public override string ToString() => 1.5.ToString(CultureInfo.CurrentCulture);
}

/// <summary>Prints one in the plural.</summary>
public sealed class Lonely
{
    public override string ToString() => "rack of 1 hoops".Substring(8);
}

/// <summary>Prints the name of its type.</summary>
public sealed class Mute
{
    public double Depth => 1;
}

/// <summary>Prints the name of its type.</summary>
public readonly struct MuteStruct
{
    public double Depth => 1;
}

/// <summary>Lets any index in.</summary>
public sealed class OpenIndexer
{
    private readonly double[] _depths = [1, 2, 3, 4];

    public double this[int index] => _depths[index];
}

/// <summary>Breaks no convention.</summary>
public sealed record Sound
{
    private readonly double _depth;

    /// <summary>Checks its argument.</summary>
    /// <param name="depth">Finite.</param>
    /// <exception cref="ArgumentOutOfRangeException">It is not finite.</exception>
    public Sound(double depth) => _depth = double.IsFinite(depth)
        ? depth
        : throw new ArgumentOutOfRangeException(nameof(depth),
            string.Create(CultureInfo.InvariantCulture, $"depth must be finite, but is {depth}."));

    /// <summary>The depth.</summary>
    /// <remarks>
    /// Equation: d = d.
    /// Range: everywhere.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public double Depth => _depth;

    /// <summary>The depth in millimeters.</summary>
    public override string ToString() => _depth.ToString("0.###", CultureInfo.InvariantCulture);
}

/// <summary>Documents its members badly.</summary>
public static class BadlyDocumented
{
    public static double WithoutSummary => 1;

    /// <summary>No range.</summary>
    /// <remarks>
    /// Equation: a = b.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public static double WithoutRange(double a) => a;

    /// <summary>No source.</summary>
    /// <remarks>
    /// Equation: a = b.
    /// Range: everywhere.
    /// Source: a book.
    /// </remarks>
    public static double WithoutSource => 1;

    /// <summary>A source that is none.</summary>
    /// <remarks>
    /// Equation: a = b.
    /// Range: everywhere.
    /// Source: <see cref="Sound"/>
    /// </remarks>
    public static double WithoutRealSource => 1;

    /// <summary>A parameter without a word on it.</summary>
    /// <param name="a"> </param>
    public static double WithEmptyParameter(double a) => a;

    /// <summary>No equation.</summary>
    /// <remarks>
    /// Equation:
    /// Range: everywhere.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public static double WithEmptyEquation => 1;
}

/// <summary>Lets bad values through, each method in its own way.</summary>
public static class BadAtTheDoor
{
    public static double NotANumber(double depth) => Math.Sqrt(depth);

    public static double WrongName(double depth) =>
        depth > 0 ? depth : throw new ArgumentOutOfRangeException("val", "must be greater than zero");

    public static double NoName(double depth) => depth > 0 ? depth : throw new ArgumentException("must be greater than zero");

    public static int Crash(string text) => text.Length;

    public static double Undocumented(double depth) => depth > 0 ? 1 : throw new InvalidOperationException("not positive");

    public static Length Unchecked(Length depth) => Length.FromMeters(depth.Value * 1e10);

    public static Hollow Nested(double depth) => new(1 / (depth > 0 ? depth : 0));

    public static double Unpromised(double depth) =>
        depth > 0 ? 1
            : throw new ArgumentOutOfRangeException(nameof(depth),
                string.Create(CultureInfo.InvariantCulture, $"depth must be greater than 0, but is {depth}."));

    /// <summary>Says no rule.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not positive.</exception>
    public static double NoRule(double depth) => depth > 0 ? 1 : throw new ArgumentOutOfRangeException(nameof(depth), "wrong");

    /// <summary>Says no value.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not positive.</exception>
    public static double NoValue(double depth) =>
        depth > 0 ? 1 : throw new ArgumentOutOfRangeException(nameof(depth), "depth must be greater than zero.");

    /// <summary>Says no unit.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not positive.</exception>
    public static double NoUnit(Length depth) =>
        depth.Value > 0 ? 1
            : throw new ArgumentOutOfRangeException(nameof(depth),
                string.Create(CultureInfo.InvariantCulture, $"depth must be greater than zero, but is {depth.Value}."));

    public static double NeverValid(double depth) => throw new ArgumentOutOfRangeException(nameof(depth), depth, "is refused");

    public static double Hang(double depth)
    {
        while (!(depth < 1e300))
        {
            Thread.Sleep(1);
        }

        return Math.Clamp(depth, 0, 1);
    }
}

/// <summary>Holds a number that may not be one, two levels down.</summary>
public sealed class Hollow
{
    private readonly double _value;

    internal Hollow(double value) => _value = value;

    public IReadOnlyList<Ratio> Shares => [Ratio.FromPercent(1), .. _value - _value == 0 ? [] : new[] { Ratio.FromPercent(2) }];

    public IReadOnlyList<double> Values => [1, _value];
}
