namespace BendMath.Learning;

/// <summary>Which of the measured rings a fit is from, from the narrowest to the widest.</summary>
internal enum RingGroup
{
    /// <summary>Rings of the same stock, lying the same way, of the same metal.</summary>
    SameBar,

    /// <summary>Rings of any stock of the same kind that lies the same way, of the same metal.</summary>
    SameOrientationAndMetal,

    /// <summary>Rings of the same stock, lying the same way, of any metal.</summary>
    SameStock,

    /// <summary>All rings.</summary>
    All,
}
