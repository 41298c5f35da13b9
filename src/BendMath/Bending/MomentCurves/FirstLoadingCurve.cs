namespace BendMath.Bending.MomentCurves;

/// <summary>
/// κ_p(M): the permanent curvature that first loading of a straight, held-flat bar to a moment leaves, with the stretch of the centroid
/// line that comes with it. Tabulated from <see cref="MomentCurve"/>, with the exact slope dκ_p/dM = 1/(dM/dκ) − 1/(E·I_b) at every node,
/// and cubic between; nodes are set closer until the curve is met within 1e-8 of the loaded curvature at the middle of each cell. It ends
/// at the tightest bend, or where the moment no longer tells curvatures apart. Immutable and thread-safe.
/// </summary>
internal sealed class FirstLoadingCurve
{
    private const double Accuracy = 1e-8;

    /// <summary>Share of the curvature below which the permanent part is none.</summary>
    private const double Nothing = 1e-13;

    private const double Coarsest = 0.1;

    private const double Finest = 1 / 1024.0;

    private const double FlattestSlope = 1e-10;

    private static readonly double Side = Math.Sqrt(0.6) / 2;

    private readonly Node[] _nodes;

    /// <summary>Over each cell: ∫κ_p dM and ∫κ_p·(M − M_cell) dM.</summary>
    private readonly double[] _whole;

    private readonly double[] _first;

    public FirstLoadingCurve(BendAnalysis analysis)
    {
        Stiffness = analysis.Law.E * analysis.Moments.SecondY;
        _nodes = Tabulate(analysis);
        _whole = new double[_nodes.Length - 1];
        _first = new double[_nodes.Length - 1];
        for (int i = 0; i < _whole.Length; i++)
        {
            Node a = _nodes[i];
            Node b = _nodes[i + 1];
            double h = b.Moment - a.Moment;
            _whole[i] = h * ((a.Permanent + b.Permanent) / 2 + h * (a.Slope - b.Slope) / 12);
            _first[i] = h * h * ((3 * a.Permanent + 7 * b.Permanent) / 20 + h * (2 * a.Slope - 3 * b.Slope) / 60);
        }
    }

    /// <summary>E·I_b.</summary>
    public double Stiffness { get; }

    /// <summary>The largest moment of the table.</summary>
    public double LastMoment => _nodes[_nodes.Length - 1].Moment;

    public int Cells => _whole.Length;

    /// <summary>κ_p(M); at the end of the table beyond it.</summary>
    public double Permanent(double moment)
    {
        int cell = CellOf(moment);
        return moment >= LastMoment ? _nodes[cell + 1].Permanent : Permanent(cell, moment);
    }

    /// <summary>Strain of the centroid line after release.</summary>
    public double Stretch(double moment)
    {
        int cell = CellOf(moment);
        ref readonly Node a = ref _nodes[cell];
        ref readonly Node b = ref _nodes[cell + 1];
        return a.Stretch + (b.Stretch - a.Stretch) * Math.Min(1, (moment - a.Moment) / (b.Moment - a.Moment));
    }

    /// <summary>
    /// ∫κ_p(M)·lever du over a length along which moment and lever change linearly. Exact for the tabulated curve: within a cell the
    /// integrand is of the fourth degree, which three Gauss points integrate; whole cells in between have their integrals stored, taken
    /// from their own ends, so that nothing cancels.
    /// </summary>
    public double Integral(double moment1, double moment2, double lever1, double lever2, double length)
    {
        if (moment1 > moment2)
        {
            (moment1, moment2, lever1, lever2) = (moment2, moment1, lever2, lever1);
        }

        if (moment2 <= _nodes[1].Moment && _nodes[1].Permanent == 0)
        {
            return 0;
        }

        int last = CellOf(moment2);
        if (moment1 >= _nodes[last].Moment)
        {
            return length * WithinCell(last, moment1, moment2, lever1, lever2);
        }

        int cell = CellOf(moment1);
        double perMoment = length / (moment2 - moment1);
        double slope = (lever2 - lever1) / (moment2 - moment1);
        double end = _nodes[cell + 1].Moment;
        double lever = lever1 + slope * (end - moment1);
        double sum = (end - moment1) * WithinCell(cell, moment1, end, lever1, lever);
        for (cell++; cell < last; cell++)
        {
            sum += lever * _whole[cell] + slope * _first[cell];
            lever += slope * (_nodes[cell + 1].Moment - _nodes[cell].Moment);
        }

        double start = _nodes[last].Moment;
        return perMoment * (sum + (moment2 - start) * WithinCell(last, start, moment2, lever, lever2));
    }

    private static Node[] Tabulate(BendAnalysis analysis)
    {
        double start = Math.Log(analysis.FirstYield);
        double end = Math.Log(analysis.StateAtRadius(analysis.Section.TightestRadius).Curvature);
        Node first = Node.At(analysis, start);
        while (first.Permanent > Nothing * Math.Exp(start))
        {
            start -= 1;
            first = Node.At(analysis, start);
        }

        List<Node> nodes = [default, first with { Permanent = 0, Slope = 0, Stretch = 0 }];
        int steps = (int)Math.Ceiling((end - start) / Coarsest);
        Node previous = nodes[1];
        for (int i = 1; i <= steps; i++)
        {
            Node next = Node.At(analysis, start + i * (end - start) / steps);
            if (!next.Follows(previous) || !Refine(analysis, nodes, previous, next))
            {
                break;
            }

            previous = next;
        }

        return [.. nodes];
    }

    private static bool Refine(BendAnalysis analysis, List<Node> nodes, Node from, Node to)
    {
        double t = (from.LogCurvature + to.LogCurvature) / 2;
        Node middle = Node.At(analysis, t);
        if (!middle.Follows(from) || !to.Follows(middle))
        {
            return false;
        }

        if (to.LogCurvature - from.LogCurvature <= Finest
            || Math.Abs(Cubic(from, to, middle.Moment) - middle.Permanent) <= Accuracy * Math.Exp(t))
        {
            nodes.Add(to);
            return true;
        }

        return Refine(analysis, nodes, from, middle) && Refine(analysis, nodes, middle, to);
    }

    private static double Cubic(in Node a, in Node b, double moment)
    {
        double h = b.Moment - a.Moment;
        double x = (moment - a.Moment) / h;
        double y = 1 - x;
        return y * y * ((1 + 2 * x) * a.Permanent + x * h * a.Slope) + x * x * ((1 + 2 * y) * b.Permanent - y * h * b.Slope);
    }

    /// <summary>Mean of κ_p·lever over a stretch of one cell.</summary>
    private double WithinCell(int cell, double moment1, double moment2, double lever1, double lever2)
    {
        double middle = (moment1 + moment2) / 2;
        double lever = (lever1 + lever2) / 2;
        double dm = Side * (moment2 - moment1);
        double dl = Side * (lever2 - lever1);
        return (5 * (lever - dl) * Permanent(cell, middle - dm) + 8 * lever * Permanent(cell, middle)
            + 5 * (lever + dl) * Permanent(cell, middle + dm)) / 18;
    }

    private double Permanent(int cell, double moment) => Cubic(_nodes[cell], _nodes[cell + 1], moment);

    private int CellOf(double moment)
    {
        int low = 0;
        int high = _nodes.Length - 1;
        while (high - low > 1)
        {
            int middle = (low + high) / 2;
            if (_nodes[middle].Moment <= moment)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        return low;
    }

    private readonly record struct Node(double LogCurvature, double Moment, double Permanent, double Slope, double Stretch)
    {
        public static Node At(BendAnalysis analysis, double t)
        {
            double curvature = Math.Exp(t);
            MomentPoint point = analysis.Curve.At(curvature);
            double stiffness = analysis.Law.E * analysis.Moments.SecondY;
            return new(
                t,
                stiffness * point.Moment,
                point.Permanent,
                point.MomentSlope > FlattestSlope ? (1 - point.MomentSlope) / (stiffness * point.MomentSlope) : double.PositiveInfinity,
                curvature * (analysis.Moments.CentroidY - point.Axis));
        }

        /// <summary>Whether the moment tells this node from the one before.</summary>
        public bool Follows(in Node previous) =>
            Slope - Slope == 0 && Moment > previous.Moment * (1 + 1e-13) && Permanent >= previous.Permanent;
    }
}
