using BendMath.Evidence;
using BendMath.Guards;
using BendMath.Numerics.Geometry;
using UnitsNet;

namespace BendMath.Distortion;

/// <summary>
/// Lateral buckling of the length between sideways supports of a bar bent about an axis that is not its weakest: it leans over and twists.
/// In the plastic range the bar resists with what stiffness its yielded fibers have left. Immutable and thread-safe.
/// </summary>
/// <remarks>
/// Equation: M_cr = (π/L)·√(B·C); B = ∫E_t(z − z̄)² dA; C = (J/I_r)·∫G(z − z̄)² dA with G_s = E_s/(3 − (1 − 2ν)·E_s/E) by deformation
/// theory, E/(2 + 2ν) by incremental theory.
/// Range: sections symmetric about the plane of the ring; warping is left out, the bar between the supports counts as straight, its ends
/// cannot twist. The weight of C is exact for flats.
/// Source: <see cref="Sources.TimoshenkoGere"/>
/// </remarks>
public sealed record LateralBuckling
{
    private readonly double _moment;

    private LateralBuckling(double moment, double lateral, double deformation, double incremental, double elastic)
    {
        _moment = moment;
        LateralStiffness = lateral;
        DeformationTorsionalStiffness = deformation;
        IncrementalTorsionalStiffness = incremental;
        ElasticDistance = elastic;
    }

    /// <summary>The moment the bar is bent with.</summary>
    public Torque Moment => Torque.FromNewtonMeters(_moment);

    /// <summary>Sideways bending stiffness B that is left, in newton square meters.</summary>
    public double LateralStiffness { get; }

    /// <summary>Torsional stiffness C by deformation theory, in newton square meters.</summary>
    public double DeformationTorsionalStiffness { get; }

    /// <summary>Torsional stiffness C by incremental theory, in newton square meters: the elastic one.</summary>
    public double IncrementalTorsionalStiffness { get; }

    /// <summary>Distance between supports at which the bar buckles, by deformation theory.</summary>
    public Length DistanceByDeformationTheory => Length.FromMeters(Distance(DeformationTorsionalStiffness));

    /// <summary>Distance between supports at which the bar buckles, by incremental theory.</summary>
    public Length DistanceByIncrementalTheory => Length.FromMeters(Distance(IncrementalTorsionalStiffness));

    /// <summary>The distance an elastic bar would allow at the same moment: unsafe once the bar has yielded.</summary>
    public Length DistanceIfElastic => Length.FromMeters(ElasticDistance);

    /// <summary>The largest distance between supports: the smaller of both theories.</summary>
    public Length LargestSupportDistance => Length.FromMeters(Largest);

    internal double Largest => Distance(Math.Min(DeformationTorsionalStiffness, IncrementalTorsionalStiffness));

    private double ElasticDistance { get; }

    /// <summary>Lateral buckling at a bend; null where the torsion constant is neither given nor known for the stock.</summary>
    /// <param name="loaded">The bend.</param>
    /// <param name="settings">The torsion constant, if it is to differ from that of the stock.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static LateralBuckling? Of(LoadedBend loaded, DistortionSettings settings)
    {
        OrientedSection section = Guard.NotNull(loaded, nameof(loaded)).Analysis.Section;
        if ((Guard.NotNull(settings, nameof(settings)).TorsionMeters ?? section.Stock.TorsionConstant?.Meters4) is not { } torsion)
        {
            return null;
        }

        StressStrainLaw law = loaded.Analysis.Law;
        double poisson = loaded.Analysis.Material.PoissonsRatio ?? 0.3;
        double spread = section.Profile.Moments.SecondZ;
        double share = torsion / spread;
        double shear = law.E / (2 + 2 * poisson);
        double lateral = Spread(loaded, law.TangentModulus);
        double twist = share * Spread(loaded, strain => SecantShear(law, strain, poisson));
        double moment = Math.Abs(loaded.Moment);
        return new(moment, lateral, twist, shear * torsion, Math.PI * Math.Sqrt(law.E * spread * shear * torsion) / moment);
    }

    /// <summary>Buckling moment of a straight bar, bent evenly, its ends kept from moving sideways and from twisting.</summary>
    /// <param name="lateralStiffness">Sideways bending stiffness B in newton square meters, greater than zero.</param>
    /// <param name="torsionalStiffness">Torsional stiffness C in newton square meters, greater than zero.</param>
    /// <param name="unsupportedLength">Distance between the supports, greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is not positive and finite.</exception>
    /// <remarks>
    /// Equation: M_cr = (π/L)·√(B·C).
    /// Range: elastic, or with the moduli of the yielded bar; no warping.
    /// Source: <see cref="Sources.TimoshenkoGere"/>
    /// </remarks>
    public static Torque CriticalMoment(double lateralStiffness, double torsionalStiffness, Length unsupportedLength) =>
        Torque.FromNewtonMeters(
        Math.PI / Guard.Positive(unsupportedLength, nameof(unsupportedLength))
        * Math.Sqrt(Guard.Positive(lateralStiffness, nameof(lateralStiffness)) * Guard.Positive(torsionalStiffness, nameof(torsionalStiffness))));

    /// <summary>Buckling moment of a bar that has the shape of an arc of a circle already.</summary>
    /// <param name="lateralStiffness">Sideways bending stiffness B in newton square meters, greater than zero.</param>
    /// <param name="torsionalStiffness">Torsional stiffness C in newton square meters, greater than zero.</param>
    /// <param name="radius">Radius of the arc, greater than zero.</param>
    /// <param name="opening">Angle between the supports, greater than zero and less than 180°.</param>
    /// <param name="closing">Whether the moment closes the arc, as in bending; a moment that opens it is the smaller one.</param>
    /// <returns>The size of the moment, without sign.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <remarks>
    /// Equation: M = (B + C)/(2R) ± √(((B − C)/(2R))² + (B·C/R²)·(π/α)²).
    /// Range: elastic, or with the moduli of the yielded bar; a moment that closes the arc takes the upper sign.
    /// Source: <see cref="Sources.TimoshenkoGere"/>
    /// </remarks>
    public static Torque CriticalMomentOfArc(double lateralStiffness, double torsionalStiffness, Length radius, Angle opening, bool closing)
    {
        double b = Guard.Positive(lateralStiffness, nameof(lateralStiffness));
        double c = Guard.Positive(torsionalStiffness, nameof(torsionalStiffness));
        double r = Guard.Positive(radius, nameof(radius));
        double turns = Math.PI / Guard.Positive(opening, nameof(opening));
        if (turns <= 1)
        {
            throw Guard.Fault(nameof(opening), opening, "must be less than 180°");
        }

        double mean = (b + c) / (2 * r);
        double root = Math.Sqrt((b - c) * (b - c) / (4 * r * r) + b * c * turns * turns / (r * r));

        // The product of the roots is free of a difference of large numbers.
        double upper = mean + root;
        return Torque.FromNewtonMeters(closing ? upper : b * c * (turns - 1) * (turns + 1) / (r * r) / upper);
    }

    /// <summary>The largest distance between supports.</summary>
    public override string ToString() => Invariant($"buckles sideways at {Largest * 1e3:0.#} mm between supports");

    private static double SecantShear(StressStrainLaw law, double strain, double poisson)
    {
        double secant = law.SecantModulus(strain);
        return secant / (3 - (1 - 2 * poisson) * secant / law.E);
    }

    /// <summary>∫f(e)·(z − z̄)² dA over chords: each edge z(y) adds ± z³/3 to the chord's own integral.</summary>
    private static double Spread(LoadedBend loaded, Func<double, double> modulus)
    {
        OrientedSection section = loaded.Analysis.Section;
        MonotonePiece[] pieces = MonotonePiece.Rent(section.Loops, section.Profile.Moments.CentroidZ, axial: false, out int count);
        try
        {
            double sum = 0;
            foreach (Band band in section.Profile.Bands)
            {
                sum += LinearField.Integral(
                    (y, e) => modulus(e) * Chord(pieces, count, y), band.Bottom, band.Top, loaded.Strain(band.Bottom),
                        loaded.Strain(band.Top), loaded.Analysis.Law.YieldStrain);
            }

            return sum;
        }
        finally
        {
            MonotonePiece.Return(pieces);
        }
    }

    private static double Chord(MonotonePiece[] pieces, int count, double level)
    {
        double sum = 0;
        for (int i = 0; i < count; i++)
        {
            ref readonly MonotonePiece piece = ref pieces[i];
            if (piece.Bottom <= level && level < piece.Top)
            {
                double u = level - piece.CenterY;
                double z = piece.Radius == 0
                    ? piece.Z + piece.Slope * (level - piece.Bottom)
                    : piece.Z + piece.Side * Math.Sqrt(Math.Max(0, (piece.Radius - u) * (piece.Radius + u)));
                sum += piece.Sign * z * z * z / 3;
            }
        }

        return sum;
    }

    private double Distance(double torsional) => Math.PI * Math.Sqrt(LateralStiffness * torsional) / _moment;
}
