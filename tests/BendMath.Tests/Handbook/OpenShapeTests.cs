using UnitsNet;

namespace BendMath.Tests.Handbook;

/// <summary>
/// Worked examples of textbooks with tees and I-sections (found in companions of the books), and shear centers in closed form.
/// </summary>
public sealed class OpenShapeTests
{
    /// <summary>
    /// R. C. Hibbeler, Mechanics of Materials, Example 6.22, p. 342: flange 100 × 15 mm, web 15 × 120 mm, 250 MPa; equal-area axis 110 mm
    /// from the end of the web, plastic moment 29.4 kN·m.
    /// </summary>
    [Fact]
    public void Hibbeler_6_22_plastic_moment_of_a_tee()
    {
        Tee tee = new(Mm(135), Mm(100), Mm(15), Mm(15), FlangeFillets.Sharp);
        Assert.Equal(110, tee.StemIn.Properties.EqualAreaAxisFromInside.Millimeters, 0.5);
        Assert.Equal(25, tee.StemOut.Properties.EqualAreaAxisFromInside.Millimeters, 0.5);
        Assert.Equal(29.4, 250 * tee.StemOut.Properties.PlasticModulus.CubicMillimeters / 1e6, 0.05);
    }

    /// <summary>
    /// A. Pytel, J. Kiusalaas, Mechanics of Materials, Example 13.1, p. 461: flange 100 × 20 mm, web 20 × 150 mm; equal-area axis 125 mm
    /// from the end of the web, limit moment 1.765 times the yield moment.
    /// </summary>
    [Fact]
    public void Pytel_13_1_limit_moment_of_a_tee()
    {
        Tee tee = new(Mm(170), Mm(100), Mm(20), Mm(20), FlangeFillets.Sharp);
        Assert.Equal(125, tee.StemIn.Properties.EqualAreaAxisFromInside.Millimeters, 0.5);
        Assert.Equal(1.765, tee.StemIn.Properties.ShapeFactor, 0.0005);
    }

    /// <summary>
    /// S. M. A. Kazimi, Solid Mechanics, Example 7.14, p. 269: I-section 40 cm deep, flanges 10 × 1.4 cm, web 0.8 cm, shape factor 1.18.
    /// About the strong axis a channel of the same sizes has the same widths at every level.
    /// </summary>
    [Fact]
    public void Kazimi_7_14_shape_factor_of_an_I_section()
    {
        Channel channel = new(Mm(400), Mm(100), Mm(8), Mm(14), FlangeFillets.Sharp);
        Assert.Equal(1.18, channel.HardWay.Properties.ShapeFactor, 0.005);
    }

    /// <summary>
    /// F. P. Beer, E. R. Johnston, J. T. DeWolf, Mechanics of Materials, Sample Problem 4.11, p. 300: flange 80 × 20 mm from radius 30 mm,
    /// stem 20 × 40 mm; centroid at radius 50 mm.
    /// </summary>
    [Fact]
    public void Beer_and_Johnston_4_11_centroid_of_a_tee()
    {
        Tee tee = new(Mm(60), Mm(80), Mm(20), Mm(20), FlangeFillets.Sharp);
        Assert.Equal(50, 30 + tee.StemOut.Properties.CentroidFromInside.Millimeters, 0.05);
    }

    /// <summary>
    /// Thin-wall theory (any textbook, from memory): the shear center of a channel of even wall lies e = 3·b²/(h + 6·b) outside its web,
    /// between center lines; that of an angle and of a tee where center lines cross.
    /// </summary>
    [Fact]
    public void Shear_centers_of_open_shapes()
    {
        Channel channel = new(Mm(102), Mm(51), Mm(2), Mm(2), FlangeFillets.Sharp);
        double fromBack = 1 - (3 * 50 * 50 / (100 + (6 * 50.0)));
        Assert.Equal(fromBack, channel.FlangesOut.ShearCenter!.FromInside.Millimeters, 1e-9);
        Assert.Equal(51, channel.FlangesOut.ShearCenter.Axial.Millimeters, 1e-9);
        Assert.Equal(51 - fromBack, channel.FlangesIn.ShearCenter!.FromInside.Millimeters, 1e-9);
        Assert.Equal(51, channel.HardWay.ShearCenter!.FromInside.Millimeters, 1e-9);
        Assert.Equal(fromBack, channel.HardWay.ShearCenter.Axial.Millimeters, 1e-9);
        EqualAngle angle = new(Mm(50), Mm(5), AngleFillets.Sharp);
        Assert.Equal((2.5, 2.5), At(angle.FlangeOut));
        Assert.Equal((47.5, 2.5), At(angle.FlangeIn));
        Assert.Equal(2.5 * Math.Sqrt(2), angle.HeelIn.ShearCenter!.FromInside.Millimeters, 1e-9);
        Assert.Equal(angle.HeelOut.Depth.Millimeters - (2.5 * Math.Sqrt(2)), angle.HeelOut.ShearCenter!.FromInside.Millimeters, 1e-9);
        Assert.Equal(25 * Math.Sqrt(2), angle.HeelOut.ShearCenter.Axial.Millimeters, 1e-9);
        Tee tee = new(Mm(50), Mm(60), Mm(6), Mm(8), FlangeFillets.Sharp);
        Assert.Equal((4, 30), At(tee.StemOut));
        Assert.Equal((46, 30), At(tee.StemIn));
        Assert.Equal((30, 4), At(tee.StemUp));
    }

    /// <summary>The polar radius about the shear center does not depend on how the bar lies.</summary>
    [Theory]
    [MemberData(nameof(Shapes))]
    public void Polar_radius_is_the_same_in_every_orientation(BarStock stock)
    {
        double first = stock.Orientations[0].ShearCenter!.PolarRadiusOfGyration.Millimeters;
        Assert.All(stock.Orientations,
            section => Assert.Equal(first, section.ShearCenter!.PolarRadiusOfGyration.Millimeters, 1e-10 * first));
    }

    public static TheoryData<BarStock> Shapes => new(Stock.Shapes.All);

    /// <summary>
    /// Thin-wall theory for a channel of even wall, from memory of Timoshenko's table: C_w = (t·b³·h²/12)·(3·b + 2·h)/(6·b + h) between
    /// center lines.
    /// </summary>
    [Fact]
    public void Warping_constants_of_open_shapes()
    {
        Channel channel = new(Mm(102), Mm(51), Mm(2), Mm(2), FlangeFillets.Sharp);
        Near(2 * Math.Pow(50, 3) * 1e4 / 12 * (150 + 200) / (300 + 100), channel.WarpingConstant);
        Tee tee = new(Mm(50), Mm(60), Mm(6), Mm(8), FlangeFillets.Sharp);
        Near((Math.Pow(60 * 8, 3) / 144) + (Math.Pow(46 * 6, 3) / 36), tee.WarpingConstant);
    }

    private static void Near(double expected, WarpingMomentOfInertia? actual) =>
        Assert.Equal(1, actual!.Value.MillimetersToTheSixth / expected, 1e-12);

    private static (double FromInside, double Axial) At(OrientedSection section) =>
        (Math.Round(section.ShearCenter!.FromInside.Millimeters, 9), Math.Round(section.ShearCenter.Axial.Millimeters, 9));

    private static Length Mm(double value) => Length.FromMillimeters(value);
}
