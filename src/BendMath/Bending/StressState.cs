namespace BendMath;

/// <summary>Whether the bar is free to change its width while it is bent.</summary>
public enum StressState
{
    /// <summary>Free: every fiber is pulled or pressed along the bar only. Right for bars up to a few thicknesses wide.</summary>
    Uniaxial,

    /// <summary>
    /// Not free: the width cannot change, as in flats and strips about ten thicknesses wide or more, bent the easy way. The bar is stiffer,
    /// E/(1 − ν²), and stronger, 2/√3.
    /// </summary>
    PlaneStrain,
}
