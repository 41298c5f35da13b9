namespace BendMath.Materials;

/// <summary>How the curve of <see cref="HotRolledSteel"/> is read.</summary>
internal enum HotRolledForm
{
    /// <summary>As true stress over true strain, which is what tension and compression share: the one to bend with.</summary>
    TrueStress,

    /// <summary>The curve as it is printed, of engineering values.</summary>
    PrintedCurve,

    /// <summary>The four straight lines as they are printed, of engineering values: integrated exactly and fastest.</summary>
    FourLines,
}
