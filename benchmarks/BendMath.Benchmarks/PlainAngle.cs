namespace BendMath.Benchmarks;

/// <summary>
/// The figures of an equal angle by hand on plain doubles: two rectangles, the spandrel in the root added, those at the toes taken off. A
/// spandrel is a square of side r less a quarter circle about its far corner. No classes, no units, this shape only.
/// </summary>
internal struct PlainAngle
{
    private double _area, _y, _yy, _yz;

    public static double Sum(double leg, double t, double root, double toe)
    {
        PlainAngle sums = default;
        sums.Rectangle(0, t, 0, leg);
        sums.Rectangle(t, leg, 0, t);
        sums.Spandrel(t, t, root, 1, 1, 1);
        sums.Spandrel(t, leg, toe, -1, -1, -1);
        sums.Spandrel(leg, t, toe, -1, -1, -1);
        double area = sums._area;
        double c = sums._y / area;
        double i = sums._yy - area * c * c;
        double product = sums._yz - area * c * c;
        double major = i + Math.Abs(product);
        double minor = i - Math.Abs(product);
        double angle = -0.5 * Math.Atan2(2 * product, 0);
        (double level, double plastic) = Plastic(leg, t, root, toe, area, c);
        double perimeter = 4 * leg - (2 - Math.PI / 2) * (2 * toe + root);
        double gyration = Math.Sqrt(i / area);
        return area + 2 * leg + 2 * c + 2 * i + product + major + minor + angle
            + 2 * i / c + 2 * i / (leg - c) + 2 * level + 2 * plastic + plastic * (leg - c) / i
            + 2 * gyration + Math.Sqrt(major / area) + Math.Sqrt(minor / area) + perimeter;
    }

    /// <summary>
    /// For an axis that crosses the toe of the lying leg, as in every angle whose legs are not very thick: Newton on the area below.
    /// </summary>
    private static (double Level, double Modulus) Plastic(double leg, double t, double root, double toe, double area, double centroid)
    {
        double level = area / 2 / leg;
        double first = 0;
        for (int i = 0; i < 20; i++)
        {
            double u = Math.Max(0, level - t + toe);
            double s = Math.Sqrt(Math.Max(0, (toe - u) * (toe + u)));
            double missing = toe * u - (u * s + toe * toe * Math.Atan2(u, s)) / 2;
            first = leg * level * level / 2 - (t - toe) * missing - (toe * u * u / 2 - (toe * toe * toe - s * s * s) / 3);
            double excess = leg * level - missing - area / 2;
            level -= excess / (leg - toe + s);
            if (Math.Abs(excess) < 1e-15 * area)
            {
                break;
            }
        }

        _ = root;
        return (level, centroid * area - 2 * first);
    }

    private void Rectangle(double y1, double y2, double z1, double z2)
    {
        double area = (y2 - y1) * (z2 - z1);
        double y = (y1 + y2) / 2;
        double z = (z1 + z2) / 2;
        _area += area;
        _y += area * y;
        _yy += area * (y * y + (y2 - y1) * (y2 - y1) / 12);
        _yz += area * y * z;
    }

    /// <summary>In the corner (y, z), reaching from it in the directions sy and sz.</summary>
    private void Spandrel(double y, double z, double r, int sy, int sz, int sign)
    {
        double square = r * r;
        double quarter = Math.PI * square / 4;
        double reach = r - 4 * r / (3 * Math.PI);
        double area = square - quarter;
        double first = square * r / 2 - quarter * reach;
        double second =
            square * square / 3 - (Math.PI * square * square / 16 - quarter * (r - reach) * (r - reach) + quarter * reach * reach);
        double cross = square * square / 4 - (square * square / 8 - quarter * (r - reach) * (r - reach) + quarter * reach * reach);
        _area += sign * area;
        _y += sign * (area * y + sy * first);
        _yy += sign * (area * y * y + 2 * sy * y * first + second);
        _yz += sign * (area * y * z + sz * y * first + sy * z * first + sy * sz * cross);
    }
}
