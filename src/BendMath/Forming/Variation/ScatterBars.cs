using BendMath.Stock.Tolerances;

namespace BendMath.Forming.Variation;

/// <summary>
/// The bars that may lie in the bender: one section for each set of dimensions, one moment table for all yields of a law that keeps its
/// shape. Kept for all dies of a rack, so that each is made once. Thread-safe.
/// </summary>
internal sealed class ScatterBars(BendAnalysis analysis, MillTolerance? mill)
{
    /// <summary>More bars than a search asks for; draws at random never see one again.</summary>
    private const int Most = 256;

    private readonly Dictionary<(double, double, double, double), BendAnalysis> _known = [];

    private readonly BendAnalysis _nominal = analysis.ForSearch();

    /// <summary>Section and material of a bar.</summary>
    /// <param name="sizes">Its dimensions, in the order of the mill tolerance; none for the bar as ordered.</param>
    /// <param name="material">The material, which differs by its yield at most.</param>
    public BendAnalysis Of(double[] sizes, BarMaterial material)
    {
        BendAnalysis bar = sizes.Length == 0 ? _nominal : Known((Size(0), Size(1), Size(2), 0), () => analysis.ForSearch(SectionOf(sizes)));
        return ReferenceEquals(material, analysis.Material) ? bar
            : analysis.Law.IsScaledByYield ? bar.ForSearch(material)
            : Known((Size(0), Size(1), Size(2), material.Law.YieldStress.Pascals), () => bar.ForSearch(material));

        double Size(int i) => i < sizes.Length ? sizes[i] : 0;
    }

    private BendAnalysis Known((double, double, double, double) key, Func<BendAnalysis> make)
    {
        lock (_known)
        {
            if (!_known.TryGetValue(key, out BendAnalysis? bar))
            {
                bar = make();
                if (_known.Count < Most)
                {
                    _known.Add(key, bar);
                }
            }

            return bar;
        }
    }

    private OrientedSection SectionOf(double[] sizes) => mill!.Build(sizes).Lying(analysis.Section.Orientation)!;
}
