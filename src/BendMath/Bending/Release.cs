using BendMath.Bending;

namespace BendMath;

/// <summary>How a bent bar is let go.</summary>
public enum Release
{
    /// <summary>Nothing holds the ring any more: no moment about either axis remains. An unsymmetric section dishes.</summary>
    Free,

    /// <summary>
    /// The ring is kept flat (or pressed flat afterwards): no curvature out of its plane; a moment about the radial axis remains.
    /// </summary>
    HeldFlat,
}
