namespace BendMath.Forming.Variation;

/// <summary>How a ring to come scatters about the one that is predicted, as measured rings tell.</summary>
/// <param name="Fiber">Distance from the inside face to the fiber whose radius scatters by a share, in meters.</param>
/// <param name="Error">Standard error of the logarithm of that radius.</param>
/// <param name="Freedom">Degrees of freedom behind the error.</param>
internal readonly record struct RingPrediction(double Fiber, double Error, int Freedom);
