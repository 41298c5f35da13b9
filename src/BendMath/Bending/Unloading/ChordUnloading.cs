using BendMath.Numerics.Integrals;

namespace BendMath.Bending.Unloading;

/// <summary>The integrals of slopes of unloading E_u, which are equal along a chord, and of E_u·e − σ.</summary>
internal sealed class ChordUnloading : IChordIntegrand
{
    private const double Accuracy = 1e-12;

    private readonly StressStrainLaw _law;

    private readonly LoadedField _loaded;

    private readonly Func<double, double> _modulus;

    public ChordUnloading(StressStrainLaw law, LoadedField loaded, Func<double, double> modulus)
    {
        _law = law;
        _loaded = loaded;
        _modulus = modulus;
        Levels = loaded.LevelsOf(law.Kinks);
        double stiffness = Accuracy * law.E * loaded.Area;
        double force = stiffness * loaded.LargestStrain;
        double reach = loaded.Reach;
        Allowed =
        [
            force, force * reach, force * reach,
            stiffness, stiffness * reach, stiffness * reach, stiffness * reach * reach, stiffness * reach * reach,
            stiffness * reach * reach,
        ];
    }

    public int Size => FiberSums.Size;

    public int Kinks => 0;

    public double[] Levels { get; }

    public double[] Allowed { get; }

    /// <summary>
    /// The sums in the section's own axes: in the place of forces those of E_u·e − σ, in the place of stiffness those of E_u.
    /// </summary>
    public FiberSums Sums()
    {
        return new FiberSums(ChordIntegrator.Integrate(_loaded.Profile, this)).TurnedBack(_loaded.Cosine, _loaded.Sine);
    }

    public double Kink(int index, double level, double place) => 0;

    public void Add(double level, double low, double high, Span<double> sums)
    {
        double strain = _loaded.StrainAt(level);
        double slope = _modulus(_law.PlasticStrain(Math.Abs(strain)));
        double beyond = slope * strain - _law.Stress(strain);
        FiberSums.AddChord(
            sums, beyond, slope, level - _loaded.CentroidLevel, low - _loaded.CentroidPlace, high - _loaded.CentroidPlace);
    }
}
