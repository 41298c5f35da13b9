namespace BendMath.Tests.Accuracy;

/// <summary>
/// A bar held flat at an inside radius and released, from the definitions as they are written: N = ∫σ dA = 0 by the secant rule, M_b = ∫σ(y
/// − ȳ) dA, κ_f = κ − M_b/(E·I_b), and free by the inverse of the matrix of second moments. The springback is a difference here; in 31
/// digits it can be.
/// </summary>
internal sealed class PreciseBend
{
    public PreciseBend(PreciseSection section, PreciseLaw law, double insideRadius, double guess)
    {
        double height = section.Library.Depth.Meters;
        DoubleDouble before = guess * (1 + 1e-9);
        DoubleDouble axis = guess;
        Sums first = Stresses(before);
        Sums stresses = Stresses(axis);
        DoubleDouble step = axis - before;
        for (int i = 0; Math.Abs(step.High) > 1e-24 * height; i++)
        {
            Assert.True(i < 40, "The reference neutral axis does not settle.");
            DoubleDouble rise = stresses.F1 - first.F1;
            step = rise.High == 0 ? DoubleDouble.Zero : -stresses.F1 * step / rise;
            (first, axis) = (stresses, axis + step);
            stresses = Stresses(axis);
        }

        NeutralAxis = axis;
        Curvature = 1 / (axis + insideRadius);
        DoubleDouble y = section.CentroidY;
        DoubleDouble z = section.CentroidZ;
        Sums aboutY = section.Integrate([], level => level - y, height);
        DoubleDouble bending = aboutY.Fy - (y * aboutY.F1);
        DoubleDouble product = aboutY.Fz - (z * aboutY.F1);
        Moment = stresses.Fy - (y * stresses.F1);
        DoubleDouble holdDown = stresses.Fz - (z * stresses.F1);
        FlatCurvature = Curvature - (Moment / bending);

        // Equal legs: the second moment about the radial axis is that about the bending axis; for all other shapes here the product is
        // zero.
        DoubleDouble determinant = (bending * bending) - (product * product);
        DoubleDouble inPlane = Curvature - (((bending * Moment) - (product * holdDown)) / determinant);
        DoubleDouble outOfPlane = ((bending * holdDown) - (product * Moment)) / determinant;
        FreeCurvature = DoubleDouble.Sqrt((inPlane * inPlane) + (outOfPlane * outOfPlane));

        Sums Stresses(DoubleDouble neutral)
        {
            DoubleDouble curvature = 1 / (neutral + insideRadius);
            DoubleDouble core = law.Break / curvature;
            DoubleDouble[] levels = core.High > 0 ? [neutral - core, neutral + core] : [neutral];
            return section.Integrate(levels, level => law.Stress((level - neutral) * curvature), height * curvature.High);
        }
    }

    public DoubleDouble NeutralAxis { get; }

    public DoubleDouble Curvature { get; }

    /// <summary>M_b/E.</summary>
    public DoubleDouble Moment { get; }

    public DoubleDouble FlatCurvature { get; }

    public DoubleDouble FreeCurvature { get; }
}
