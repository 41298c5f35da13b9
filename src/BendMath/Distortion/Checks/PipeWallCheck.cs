using BendMath.Evidence;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Distortion.Checks;

/// <summary>Wall of pipe to order so that enough is left after bending, by the table of a pipe code. Immutable and thread-safe.</summary>
/// <remarks>
/// Equation: wall to order over least wall 1.06, 1.08, 1.14, 1.25 at R/D = 6, 5, 4, 3, R to the middle of the pipe; linear between the
/// rows.
/// Range: 3 ≤ R/D ≤ 6; refused outside the rows.
/// Source: <see cref="Sources.PipeBendWall"/>
/// </remarks>
internal static class PipeWallCheck
{
    private const double FirstRow = 3;

    private const double Rounding = 1e-12;

    private const string Validity =
        "Pipe bends of 3 to 6 diameters; ovality up to 8 % presumes at least 5 diameters and a schedule 40 wall.";

    private static readonly double[] Factors = [1.25, 1.14, 1.08, 1.06];

    public static Judgment Judge(LoadedBend loaded, DistortionSettings settings)
    {
        OrientedSection section = loaded.Analysis.Section;
        if (section.Features is not { TubeDiameter: not null, WallThickness: { } wall })
        {
            return default;
        }

        double ratio = loaded.State.InsideRadius / section.Height + 0.5;
        if (Factor(ratio) is not { } factor)
        {
            return Judgment.Missing(Invariant(
                $"pipe wall to order: the table of the code runs from 3 to 6 diameters, and the bend has {ratio:0.0#}"));
        }

        if (settings.RequiredWall is not { } least)
        {
            return Judgment.Missing(Invariant(
                $"pipe wall to order: no least wall after bending is given; at this radius the code orders {factor:0.00#} times it"));
        }

        double demand = factor * least.Meters / wall.Meters;
        string sentence = Invariant(
            $"For {least.Millimeters:0.##} mm of wall after bending to {ratio:0.0#} diameters the code "
                + $"orders {factor * least.Millimeters:0.##} mm; the tube has {wall.Millimeters:0.##} mm.");
        return new DistortionFinding(DistortionCheck.PipeWall,
            "pipe wall to order", demand, 1, Judgment.Level(demand, 1, 1), sentence, Sources.PipeBendWall, Validity,
                () => [Remedies.AtLeastThickness("wall", factor * least.Meters)]);
    }

    /// <summary>Wall to order over least wall at R/D; null outside the rows of the table.</summary>
    public static double? Factor(double ratio)
    {
        double place = ratio - FirstRow;
        double last = Factors.Length - 1;
        if (place < -Rounding || place > last + Rounding)
        {
            return null;
        }

        place = Math.Min(Math.Max(0, place), last);
        int row = (int)Math.Min(Math.Floor(place), last - 1);
        return Factors[row] + (place - row) * (Factors[row + 1] - Factors[row]);
    }
}
