namespace BendMath;

/// <summary>How the ends of a closed ring are cut.</summary>
public enum TrimCut
{
    /// <summary>Each end on its own mark, so that the ring keeps its diameter.</summary>
    OneByOne,

    /// <summary>Both ends at once, where they overlap: the ends match, and one saw cut is missing from the ring.</summary>
    Together,
}
