namespace BendMath.Cutting;

/// <summary>How far the search for the least length of bars went.</summary>
internal enum CutSearchStatus
{
    Proven,

    LimitReached,

    Stopped,
}
