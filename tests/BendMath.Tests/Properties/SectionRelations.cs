using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using UnitsNet;

namespace BendMath.Tests.Properties;

/// <summary>Relations between section properties that hold for every shape.</summary>
public sealed class SectionRelations
{
    [Property(MaxTest = 100)]
    public Property Tube_is_solid_less_bore() => Prop.ForAll(Sold.Tubes.ToArbitrary(), bar =>
    {
        SectionProperties tube = bar.Section().Properties;
        SectionProperties solid = Round(bar.Size);
        SectionProperties bore = Round(bar.Size - 2 * bar.Thickness);
        Near.Relative(solid.Area.SquareMeters - bore.Area.SquareMeters, tube.Area.SquareMeters, 1e-12, "area");
        Near.Relative(Second(solid) - Second(bore), Second(tube), 1e-12, "second moment");
        Near.Relative(solid.PlasticModulus.CubicMeters - bore.PlasticModulus.CubicMeters, tube.PlasticModulus.CubicMeters, 1e-12,
            "plastic modulus");
    });

    /// <summary>A sharp angle is a square less a smaller square, each moved to the common centroid by the parallel-axis theorem.</summary>
    [Property(MaxTest = 100)]
    public Property Sharp_angle_is_square_less_square() => Prop.ForAll(Sold.SharpAngles.ToArbitrary(), bar =>
    {
        SectionProperties angle = bar.Section().Properties;
        SectionProperties whole = Square(bar.Size);
        SectionProperties taken = Square(bar.Size - bar.Thickness);
        double flange = bar.Lies == 0 ? 1 : -1;
        double a = whole.Area.SquareMeters;
        double b = taken.Area.SquareMeters;
        double c = whole.CentroidFromInside.Meters;
        double d = bar.Thickness * 1e-3 + taken.CentroidFromInside.Meters;
        double centroid = (a * c - b * d) / (a - b);
        double fromWhole = a * (c - centroid) * (c - centroid);
        double fromTaken = b * (d - centroid) * (d - centroid);
        Near.Relative(a - b, angle.Area.SquareMeters, 1e-12, "area");
        Near.Relative(centroid, angle.CentroidAxial.Meters, 1e-12, "centroid along the axis");
        Near.Relative(flange > 0 ? centroid : bar.Size * 1e-3 - centroid, angle.CentroidFromInside.Meters, 1e-12,
            "centroid from the inside");
        Near.Relative(Second(whole) - Second(taken) + fromWhole - fromTaken, Second(angle), 1e-11, "second moment");
        Near.Relative(Second(angle), angle.SecondMomentAboutRadialAxis.MetersToTheFourth, 1e-12, "second moment about the radial axis");
        Near.Relative(flange * (fromWhole - fromTaken), angle.ProductOfInertia.MetersToTheFourth, 1e-11, "product of inertia");
    });

    [Property(MaxTest = 200)]
    public Property Principal_moments_keep_sum_and_determinant() => Prop.ForAll(Sold.Bars.ToArbitrary(), bar =>
    {
        SectionProperties p = bar.Section().Properties;
        double b = Second(p);
        double r = p.SecondMomentAboutRadialAxis.MetersToTheFourth;
        double product = p.ProductOfInertia.MetersToTheFourth;
        double major = p.PrincipalSecondMomentMajor.MetersToTheFourth;
        double minor = p.PrincipalSecondMomentMinor.MetersToTheFourth;
        Near.Relative(b + r, major + minor, 1e-12, "sum");
        Near.Relative(b * r - product * product, major * minor, 1e-11, "determinant");
        Assert.True(major >= minor && minor > 0);
    });

    [Property(MaxTest = 200)]
    public Property Plastic_modulus_exceeds_elastic_and_axes_lie_inside() => Prop.ForAll(Sold.Bars.ToArbitrary(), bar =>
    {
        SectionProperties p = bar.Section().Properties;
        Assert.True(p.PlasticModulus.CubicMeters > Math.Min(p.ElasticModulusInside.CubicMeters, p.ElasticModulusOutside.CubicMeters));
        Assert.True(p.ShapeFactor > 1);
        Assert.InRange(p.EqualAreaAxisFromInside.Meters, 1e-3 * p.Depth.Meters, 0.999 * p.Depth.Meters);
        Assert.InRange(p.CentroidFromInside.Meters, 1e-3 * p.Depth.Meters, 0.999 * p.Depth.Meters);
    });

    internal static SectionProperties Round(double millimeters) => new RoundBar(Length.FromMillimeters(millimeters)).Section.Properties;

    private static SectionProperties Square(double millimeters) => new SquareBar(Length.FromMillimeters(millimeters)).Section.Properties;

    private static double Second(SectionProperties properties) => properties.SecondMomentAboutBendingAxis.MetersToTheFourth;
}
