namespace BendMath.Benchmarks;

/// <summary>
/// A sharp-cornered equal angle, flange out, of linearly hardening metal, written out by hand for speed: plain doubles in meters and
/// pascals, closed forms, no allocation. The section is a rectangle h × t with a rectangle t × (h − t) beside its inside end, so every
/// integral is one power of a positive part for each.
/// </summary>
internal sealed class HandAngle
{
    private readonly double _h;
    private readonly double _t;
    private readonly double _side;
    private readonly double _area;
    private readonly double _y;
    private readonly double _z;
    private readonly double _ib;
    private readonly double _ir;
    private readonly double _ibr;
    private readonly double _inverseDeterminant;
    private readonly double _legOffset;
    private readonly double _flangeOffset;
    private readonly double _plasticAxis;
    private readonly double _yieldStrain;
    private readonly double _rate;

    public HandAngle(double leg, double thickness, double modulus, double yield, double tangent)
    {
        double h = leg, t = thickness, s = leg - thickness;
        _h = h;
        _t = t;
        _side = s;
        _area = t * (h + s);
        _y = t * (h * h + s * t) / 2 / _area;
        _z = t * (h * t + s * (t + h)) / 2 / _area;
        _ib = t * h * h * h / 12 + t * h * (h / 2 - _y) * (h / 2 - _y) + s * t * t * t / 12 + s * t * (t / 2 - _y) * (t / 2 - _y);
        _ir = _ib;
        _ibr = t * h * (h / 2 - _y) * (t / 2 - _z) + s * t * (t / 2 - _y) * ((t + h) / 2 - _z);
        _inverseDeterminant = 1 / (_ib * _ir - _ibr * _ibr);
        _legOffset = t / 2 - _z;
        _flangeOffset = (t + h) / 2 - _z;
        _plasticAxis = _area / 2 / h;
        _yieldStrain = yield / modulus;
        _rate = 1 - tangent / modulus;
    }

    /// <summary>Inside radius and dish angle of the ring released free, from the loaded inside radius.</summary>
    public (double Inside, double Dish) Ring(double loaded)
    {
        double axis = Axis(loaded, (_y + _plasticAxis) / 2);
        (double p0, double pb, double pr) = Plastic(loaded, axis);
        double f = (_ir * pb - _ibr * pr) * _inverseDeterminant;
        double r = (_ib * pr - _ibr * pb) * _inverseDeterminant;
        return ((1 + p0 / _area - f * _y) / Math.Sqrt(f * f + r * r), Math.Atan2(r, f));
    }

    /// <summary>The inside radius alone.</summary>
    public double FinishedInside(double loaded)
    {
        double axis = Axis(loaded, (_y + _plasticAxis) / 2);
        (double p0, double pb, double pr) = Plastic(loaded, axis);
        double f = (_ir * pb - _ibr * pr) * _inverseDeterminant;
        double r = (_ib * pr - _ibr * pb) * _inverseDeterminant;
        return (1 + p0 / _area - f * _y) / Math.Sqrt(f * f + r * r);
    }

    /// <summary>
    /// The inverse: Newton in v = 1/(R + ȳ) on κ_t·R_f − (1 + e_f), with its exact slope, and with the neutral axis carried along its own
    /// slope as the next first guess.
    /// </summary>
    public double LoadedInsideFor(double finished)
    {
        double low = 0, high = 1 / _y;
        double v = 1 / (finished + _y) + 1.2 * _yieldStrain / (_h - _y);
        double axis = (_y + _plasticAxis) / 2;
        while (true)
        {
            double radius = 1 / v - _y;
            axis = Axis(radius, axis);
            (double p0, double pb, double pr) = Plastic(radius, axis);
            (double d0, double db, double dr, double axisSlope) = Slopes(radius, axis);
            double f = (_ir * pb - _ibr * pr) * _inverseDeterminant;
            double r = (_ib * pr - _ibr * pb) * _inverseDeterminant;
            double df = (_ir * db - _ibr * dr) * _inverseDeterminant;
            double dro = (_ib * dr - _ibr * db) * _inverseDeterminant;
            double total = Math.Sqrt(f * f + r * r);
            double value = total * finished - (1 + p0 / _area - f * _y);
            double slope = -((f * df + r * dro) / total * finished - (d0 / _area - df * _y)) / (v * v);
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

    /// <summary>
    /// Neutral axis: N/(E·κ) = A(ȳ − y_n) − rate·(G − H), G and H being first moments beyond the levels y_n ± c, c = e_y(R + y_n).
    /// </summary>
    private double Axis(double radius, double axis)
    {
        double low = 0, high = _h, previous = 0;
        while (true)
        {
            double c = _yieldStrain * (radius + axis);
            double above = Math.Max(0, _h - axis - c);
            double aboveFlange = Math.Max(0, _t - axis - c);
            double below = Math.Max(0, axis - c);
            double belowFlange = Math.Max(0, axis - c - _t);
            double upper = _t * above + _side * aboveFlange;
            double lower = _t * below + _side * (below - belowFlange);
            double first =
                (_t * (above * above - below * below) + _side * (aboveFlange * aboveFlange - (below - belowFlange) * (below + belowFlange)))
                    / 2;
            double value = _area * (_y - axis) - _rate * first;
            double slope = -_area + _rate * (upper * (1 + _yieldStrain) + lower * (1 - _yieldStrain));
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
                return next;
            }

            previous = step;
            axis = next;
        }
    }

    /// <summary>∫e_p dA, ∫e_p·(y − ȳ) dA, ∫e_p·(z − z̄) dA.</summary>
    private (double P0, double Pb, double Pr) Plastic(double radius, double axis)
    {
        double c = _yieldStrain * (radius + axis);
        double above = Math.Max(0, _h - axis - c);
        double aboveFlange = Math.Max(0, _t - axis - c);
        double below = Math.Max(0, axis - c);
        double belowFlange = Math.Max(0, axis - c - _t);
        double strength = _rate / (radius + axis);
        double belowSquare = (below - belowFlange) * (below + belowFlange);
        double upperFirst = (_t * above * above + _side * aboveFlange * aboveFlange) / 2;
        double lowerFirst = (_t * below * below + _side * belowSquare) / 2;
        double second = (_t * (above * above * above + below * below * below)
            + _side * (aboveFlange * aboveFlange * aboveFlange + below * below * below - belowFlange * belowFlange * belowFlange)) / 3;
        double leg = _t * (above * above - below * below) / 2;
        double flange = _side * (aboveFlange * aboveFlange - belowSquare) / 2;
        return (
            strength * (upperFirst - lowerFirst),
            strength * ((axis + c - _y) * upperFirst - (axis - c - _y) * lowerFirst + second),
            strength * (leg * _legOffset + flange * _flangeOffset));
    }

    /// <summary>Derivatives of the three with respect to R, and of the neutral axis.</summary>
    private (double P0, double Pb, double Pr, double Axis) Slopes(double radius, double axis)
    {
        double c = _yieldStrain * (radius + axis);
        double above = Math.Max(0, _h - axis - c);
        double aboveFlange = Math.Max(0, _t - axis - c);
        double below = Math.Max(0, axis - c);
        double belowFlange = Math.Max(0, axis - c - _t);
        double u = axis + c - _y;
        double l = axis - c - _y;
        double upper = _t * above + _side * aboveFlange;
        double lower = _t * below + _side * (below - belowFlange);
        double belowSquare = (below - belowFlange) * (below + belowFlange);
        double upperFirst = (_t * above * above + _side * aboveFlange * aboveFlange) / 2;
        double lowerFirst = (_t * below * below + _side * belowSquare) / 2;
        double second = (_t * (above * above * above + below * below * below)
            + _side * (aboveFlange * aboveFlange * aboveFlange + below * below * below - belowFlange * belowFlange * belowFlange)) / 3;
        double c0 = _rate * (upper + lower);
        double c1 = _rate * (u * upper + upperFirst + l * lower - lowerFirst);
        double c2 = _rate * (u * (u * upper + 2 * upperFirst) + l * (l * lower - 2 * lowerFirst) + second);
        double cr0 = _rate * (_legOffset * _t * (above + below) + _flangeOffset * _side * (aboveFlange + below - belowFlange));
        double cr1 = _rate * (
            _legOffset * _t * (u * above + above * above / 2 + l * below - below * below / 2)
            + _flangeOffset * _side * (u * aboveFlange + aboveFlange * aboveFlange / 2 + l * (below - belowFlange) - belowSquare / 2));
        double curvature = 1 / (radius + axis);
        double mean = curvature * (_y - axis);
        double stretch = _area * mean - (mean * c0 + curvature * c1);
        double axisSlope = -stretch / (_area - c0 + stretch);
        double a = -curvature * (mean + axisSlope * (1 + mean));
        double b = -curvature * curvature * (1 + axisSlope);
        return (a * c0 + b * c1, a * c1 + b * c2, a * cr0 + b * cr1, axisSlope);
    }
}
