using MathNet.Numerics.Integration;

namespace BendMath.Benchmarks;

/// <summary>
/// A bar of power-law metal, held flat, written out by hand for speed: the section is a list of rectangles and of half chords of circles,
/// in plain doubles. Rectangles take the antiderivative of the power law, or Gauss points where the strain changes too little for it; half
/// chords take Gauss points over their angle, an octave of strain at a time.
/// </summary>
internal sealed class HandPowerBar
{
    private static readonly GaussLegendreRule Rule = new(-1, 1, 12);

    private readonly double[] _nodes = Rule.Abscissas;
    private readonly double[] _weights = Rule.Weights;
    private readonly (double Low, double High, double Width)[] _rectangles;
    private readonly (double Center, double Radius, double Factor, double Low, double High)[] _chords;
    private readonly double _height;
    private readonly double _area;
    private readonly double _y;
    private readonly double _second;
    private readonly double _start;
    private readonly double _ratio;
    private readonly double _n;
    private readonly double _yieldStrain;

    private double _p0, _pb, _c0, _c1, _c2;

    private HandPowerBar(
        (double Low, double High, double Width)[] rectangles,
        (double Center, double Radius, double Factor, double Low, double High)[] chords,
        SectionProperties properties,
        double modulus,
        double strength,
        double exponent)
    {
        _rectangles = rectangles;
        _chords = chords;
        _height = properties.Depth.Meters;
        _area = properties.Area.SquareMeters;
        _y = properties.CentroidFromInside.Meters;
        _second = properties.SecondMomentAboutBendingAxis.MetersToTheFourth;
        _start = (_y + properties.EqualAreaAxisFromInside.Meters) / 2;
        _ratio = strength / modulus;
        _n = exponent;
        _yieldStrain = Math.Pow(_ratio, 1 / (1 - exponent));
    }

    public static HandPowerBar RolledAngle(double h, double t, double root, double toe, SectionProperties properties, double modulus,
        double strength, double exponent) => new(
        [(0, t - toe, h), (t - toe, t, h - toe), (t, t + root, t + root), (t + root, h - toe, t), (h - toe, h, t - toe)],
        [(t - toe, toe, 1, t - toe, t), (t + root, root, -1, t, t + root), (h - toe, toe, 1, h - toe, h)],
        properties,
        modulus,
        strength,
        exponent);

    public static HandPowerBar Tube(double diameter, double bore, SectionProperties properties, double modulus, double strength,
        double exponent)
    {
        double r = diameter / 2, b = bore / 2;
        return new([], b > 0 ? [(r, r, 2, 0, diameter), (r, b, -2, r - b, r + b)] : [(r, r, 2, 0, diameter)], properties, modulus, strength,
            exponent);
    }

    public double LoadedInsideFor(double finished)
    {
        double low = 0, high = 1 / _y;
        double v = 1 / (finished + _y) + 1.2 * _yieldStrain / Math.Max(_y, _height - _y);
        double axis = _start;
        while (true)
        {
            double radius = 1 / v - _y;
            axis = Axis(radius, axis);
            double curvature = 1 / (radius + axis);
            double mean = curvature * (_y - axis);
            double stretch = _area * mean - (mean * _c0 + curvature * _c1);
            double axisSlope = -stretch / (_area - _c0 + stretch);
            double a = -curvature * (mean + axisSlope * (1 + mean));
            double b = -curvature * curvature * (1 + axisSlope);
            double f = _pb / _second;
            double df = (a * _c1 + b * _c2) / _second;
            double value = f * finished - (1 + _p0 / _area - f * _y);
            double slope = -(df * finished - ((a * _c0 + b * _c1) / _area - df * _y)) / (v * v);
            if (value < 0)
            {
                low = v;
            }
            else
            {
                high = v;
            }

            double next = v - value / slope;
            if (!(next > low && next < high))
            {
                next = (low + high) / 2;
            }

            double nextRadius = 1 / next - _y;
            if (Math.Abs(next - v) <= 1e-10 * v)
            {
                return nextRadius;
            }

            axis += axisSlope * (nextRadius - radius);
            v = next;
        }
    }

    private double Axis(double radius, double axis)
    {
        double low = 0, high = _height, previous = 0;
        while (true)
        {
            Integrate(1 / (radius + axis), axis);
            double offset = _y - axis;
            double plastic = _p0 * (radius + axis);
            double value = _area * offset - plastic;
            double slope = _c0 - _area + (_c1 + offset * _c0 - plastic) / (radius + axis);
            if (value > 0)
            {
                low = axis;
            }
            else
            {
                high = axis;
            }

            double next = axis - value / slope;
            if (!(next >= low && next <= high))
            {
                next = (low + high) / 2;
            }

            double step = Math.Abs(next - axis);
            if (step <= 1e-10 * axis || (step <= 1e-7 * axis && step * step * step <= 2e-17 * axis * previous * previous))
            {
                Integrate(1 / (radius + next), next);
                return next;
            }

            previous = step;
            axis = next;
        }
    }

    private void Integrate(double curvature, double axis)
    {
        _p0 = _pb = _c0 = _c1 = _c2 = 0;
        double core = _yieldStrain / curvature;
        foreach ((double low, double high, double width) in _rectangles)
        {
            if (high > axis + core)
            {
                Rectangle(curvature, axis, 1, Math.Max(low, axis + core), high, width);
            }

            if (low < axis - core)
            {
                Rectangle(curvature, axis, -1, Math.Min(high, axis - core), low, width);
            }
        }

        foreach ((double center, double r, double factor, double low, double high) in _chords)
        {
            if (high > axis + core)
            {
                Chords(curvature, axis, 1, Math.Max(low, axis + core), high, center, r, factor);
            }

            if (low < axis - core)
            {
                Chords(curvature, axis, -1, Math.Min(high, axis - core), low, center, r, factor);
            }
        }
    }

    private void Rectangle(double curvature, double axis, int side, double near, double far, double width)
    {
        double e1 = Math.Max(_yieldStrain, side * curvature * (near - axis));
        double e2 = side * curvature * (far - axis);
        double d0 = axis - _y;
        double d1 = side / curvature;
        if (e2 <= 1.25 * e1)
        {
            double half = (e2 - e1) / 2, middle = (e2 + e1) / 2;
            for (int i = 0; i < _nodes.Length; i++)
            {
                double e = middle + half * _nodes[i];
                Add(half * _weights[i] * width / curvature, d0 + d1 * e, side, e);
            }

            return;
        }

        double s1 = _ratio * Math.Pow(e1, _n), s2 = _ratio * Math.Pow(e2, _n);
        double p0 = e2 * (e2 / 2 - s2 / (_n + 1)) - e1 * (e1 / 2 - s1 / (_n + 1));
        double p1 = e2 * e2 * (e2 / 3 - s2 / (_n + 2)) - e1 * e1 * (e1 / 3 - s1 / (_n + 2));
        double c0 = e2 - s2 - (e1 - s1);
        double c1 = e2 * (e2 / 2 - _n * s2 / (_n + 1)) - e1 * (e1 / 2 - _n * s1 / (_n + 1));
        double c2 = e2 * e2 * (e2 / 3 - _n * s2 / (_n + 2)) - e1 * e1 * (e1 / 3 - _n * s1 / (_n + 2));
        double w = width / curvature;
        _p0 += side * w * p0;
        _pb += side * w * (d0 * p0 + d1 * p1);
        _c0 += w * c0;
        _c1 += w * (d0 * c0 + d1 * c1);
        _c2 += w * (d0 * d0 * c0 + 2 * d0 * d1 * c1 + d1 * d1 * c2);
    }

    private void Chords(double curvature, double axis, int side, double near, double far, double center, double r, double factor)
    {
        double from = near;
        double strain = Math.Max(_yieldStrain, side * curvature * (near - axis));
        while (true)
        {
            strain *= 2;
            double knot = axis + side * strain / curvature;
            bool last = side * (far - knot) <= 0;
            double to = last ? far : knot;
            double start = Angle(from, center, r), end = Angle(to, center, r);
            int parts = (int)Math.Ceiling(Math.Abs(end - start) / 1.6);
            for (int part = 0; part < parts; part++)
            {
                double half = (end - start) / parts / 2;
                double middle = start + (2 * part + 1) * half;
                for (int i = 0; i < _nodes.Length; i++)
                {
                    (double sine, double cosine) = Math.SinCos(middle + half * _nodes[i]);
                    double y = center + r * sine;
                    Add(Math.Abs(half) * _weights[i] * r * r * cosine * cosine * factor, y - _y, side,
                        Math.Max(_yieldStrain, side * curvature * (y - axis)));
                }
            }

            if (last)
            {
                return;
            }

            from = to;
        }
    }

    private static double Angle(double level, double center, double r)
    {
        double u = level - center;
        return Math.Atan2(u, Math.Sqrt(Math.Max(0, (r - u) * (r + u))));
    }

    private void Add(double weight, double d, int side, double e)
    {
        double stress = _ratio * Math.Pow(e, _n);
        double plastic = side * weight * (e - stress);
        double rate = weight * (1 - _n * stress / e);
        _p0 += plastic;
        _pb += plastic * d;
        _c0 += rate;
        _c1 += rate * d;
        _c2 += rate * d * d;
    }
}
