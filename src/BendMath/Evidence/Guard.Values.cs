using UnitsNet;
using UnitsNet.Units;

namespace BendMath;

internal static partial class Guard
{
    /// <summary>Per metre, greater than zero.</summary>
    public static double Positive(ReciprocalLength value, string name) => Positive(InverseMeters(value, name), name, InverseMeter);

    /// <summary>Per metre, zero or greater.</summary>
    public static double NonNegative(ReciprocalLength value, string name) => NonNegative(InverseMeters(value, name), name, InverseMeter);

    /// <inheritdoc cref="Fault(string, Length, string)"/>
    public static ArgumentOutOfRangeException Fault(string name, ReciprocalLength value, string rule) => Fault(
        name, rule, InverseMeter.Text(InverseMeters(value, name)));

    /// <summary>The value itself, or an exception by name when the enumeration does not define it.</summary>
    public static TEnum Defined<TEnum>(TEnum value, string name)
        where TEnum : struct, Enum =>
#if NETSTANDARD2_0
        Enum.IsDefined(typeof(TEnum), value)
#else
        Enum.IsDefined(value)
#endif
            ? value
            : throw new ArgumentOutOfRangeException(name, $"{name} must be a defined {typeof(TEnum).Name}, but is {value:D}.");

    /// <summary>The text itself, or an exception by name when it is null, empty or blank.</summary>
    public static string NotEmpty(string? value, string name) => string.IsNullOrWhiteSpace(NotNull(value, name))
        ? throw new ArgumentException($"{name} must not be empty.", name)
        : value!;

    private static double InverseMeters(ReciprocalLength value, string name) =>
        (int)value.Unit == (int)ReciprocalLengthUnit.InverseMeter ? value.Value
        : Array.IndexOf(ReciprocalLength.Units, value.Unit) >= 0 ? Convert(value, name, static quantity => quantity.InverseMeters)
        : throw UnknownUnit(name, nameof(ReciprocalLengthUnit), (int)value.Unit);
}
