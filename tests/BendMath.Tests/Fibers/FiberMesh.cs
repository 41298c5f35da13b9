using BendMath.Tests.Properties;
using MathNet.Numerics.Integration;

namespace BendMath.Tests.Fibers;

/// <summary>A fiber: its place, from the inside face and from the edge, and its area, negative where a bore is taken away.</summary>
internal readonly record struct Fiber(double Y, double Z, double Area);

/// <summary>
/// A section cut into fibers at Gauss points, from the sizes of the stock alone: rectangles, and quarter disks whose points are laid out
/// over the angle. Meters. Between the given levels nothing is cut, so that a stress that is smooth there is integrated to rounding.
/// </summary>
internal static class FiberMesh
{
    public static Fiber[] Of(SoldBar bar, double[] levels, int pieces, int acrossPieces)
    {
        double size = bar.Size / 1e3;
        double thickness = bar.Thickness / 1e3;
        return bar.Kind switch
        {
            "flat" => [.. bar.Lies == 0 ? Rectangle(0, thickness, 0, size) : Rectangle(0, size, 0, thickness)],
            "square" => [.. Rectangle(0, size, 0, size)],
            "round" => [.. Disk(1, size / 2, size / 2)],
            "tube" => [.. Disk(1, size / 2, size / 2), .. Disk(-1, size / 2, (size / 2) - thickness)],
            _ => [.. Angle().Select(fiber => bar.Lies == 0 ? fiber : fiber with { Y = size - fiber.Y })],
        };

        IEnumerable<Fiber> Angle()
        {
            double root = bar.Root / 1e3;
            double toe = root / 2;
            levels = bar.Lies == 0 ? levels : [.. levels.Select(level => size - level)];
            IEnumerable<Fiber> all = [.. Rectangle(0, thickness, 0, size), .. Rectangle(thickness, size, 0, thickness)];
            return root == 0 ? all :
            [
                .. all,
                .. Rectangle(thickness, thickness + root, thickness, thickness + root),
                .. Quarter(-1, thickness + root, thickness + root, root, -1, -1),
                .. Rectangle(thickness - toe, thickness, size - toe, size, -1),
                .. Quarter(1, thickness - toe, size - toe, toe, 1, 1),
                .. Rectangle(size - toe, size, thickness - toe, thickness, -1),
                .. Quarter(1, size - toe, thickness - toe, toe, 1, 1),
            ];
        }

        IEnumerable<Fiber> Rectangle(double y1, double y2, double z1, double z2, int sign = 1) =>
            from y in Points(y1, y2, level => level)
            from z in Gauss(z1, z2, acrossPieces)
            select new Fiber(y.At, z.At, sign * y.Weight * z.Weight);

        IEnumerable<Fiber> Disk(int sign, double center, double radius) =>
            from towardY in new[] { -1, 1 }
            from towardZ in new[] { -1, 1 }
            from fiber in Quarter(sign, center, center, radius, towardY, towardZ)
            select fiber;

        IEnumerable<Fiber> Quarter(int sign, double y, double z, double radius, int towardY, int towardZ) =>
            from angle in Points(0, Math.PI / 2, level => Math.Asin(Math.Clamp((level - y) * towardY / radius, 0, 1)))
            let chord = radius * Math.Cos(angle.At)
            from across in Gauss(0, chord, acrossPieces)
            select new Fiber(y + (towardY * radius * Math.Sin(angle.At)), z + (towardZ * across.At),
                sign * angle.Weight * chord * across.Weight);

        IEnumerable<(double At, double Weight)> Points(double from, double to, Func<double, double> parameter)
        {
            double[] cuts = [from, .. levels.Select(parameter).Where(cut => cut > from && cut < to).Order(), to];
            return cuts.Zip(cuts.Skip(1)).SelectMany(pair => Gauss(pair.First, pair.Second, pieces));
        }
    }

    private static IEnumerable<(double At, double Weight)> Gauss(double start, double end, int pieces)
    {
        GaussLegendreRule rule = new(-1, 1, pieces == 1 ? 16 : 3);
        double half = (end - start) / pieces / 2;
        return from piece in Enumerable.Range(0, pieces)
               from i in Enumerable.Range(0, rule.Order)
               select (start + (half * ((2 * piece) + 1 + rule.Abscissas[i])), half * rule.Weights[i]);
    }
}
