using BendMath.Numerics.Geometry;

namespace BendMath.Numerics.Integrals;

/// <summary>What is integrated over a section, chord by chord: several integrals at once.</summary>
internal interface IChordIntegrand
{
    /// <summary>Number of integrals.</summary>
    int Size { get; }

    /// <summary>Number of functions whose zeros are kinks of the integrand.</summary>
    int Kinks { get; }

    /// <summary>Levels at which the integrand has kinks along the whole chord.</summary>
    double[] Levels { get; }

    /// <summary>
    /// What nine and twelve points of an interval may disagree by in each integral; twelve are better than that by three digits or more.
    /// </summary>
    double[] Allowed { get; }

    /// <summary>A function of place that is zero where the integrand has a kink.</summary>
    double Kink(int index, double level, double place);

    /// <summary>Adds the integrals along the chord between two places at a level.</summary>
    void Add(double level, double low, double high, Span<double> sums);
}

/// <summary>
/// Integrates over a section: along each chord by the integrand itself, over the levels by twelve Gauss points between every level where
/// the integrand changes its character: ends of
/// edges, its own kinks, and the levels where a kink passes an end of the chord. An interval whose nine points disagree with twelve is
/// halved. Where an arc bounds the chords the points are
/// laid out over θ with y = middle − half·cos θ, which takes away the square root at its top.
/// </summary>
internal static class ChordIntegrator
{
    private const int Scan = 8;

    private const int Deepest = 26;

    /// <summary>How well the level is found where a kink passes an end of the chord, as a share of it.</summary>
    private const double Sharp = 1e-15;

    public static double[] Integrate<TIntegrand>(ChordProfile profile, TIntegrand integrand)
        where TIntegrand : class, IChordIntegrand
    {
        double[] total = new double[integrand.Size];
        List<double> cuts = [];
        for (int band = 0; band < profile.Levels.Length - 1; band++)
        {
            MonotonePiece[] pieces = profile.PiecesOf(band);
            double bottom = profile.Levels[band];
            double top = profile.Levels[band + 1];
            Cuts(pieces, bottom, top, integrand, cuts);
            bool arcs = Array.Exists(pieces, piece => piece.Radius > 0);
            for (int i = 0; i < cuts.Count - 1; i++)
            {
                AddInterval(new(pieces, cuts[i], cuts[i + 1], arcs), 0, arcs ? Math.PI : 1, integrand, total, 0);
            }
        }

        return total;
    }

    private static void Cuts<TIntegrand>(MonotonePiece[] pieces, double bottom, double top, TIntegrand integrand, List<double> cuts)
        where TIntegrand : class, IChordIntegrand
    {
        cuts.Clear();
        cuts.Add(bottom);
        cuts.Add(top);
        cuts.AddRange(integrand.Levels.Where(level => level > bottom && level < top));
        cuts.Sort();
        int fixedCuts = cuts.Count;
        for (int i = 0; i < fixedCuts - 1 && integrand.Kinks > 0; i++)
        {
            foreach (MonotonePiece piece in pieces)
            {
                AddPassages(piece, cuts[i], cuts[i + 1], integrand, cuts);
            }
        }

        cuts.Sort();
        double least = 1e-13 * (top - bottom);
        for (int i = cuts.Count - 2; i > 0; i--)
        {
            if (cuts[i] - cuts[i - 1] <= least || top - cuts[i] <= least)
            {
                cuts.RemoveAt(i);
            }
        }
    }

    /// <summary>Where a kink passes an end of the chord.</summary>
    private static void AddPassages<TIntegrand>(in MonotonePiece piece, double bottom, double top, TIntegrand integrand, List<double> cuts)
        where TIntegrand : class, IChordIntegrand
    {
        for (int kink = 0; kink < integrand.Kinks; kink++)
        {
            double step = (top - bottom) / Scan;
            double before = integrand.Kink(kink, bottom, piece.PlaceAt(bottom));
            for (int i = 1; i <= Scan; i++)
            {
                double level = i == Scan ? top : bottom + i * step;
                double value = integrand.Kink(kink, level, piece.PlaceAt(level));
                if ((before < 0 && value > 0) || (before > 0 && value < 0))
                {
                    MonotonePiece end = piece;
                    int index = kink;
                    cuts.Add(
                        FalsePosition.Root(at => integrand.Kink(index, at, end.PlaceAt(at)), level - step, before, level, value,
                            Sharp * Math.Abs(level)));
                }

                before = value;
            }
        }
    }

    private static void AddInterval<TIntegrand>(in Interval interval, double from, double to, TIntegrand integrand, double[] total,
        int depth)
        where TIntegrand : class, IChordIntegrand
    {
        int size = integrand.Size;
        Span<double> fine = stackalloc double[size];
        Span<double> coarse = stackalloc double[size];
        AddPoints(GaussRule.Twelve, interval, from, to, integrand, fine);
        AddPoints(GaussRule.Nine, interval, from, to, integrand, coarse);
        bool settled = true;
        for (int i = 0; i < size; i++)
        {
            settled &= Math.Abs(fine[i] - coarse[i]) <= integrand.Allowed[i];
        }

        if (settled || depth == Deepest)
        {
            for (int i = 0; i < size; i++)
            {
                total[i] += fine[i];
            }

            return;
        }

        double middle = (from + to) / 2;
        AddInterval(interval, from, middle, integrand, total, depth + 1);
        AddInterval(interval, middle, to, integrand, total, depth + 1);
    }

    private static void AddPoints<TIntegrand>(GaussRule rule, in Interval interval, double from, double to, TIntegrand integrand,
        Span<double> sums)
        where TIntegrand : class, IChordIntegrand
    {
        Span<double> chord = stackalloc double[sums.Length];
        double half = (to - from) / 2;
        double middle = (to + from) / 2;
        for (int i = 0; i < rule.Nodes.Length; i++)
        {
            (double level, double rate) = interval.At(middle + half * rule.Nodes[i]);
            chord.Clear();
            for (int piece = 0; piece + 1 < interval.Pieces.Length; piece += 2)
            {
                double low = interval.Pieces[piece].PlaceAt(level);
                double high = interval.Pieces[piece + 1].PlaceAt(level);
                if (high > low)
                {
                    integrand.Add(level, low, high, chord);
                }
            }

            double weight = half * rule.Weights[i] * rate;
            for (int k = 0; k < sums.Length; k++)
            {
                sums[k] += weight * chord[k];
            }
        }
    }

    /// <summary>Levels of an interval over a parameter: from 0 to 1, or the angle θ from 0 to π.</summary>
    private readonly struct Interval(MonotonePiece[] pieces, double bottom, double top, bool arcs)
    {
        public MonotonePiece[] Pieces { get; } = pieces;

        public (double Level, double Rate) At(double parameter)
        {
            double depth = top - bottom;
            if (!arcs)
            {
                return (bottom + depth * parameter, depth);
            }

            double sine = Math.Sin(parameter / 2);
            return (bottom + depth * sine * sine, depth / 2 * Math.Sin(parameter));
        }
    }
}
