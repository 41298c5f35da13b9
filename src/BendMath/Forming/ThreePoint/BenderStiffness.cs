using BendMath.Evidence;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Forming.ThreePoint;

/// <summary>How much a bender gives under load, from one pair of force and deflection measured on it. Immutable and thread-safe.</summary>
/// <remarks>
/// Equation: k = F/g, with g how far nose and supports part under the nose force F.
/// Range: a frame that gives in proportion to the force; play and bedding in are no stiffness, so measure from a small load to a large one.
/// Source: <see cref="Sources.Definition"/>
/// </remarks>
public sealed record BenderStiffness
{
    private BenderStiffness(double stiffness) => K = stiffness;

    /// <summary>Nose force per length the bender gives, k.</summary>
    public ForcePerLength ForcePerLength => ForcePerLength.FromNewtonsPerMeter(K);

    internal double K { get; }

    /// <summary>The stiffness from one measured pair.</summary>
    /// <param name="noseForce">Force between nose and supports, or its increase; greater than zero.</param>
    /// <param name="give">How far nose and supports parted under it, greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is not positive and finite.</exception>
    public static BenderStiffness From(Force noseForce, Length give) =>
        new(Guard.Positive(noseForce, nameof(noseForce)) / Guard.Positive(give, nameof(give)));

    /// <summary>Force per millimeter.</summary>
    public override string ToString() => Invariant($"{K * 1e-6:0.##} kN per millimeter of give");
}
