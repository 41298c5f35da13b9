namespace BendMath.Forming.Pairs;

/// <summary>Where a mating face first touches a bar that lies on the die.</summary>
internal enum PairTouch
{
    /// <summary>All along: the face has the radius of the die and the stack on it.</summary>
    Everywhere,

    /// <summary>At the middle: the face is wider than the die and the stack on it, and stops before the bar lies on the die.</summary>
    Middle,

    /// <summary>At both ends: the face is tighter than the die and the stack on it.</summary>
    Ends,
}
