namespace BendMath.Benchmarks;

/// <summary>
/// The textbook way for a section of any shape: its outline, straight edges and quarter arcs, is cut by chords of equal distance. Midpoint
/// sums give area and moments, running sums the equal-area axis; a second set of chords, across the first, the plastic modulus of the other
/// direction.
/// </summary>
internal sealed class ChordOutline(ChordOutline.Side[] sides, double depth, double width, double perimeter, int count)
{
    private readonly double[] _chords = new double[count];

    private readonly Side[] _across = [.. sides.Select(side => side.Exchanged())];

    public static ChordOutline Angle(double leg, double t, double root, double toe, int count) => new(
        [
            new(0, leg, t - toe, leg),
            new(t - toe, leg, t, leg - toe, t - toe, leg - toe, toe, 1),
            new(t, t + root, t + root, t, t + root, t + root, root, -1),
            new(t + root, t, leg - toe, t),
            new(leg - toe, t, leg, t - toe, leg - toe, t - toe, toe, 1),
            new(leg, 0, 0, 0),
            new(0, 0, 0, leg),
            new(t, leg - toe, t, t + root),
            new(leg, t - toe, leg, 0),
        ],
        leg,
        leg,
        4 * leg - (2 - Math.PI / 2) * (2 * toe + root),
        count);

    public double Sum()
    {
        double area = 0, y = 0, z = 0, yy = 0, zz = 0, yz = 0;
        double height = depth / count;
        for (int i = 0; i < count; i++)
        {
            double level = (i + 0.5) * height;
            double chord = 0, first = 0, second = 0;
            foreach (ref readonly Side side in sides.AsSpan())
            {
                if (side.Y1 > level != side.Y2 > level)
                {
                    double at = side.Cut(level);
                    double signed = side.Y2 > side.Y1 ? at : -at;
                    chord += signed;
                    first += signed * at / 2;
                    second += signed * at * at / 3;
                }
            }

            _chords[i] = chord;
            area += chord * height;
            y += chord * height * level;
            z += first * height;
            yy += chord * height * level * level;
            zz += second * height;
            yz += first * height * level;
        }

        (double levelY, double plasticY) = Plastic(height, area);
        height = width / count;
        for (int i = 0; i < count; i++)
        {
            double level = (i + 0.5) * height;
            double chord = 0;
            foreach (ref readonly Side side in _across.AsSpan())
            {
                if (side.Y1 > level != side.Y2 > level)
                {
                    chord += side.Y2 > side.Y1 ? side.Cut(level) : -side.Cut(level);
                }
            }

            _chords[i] = -chord;
        }

        (double levelZ, double plasticZ) = Plastic(height, area);
        double cy = y / area;
        double cz = z / area;
        double b = yy - area * cy * cy;
        double r = zz - area * cz * cz;
        double product = yz - area * cy * cz;
        double mean = (b + r) / 2;
        double radius = Math.Sqrt((b - r) * (b - r) / 4 + product * product);
        double angle = -0.5 * Math.Atan2(2 * product, b - r);
        return area + depth + width + cy + cz + b + r + product + mean + radius + mean - radius + angle
            + b / cy + b / (depth - cy) + r / cz + r / (width - cz)
            + levelY + plasticY + levelZ + plasticZ + plasticY * (depth - cy) / b
            + Math.Sqrt(b / area) + Math.Sqrt(r / area) + Math.Sqrt((mean + radius) / area) + Math.Sqrt((mean - radius) / area) + perimeter;
    }

    private (double Level, double Modulus) Plastic(double height, double area)
    {
        double below = 0;
        int half = 0;
        while (below + _chords[half] * height < area / 2)
        {
            below += _chords[half++] * height;
        }

        double level = half * height + (area / 2 - below) / _chords[half];
        double modulus = 0;
        for (int i = 0; i < count; i++)
        {
            modulus += _chords[i] * height * Math.Abs((i + 0.5) * height - level);
        }

        return (level, modulus);
    }

    /// <summary>A straight edge, or an arc that rises or falls all along and lies to one side of its center.</summary>
    internal readonly struct Side(double y1, double z1, double y2, double z2, double centerY = 0, double centerZ = 0, double radius = 0,
        int bulge = 0)
    {
        public double Y1 { get; } = y1;

        public double Y2 { get; } = y2;

        public double Cut(double y)
        {
            if (radius == 0)
            {
                return z1 + (z2 - z1) * (y - Y1) / (Y2 - Y1);
            }

            double u = y - centerY;
            return centerZ + bulge * Math.Sqrt(radius * radius - u * u);
        }

        public Side Exchanged() => new(z1, Y1, z2, Y2, centerZ, centerY, radius, bulge);
    }
}
