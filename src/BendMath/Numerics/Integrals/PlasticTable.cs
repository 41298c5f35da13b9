namespace BendMath.Numerics.Integrals;

/// <summary>
/// A smooth law without antiderivatives in closed form: its integrals between knots are summed once by twelve Gauss points each. The
/// knots lie at every kink and so
/// close between that twelve points leave no remainder; beyond the last one each panel doubles the strain.
/// </summary>
internal sealed class PlasticTable
{
    private readonly Func<double, (double Plastic, double Rate)> _law;

    private readonly double[] _knots;

    private readonly StrainPrimitives[] _sums;

    /// <param name="law">e_p and de_p/de at a strain not below the first knot.</param>
    /// <param name="knots">Rising; the first is the end of the elastic line.</param>
    public PlasticTable(Func<double, (double Plastic, double Rate)> law, double[] knots)
    {
        _law = law;
        _knots = knots;
        _sums = new StrainPrimitives[knots.Length];
        for (int i = 1; i < knots.Length; i++)
        {
            _sums[i] = _sums[i - 1];
            AddPanel(knots[i - 1], knots[i], ref _sums[i]);
        }
    }

    public double ElasticLimit => _knots[0];

    public (double Plastic, double Rate) At(double strain) => _law(strain);

    public double NextBreak(double strain)
    {
        int panel = PanelOf(strain);
        return panel == _knots.Length - 1 ? 2 * strain : _knots[panel + 1];
    }

    public StrainPrimitives PrimitivesAt(double strain)
    {
        int panel = PanelOf(strain);
        StrainPrimitives sums = _sums[panel];
        double from = _knots[panel];
        while (panel == _knots.Length - 1 && strain > 2 * from)
        {
            AddPanel(from, 2 * from, ref sums);
            from *= 2;
        }

        AddPanel(from, strain, ref sums);
        return sums;
    }

    /// <summary>The panel that begins at a strain or holds it.</summary>
    private int PanelOf(double strain)
    {
        int found = Array.BinarySearch(_knots, strain);
        return Math.Max(0, found >= 0 ? found : ~found - 1);
    }

    private void AddPanel(double from, double to, ref StrainPrimitives sums)
    {
        double half = (to - from) / 2;
        double middle = (to + from) / 2;
        GaussRule rule = GaussRule.Twelve;
        for (int i = 0; i < rule.Nodes.Length; i++)
        {
            double e = middle + half * rule.Nodes[i];
            (double plastic, double rate) = _law(e);
            double p = half * rule.Weights[i] * plastic;
            double c = half * rule.Weights[i] * rate;
            sums.P0 += p;
            sums.P1 += p * e;
            sums.P2 += p * e * e;
            sums.C0 += c;
            sums.C1 += c * e;
            sums.C2 += c * e * e;
            sums.C3 += c * e * e * e;
        }
    }
}

/// <summary>A table as a law to integrate.</summary>
internal readonly struct TabulatedLaw(PlasticTable table) : IPlasticLaw
{
    public double ElasticLimit => table.ElasticLimit;

    public (double Plastic, double Rate) At(double strain) => table.At(strain);

    public double NextBreak(double strain) => table.NextBreak(strain);

    public StrainPrimitives PrimitivesAt(double strain) => table.PrimitivesAt(strain);
}
