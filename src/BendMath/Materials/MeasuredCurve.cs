using BendMath.Evidence;
using BendMath.Guards;
using BendMath.Materials;
using BendMath.Numerics;
using BendMath.Numerics.Geometry;
using BendMath.Numerics.Integrals;
using UnitsNet;

namespace BendMath;

/// <summary>
/// A measured tensile curve: the elastic line to the first point, straight lines from point to point, constant stress beyond the last one.
/// </summary>
/// <remarks>
/// Equation: σ = E·e for |e| ≤ e₁ = σ₁/E, linear between (eᵢ, σᵢ), ±σ_last beyond; true points enter as e = exp(ε) − 1, σ = σ_true/(1 + e).
/// Range: stress never falls and σ/e never rises with e, so that one loaded radius belongs to each finished one; beyond
/// <see cref="LargestStrain"/> the stress is an assumption.
/// Source: <see cref="Sources.Mechanics"/>
/// </remarks>
public sealed record MeasuredCurve : StressStrainLaw
{
    private const double LineTolerance = 0.02;

    private const double LeastStrain = 1e-6;

    private readonly MeasuredSegments _law;

    private readonly double[] _stresses;

    private readonly double _measuredYield;

    private MeasuredCurve(double elasticModulus, MeasuredSegments law, double[] stresses, double measuredYield, bool pointsAreTrue)
        : base(elasticModulus)
    {
        _law = law;
        _stresses = stresses;
        _measuredYield = measuredYield;
        PointsAreTrue = pointsAreTrue;
        Points =
            Array.AsReadOnly(
                [.. stresses.Select((stress, i) => (Ratio.FromDecimalFractions(law.Strains[i]), Pressure.FromPascals(stress)))]);
    }

    /// <summary>Stress of the first point.</summary>
    public override Pressure YieldStress => Pressure.FromPascals(_stresses[0]);

    /// <summary>
    /// The yield stress of the points as measured; <see cref="YieldStress"/> differs from it after <see cref="WithYield"/>.
    /// </summary>
    public Pressure MeasuredYield => Pressure.FromPascals(_measuredYield);

    /// <summary>Whether the points were given as true stress and true strain; the law itself works on engineering values.</summary>
    public bool PointsAreTrue { get; }

    /// <summary>The points the law runs through, in engineering strain and stress; the first lies on the elastic line exactly.</summary>
    public IReadOnlyList<(Ratio Strain, Pressure Stress)> Points { get; }

    /// <summary>Engineering strain of the last point; beyond it the law holds the last stress without data.</summary>
    public Ratio LargestStrain => Ratio.FromDecimalFractions(LastStrain);

    internal override double YieldStrain => _law.ElasticLimit;

    internal override LawShape Shape => new PointsShape(_law.Strains);

    internal override double ReferenceStrain => 1;

    internal override bool IsScaledByYield => false;

    internal override double DataStrain => LastStrain;

    internal override IReadOnlyList<double> Kinks => _law.Strains;

    private double LastStrain => _law.Strains[_law.Strains.Length - 1];

    /// <summary>Makes the law from points of engineering strain and engineering stress, as a testing machine prints them.</summary>
    /// <param name="elasticModulus">Young's modulus E, greater than zero.</param>
    /// <param name="points">
    /// At least two points, tension positive. The first is the end of the elastic line: it must lie on it within 2 %, its stress is taken
    /// as the yield and its strain as σ/E. Strain rises from point to point, 0.0001 % to 100 %; stress never falls; no line is as steep as
    /// E; σ/e never rises.
    /// </param>
    /// <exception cref="ArgumentNullException">The points are null.</exception>
    /// <exception cref="ArgumentException">There are fewer than two points.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The modulus or a point breaks a rule; the message names the point.</exception>
    public static MeasuredCurve FromEngineering(Pressure elasticModulus, IEnumerable<(Ratio Strain, Pressure Stress)> points) =>
        From(elasticModulus, points, pointsAreTrue: false);

    /// <summary>
    /// Makes the law from points of true (logarithmic) strain and true stress; they are converted to engineering values first, and the
    /// rules hold for those.
    /// </summary>
    /// <param name="elasticModulus">Young's modulus E, greater than zero.</param>
    /// <param name="points">At least two points as in <see cref="FromEngineering"/>; end at the uniform strain, beyond which the
    /// engineering stress falls.</param>
    /// <exception cref="ArgumentNullException">The points are null.</exception>
    /// <exception cref="ArgumentException">There are fewer than two points.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The modulus or a point breaks a rule; the message names the point and its engineering
    /// values.</exception>
    public static MeasuredCurve FromTrue(Pressure elasticModulus, IEnumerable<(Ratio Strain, Pressure Stress)> points) =>
        From(elasticModulus, points, pointsAreTrue: true);

    /// <summary>
    /// The curve with every stress in proportion to the new yield at the same plastic strain e − σ/E; this keeps every rule the points
    /// obey.
    /// </summary>
    /// <param name="yieldStress">The new yield stress, greater than zero and less than E.</param>
    /// <exception cref="ArgumentOutOfRangeException">The yield stress is not positive and finite, or not below the modulus.</exception>
    public override StressStrainLaw WithYield(Pressure yieldStress)
    {
        double yield = LawRules.YieldBelowModulus(yieldStress, E);
        double factor = yield / _stresses[0];
        double[] stresses = [.. _stresses.Select(stress => factor * stress)];
        stresses[0] = yield;
        double[] strains = [.. stresses.Select((stress, i) => _law.Plastic[i] + stress / E)];
        return new MeasuredCurve(E, new(strains, _law.Plastic), stresses, _measuredYield, PointsAreTrue);
    }

    /// <summary>Whether both laws have the same modulus and run through the same points of the same kind.</summary>
    /// <param name="other">The other law.</param>
    public bool Equals(MeasuredCurve? other) => other is not null
        && E.Equals(other.E)
        && PointsAreTrue == other.PointsAreTrue
        && _measuredYield.Equals(other._measuredYield)
        && _stresses.SequenceEqual(other._stresses)
        && _law.Strains.SequenceEqual(other._law.Strains);

    /// <summary>A hash of modulus, number of points and both ends of the curve.</summary>
    public override int GetHashCode() =>
        (E, _stresses.Length, _stresses[0], _stresses[_stresses.Length - 1], LastStrain, PointsAreTrue).GetHashCode();

    /// <summary>Kind of law, kind of points and the main numbers.</summary>
    public override string ToString()
    {
        string text = Invariant(
            $"measured curve of {_stresses.Length} {(PointsAreTrue ? "true" : "engineering")} points to a strain "
                + $"of {LastStrain * 100:0.###} %, yield {_stresses[0] / 1e6:0.#} MPa, E {E / 1e9:0.#} GPa");
        return _stresses[0].Equals(_measuredYield) ? text : Invariant($"{text}, scaled from a yield of {_measuredYield / 1e6:0.#} MPa");
    }

    internal override IEnumerable<Advisory> DoubtsAt(double strain, StressStrainLaw acting)
    {
        if (strain > acting.DataStrain)
        {
            yield return new("beyond-measured-curve",
                Invariant(
                    $"The largest strain is {100 * strain:0.##} %, beyond the last point of the measured curve at {100 * LastStrain:0.##} "
                        + $"%; the stress is held constant from there, which is an assumption."), Sources.Mechanics);
        }
    }

    internal override double PlasticStrain(double strain) => strain <= _law.ElasticLimit ? 0 : _law.PlasticStrain(strain);

    internal override double PlasticRate(double strain) => strain < _law.ElasticLimit ? 0 : _law.PlasticRate(strain);

    internal override StressStrainLaw InPlaneStrain(double poissonsRatio)
    {
        double modulus = Stiffened(E, poissonsRatio).Pascals;
        double[] stresses = [.. _stresses.Select(stress => PlaneStrainFactor * stress)];
        double[] plastic = [.. _law.Plastic.Select(strain => strain / PlaneStrainFactor)];
        double[] strains = [.. stresses.Select((stress, i) => plastic[i] + stress / modulus)];
        return new MeasuredCurve(modulus, new(strains, plastic), stresses, PlaneStrainFactor * _measuredYield, PointsAreTrue);
    }

    internal override PlasticSums Integrate(BandProfile profile, double curvature, double neutralAxis) =>
        RampIntegrator.Integrate(profile, _law.Ramps, curvature, neutralAxis);

    internal override PlasticMoments MomentsOf(BandProfile profile, double curvature, double neutralAxis) =>
        RampIntegrator.MomentsOf(profile, _law.Ramps, curvature, neutralAxis);

    internal override double PlasticWork(BandProfile profile, double curvature, double neutralAxis) =>
        RampIntegrator.Work(profile, _law.Ramps, curvature, neutralAxis);

    internal override AxialSums AxialSumsOf(BandProfile profile, double neutralRadius, double neutralAxis) =>
        RampIntegrator.AxialSumsOf(profile, _law.Ramps, neutralRadius, neutralAxis);

    private static MeasuredCurve From(Pressure elasticModulus, IEnumerable<(Ratio Strain, Pressure Stress)> points, bool pointsAreTrue)
    {
        double modulus = Guard.Positive(elasticModulus, nameof(elasticModulus));
        (double Strain, double Stress)[] read =
            [.. Guard.NotNull(points, nameof(points)).Select((point, i) => Read(point, i, pointsAreTrue))];
        if (read.Length < 2)
        {
            throw Guard.Refused(nameof(points), "must be at least 2", Invariant($"are {read.Length}"));
        }

        double line = modulus * read[0].Strain;
        if (Math.Abs(read[0].Stress - line) > LineTolerance * line)
        {
            throw Fault(0, read[0], $"must lie within 2 % of the elastic line, which has {Megapascals(line)} there");
        }

        read[0].Strain = read[0].Stress / modulus;
        for (int i = 1; i < read.Length; i++)
        {
            CheckStep(read[i - 1], read[i], i, modulus);
        }

        double[] strains = [.. read.Select(point => point.Strain)];
        double[] stresses = [.. read.Select(point => point.Stress)];
        double[] plastic = [0, .. read.Skip(1).Select(point => point.Strain - point.Stress / modulus)];
        return new(modulus, new(strains, plastic), stresses, stresses[0], pointsAreTrue);
    }

    private static (double Strain, double Stress) Read((Ratio Strain, Pressure Stress) point, int index, bool isTrue)
    {
        double strain = Guard.Finite(point.Strain, "points");
        double stress = Guard.Finite(point.Stress, "points");
        if (!(strain is >= LeastStrain and <= 1))
        {
            throw Fault(index, (strain, stress), "must have a strain between 0.0001 % and 100 %");
        }

        if (!(stress > 0))
        {
            throw Fault(index, (strain, stress), "must have a stress greater than 0 MPa");
        }

        return isTrue ? (Math.Exp(strain) - 1, stress / Math.Exp(strain)) : (strain, stress);
    }

    private static void CheckStep((double Strain, double Stress) before, (double Strain, double Stress) point, int index, double modulus)
    {
        if (point.Strain <= before.Strain)
        {
            throw Fault(index, point, $"must have a strain greater than that of the point before, {Percent(before.Strain)}");
        }

        if (point.Stress < before.Stress)
        {
            throw Fault(index, point, $"must not have a stress below that of the point before, {Megapascals(before.Stress)}");
        }

        double slope = (point.Stress - before.Stress) / (point.Strain - before.Strain);
        if (slope >= modulus)
        {
            throw Fault(index, point,
                $"must be reached by a slope smaller than the elastic modulus, {LawRules.Gigapascals(modulus)}, "
                    + $"not {LawRules.Gigapascals(slope)}");
        }

        if (point.Stress / point.Strain > before.Stress / before.Strain * (1 + 1e-12))
        {
            throw Fault(index, point,
                Invariant(
                    $"must not have a larger stress over strain, {point.Stress / point.Strain / 1e6:0.#} MPa, than the point "
                        + $"before, {before.Stress / before.Strain / 1e6:0.#} MPa"));
        }
    }

    private static ArgumentOutOfRangeException Fault(int index, (double Strain, double Stress) point, string rule,
        string name = "points") => new(
        name,
        Invariant($"{name}: point {index + 1} {rule}, but is {Megapascals(point.Stress)} at {Percent(point.Strain)}."));

    private static string Percent(double strain) => Invariant($"{strain * 100:0.######} %");

    private static string Megapascals(double stress) => Invariant($"{stress / 1e6:0.###} MPa");
}
