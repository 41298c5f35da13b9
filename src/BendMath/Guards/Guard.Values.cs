using UnitsNet;
using UnitsNet.Units;

namespace BendMath.Guards;

internal static partial class Guard
{
    /// <summary>Per meter, greater than zero.</summary>
    public static double Positive(ReciprocalLength value, string name) => Positive(InverseMeters(value, name), name, InverseMeter);

    /// <summary>Per meter, zero or greater: a place on the curve of moment over curvature.</summary>
    public static double Place(ReciprocalLength value, string name) => NotBelowZero(InverseMeters(value, name), name, InverseMeter);

    /// <inheritdoc cref="Fault(string, Length, string)"/>
    public static ArgumentOutOfRangeException Fault(string name, ReciprocalLength value, string rule) => Fault(
        name, rule, InverseMeter.Text(InverseMeters(value, name)));

    /// <summary>Newtons per meter, greater than zero.</summary>
    public static double Positive(ForcePerLength value, string name) =>
        Positive(NewtonsPerMeter(value, name), name, NewtonPerMillimeter);

    /// <summary>Meters to the fourth, greater than zero.</summary>
    public static double Positive(AreaMomentOfInertia value, string name) =>
        Positive(MetersToTheFourth(value, name), name, MillimeterToTheFourth);

    /// <summary>The value itself, or an exception by name when the enumeration does not define it.</summary>
    public static TEnum Defined<TEnum>(TEnum value, string name)
        where TEnum : struct, Enum =>
        Array.IndexOf(DefinedValues<TEnum>.All, value) >= 0
            ? value
            : throw OutOfRange(name, $"must be a defined {typeof(TEnum).Name}", $"is {value:D}");

    /// <summary>The text itself, or an exception by name when it is null, empty or blank.</summary>
    public static string NotEmpty(string? value, string name) => string.IsNullOrWhiteSpace(NotNull(value, name))
        ? throw Refused(name, "must not be empty")
        : value!;

    /// <summary>A name or a note: one line that is not empty, without characters that steer a terminal.</summary>
    public static string Line(string? value, string name)
    {
        foreach (char c in NotEmpty(value, name))
        {
            if (char.IsControl(c) || c is '\u2028' or '\u2029')
            {
                throw Refused(name, "must be one line of printable characters", Invariant($"holds U+{(int)c:X4}"));
            }
        }

        return value!;
    }

    /// <summary>A copy of the list, or an exception by name when the list or an item is null or there are too few items.</summary>
    public static T[] Items<T>(IReadOnlyList<T>? items, string name, int atLeast)
        where T : class
    {
        T[] copy = [.. NotNull(items, name)];
        return copy.Length < atLeast
            ? throw Refused(name, Invariant($"must hold at least {atLeast}"), Invariant($"holds {copy.Length}"))
            : Array.IndexOf(copy, null) is >= 0 and int place
            ? throw Refused(name, "must not hold null", Invariant($"does at place {place + 1}"))
            : copy;
    }

    private static double MetersToTheFourth(AreaMomentOfInertia value, string name) =>
        Array.IndexOf(AreaMomentOfInertia.Units, value.Unit) >= 0
            ? Convert(value, name, static quantity => quantity.MetersToTheFourth)
            : throw UnknownUnit(name, nameof(AreaMomentOfInertiaUnit), (int)value.Unit);

    private static double NewtonsPerMeter(ForcePerLength value, string name) =>
        Array.IndexOf(ForcePerLength.Units, value.Unit) >= 0
            ? Convert(value, name, static quantity => quantity.NewtonsPerMeter)
            : throw UnknownUnit(name, nameof(ForcePerLengthUnit), (int)value.Unit);

    private static double InverseMeters(ReciprocalLength value, string name) =>
        (int)value.Unit == (int)ReciprocalLengthUnit.InverseMeter ? value.Value
        : Array.IndexOf(ReciprocalLength.Units, value.Unit) >= 0 ? Convert(value, name, static quantity => quantity.InverseMeters)
        : throw UnknownUnit(name, nameof(ReciprocalLengthUnit), (int)value.Unit);

    private static class DefinedValues<TEnum>
        where TEnum : struct, Enum
    {
#if NETSTANDARD2_0
        public static readonly TEnum[] All = (TEnum[])Enum.GetValues(typeof(TEnum));
#else
        public static readonly TEnum[] All = Enum.GetValues<TEnum>();
#endif
    }
}
