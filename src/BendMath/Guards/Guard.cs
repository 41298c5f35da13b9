using System.Diagnostics.CodeAnalysis;
using BendMath.Numerics;
using UnitsNet;

namespace BendMath.Guards;

/// <summary>
/// The door between quantities and SI doubles: each method hands out the SI value or throws by the name of the argument.
/// A unit outside its enumeration is refused before UnitsNet converts it, because that conversion never returns.
/// Nothing is allocated on the way through.
/// </summary>
internal static partial class Guard
{
    // The bounds are far outside any shop and inside what a double can carry through fourth powers: a value beyond them is a slip of the
    // unit.
    /// <summary>The smallest length of any dimension.</summary>
    public const double LeastMeters = 1e-6;

    /// <summary>The largest length of any dimension.</summary>
    public const double MostMeters = 1e6;

    private static readonly ReaderUnit Millimeter = new("mm", 1e-3, LeastMeters, MostMeters);
    private static readonly ReaderUnit Megapascal = new("MPa", 1e6, least: 1, most: 1e18);
    private static readonly ReaderUnit Degree = new("°", Math.PI / 180, least: 1e-9, most: 1e6, space: "");
    private static readonly ReaderUnit NewtonMeter = new("N·m", 1, least: 1e-12, most: 1e15);
    private static readonly ReaderUnit Newton = new("N", 1, least: 1e-12, most: 1e15);

    private static readonly ReaderUnit NewtonPerMillimeter = new("N/mm", 1e3, least: 1e-18, most: 1e21);
    private static readonly ReaderUnit KilogramPerCubicMeter = new("kg/m³", 1, least: 1e-3, most: 1e6);
    private static readonly ReaderUnit MillimeterToTheFourth = new("mm⁴", 1e-12, least: 1e-24, most: 1e24);
    private static readonly ReaderUnit InverseMeter = new("m⁻¹", 1, least: 1e-9, most: 1e6);
    private static readonly ReaderUnit Percent = new("%", 1e-2, least: 1e-9, most: 1e3);
    private static readonly ReaderUnit PlainNumber = new("", 1, least: 1e-9, most: 1e9, space: "");

    /// <summary>Meters, greater than zero.</summary>
    public static double Positive(Length value, string name) => Positive(Meters(value, name), name, Millimeter);

    /// <summary>Meters, zero or greater: a dimension, whose smallest size other than zero is <see cref="LeastMeters"/>.</summary>
    public static double NonNegative(Length value, string name) => NonNegative(Meters(value, name), name, Millimeter);

    /// <summary>Meters, zero or greater: a place, which may lie as close to zero as its computation left it.</summary>
    public static double Place(Length value, string name) => NotBelowZero(Meters(value, name), name, Millimeter);

    /// <summary>Meters, either sign.</summary>
    public static double Finite(Length value, string name) => Finite(Meters(value, name), name, Millimeter);

    /// <summary>Pascals, greater than zero.</summary>
    public static double Positive(Pressure value, string name) => Positive(Pascals(value, name), name, Megapascal);

    /// <summary>Pascals, zero or greater.</summary>
    public static double NonNegative(Pressure value, string name) => NonNegative(Pascals(value, name), name, Megapascal);

    /// <summary>Pascals, either sign.</summary>
    public static double Finite(Pressure value, string name) => Finite(Pascals(value, name), name, Megapascal);

    /// <summary>Radians, greater than zero.</summary>
    public static double Positive(Angle value, string name) => Positive(Radians(value, name), name, Degree);

    /// <summary>Radians, zero or greater.</summary>
    public static double NonNegative(Angle value, string name) => NonNegative(Radians(value, name), name, Degree);

    /// <summary>Radians, either sign.</summary>
    public static double Finite(Angle value, string name) => Finite(Radians(value, name), name, Degree);

    /// <summary>Newton meters, greater than zero.</summary>
    public static double Positive(Torque value, string name) => Positive(NewtonMeters(value, name), name, NewtonMeter);

    /// <summary>Newton meters, zero or greater.</summary>
    public static double NonNegative(Torque value, string name) => NonNegative(NewtonMeters(value, name), name, NewtonMeter);

    /// <summary>Newton meters, either sign.</summary>
    public static double Finite(Torque value, string name) => Finite(NewtonMeters(value, name), name, NewtonMeter);

    /// <summary>Newtons, greater than zero.</summary>
    public static double Positive(Force value, string name) => Positive(Newtons(value, name), name, Newton);

    /// <summary>Newtons, zero or greater.</summary>
    public static double NonNegative(Force value, string name) => NonNegative(Newtons(value, name), name, Newton);

    /// <summary>Newtons, either sign.</summary>
    public static double Finite(Force value, string name) => Finite(Newtons(value, name), name, Newton);

    /// <summary>Kilograms per cubic meter, greater than zero.</summary>
    public static double Positive(Density value, string name) => Positive(KilogramsPerCubicMeter(value, name), name, KilogramPerCubicMeter);

    /// <summary>Kilograms per cubic meter, zero or greater.</summary>
    public static double NonNegative(Density value, string name) =>
        NonNegative(KilogramsPerCubicMeter(value, name), name, KilogramPerCubicMeter);

    /// <summary>Kilograms per cubic meter, either sign.</summary>
    public static double Finite(Density value, string name) => Finite(KilogramsPerCubicMeter(value, name), name, KilogramPerCubicMeter);

    /// <summary>A decimal fraction (5 % is 0.05), greater than zero.</summary>
    public static double Positive(Ratio value, string name) => Positive(DecimalFraction(value, name), name, Percent);

    /// <summary>A decimal fraction (5 % is 0.05), zero or greater.</summary>
    public static double NonNegative(Ratio value, string name) => NonNegative(DecimalFraction(value, name), name, Percent);

    /// <summary>A decimal fraction (5 % is 0.05), either sign.</summary>
    public static double Finite(Ratio value, string name) => Finite(DecimalFraction(value, name), name, Percent);

    /// <summary>Any number but an undefined or infinite one: what was computed, whatever its size.</summary>
    public static double Number(double value, string name) =>
        value - value == 0 ? value : throw Fault(name, "must be finite", PlainNumber.Text(value));

    /// <summary>A plain number greater than zero.</summary>
    public static double Positive(double value, string name) => Positive(value, name, PlainNumber);

    /// <summary>A plain number, zero or greater.</summary>
    public static double NonNegative(double value, string name) => NonNegative(value, name, PlainNumber);

    /// <summary>A plain number of either sign.</summary>
    public static double Finite(double value, string name) => Finite(value, name, PlainNumber);

    /// <summary>The object itself, or an <see cref="ArgumentNullException"/> by name.</summary>
#if NETSTANDARD2_0
    public static T NotNull<T>(T? value, string name)
#else
    public static T NotNull<T>([NotNull] T? value, string name)
#endif
        where T : class => value ?? throw new ArgumentNullException(name);

    private static double Positive(double si, string name, ReaderUnit unit)
        => Finite(si, name, unit) >= unit.Least ? si
        : si > 0 ? throw OutOfBounds(si, name, unit)
        : throw Fault(name, $"must be greater than {unit.Text(0)}", unit.Text(si));

    private static double NonNegative(double si, string name, ReaderUnit unit)
        => NotBelowZero(si, name, unit) == 0 || si >= unit.Least ? si
        : throw Fault(name, $"must be {unit.Text(0)}, or between {unit.Text(unit.Least)} and {unit.Text(unit.Most)} in size",
            unit.Text(si));

    private static double NotBelowZero(double si, string name, ReaderUnit unit)
        => Finite(si, name, unit) >= 0 ? si : throw Fault(name, $"must not be less than {unit.Text(0)}", unit.Text(si));

    private static double Finite(double si, string name, ReaderUnit unit)
        => Math.Abs(si) <= unit.Most ? si
        : si - si == 0 ? throw OutOfBounds(si, name, unit)
        : throw Fault(name, "must be finite", unit.Text(si));

    private static ArgumentOutOfRangeException OutOfBounds(double si, string name, ReaderUnit unit) => Fault(
        name, $"must be between {unit.Text(unit.Least)} and {unit.Text(unit.Most)} in size", unit.Text(si));
}
