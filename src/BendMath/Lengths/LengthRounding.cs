namespace BendMath.Lengths;

/// <summary>
/// Which way a length goes to the next step that can be printed. It acts on the size of the length, not on its sign.
/// A difference of less than a ten-thousandth of a step counts as none, so that 3 in never prints as 3 1/16 in because of the last bit of a
/// double.
/// </summary>
public enum LengthRounding
{
    /// <summary>To the nearest step; half a step goes up.</summary>
    Nearest,

    /// <summary>To the step below: what is printed is never longer than the length.</summary>
    Down,

    /// <summary>To the step above: what is printed is never shorter than the length.</summary>
    Up,
}
