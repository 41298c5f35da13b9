using MathNet.Numerics.Integration;

namespace BendMath.Numerics.Integrals;

/// <summary>Gauss–Legendre nodes and weights on [−1, 1] in ascending order, from MathNet, made once an order.</summary>
internal sealed class GaussRule
{
    private GaussRule(int order)
    {
        GaussLegendreRule rule = new(-1, 1, order);
        Nodes = rule.Abscissas;
        Weights = rule.Weights;
    }

    public static GaussRule Three { get; } = new(3);

    public static GaussRule Nine { get; } = new(9);

    public static GaussRule Twelve { get; } = new(12);

    public double[] Nodes { get; }

    public double[] Weights { get; }
}
