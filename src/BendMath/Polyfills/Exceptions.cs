#if NETSTANDARD2_0
using System.Diagnostics.CodeAnalysis;
using System.Runtime.CompilerServices;

namespace BendMath;

/// <summary>Argument checks of newer runtimes, as static extension members: code that calls them reads the same for every target.</summary>
internal static class ExceptionPolyfills
{
    extension(ArgumentNullException)
    {
        public static void ThrowIfNull([NotNull] object? argument, [CallerArgumentExpression(nameof(argument))] string? paramName = null)
        {
            if (argument is null)
            {
                throw new ArgumentNullException(paramName);
            }
        }
    }

    extension(ArgumentException)
    {
        public static void ThrowIfNullOrEmpty([NotNull] string? argument, [CallerArgumentExpression(nameof(argument))] string? paramName = null)
        {
            ArgumentNullException.ThrowIfNull(argument, paramName);
            if (argument.Length == 0)
            {
                throw new ArgumentException("The value cannot be an empty string.", paramName);
            }
        }

        public static void ThrowIfNullOrWhiteSpace([NotNull] string? argument, [CallerArgumentExpression(nameof(argument))] string? paramName = null)
        {
            ArgumentNullException.ThrowIfNull(argument, paramName);
            if (string.IsNullOrWhiteSpace(argument))
            {
                throw new ArgumentException("The value cannot be an empty string or composed entirely of whitespace.", paramName);
            }
        }
    }

    extension(ArgumentOutOfRangeException)
    {
        public static void ThrowIfNegative(int value, [CallerArgumentExpression(nameof(value))] string? paramName = null) =>
            ThrowUnless(value >= 0, value, "a non-negative value", paramName);

        public static void ThrowIfNegativeOrZero(int value, [CallerArgumentExpression(nameof(value))] string? paramName = null) =>
            ThrowUnless(value > 0, value, "a non-negative and non-zero value", paramName);

        public static void ThrowIfGreaterThan<T>(T value, T other, [CallerArgumentExpression(nameof(value))] string? paramName = null)
            where T : IComparable<T> => ThrowUnless(value.CompareTo(other) <= 0, value, $"less than or equal to '{other}'", paramName);

        public static void ThrowIfLessThan<T>(T value, T other, [CallerArgumentExpression(nameof(value))] string? paramName = null)
            where T : IComparable<T> => ThrowUnless(value.CompareTo(other) >= 0, value, $"greater than or equal to '{other}'", paramName);
    }

    private static void ThrowUnless<T>(bool lawful, T value, string rule, string? paramName)
    {
        if (!lawful)
        {
            throw new ArgumentOutOfRangeException(paramName, value, $"{paramName} ('{value}') must be {rule}.");
        }
    }
}
#endif
