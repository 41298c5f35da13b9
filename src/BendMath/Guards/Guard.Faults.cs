using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using BendMath.Numerics;
using UnitsNet;

namespace BendMath.Guards;

internal static partial class Guard
{
    /// <summary>
    /// The exception for a rule between two quantities, to be thrown by the caller:
    /// <c>throw Guard.Fault(nameof(thickness), thickness, $"must be smaller than the leg, {Guard.Text(leg)}")</c>
    /// reads "thickness must be smaller than the leg, 30 mm, but is 35 mm."
    /// </summary>
    public static ArgumentOutOfRangeException Fault(string name, Length value, string rule) => Fault(name, rule, Text(value));

    /// <inheritdoc cref="Fault(string, Length, string)"/>
    public static ArgumentOutOfRangeException Fault(string name, Pressure value, string rule) => Fault(name, rule, Text(value));

    /// <inheritdoc cref="Fault(string, Length, string)"/>
    public static ArgumentOutOfRangeException Fault(string name, Angle value, string rule) => Fault(name, rule, Text(value));

    /// <inheritdoc cref="Fault(string, Length, string)"/>
    public static ArgumentOutOfRangeException Fault(string name, Torque value, string rule) => Fault(name, rule, Text(value));

    /// <inheritdoc cref="Fault(string, Length, string)"/>
    public static ArgumentOutOfRangeException Fault(string name, Force value, string rule) => Fault(name, rule, Text(value));

    /// <inheritdoc cref="Fault(string, Length, string)"/>
    public static ArgumentOutOfRangeException Fault(string name, Density value, string rule) => Fault(name, rule, Text(value));

    /// <inheritdoc cref="Fault(string, Length, string)"/>
    public static ArgumentOutOfRangeException Fault(string name, Ratio value, string rule) => Fault(name, rule, Text(value));

    /// <inheritdoc cref="Fault(string, Length, string)"/>
    public static ArgumentOutOfRangeException Fault(string name, double value, string rule) => Fault(name, rule, PlainNumber.Text(value));

    /// <summary>Throws <see cref="Fault(string, Length, string)"/>.</summary>
#if !NETSTANDARD2_0
    [DoesNotReturn]
#endif
    public static void Throw(string name, Length value, string rule) => throw Fault(name, value, rule);

    /// <summary>Throws <see cref="Fault(string, Pressure, string)"/>.</summary>
#if !NETSTANDARD2_0
    [DoesNotReturn]
#endif
    public static void Throw(string name, Pressure value, string rule) => throw Fault(name, value, rule);

    /// <summary>Throws <see cref="Fault(string, double, string)"/>.</summary>
#if !NETSTANDARD2_0
    [DoesNotReturn]
#endif
    public static void Throw(string name, double value, string rule) => throw Fault(name, value, rule);

    /// <summary>The length in millimeters, such as <c>30 mm</c>, for the text of a rule.</summary>
    public static string Text(Length value) => Millimeter.Text(Meters(value, nameof(value)));

    /// <summary>The stress in megapascals, such as <c>235 MPa</c>.</summary>
    public static string Text(Pressure value) => Megapascal.Text(Pascals(value, nameof(value)));

    /// <summary>The angle in degrees, such as <c>90°</c>.</summary>
    public static string Text(Angle value) => Degree.Text(Radians(value, nameof(value)));

    /// <summary>The moment in newton meters.</summary>
    public static string Text(Torque value) => NewtonMeter.Text(NewtonMeters(value, nameof(value)));

    /// <summary>The force in newtons.</summary>
    public static string Text(Force value) => Newton.Text(Newtons(value, nameof(value)));

    /// <summary>The density in kilograms per cubic meter.</summary>
    public static string Text(Density value) => KilogramPerCubicMeter.Text(KilogramsPerCubicMeter(value, nameof(value)));

    /// <summary>The ratio in percent.</summary>
    public static string Text(Ratio value) => Percent.Text(DecimalFraction(value, nameof(value)));

    /// <summary>A length given in meters, printed in millimeters.</summary>
    public static string MillimetersText(double meters) => Millimeter.Text(meters);

    /// <summary>The exception for an argument that is a text, a list or an object: "rings must differ in radius, but do not."</summary>
    /// <param name="name">The argument.</param>
    /// <param name="rule">The rest of a sentence that begins with the argument, without the full stop.</param>
    /// <param name="found">What was found, as the rest of "but …"; null where the rule says it all.</param>
    public static ArgumentException Refused(string name, string rule, string? found = null) => ArgumentFault.Refused(name, rule, found);

    /// <summary>The exception for an argument outside its range, where what was found takes other words than "is" and the value.</summary>
    /// <inheritdoc cref="Refused(string, string, string?)"/>
    public static ArgumentOutOfRangeException OutOfRange(string name, string rule, string? found = null) =>
        ArgumentFault.OutOfRange(name, rule, found);

    private static ArgumentOutOfRangeException Fault(string name, string rule, string value) => OutOfRange(name, rule, "is " + value);

    /// <summary>The unit a message speaks in.</summary>
    private sealed class ReaderUnit(string symbol, double si, double least, double most, string space = " ")
    {
        /// <summary>The smallest size, other than zero, that is taken for meant.</summary>
        public double Least { get; } = least;

        /// <summary>The largest size that is taken for meant.</summary>
        public double Most { get; } = most;

        /// <summary>
        /// Twelve digits: enough to tell values of a shop apart, few enough to hide the last bit of a conversion; adding zero drops the
        /// sign of -0.
        /// </summary>
        public string Text(double value) => (value / si + 0.0).ToString("G12", CultureInfo.InvariantCulture) + space + symbol;
    }
}
