using BendMath.Numerics.Geometry;
using BendMath.Numerics.Integrals;

namespace BendMath.Distortion.Shape;

/// <summary>
/// What of a section does not move: the whole of it less the strips, with the law of the tensile test and straight chords.
/// </summary>
internal readonly struct RigidPart
{
    private readonly StressStrainLaw _law;

    private readonly (BandProfile Profile, int Factor)[] _parts;

    private RigidPart(StressStrainLaw law, (BandProfile Profile, int Factor)[] parts)
    {
        _law = law;
        _parts = parts;
    }

    /// <summary>A section that is all strips.</summary>
    public static RigidPart None(StressStrainLaw law) => new(law, []);

    public static RigidPart Of(StressStrainLaw law, BandProfile whole, Strip[] strips) =>
        new(law, [(whole, 1), .. strips.Select(strip => (strip.Straight(), -strip.Count))]);

    /// <summary>N and −dN/d(κ·y_n) = ∫E_t dA at a curvature and a neutral axis.</summary>
    public (double Force, double Stiffness) Axial(double curvature, double axis)
    {
        double force = 0;
        double stiffness = 0;
        foreach ((BandProfile profile, int factor) in _parts)
        {
            ref readonly AreaMoments m = ref profile.Moments;
            PlasticSums sums = _law.Integrate(profile, curvature, axis);
            force += factor * (curvature * m.Area * (m.CentroidY - axis) - sums.P0);
            stiffness += factor * (m.Area - sums.C0);
        }

        return (_law.E * force, _law.E * stiffness);
    }

    /// <summary>∫σ·(y − y_n) dA and ∫σ·z dA.</summary>
    public (double Bending, double HoldDown) Moments(double curvature, double axis)
    {
        double bending = 0;
        double holdDown = 0;
        foreach ((BandProfile profile, int factor) in _parts)
        {
            ref readonly AreaMoments m = ref profile.Moments;
            PlasticMoments sums = _law.MomentsOf(profile, curvature, axis);
            double force = curvature * m.Area * (m.CentroidY - axis) - sums.P0;
            bending += factor * (curvature * m.SecondY - sums.Pb + force * (m.CentroidY - axis));
            holdDown += factor * (curvature * m.Product - sums.Pr + force * m.CentroidZ);
        }

        return (_law.E * bending, _law.E * holdDown);
    }
}
