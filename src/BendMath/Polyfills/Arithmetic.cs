#if NETSTANDARD2_0
namespace BendMath;

/// <summary>
/// Members of <see cref="double"/>, <see cref="Math"/> and <see cref="Enum"/> of newer runtimes, as static extension members.
/// </summary>
internal static class ArithmeticPolyfills
{
    extension(double)
    {
        public static bool IsFinite(double value) => value - value == 0;

        public static bool IsNegative(double value) => BitConverter.DoubleToInt64Bits(value) < 0;
    }

    extension(Math)
    {
        public static double Clamp(double value, double min, double max) => Math.Min(Math.Max(value, Lowest(min, max)), max);

        public static int Clamp(int value, int min, int max) =>
            min <= max ? Math.Min(Math.Max(value, min), max) : throw new ArgumentException($"'{min}' cannot be greater than {max}.", nameof(min));

        /// <summary>One Newton step after the power brings the last bits right.</summary>
        public static double Cbrt(double value)
        {
            double root = Math.Pow(Math.Abs(value), 1.0 / 3);
            root = root > 0 && root - root == 0 ? root - (root - Math.Abs(value) / (root * root)) / 3 : root;
            return value < 0 ? -root : root;
        }

        public static double CopySign(double magnitude, double sign) => double.IsNegative(sign) ? -Math.Abs(magnitude) : Math.Abs(magnitude);
    }

    extension(Enum)
    {
        public static bool IsDefined<TEnum>(TEnum value)
            where TEnum : struct, Enum => Enum.IsDefined(typeof(TEnum), value);

        public static TEnum[] GetValues<TEnum>()
            where TEnum : struct, Enum => (TEnum[])Enum.GetValues(typeof(TEnum));
    }

    private static double Lowest(double min, double max) =>
        min <= max ? min : throw new ArgumentException($"'{min}' cannot be greater than {max}.", nameof(min));
}
#endif
