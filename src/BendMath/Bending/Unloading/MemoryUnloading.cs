using BendMath.Numerics.Integrals;

namespace BendMath.Bending.Unloading;

/// <summary>
/// The stresses of fibers with memory that go straight from their loaded strain to another one, with the stiffness they answer with. All
/// fibers of a chord were loaded alike, so along it
/// only the new strain varies, linearly: at most one reversed part, one elastic and one strained further.
/// </summary>
internal sealed class MemoryUnloading : IChordIntegrand
{
    /// <summary>
    /// Share of the largest force that an interval may be off by, while the balance is searched and when it is found; the stiffness only
    /// leads there.
    /// </summary>
    private const double Rough = 1e-6;

    private const double Fine = 1e-12;

    /// <summary>
    /// Length of a part of a chord, in units of the strain over which its curve bends, up to which three and nine points leave no
    /// remainder.
    /// </summary>
    private const double Short = 0.01;

    private const double Medium = 1;

    private readonly BackStress _metal;

    private readonly LoadedField _loaded;

    private readonly Func<double, double>? _modulus;

    private readonly double _force;

    private readonly double _bend;

    private readonly double[] _allowed = new double[FiberSums.Size];

    private SectionField _field;

    private double _level = double.NaN;

    private FiberState _fiber;

    /// <param name="metal">The metal, in the units of its modulus.</param>
    /// <param name="loaded">The loaded strain.</param>
    /// <param name="modulus">Slope of unloading after a plastic strain; null for the modulus itself.</param>
    /// <param name="largestStress">What stresses are measured by.</param>
    public MemoryUnloading(in BackStress metal, LoadedField loaded, Func<double, double>? modulus, double largestStress)
    {
        _metal = metal;
        _loaded = loaded;
        _modulus = modulus;
        Levels = loaded.LevelsOf([metal.Yield / metal.Modulus]);
        _force = largestStress * loaded.Area;
        _bend = Math.Max(metal.Saturation > 0 ? metal.Rate : 0, metal.Range != 0 ? metal.RangeRate : 0);
    }

    public int Size => FiberSums.Size;

    public int Kinks => 2;

    public double[] Levels { get; }

    public double[] Allowed => _allowed;

    /// <summary>The sums under a new strain, given and answered in the section's own axes.</summary>
    public FiberSums Under(in SectionField field, bool isFine)
    {
        double force = (isFine ? Fine : Rough) * _force;
        for (int i = 0; i < _allowed.Length; i++)
        {
            _allowed[i] = i > 2 ? double.PositiveInfinity : i > 0 ? force * _loaded.Reach : force;
        }

        _field = field.Turned(_loaded.Cosine, _loaded.Sine);
        return new FiberSums(ChordIntegrator.Integrate(_loaded.Profile, this)).TurnedBack(_loaded.Cosine, _loaded.Sine);
    }

    /// <summary>A fiber as it was loaded to a strain.</summary>
    public FiberState Loaded(double strain)
    {
        FiberState fiber = _metal.Advance(_metal.Untouched, strain);
        return _modulus is null ? fiber : new(fiber.Strain, fiber.Stress, fiber.Back, fiber.Flow, _modulus(fiber.Flow));
    }

    public double Kink(int index, double level, double place)
    {
        Seek(level);
        double trial = _fiber.TrialStress(Strain(place)) - _fiber.Back;
        double radius = _metal.Radius(_fiber.Flow);
        return index == 0 ? trial - radius : trial + radius;
    }

    public void Add(double level, double low, double high, Span<double> sums)
    {
        Seek(level);
        double slope = _field.OutOfPlane * _fiber.Modulus;
        if (slope == 0)
        {
            (double stress, double stiffness, _) = _metal.Respond(_fiber, Strain(low));
            FiberSums.AddChord(
                sums, stress, stiffness, level - _loaded.CentroidLevel, low - _loaded.CentroidPlace, high - _loaded.CentroidPlace);
            return;
        }

        double at = _fiber.TrialStress(Strain(low)) - _fiber.Back;
        double radius = _metal.Radius(_fiber.Flow);
        double one = low + (-radius - at) / slope;
        double other = low + (radius - at) / slope;
        double first = Math.Min(Math.Max(Math.Min(one, other), low), high);
        double second = Math.Min(Math.Max(Math.Max(one, other), low), high);
        AddPart(level, low, first, RuleFor(first - low), sums);
        AddPart(level, first, second, GaussRule.Three, sums);
        AddPart(level, second, high, RuleFor(high - second), sums);
    }

    private GaussRule RuleFor(double length)
    {
        double bend = _bend * Math.Abs(_field.OutOfPlane) * length;
        return bend < Short ? GaussRule.Three : bend < Medium ? GaussRule.Nine : GaussRule.Twelve;
    }

    private void AddPart(double level, double low, double high, GaussRule rule, Span<double> sums)
    {
        if (!(high > low))
        {
            return;
        }

        double d = level - _loaded.CentroidLevel;
        double half = (high - low) / 2;
        double middle = (high + low) / 2;
        for (int i = 0; i < rule.Nodes.Length; i++)
        {
            double place = middle + half * rule.Nodes[i];
            double b = place - _loaded.CentroidPlace;
            (double stress, double stiffness, _) = _metal.Respond(_fiber, Strain(place));
            double weight = half * rule.Weights[i];
            FiberSums.AddPoint(sums, weight * stress, weight * stiffness, d, b);
        }
    }

    private void Seek(double level)
    {
        if (level != _level)
        {
            _level = level;
            _fiber = Loaded(_loaded.StrainAt(level));
        }
    }

    private double Strain(double place) => _field.At(_level - _loaded.CentroidLevel, place - _loaded.CentroidPlace);
}
