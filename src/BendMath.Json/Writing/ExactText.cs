using System.Globalization;

namespace BendMath.Json.Writing;

/// <summary>
/// Numbers as text that reads back as the same double: the shortest digits that do, their decimal point moved instead of the number
/// multiplied.
/// </summary>
internal static class ExactText
{
    public static string Millimeters(double meters) => Shifted(meters, 3) + " mm";

    public static string Megapascals(double pascals) => Shifted(pascals, -6) + " MPa";

    public static string Percent(double share) => Shifted(share, 2) + " %";

    /// <summary>In degrees where some number of degrees reads back as the same angle, in radians otherwise.</summary>
    public static string Angle(double radians)
    {
        double degrees = radians * (180 / Math.PI);
        foreach (double near in new[] { Math.Round(degrees, 9), degrees, Next(degrees, 1), Next(degrees, -1) })
        {
            if (near * (Math.PI / 180) == radians)
            {
                return Shifted(near, 0) + " deg";
            }
        }

        return Shifted(radians, 0) + " rad";
    }

    /// <summary>The digits of a positive number or zero, the point moved to the right by a number of places; without an exponent.</summary>
    public static string Shifted(double value, int places)
    {
        string[] parts = value.ToString("R", CultureInfo.InvariantCulture).Split('E');
        int power = places + (parts.Length < 2 ? 0 : int.Parse(parts[1], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture));
        string mantissa = parts[0];
        int point = mantissa.IndexOf('.');
        string digits = mantissa.Replace(".", string.Empty);
        int whole = (point < 0 ? mantissa.Length : point) + power;
        if (whole <= 0)
        {
            digits = new string('0', 1 - whole) + digits;
            whole = 1;
        }
        else if (whole > digits.Length)
        {
            digits += new string('0', whole - digits.Length);
        }

        string before = digits.Substring(0, whole).TrimStart('0');
        string after = digits.Substring(whole).TrimEnd('0');
        return (before.Length == 0 ? "0" : before) + (after.Length == 0 ? string.Empty : "." + after);
    }

    private static double Next(double value, int step) => BitConverter.Int64BitsToDouble(BitConverter.DoubleToInt64Bits(value) + step);
}
