using UnitsNet;

namespace BendMath.Tests.Accuracy;

/// <summary>
/// A section as a signed sum of rectangles and quarter disks, from its dimensions alone. A quarter disk has the chord s = √(r² − u²) at the
/// distance u from its center; u = 2rt/(1 + t²) makes s = r(1 − t²)/(1 + t²), so that no trigonometric function is needed.
/// </summary>
internal sealed class PreciseSection
{
    private readonly Part[] _parts;

    private PreciseSection(OrientedSection library, params Part[] parts)
    {
        Library = library;
        _parts = parts;
        Sums sums = Integrate([], _ => 1, 1);
        Area = sums.F1;
        CentroidY = sums.Fy / sums.F1;
        CentroidZ = sums.Fz / sums.F1;
    }

    /// <summary>The same section of the library.</summary>
    public OrientedSection Library { get; }

    public DoubleDouble Area { get; }

    public DoubleDouble CentroidY { get; }

    public DoubleDouble CentroidZ { get; }

    public static PreciseSection Rectangle(double depth, double width) => new(
        depth < width ? new FlatBar(Length.FromMeters(width), Length.FromMeters(depth)).EasyWay
            : new FlatBar(Length.FromMeters(depth), Length.FromMeters(width)).HardWay,
        Part.Rectangle(0, depth, 0, width));

    public static PreciseSection Round(double diameter) =>
        new(new RoundBar(Length.FromMeters(diameter)).Section, [.. Part.Disk(1, (DoubleDouble)diameter / 2, (DoubleDouble)diameter / 2)]);

    public static PreciseSection Tube(double diameter, double wall) => new(
        new RoundTube(Length.FromMeters(diameter), Length.FromMeters(wall)).Section,
        [.. Part.Disk(1, (DoubleDouble)diameter / 2, (DoubleDouble)diameter / 2),
            .. Part.Disk(-1, (DoubleDouble)diameter / 2, ((DoubleDouble)diameter / 2) - wall)]);

    /// <summary>Equal angle, flange out; both legs' inner toe corners and the corner between the legs rounded.</summary>
    public static PreciseSection Angle(double leg, double thickness, double root, double toe)
    {
        DoubleDouble a = leg;
        DoubleDouble t = thickness;
        List<Part> parts = [Part.Rectangle(0, t, 0, a), Part.Rectangle(t, a, 0, t)];
        if (root > 0)
        {
            parts.Add(Part.Rectangle(t, t + root, t, t + root));
            parts.Add(new(-1, t + root, t + root, root, -1, -1));
        }

        if (toe > 0)
        {
            parts.Add(Part.Rectangle(t - toe, t, a - toe, a, -1));
            parts.Add(new(1, t - toe, a - toe, toe, 1, 1));
            parts.Add(Part.Rectangle(a - toe, a, t - toe, t, -1));
            parts.Add(new(1, a - toe, t - toe, toe, 1, 1));
        }

        AngleFillets fillets = AngleFillets.Of(Length.FromMeters(root), Length.FromMeters(toe));
        return new(new EqualAngle(Length.FromMeters(leg), Length.FromMeters(thickness), fillets).FlangeOut, [.. parts]);
    }

    /// <summary>
    /// ∫f dA, ∫f·y dA and ∫f·z dA of a function of y that is smooth between the given levels, to an error below 1e-21 of scale·area.
    /// </summary>
    public Sums Integrate(DoubleDouble[] levels, Func<DoubleDouble, DoubleDouble> function, double scale)
    {
        Sums sums = default;
        foreach (Part part in _parts)
        {
            DoubleDouble[] cuts =
                [part.Bottom, .. levels.Where(level => level > part.Bottom && level < part.Top).OrderBy(level => (double)level), part.Top];
            for (int i = 1; i < cuts.Length; i++)
            {
                DoubleDouble from = part.ParameterAt(cuts[i - 1]);
                DoubleDouble to = part.ParameterAt(cuts[i]);
                sums = sums.Plus(GaussLegendre.Adaptive(x => part.Integrand(x, function), from, to, 1e-21 * scale * part.Size), part.Sign);
            }
        }

        return sums;
    }

    /// <summary>A rectangle (no radius) or a quarter disk around (y, z) that opens toward the signs of y and z.</summary>
    private sealed class Part(int sign, DoubleDouble y, DoubleDouble z, DoubleDouble radius, int towardY, int towardZ)
    {
        private DoubleDouble _top;

        private DoubleDouble _end;

        public int Sign => sign;

        public DoubleDouble Bottom => IsDisk && towardY < 0 ? y - radius : y;

        public DoubleDouble Top => IsDisk ? (towardY < 0 ? y : y + radius) : _top;

        /// <summary>Area of its box.</summary>
        public double Size => IsDisk ? radius.High * radius.High : (_top - y).High * (_end - z).High;

        private bool IsDisk => radius.High > 0;

        public static Part Rectangle(DoubleDouble y1, DoubleDouble y2, DoubleDouble z1, DoubleDouble z2, int sign = 1) =>
            new(sign, y1, z1, 0, 1, 1) { _top = y2, _end = z2 };

        /// <summary>Two half disks, each twice a quarter disk whose chord is centered.</summary>
        public static IEnumerable<Part> Disk(int sign, DoubleDouble center, DoubleDouble radius) =>
            from towardY in new[] { -1, 1 } select new Part(2 * sign, center, center, radius, towardY, 0);

        /// <summary>The level itself, or t with y − y_c = 2rt/(1 + t²): t = u/(1 + √(1 − u²)) for u = (y − y_c)/r.</summary>
        public DoubleDouble ParameterAt(DoubleDouble level)
        {
            if (!IsDisk)
            {
                return level;
            }

            DoubleDouble u = (level - y) / radius;
            return u / (DoubleDouble.Sqrt((1 - u) * (1 + u)) + 1);
        }

        public Sums Integrand(DoubleDouble x, Func<DoubleDouble, DoubleDouble> function)
        {
            if (!IsDisk)
            {
                DoubleDouble f = function(x) * (_end - z);
                return new(f, f * x, f * (z + _end) * 0.5);
            }

            DoubleDouble square = x * x;
            DoubleDouble inverse = 1 / (1 + square);
            DoubleDouble level = y + (radius * x * inverse * 2);
            DoubleDouble chord = radius * (1 - square) * inverse;
            DoubleDouble weighted = function(level) * chord * chord * inverse * 2;
            return new(weighted, weighted * level, weighted * (z + (chord * (0.5 * towardZ))));
        }
    }
}
