using BendMath.Numerics;
using BendMath.Numerics.Geometry;

namespace BendMath.Distortion.Shape;

internal sealed partial class StripFrame
{
    /// <summary>
    /// The displacements after an elastic release: the strips answer the curvatures that go back with ∫[(m + D·Δv″ + D·ν·Δκ·cos β)·δv″ +
    /// (n_r + E·t·κ_f·cos β·Δv)·κ_f·cos β·δv] ds = 0, n_r = n − E·t·(Δκ·(y − ȳ) + Δκ_r·(z − z̄)), D = E·t³/(12(1 − ν²)).
    /// </summary>
    /// <param name="section">Moments of the undeformed section, whose stiffness unloads.</param>
    /// <param name="curvature">Δκ, the curvature that goes back.</param>
    /// <param name="outOfPlane">Δκ_r.</param>
    /// <returns>The unknowns of the strips.</returns>
    public double[] Released(in AreaMoments section, double curvature, double outOfPlane)
    {
        double modulus = Law.Modulus;
        double poisson = Law.PoissonsRatio;
        double left = Curvature - curvature;
        SymmetricSystem system = new(_axis);
        Span<double> value = stackalloc double[4];
        int i = 0;
        foreach (Strip strip in _strips)
        {
            double length = strip.ElementLength;
            double t = strip.Thickness;
            double plate = modulus * t * t * t / (12 * (1 - poisson * poisson));
            double foundation = modulus * t * left * left * strip.Cos * strip.Cos;
            for (int element = 0; element < strip.Nodes - 1; element++)
            {
                ReadOnlySpan<int> unknowns = strip.OfElement(element);
                for (int point = 0; point < Points; point++, i++)
                {
                    Deflections(GaussPlaces[point], length, value);
                    double s = (element + GaussPlaces[point]) * length;
                    double y = NeutralAxis + Places[i].P / Curvature - section.CentroidY;
                    double z = strip.Start.Z + s * strip.Cos - section.CentroidZ;
                    double push = (Sums[i].N - modulus * t * (curvature * y + outOfPlane * z)) * left * strip.Cos;
                    double bend = Sums[i].XMoment - plate * poisson * curvature * strip.Cos;
                    Add(system, unknowns, Places[i].Weight, value, KSlopes.AsSpan(5 * i, 4), (push, bend), (foundation, plate));
                }
            }
        }

        system.Solve();
        double[] released = new double[_axis];
        for (int j = 0; j < _axis; j++)
        {
            released[j] = this[j] + system.Right[j];
        }

        return released;
    }

    private static void Add(
        SymmetricSystem system,
        ReadOnlySpan<int> unknowns,
        double weight,
        ReadOnlySpan<double> value,
        ReadOnlySpan<double> second,
        (double Push, double Bend) load,
        (double V, double K) stiffness)
    {
        for (int a = 0; a < 4; a++)
        {
            if (unknowns[a] < 0)
            {
                continue;
            }

            system.Right[unknowns[a]] -= weight * (load.Push * value[a] + load.Bend * second[a]);
            for (int b = 0; b < 4; b++)
            {
                if (unknowns[b] >= 0 && unknowns[b] <= unknowns[a])
                {
                    system[unknowns[a], unknowns[b]] += weight * (stiffness.V * value[a] * value[b] + stiffness.K * second[a] * second[b]);
                }
            }
        }
    }
}
