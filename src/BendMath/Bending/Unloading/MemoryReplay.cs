using BendMath.Numerics;
using BendMath.Numerics.Geometry;
using BendMath.Numerics.Integrals;

namespace BendMath.Bending.Unloading;

/// <summary>
/// The stresses of fibers with memory after several legs, each a linear strain over the section: every fiber is led from the straight bar
/// through all of them. A leg bends the answer where
/// it first makes a fiber flow, in one direction or the other; along a chord those places are searched, since states vary from the second
/// leg on.
/// </summary>
internal sealed class MemoryReplay : IChordIntegrand
{
    private const int Samples = 4;

    private const double Sharp = 1e-13;

    private const double Fine = 1e-9;

    private const double Rough = 1e-5;

    private readonly BackStress _metal;

    private readonly AreaMoments _moments;

    private readonly ChordProfile _profile;

    private readonly SectionField[] _legs;

    private readonly double[] _allowed = new double[FiberSums.Size];

    private readonly double _force;

    private readonly double[] _kinks;

    private readonly double[] _before;

    private readonly List<double> _cuts = [];

    /// <param name="metal">The metal.</param>
    /// <param name="section">The section.</param>
    /// <param name="legs">The strains so far, the last of which is still searched.</param>
    /// <param name="largestStress">What stresses are measured by.</param>
    public MemoryReplay(in BackStress metal, OrientedSection section, IEnumerable<SectionField> legs, double largestStress)
    {
        _metal = metal;
        _moments = section.Profile.Moments;
        _profile = ChordProfile.Of(section.Loops);
        _legs = [.. legs, default];
        _force = largestStress * _moments.Area;
        Reach = Math.Max(_moments.CentroidY, section.Height - _moments.CentroidY);
        _kinks = new double[Kinks];
        _before = new double[Kinks];
    }

    public int Size => FiberSums.Size;

    public int Kinks => 2 * _legs.Length;

    public double[] Levels { get; } = [];

    public double[] Allowed => _allowed;

    public double Reach { get; }

    /// <summary>The sums when the last leg leads to a strain.</summary>
    public FiberSums Under(in SectionField last, bool isFine)
    {
        _legs[_legs.Length - 1] = last;
        double force = (isFine ? Fine : Rough) * _force;
        for (int i = 0; i < _allowed.Length; i++)
        {
            _allowed[i] = i > 2 ? double.PositiveInfinity : i > 0 ? force * Reach : force;
        }

        return new(ChordIntegrator.Integrate(_profile, this));
    }

    public double Kink(int index, double level, double place)
    {
        Seek(level, place, _kinks);
        return _kinks[index];
    }

    public void Add(double level, double low, double high, Span<double> sums)
    {
        bool even = Array.TrueForAll(_legs, leg => leg.OutOfPlane == 0);
        GaussRule rule = even ? GaussRule.Three : GaussRule.Twelve;
        if (even)
        {
            _cuts.Clear();
            _cuts.Add(low);
            _cuts.Add(high);
        }
        else
        {
            Cut(level, low, high);
        }

        double d = level - _moments.CentroidY;
        for (int part = 0; part < _cuts.Count - 1; part++)
        {
            double half = (_cuts[part + 1] - _cuts[part]) / 2;
            double middle = (_cuts[part + 1] + _cuts[part]) / 2;
            for (int i = 0; i < rule.Nodes.Length; i++)
            {
                double place = middle + half * rule.Nodes[i];
                double b = place - _moments.CentroidZ;
                (double stress, double stiffness) = Seek(level, place, null);
                double weight = half * rule.Weights[i];
                FiberSums.AddPoint(sums, weight * stress, weight * stiffness, d, b);
            }
        }
    }

    /// <summary>
    /// Leads a fiber through all legs: its stress and stiffness, and how far each leg is from making it flow, forward and backward.
    /// </summary>
    private (double Stress, double Stiffness) Seek(double level, double place, double[]? kinks)
    {
        double d = level - _moments.CentroidY;
        double b = place - _moments.CentroidZ;
        FiberState fiber = _metal.Untouched;
        int last = _legs.Length - 1;
        for (int leg = 0; leg <= last; leg++)
        {
            double strain = _legs[leg].At(d, b);
            if (kinks is not null)
            {
                double trial = fiber.TrialStress(strain) - fiber.Back;
                double radius = _metal.Radius(fiber.Flow);
                kinks[2 * leg] = trial - radius;
                kinks[2 * leg + 1] = trial + radius;
            }

            if (leg == last)
            {
                (double stress, double slope, _) = _metal.Respond(fiber, strain);
                return (stress, slope);
            }

            fiber = _metal.Advance(fiber, strain);
        }

        return default;
    }

    private void Cut(double level, double low, double high)
    {
        _cuts.Clear();
        _cuts.Add(low);
        Seek(level, low, _before);
        for (int i = 1; i <= Samples; i++)
        {
            double from = low + (i - 1) * (high - low) / Samples;
            double to = i == Samples ? high : low + i * (high - low) / Samples;
            Seek(level, to, _kinks);
            double[] now = [.. _kinks];
            for (int k = 0; k < now.Length; k++)
            {
                if (_before[k] < 0 != now[k] < 0 && _before[k] != 0 && now[k] != 0)
                {
                    int index = k;
                    _cuts.Add(FalsePosition.Root(place => Kink(index, level, place), from, _before[k], to, now[k], Sharp * (high - low)));
                }
            }

            now.CopyTo(_before, 0);
        }

        _cuts.Add(high);
        _cuts.Sort();
    }
}
