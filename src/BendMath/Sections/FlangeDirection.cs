namespace BendMath;

/// <summary>Which way the radial leg of an angle stands in a ring.</summary>
public enum FlangeDirection
{
    /// <summary>Flange out (leg out): the radial leg stands away from the center of the ring; the heel face is the inside face.</summary>
    Out,

    /// <summary>Flange in (leg in): the radial leg stands toward the center of the ring; the heel face is the outside face.</summary>
    In,
}
