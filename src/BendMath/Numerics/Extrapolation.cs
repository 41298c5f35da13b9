namespace BendMath.Numerics;

/// <summary>
/// The polynomial through the last few values of a function and their slopes: Newton's divided differences, each place counted twice, kept
/// from the newest place backward.
/// </summary>
internal struct Extrapolation
{
    private const int Order = 12;

    private readonly double[] _places = new double[Order];

    private readonly double[] _differences = new double[Order];

    private int _count;

    public Extrapolation()
    {
    }

    public readonly bool IsEmpty => _count == 0;

    /// <summary>Whether a place is no farther away than the places are apart, twice over.</summary>
    public readonly bool Reaches(double place) =>
        _count <= 2 || Math.Abs(place - _places[0]) <= 2 * Math.Abs(_places[0] - _places[_count - 1]);

    public void Clear() => _count = 0;

    public void Add(double place, double value, double slope)
    {
        if (_count > 0 && place == _places[0])
        {
            return;
        }

        Push(place, value, double.NaN);
        Push(place, value, slope);
    }

    public readonly double At(double place)
    {
        double sum = _differences[_count - 1];
        for (int k = _count - 2; k >= 0; k--)
        {
            sum = _differences[k] + (place - _places[k]) * sum;
        }

        return sum;
    }

    /// <summary>Along the slope of the newest place.</summary>
    public readonly double AlongSlope(double place) => _differences[0] + (place - _places[0]) * _differences[1];

    private void Push(double place, double value, double slope)
    {
        double newest = value;
        int last = Math.Min(_count, Order - 1);
        for (int k = 0; k <= last; k++)
        {
            double old = _differences[k];
            _differences[k] = newest;
            if (k < last)
            {
                newest = k == 0 && !double.IsNaN(slope) ? slope : (newest - old) / (place - _places[k]);
            }
        }

        for (int k = last; k > 0; k--)
        {
            _places[k] = _places[k - 1];
        }

        _places[0] = place;
        _count = last + 1;
    }
}
