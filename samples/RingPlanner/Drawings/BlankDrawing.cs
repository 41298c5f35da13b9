using BendMath;
using RingPlanner.Pages;

namespace RingPlanner.Drawings;

/// <summary>The straight blank with its marks; not to scale, so that short ends can be read.</summary>
internal static class BlankDrawing
{
    public static string Of(PlannedRing ring, Units units)
    {
        DevelopedLayout layout = ring.Layout;
        const double left = 30, right = 610, top = 60, depth = 34;
        bool ends = layout.Ends.Total.Meters > 0;
        double first = ends ? left + 90 : left;
        double second = ends ? right - 90 : right;
        Svg svg = new(640, 190);
        svg.Rectangle(left, top, right - left, depth, ends ? "spoiled" : "bar").Rectangle(first, top, second - first, depth, "bar");
        svg.Words((first + second) / 2, top + 22, layout.Arc.IsFullRing ? "the ring" : "the arc");
        svg.Across(first, second, top - 12, units.Size(layout.DevelopedLength));
        if (ends)
        {
            svg.Line(first, top - 4, first, top + depth + 14).Line(second, top - 4, second, top + depth + 14);
            svg.Words(first, top + depth + 30, units.Mark(layout.ArcStartMark))
                .Words(second, top + depth + 30, units.Mark(layout.ArcEndMark));
            svg.Words((left + first) / 2, top + 22, "start").Words((second + right) / 2, top + 22, "end, trim");
        }

        svg.Across(left, right, top + depth + 66, $"cut to {units.Cut(layout.BlankLength)}");
        return svg.ToString();
    }
}
