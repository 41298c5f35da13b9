using BendMath.Guards;
using BendMath.Lengths;
using UnitsNet;

namespace BendMath.Cutting;

/// <summary>
/// What saw cuts make of a bar. The last piece needs no cut when it ends at the end of the bar, so n pieces fit into their lengths and n −
/// 1 kerfs.
/// </summary>
internal static class BarCuts
{
    /// <summary>A part in 10¹² of a bar is rounding, not metal.</summary>
    private const double Rounding = 1e-12;

    /// <summary>What pieces and the kerf behind each may take up together.</summary>
    public static double Room(double bar, double kerf) => bar * (1 + Rounding) + kerf;

    /// <summary>What is left of a bar whose pieces and the kerf behind each take up so much; the last cut may run out of the bar.</summary>
    public static double Offcut(double bar, double taken) => Math.Max(0, bar - taken);

    /// <summary>A length as it is cut: rounded up to what a rule shows.</summary>
    public static double Rounded(double length, LengthStyle style, string name) => Guard.NotNull(style, name).Rounding == LengthRounding.Up
        ? style.Round(length)
        : throw Guard.Refused(name, "must round up, so that no blank is short", $"is \"{style}\"");

    public static BarUtilization Pieces(double piece, double kerf, Length barLength, string name)
    {
        double bar = Guard.Positive(barLength, name);
        return TryPieces(piece, kerf, bar)
            ?? throw Guard.Fault(name, barLength, $"must give at most a million blanks of {Guard.MillimetersText(piece)}");
    }

    /// <summary>Null for more than a million blanks.</summary>
    public static BarUtilization? TryPieces(double piece, double kerf, double bar)
    {
        double count = Math.Floor(Room(bar, kerf) / (piece + kerf));
        return count <= 1e6 ? new(bar, (int)count, Offcut(bar, count * (piece + kerf))) : null;
    }
}
