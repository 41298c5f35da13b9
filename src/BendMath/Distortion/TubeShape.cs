using BendMath.Distortion.Shape;
using BendMath.Evidence;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Distortion;

/// <summary>A round tube as it flattens when it is bent. Immutable and thread-safe.</summary>
/// <remarks>
/// Equation: ψ = θ + Σ b_n·sin 2nθ, n = 1…8, the direction of a wall that keeps its length; the shape of least stored work ∫W(e_h, e_φ) dA
/// by Hencky's deformation theory, with N = 0. In a groove the inner half keeps its shape and the lips hold the half width to r + c.
/// Range: no mandrel or filling; up to an ovality of 20 %, beyond which the tube kinks. A rigid groove is the best a groove can do.
/// Source: <see cref="Sources.DistortionChecks"/>, <see cref="Sources.Hencky1924"/>, <see cref="Sources.Brazier1927"/>
/// </remarks>
public sealed class TubeShape
{
    private const double MostOvality = 0.2;

    private const double LeastShare = 0.55;

    private readonly double _ovality;

    private readonly double _inward;

    private readonly double _outsideWall;

    private readonly double _insideWall;

    private readonly double _pipeline;

    private readonly double _elastic;

    private TubeShape(TubeRing ring, LoadedBend? bend, double pipeline, double elastic)
    {
        Bend = bend;
        _ovality = ring.Ovality;
        _inward = ring.CrownInward;
        _pipeline = pipeline;
        _elastic = elastic;
        if (bend is not null)
        {
            _outsideWall = ring.ThicknessStrainOutside;
            _insideWall = ring.ThicknessStrainInside;
        }
    }

    /// <summary>Whether the tube finds no rest or passes an ovality of 20 %; no size is given then.</summary>
    public bool Kinks => Bend is null;

    /// <summary>
    /// Ovality (D_max − D_min)/D while loaded, by deformation theory, the most to expect; in a groove, how far the outside crown comes in
    /// over D. Null if it <see cref="Kinks"/>.
    /// </summary>
    public Ratio? Ovality => Share(_ovality);

    /// <summary>
    /// The least ovality to expect: incremental theory, which follows the path of strain, gives 0.55 to 0.70 of <see cref="Ovality"/>. Null
    /// if it <see cref="Kinks"/>.
    /// </summary>
    public Ratio? LeastOvality => Share(LeastShare * _ovality);

    /// <summary>How far the outside crown comes toward the middle of the tube; null if it <see cref="Kinks"/>.</summary>
    public Length? CrownInward => Kinks ? null : Length.FromMeters(_inward);

    /// <summary>Strain of the wall thickness at the outside crown, negative where it thins; null if it <see cref="Kinks"/>.</summary>
    public Ratio? OutsideWallStrain => Share(_outsideWall);

    /// <summary>Strain of the wall thickness at the inside crown, positive where it thickens; null if it <see cref="Kinks"/>.</summary>
    public Ratio? InsideWallStrain => Share(_insideWall);

    /// <summary>Ovality of a free tube by the formula of pipeline practice.</summary>
    /// <remarks>
    /// Equation: 0.03·(1 + D/(120·t))·(2·ε·D/t)², ε = D/(2R), R to the middle of the tube.
    /// Range: tests of line pipe, D/t 15 to 45.
    /// Source: <see cref="Sources.PipelineOvality"/>
    /// </remarks>
    public Ratio PipelineFormula => Ratio.FromDecimalFractions(_pipeline);

    /// <summary>Ovality of a free tube whose wall stays elastic.</summary>
    /// <remarks>
    /// Equation: (2r/D)·2κ²r⁴(1 − ν²)/t², r to the middle of the wall.
    /// Range: elastic, up to an ovality of a few percent.
    /// Source: <see cref="Sources.Brazier1927"/>
    /// </remarks>
    public Ratio ElasticFormula => Ratio.FromDecimalFractions(_elastic);

    /// <summary>The bend with moment and neutral axis of the flattened tube; null if it <see cref="Kinks"/>.</summary>
    public LoadedBend? Bend { get; }

    /// <summary>Ovality (D_max − D_min)/D of a measured tube.</summary>
    /// <param name="largest">Largest outside diameter, greater than zero.</param>
    /// <param name="smallest">Smallest outside diameter, greater than zero and not greater than the largest.</param>
    /// <param name="nominal">Outside diameter before bending, greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A diameter is outside its range.</exception>
    /// <remarks>
    /// Equation: (D_max − D_min)/D.
    /// Range: any tube.
    /// Source: <see cref="Sources.PipeBendWall"/>
    /// </remarks>
    public static Ratio MeasuredOvality(Length largest, Length smallest, Length nominal)
    {
        double most = Guard.Positive(largest, nameof(largest));
        double least = Guard.Positive(smallest, nameof(smallest));
        return least <= most
            ? Ratio.FromDecimalFractions((most - least) / Guard.Positive(nominal, nameof(nominal)))
            : throw Guard.Fault(nameof(smallest), smallest, $"must not be greater than the largest diameter, {Guard.Text(largest)}");
    }

    /// <summary>Ovality and its band.</summary>
    public override string ToString() => Kinks ? "kinks" : Invariant(
        $"ovality {100 * LeastShare * _ovality:0.0} to {100 * _ovality:0.0} %");

    internal static TubeShape? Of(LoadedBend loaded, double? clearance, CancellationToken cancellation)
    {
        if (loaded.Analysis.Section.Features is not { TubeDiameter: { } diameter, WallThickness: { } wall })
        {
            return null;
        }

        double d = diameter.Meters;
        double t = wall.Meters;
        double r = (d - t) / 2;
        TwoWayLaw law = StripModel.LawOf(loaded);
        TubeRing ring = new(d, t, law, loaded.State.InsideRadius, clearance);
        double curvature = 1 / (loaded.State.InsideRadius + d / 2);
        double strain = d * curvature / 2;
        double pipeline = 2 * strain * d / t;
        double root = curvature * r * r / t;
        LoadedBend? bend = ring.Settle(MostOvality, cancellation)
            ? StripModel.Bent(loaded, ring.Curvature, ring.NeutralAxis, ring.Moment(), 0)
            : null;
        double elastic = 4 * r / d * root * root * (1 - law.PoissonsRatio * law.PoissonsRatio);
        return new(ring, bend, 0.03 * (1 + d / (120 * t)) * pipeline * pipeline, elastic);
    }

    private Ratio? Share(double value) => Kinks ? null : Ratio.FromDecimalFractions(value);
}
