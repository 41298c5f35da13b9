namespace BendMath.Distortion.Shape;

/// <summary>
/// A small symmetric system A·x = b, of which only the lower half is filled and used. Cholesky's factors; a pivot that is not positive is
/// replaced, which shortens the step along directions the work does not resist. MathNet's factorization throws there and takes several
/// times as long at this size.
/// </summary>
internal sealed class SymmetricSystem(int size)
{
    private const double LeastPivot = 1e-12;

    private readonly double[] _lower = new double[size * size];

    private readonly double[] _scale = new double[size];

    public int Size => size;

    public double[] Right { get; } = new double[size];

    public ref double this[int row, int column] => ref _lower[row * size + column];

    public void Clear()
    {
        Array.Clear(_lower, 0, _lower.Length);
        Array.Clear(Right, 0, size);
    }

    /// <summary>Factors in place and puts the solution into <see cref="Right"/>; whether every pivot was positive.</summary>
    public bool Solve()
    {
        bool definite = true;
        for (int i = 0; i < size; i++)
        {
            Span<double> row = _lower.AsSpan(i * size, i + 1);
            _scale[i] = Math.Abs(row[i]);
            for (int j = 0; j <= i; j++)
            {
                ReadOnlySpan<double> other = _lower.AsSpan(j * size, j + 1);
                double sum = row[j];
                for (int k = 0; k < j; k++)
                {
                    sum -= row[k] * other[k];
                }

                if (j < i)
                {
                    row[j] = sum / other[j];
                    continue;
                }

                bool positive = sum > LeastPivot * _scale[i];
                definite &= positive;
                row[i] = Math.Sqrt(positive ? sum : Math.Max(_scale[i], double.Epsilon));
            }
        }

        Back();
        return definite;
    }

    private void Back()
    {
        for (int i = 0; i < size; i++)
        {
            double sum = Right[i];
            for (int k = 0; k < i; k++)
            {
                sum -= _lower[i * size + k] * Right[k];
            }

            Right[i] = sum / _lower[i * size + i];
        }

        for (int i = size - 1; i >= 0; i--)
        {
            double sum = Right[i];
            for (int k = i + 1; k < size; k++)
            {
                sum -= _lower[k * size + i] * Right[k];
            }

            Right[i] = sum / _lower[i * size + i];
        }
    }
}
