using BendMath.Distortion.Checks;
using BendMath.Distortion.Shape;
using BendMath.Evidence;
using UnitsNet;

namespace BendMath.Distortion;

/// <summary>
/// When a flat bent the hard way begins to wave sideways: strains of its edge at which theory lets it, beside the strain of the bend.
/// Immutable and thread-safe.
/// </summary>
public sealed record HardWayRipple
{
    /// <summary>Three depths, less rounding.</summary>
    private const double PlateUpTo = 3 * (1 - 1e-9);

    private const double UsualHalfWave = 4;

    private const double LeastSlenderness = 1.5;

    private readonly double _edge;

    private readonly double _half;

    private readonly double _free;

    private readonly double _wave;

    private HardWayRipple(double edge, double half, double free, double wave, bool isBeam)
    {
        _edge = edge;
        _half = half;
        _free = free;
        _wave = wave;
        IsBeamFormula = isBeam;
    }

    /// <summary>Strain the bend asks of the edges.</summary>
    /// <remarks>
    /// Equation: (h/2)/(R_i + h/2).
    /// Range: neutral axis at mid depth.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public Ratio EdgeStrain => Ratio.FromDecimalFractions(_edge);

    /// <summary>Strain at which the compressed half ripples while the neutral axis holds it; at most 100 %.</summary>
    /// <remarks>
    /// Equation: ∫E_s·t²/9 dx = ∫σ·x² dx over the half depth b, strain e·x/b; perfectly plastic, e = ⅓(t/b)²·(1 + ln(e/e_y)).
    /// Range: a long flat, hinged along its middle; by the deformation theory of plasticity.
    /// Source: <see cref="Sources.PlasticPlateBuckling"/>
    /// </remarks>
    public Ratio CompressedHalf => Ratio.FromDecimalFractions(_half);

    /// <summary>
    /// Strain at which the whole depth waves, both edges free; at most 100 %. A slot makes it void: there the wave cannot grow past the
    /// clearance.
    /// </summary>
    /// <remarks>
    /// Equation: least e at which w = f(y)·sin(πx/L) stores no work, per area ½(E_s·t³/9)·[(¼ + ¾E_t/E_s)w_xx² + w_yy² + w_xx·w_yy + w_xy²]
    /// − ½σ_c·t·w_x²; from a known L = 3h on, M = (π/L)·√(t³/12·∫E_t dy · t³/9·∫E_s dy).
    /// Range: L between places that hold the bar sideways and against twist; 4h, with the plate, where nobody says.
    /// Source: <see cref="Sources.PlasticPlateBuckling"/>, <see cref="Sources.TimoshenkoGere"/>
    /// </remarks>
    public Ratio FreeEdges => Ratio.FromDecimalFractions(_free);

    /// <summary>The half-wave L of <see cref="FreeEdges"/>.</summary>
    public Length HalfWave => Length.FromMeters(_wave);

    /// <summary>Whether <see cref="FreeEdges"/> is that of a beam that buckles sideways, rather than of a plate.</summary>
    public bool IsBeamFormula { get; }

    /// <summary>The three strains.</summary>
    public override string ToString() =>
        Invariant($"edge strained by {100 * _edge:0.0} %; ripples at {100 * _half:0.00} % held in its middle, ")
        + Invariant($"at {100 * _free:0.00} % with free edges and {_wave * 1e3:0.#} mm between supports");

    internal static HardWayRipple? Of(LoadedBend loaded, double? supportDistance, CancellationToken cancellation)
    {
        OrientedSection section = loaded.Analysis.Section;
        double h = section.Height;
        double t = section.Properties.Breadth;
        if (!section.Features.IsFlatHardWay || h <= LeastSlenderness * t)
        {
            return null;
        }

        StressStrainLaw law = loaded.Analysis.Material.Law;
        double wave = supportDistance / h ?? UsualHalfWave;
        bool isBeam = supportDistance is not null && wave >= PlateUpTo;
        double half = Math.Min(1, FreeEdgeCheck.Critical(law, 2 * t / h, 0));
        return new(
            h / 2 / (loaded.State.InsideRadius + h / 2),
            half,
            isBeam
                ? PlateRipple.CriticalStrainOfBeam(law, t / h, wave, cancellation)
                : PlateRipple.CriticalStrain(law, t / h, wave, cancellation),
            wave * h,
            isBeam);
    }
}
