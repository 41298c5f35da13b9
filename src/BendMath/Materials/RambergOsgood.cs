using System.Numerics;
using BendMath.Evidence;
using BendMath.Guards;
using BendMath.Materials;
using BendMath.Numerics.Geometry;
using BendMath.Numerics.Integrals;
using UnitsNet;

namespace BendMath;

/// <summary>The smooth law of three parameters, for materials without a yield plateau: aluminum, stainless steel, cold-drawn bar.</summary>
/// <remarks>
/// Equation: e = σ/E + 0.002·(σ/σ₀.₂)ⁿ.
/// Range: n &gt; 1; fitted to the proof stress, it is good to a few times the proof strain; there is no elastic limit.
/// Source: <see cref="Sources.RambergOsgood1943"/>
/// </remarks>
public sealed record RambergOsgood : StressStrainLaw
{
    /// <summary>The strain the proof stress leaves.</summary>
    internal const double Offset = 0.002;

    private readonly Kernel _law;

    private readonly double _proof;

    private readonly double _exponent;

    /// <summary>Makes the law from its modulus, proof stress and exponent.</summary>
    /// <param name="elasticModulus">Young's modulus E, greater than zero.</param>
    /// <param name="proofStress">0.2 % proof stress σ₀.₂, greater than zero and less than E.</param>
    /// <param name="exponent">Exponent n, greater than 1.5 and not greater than 1000; the larger, the sharper the knee.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public RambergOsgood(Pressure elasticModulus, Pressure proofStress, double exponent)
        : base(Guard.Positive(elasticModulus, nameof(elasticModulus)))
    {
        _proof = Guard.Positive(proofStress, nameof(proofStress));
        if (_proof >= E)
        {
            throw Guard.Fault(nameof(proofStress), proofStress, $"must be smaller than the elastic modulus, {LawRules.Gigapascals(E)}");
        }

        _exponent = Guard.Positive(exponent, nameof(exponent));
        if (_exponent is <= 1.5 or > 1000)
        {
            throw Guard.Fault(nameof(exponent), exponent, "must be greater than 1.5 and not greater than 1000");
        }

        _law = new(_proof / E, _exponent, null);
    }

    /// <summary>Another proof stress; the exponent is kept, and what is known of it.</summary>
    private RambergOsgood(RambergOsgood law, double elasticModulus, double proofStress)
        : base(elasticModulus)
    {
        _proof = proofStress;
        _exponent = law._exponent;
        _law = new(_proof / E, _exponent, law._law.Roots);
    }

    /// <summary>The 0.2 % proof stress.</summary>
    public override Pressure YieldStress => Pressure.FromPascals(_proof);

    /// <summary>Exponent n.</summary>
    public double Exponent => _exponent;

    internal override double YieldStrain => _proof / E;

    internal override IReadOnlyList<double> Kinks => [];

    internal override LawShape Shape => new SmoothShape(_exponent);

    internal override bool IsSmooth => true;

    /// <summary>Equal when modulus, proof stress and exponent are equal.</summary>
    /// <param name="other">Another law.</param>
    public bool Equals(RambergOsgood? other) =>
        other is not null && E.Equals(other.E) && _proof.Equals(other._proof) && _exponent.Equals(other._exponent);

    /// <inheritdoc/>
    public override int GetHashCode() => (E, _proof, _exponent).GetHashCode();

    internal override double ReferenceStrain => _law.Reference;

    /// <inheritdoc/>
    public override StressStrainLaw WithYield(Pressure yieldStress) =>
        new RambergOsgood(this, E, LawRules.YieldBelowModulus(yieldStress, E));

    /// <summary>Kind of law and its numbers.</summary>
    public override string ToString() =>
        Invariant($"Ramberg–Osgood, proof stress {_proof / 1e6:0.#} MPa, n {_exponent:0.##}, E {E / 1e9:0.#} GPa");

    internal override double? RigidExponent => 1 / _exponent;

    internal override double PlasticStrain(double strain) => strain <= 0 ? 0 : _law.At(strain).Plastic;

    internal override double PlasticRate(double strain) => strain <= 0 ? 0 : _law.At(strain).Rate;

    internal override (double Plastic, double Rate) PlasticAt(double strain) => strain <= 0 ? default : _law.At(strain);

    internal override StressStrainLaw InPlaneStrain(double poissonsRatio) =>
        new RambergOsgood(this, Stiffened(E, poissonsRatio).Pascals, _proof * Math.Pow(PlaneStrainFactor, 1 + 1 / _exponent));

    internal override PlasticSums Integrate(BandProfile profile, double curvature, double neutralAxis) =>
        PlasticIntegrator.Integrate(profile, _law, curvature, neutralAxis);

    internal override double PlasticWork(BandProfile profile, double curvature, double neutralAxis) =>
        PlasticIntegrator.Work(profile, _law, curvature, neutralAxis);

    /// <summary>
    /// With a = σ₀.₂/E, a·c = 0.002·cⁿ and u = σ/(c·σ₀.₂), e = a·c·(u + uⁿ). As a function of e, u is singular at the complex strain e*
    /// where de/du = 0: u* = n^(−1/(n − 1))·exp(iπ/(n − 1)), e* = a·c·u*·(1 − 1/n). Pieces reach 0.6 of the distance to it, which puts it
    /// at least 2.3 half-widths off; twelve points then leave a remainder near 1e−15.
    /// </summary>
    private readonly struct Kernel : IPlasticLaw
    {
        private const double Negligible = 1e-17;

        private readonly double _exponent;

        private readonly double _reference;

        private readonly SmoothRoots _roots;

        private readonly double _knee;

        private readonly double _kneeOff;

        /// <param name="elastic">a = σ₀.₂/E.</param>
        /// <param name="exponent">n.</param>
        /// <param name="roots">Those of the exponent where another law has them, or null.</param>
        public Kernel(double elastic, double exponent, SmoothRoots? roots)
        {
            _exponent = exponent;
            double scale = Math.Pow(elastic / Offset, 1 / (exponent - 1));
            _reference = elastic * scale;
            Complex knee =
                Complex.FromPolarCoordinates(_reference * Math.Pow(1 / exponent, 1 / (exponent - 1)) * (1 - 1 / exponent),
                    Math.PI / (exponent - 1));
            _knee = knee.Real;
            _kneeOff = knee.Imaginary;
            double limit = Math.Pow(Negligible, 1 / (exponent - 1));
            ElasticLimit = _reference * limit;
            _roots = roots ?? new(exponent, limit);
        }

        /// <summary>Below this strain the plastic part is less than 1e−17 of the whole.</summary>
        public double ElasticLimit { get; }

        public double Reference => _reference;

        public SmoothRoots Roots => _roots;

        public (double Plastic, double Rate) At(double strain)
        {
            (double level, double power) = _roots.At(strain / _reference);
            double rate = _exponent * power;
            return (_reference * level * power, rate / (1 + rate));
        }

        /// <summary>
        /// Over the elastic strain x = a·s and the plastic strain p = 0.002·sⁿ, e = x + p and x·dp = n·p·dx: every antiderivative is a
        /// polynomial in x and p, free of negative terms. P_k = ∫p·(x + p)ᵏ·d(x + p) and C_k = ∫(x + p)ᵏ dp.
        /// </summary>
        public StrainPrimitives PrimitivesAt(double strain)
        {
            double n = _exponent;
            (double level, double power) = _roots.At(strain / _reference);
            double x = _reference * level;
            double p = x * power;
            double xp = p * x / (n + 1);
            double xxp = p * x * x / (n + 2);
            double xpp = p * p * x / (2 * n + 1);
            return new()
            {
                P0 = xp + p * p / 2,
                P1 = xxp + (1 + n) * xpp + p * p * p / 3,
                P2 =
                    p * x * x * x / (n + 3) + (2 + n) * p * p * x * x / (2 * n + 2) + (1 + 2 * n) * p * p * p * x / (3 * n + 1)
                        + p * p * p * p / 4,
                C0 = p,
                C1 = n * xp + p * p / 2,
                C2 = n * xxp + 2 * n * xpp + p * p * p / 3,
                C3 =
                    n * p * x * x * x / (n + 3) + 3 * n * p * p * x * x / (2 * n + 2) + 3 * n * p * p * p * x / (3 * n + 1)
                        + p * p * p * p / 4,
            };
        }

        public double NextBreak(double strain)
        {
            double distance = Math.Sqrt((strain - _knee) * (strain - _knee) + _kneeOff * _kneeOff);
            return strain + Math.Min(0.6 * distance, strain);
        }
    }
}
