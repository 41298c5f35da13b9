namespace BendMath.Tests.Stock;

/// <summary>
/// Saint-Venant torsion of a solid outline by finite differences, for holding approximate formulas against: ∇²φ = −2, φ = 0 on the outline,
/// J = 2·∫φ dA (Timoshenko and Goodier, Theory of Elasticity, ch. 10; Shortley–Weller differences beside the outline). Two grids are
/// extrapolated by their order, 2. Its own check is the square, 0.140577.
/// </summary>
internal static class PrandtlGrid
{
    public static double TorsionConstant(Func<double, double, bool> contains, double height, double width, double step, double thickness)
    {
        double coarse = OnGrid(contains, height, width, step, thickness);
        double fine = OnGrid(contains, height, width, step / 2, thickness);
        return fine + ((fine - coarse) / 3);
    }

    private static double OnGrid(Func<double, double, bool> contains, double height, double width, double h, double thickness)
    {
        int rows = (int)((height / h) + 1.5) + 2;
        int columns = (int)((width / h) + 1.5) + 2;
        List<Node> nodes = [];
        for (int i = 1; i < rows - 1; i++)
        {
            for (int j = 1; j < columns - 1; j++)
            {
                if (contains(i * h, j * h) && Node.At(contains, i * h, j * h, h, (i * columns) + j, columns) is { } node)
                {
                    nodes.Add(node);
                }
            }
        }

        double[] phi = new double[rows * columns];
        double relaxation = 2 / (1 + (Math.PI * h / thickness * 1.1));
        double change, largest;
        do
        {
            change = 0;
            largest = 0;
            foreach (Node node in nodes)
            {
                double old = phi[node.Index];
                double step = node.Balanced(phi) - old;
                phi[node.Index] = old + (relaxation * step);
                change = Math.Max(change, Math.Abs(step));
                largest = Math.Max(largest, phi[node.Index]);
            }
        }
        while (change > 1e-9 * largest);

        return 2 * h * h * phi.Sum();
    }

    private sealed record Node(int Index, int Columns, double Up, double Down, double Right, double Left)
    {
        public static Node? At(Func<double, double, bool> contains, double y, double z, double h, int index, int columns)
        {
            double up = Reach(1, 0);
            double down = Reach(-1, 0);
            double right = Reach(0, 1);
            double left = Reach(0, -1);
            return Math.Min(Math.Min(up, down), Math.Min(right, left)) < 1e-7 * h
                ? null
                : new(index, columns, 2 / (up * (up + down)), 2 / (down * (up + down)), 2 / (right * (right + left)),
                    2 / (left * (right + left)));

            double Reach(double dy, double dz)
            {
                if (contains(y + (dy * h), z + (dz * h)))
                {
                    return h;
                }

                double low = 0;
                double high = h;
                for (int i = 0; i < 45; i++)
                {
                    double middle = (low + high) / 2;
                    (low, high) = contains(y + (dy * middle), z + (dz * middle)) ? (middle, high) : (low, middle);
                }

                return high;
            }
        }

        public double Balanced(double[] phi) =>
            (2 + (Up * phi[Index + Columns]) + (Down * phi[Index - Columns]) + (Right * phi[Index + 1]) + (Left * phi[Index - 1]))
                / (Up + Down + Right + Left);
    }
}
