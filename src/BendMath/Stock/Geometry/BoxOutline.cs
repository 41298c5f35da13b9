using BendMath.Guards;
using BendMath.Sections;
using BendMath.Sections.Features;
using UnitsNet;

namespace BendMath.Stock.Geometry;

/// <summary>The outline of a square or rectangular tube.</summary>
internal static class BoxOutline
{
    /// <summary>Refuses walls that leave no bore and corners that do not fit, judged on the smaller outside dimension.</summary>
    public static void Check(double smaller, string nameOfSmaller, Length wall, double wallMeters, CornerRadii corners)
    {
        if (2 * wallMeters >= smaller)
        {
            throw Guard.Fault(nameof(wall), wall, $"must be smaller than half the {nameOfSmaller}, {Guard.MillimetersText(smaller / 2)}");
        }

        if (2 * corners.OutsideMeters > smaller)
        {
            throw Guard.Fault(nameof(corners), corners.Outside,
                $"must have an outside radius not greater than half the {nameOfSmaller}, {Guard.MillimetersText(smaller / 2)}");
        }

        if (2 * corners.InsideMeters > smaller - 2 * wallMeters)
        {
            throw Guard.Fault(nameof(corners), corners.Inside,
                $"must have an inside radius not greater than half the smaller side of the "
                    + $"bore, {Guard.MillimetersText(smaller / 2 - wallMeters)}");
        }

        // On the diagonal of a corner the bore begins at w·√2 + r·(√2 − 1) from the outer corner and the material at R·(√2 − 1).
        double largest = corners.InsideMeters + wallMeters * (2 + Math.Sqrt(2));
        if (corners.OutsideMeters >= largest)
        {
            throw Guard.Fault(nameof(corners), corners.Outside,
                $"must have an outside radius smaller than {Guard.MillimetersText(largest)}, else no wall is left in the corners");
        }
    }

    public static OrientedSection Oriented(BarStock stock, Orientation orientation, double depth, double width, double wall,
        CornerRadii corners) => new(
        stock,
        orientation,
        [CornerOutline.Rectangle(depth, width, corners.OutsideMeters), CornerOutline.Bore(depth, width, wall, corners.InsideMeters)],
        new SectionFeatures(depth, wall: wall)
        {
            Walls = WallLayout.Box(depth, width, wall, isWhole: corners.OutsideMeters == 0 && corners.InsideMeters == 0),
        },
        OpenShapeFormulas.Center(depth, width));
}
