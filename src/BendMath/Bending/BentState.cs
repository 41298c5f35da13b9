using BendMath.Numerics;
using BendMath.Numerics.Geometry;
using BendMath.Numerics.Integrals;

namespace BendMath.Bending;

/// <summary>
/// A loaded state in SI numbers: e = κ(y − y_n) + κ_r(z − z̄), with κ_r = 0 when held flat, its plastic integrals, and what release makes
/// of them. The plastic strain e_p = e − σ/E of a bar that unloads elastically stays; the released shape is the linear field closest to it
/// over the section: (κ_f, κ_rf) = I⁻¹·(Pb, Pr) and e_f(centroid) = P0/A, free of any difference of large numbers.
/// </summary>
internal readonly struct BentState(double curvature, double neutralAxis, PlasticMoments sums, double outOfPlane = 0,
    double? insideRadius = null)
{
    public double Curvature { get; } = curvature;

    public double NeutralAxis { get; } = neutralAxis;

    public PlasticMoments Sums { get; } = sums;

    /// <summary>κ_r, the curvature out of the plane of the ring.</summary>
    public double OutOfPlane { get; } = outOfPlane;

    /// <summary>Whether no fiber is plastic: e_p has the sign of e everywhere, so ∫e_p·e dA vanishes with it only.</summary>
    public bool IsElastic => Sums is { P0: 0, Pb: 0, Pr: 0 };

    /// <summary>R_i at the centroid's axial position; 1/κ − y_n unless the bar has turned about its own axis.</summary>
    public double InsideRadius { get; } = insideRadius ?? 1 / curvature - neutralAxis;

    /// <summary>√(κ² + κ_r²).</summary>
    public double TotalCurvature => Math.Sqrt(Curvature * Curvature + OutOfPlane * OutOfPlane);

    /// <summary>M_b, the moment about the bending axis.</summary>
    public double BendingMoment(in AreaMoments moments, double modulus) =>
        modulus * (Curvature * moments.SecondY + OutOfPlane * moments.Product - Sums.Pb);

    /// <summary>M_r, the moment about the radial axis that holds the section flat.</summary>
    public double HoldDownMoment(in AreaMoments moments, double modulus) =>
        modulus * (Curvature * moments.Product + OutOfPlane * moments.SecondZ - Sums.Pr);

    /// <summary>The permanent curvatures: in the plane of the ring and, when free, out of it (−Δκ_r).</summary>
    public (double InPlane, double OutOfPlane) Permanent(in AreaMoments moments, bool free) => Unloaded(moments, free, Sums.Pb, Sums.Pr);

    /// <summary>
    /// The curvatures that stay when the bar unloads with a share η of its stiffness: κ − (κ − κ_p)/η. A bar cannot spring back past
    /// straight: where that would bend it the other way, nothing stays.
    /// </summary>
    public (double InPlane, double OutOfPlane) Left(in AreaMoments moments, bool free, double share)
    {
        (double f, double r) = Permanent(moments, free);
        if (share == 1)
        {
            return (f, r);
        }

        double more = 1 / share - 1;
        double inPlane = f - more * (Curvature - f);
        return inPlane <= 0 ? (0, 0) : (inPlane, free ? r - more * (OutOfPlane - r) : r);
    }

    /// <summary>Strain of the centroid line after release: P0/A, and with a pull let go along a softer line less.</summary>
    public double Stretch(in AreaMoments moments, double share)
    {
        double stays = Sums.P0 / moments.Area;
        return share == 1 ? stays : stays - (1 / share - 1) * (Curvature * (moments.CentroidY - NeutralAxis) - stays);
    }

    /// <summary>Release applied to any pair of plastic moments; linear in both.</summary>
    public static (double InPlane, double OutOfPlane) Unloaded(in AreaMoments moments, bool free, double pb, double pr)
    {
        if (!free)
        {
            return (pb / moments.SecondY, 0);
        }

        double determinant = moments.SecondY * moments.SecondZ - moments.Product * moments.Product;
        double inverse = 1 / determinant;
        return ((moments.SecondZ * pb - moments.Product * pr) * inverse, (moments.SecondY * pr - moments.Product * pb) * inverse);
    }
}
