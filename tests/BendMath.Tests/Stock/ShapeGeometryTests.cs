using UnitsNet;

namespace BendMath.Tests.Stock;

/// <summary>Closed forms of plane geometry (any textbook of statics; from memory) for shapes that have one.</summary>
public sealed class ShapeGeometryTests
{
    private const double Tolerance = 1e-12;

    public static TheoryData<BarStock> Stock => new(Shapes.All);

    /// <summary>A toe radius as large as the thickness leaves no end face, and its arc meets the outer face at a right angle.</summary>
    public static TheoryData<BarStock> WithEndFaces =>
        new(Shapes.All.Where(stock => stock is not EqualAngle angle || angle.Fillets.Toe < angle.Thickness));

    /// <summary>Turning a shape changes neither its area nor its perimeter nor its principal moments (Mohr).</summary>
    [Theory]
    [MemberData(nameof(Stock))]
    public void Every_way_a_shape_lies_has_the_same_invariants(BarStock stock)
    {
        SectionProperties first = stock.Orientations[0].Properties;
        Assert.All(stock.Orientations, section =>
        {
            SectionProperties other = section.Properties;
            Near(first.Area.SquareMillimeters, other.Area.SquareMillimeters);
            Near(first.Perimeter.Millimeters, other.Perimeter.Millimeters);
            Near(first.PrincipalSecondMomentMajor.MillimetersToTheFourth, other.PrincipalSecondMomentMajor.MillimetersToTheFourth);
            Near(first.PrincipalSecondMomentMinor.MillimetersToTheFourth, other.PrincipalSecondMomentMinor.MillimetersToTheFourth);
            Assert.Equal(section.Depth.Millimeters, section.Features.RadialDepth.Millimeters, 1e-9);
        });
    }

    /// <summary>The outline is closed, and every edge starts where the one before it ends, to the last bit.</summary>
    [Theory]
    [MemberData(nameof(Stock))]
    public void Neighboring_edges_share_their_end_points(BarStock stock) =>
        Assert.All(stock.Orientations.SelectMany(section => section.Loops), loop =>
    {
        for (int i = 0; i < loop.Length && loop.Length > 1; i++)
        {
            Assert.Equal((loop[i].Y2, loop[i].Z2), (loop[(i + 1) % loop.Length].Y1, loop[(i + 1) % loop.Length].Z1));
        }
    });

    /// <summary>
    /// Lines meet fillets without a kink: the center lies a radius from both end points, square to the neighboring lines.
    /// </summary>
    [Theory]
    [MemberData(nameof(WithEndFaces))]
    public void Fillets_touch_the_lines_beside_them(BarStock stock) =>
        Assert.All(stock.Orientations.SelectMany(section => section.Loops), loop =>
    {
        double size = loop.Max(edge => Math.Abs(edge.Y1) + Math.Abs(edge.Z1) + edge.Radius);
        for (int i = 0; i < loop.Length; i++)
        {
            var arc = loop[i];
            var line = loop[(i + 1) % loop.Length];
            if (arc.IsArc && loop.Length > 1)
            {
                Assert.Equal(arc.Radius, Math.Sqrt(Math.Pow(arc.Y2 - arc.CenterY, 2) + Math.Pow(arc.Z2 - arc.CenterZ, 2)), 1e-14 * size);
                double along =
                    line.IsArc ? 0 : ((line.Y2 - line.Y1) * (arc.Y2 - arc.CenterY)) + ((line.Z2 - line.Z1) * (arc.Z2 - arc.CenterZ));
                Assert.Equal(0, along, 1e-14 * size * size);
            }
        }
    });

    [Fact]
    public void Square_on_the_diagonal_has_the_same_second_moment_and_a_lower_modulus()
    {
        SquareBar square = new(Length.FromMillimeters(20));
        Near(Math.Pow(20, 4) / 12, square.OnDiagonal.Properties.SecondMomentAboutBendingAxis.MillimetersToTheFourth);
        Near(Math.Pow(20, 3) / (6 * Math.Sqrt(2)), square.OnDiagonal.Properties.ElasticModulusInside.CubicMillimeters);
        Near(2, square.OnDiagonal.Properties.ShapeFactor);
        Near(20 * Math.Sqrt(2), square.OnDiagonal.Depth.Millimeters);
    }

    /// <summary>A hexagon of side a = s/√3: A = (√3/2)·s², I = (5√3/16)·a⁴ about every axis.</summary>
    [Fact]
    public void Hexagon_has_its_closed_forms()
    {
        HexagonBar hexagon = new(Length.FromMillimeters(17));
        double a = 17 / Math.Sqrt(3);
        double second = 5 * Math.Sqrt(3) / 16 * Math.Pow(a, 4);
        Near(Math.Sqrt(3) / 2 * 17 * 17, hexagon.Area.SquareMillimeters);
        Near(second, hexagon.OnFlat.Properties.SecondMomentAboutBendingAxis.MillimetersToTheFourth);
        Near(second, hexagon.OnCorner.Properties.SecondMomentAboutBendingAxis.MillimetersToTheFourth);
        Near(second / (17.0 / 2), hexagon.OnFlat.Properties.ElasticModulusInside.CubicMillimeters);
        Near(second / a, hexagon.OnCorner.Properties.ElasticModulusInside.CubicMillimeters);
        Near(2 * a, hexagon.AcrossCorners.Millimeters);
        Near(6 * a, hexagon.OnFlat.Properties.Perimeter.Millimeters);
    }

    /// <summary>
    /// Each rounded corner loses r²·(1 − π/4) of area and r·(2 − π/2) of perimeter; round edges make two half circles, a radius of half the
    /// side a circle.
    /// </summary>
    [Fact]
    public void Rounded_corners_take_off_their_spandrels()
    {
        SquareBar square = new(Length.FromMillimeters(20), Length.FromMillimeters(1.5));
        Near(400 - ((4 - Math.PI) * 2.25), square.Area.SquareMillimeters);
        Near(80 - (8 - (2 * Math.PI)) * 1.5, square.Section.Properties.Perimeter.Millimeters);
        FlatBar flat = new(Length.FromMillimeters(30), Length.FromMillimeters(8), Length.FromMillimeters(4));
        Near((22 * 8) + (16 * Math.PI), flat.Area.SquareMillimeters);
        Near(44 + (8 * Math.PI), flat.HardWay.Properties.Perimeter.Millimeters);
        SquareBar round = new(Length.FromMillimeters(20), Length.FromMillimeters(10));
        Near(Math.PI * Math.Pow(20, 4) / 64, round.OnDiagonal.Properties.SecondMomentAboutBendingAxis.MillimetersToTheFourth);
        Near(Math.PI * Math.Pow(20, 4) / 64, round.Section.Properties.SecondMomentAboutBendingAxis.MillimetersToTheFourth);
        Near(20, round.OnDiagonal.Depth.Millimeters);
    }

    /// <summary>A sharp channel is its box less the gap; a sharp tube its box less the bore.</summary>
    [Fact]
    public void Channel_and_tube_are_a_rectangle_less_a_rectangle()
    {
        Channel channel =
            new(Length.FromMillimeters(80), Length.FromMillimeters(45), Length.FromMillimeters(6), Length.FromMillimeters(8),
                FlangeFillets.Sharp);
        Near((45 * Math.Pow(80, 3) / 12) - (39 * Math.Pow(64, 3) / 12),
            channel.HardWay.Properties.SecondMomentAboutBendingAxis.MillimetersToTheFourth);
        double area = (45 * 80) - (39 * 64);
        double centroid = ((45 * 80 * 22.5) - (39 * 64 * 25.5)) / area;
        Near(area, channel.Area.SquareMillimeters);
        Near(centroid, channel.FlangesOut.Properties.CentroidFromInside.Millimeters);
        Near(45 - centroid, channel.FlangesIn.Properties.CentroidFromInside.Millimeters);
        Near(centroid, channel.HardWay.Properties.CentroidAxial.Millimeters);
        RectangularTube tube = new(Length.FromMillimeters(60), Length.FromMillimeters(40), Length.FromMillimeters(3), CornerRadii.Sharp);
        Near(((40 * Math.Pow(60, 3)) - (34 * Math.Pow(54, 3))) / 12,
            tube.HardWay.Properties.SecondMomentAboutBendingAxis.MillimetersToTheFourth);
        Near(((60 * Math.Pow(40, 3)) - (54 * Math.Pow(34, 3))) / 12,
            tube.EasyWay.Properties.SecondMomentAboutBendingAxis.MillimetersToTheFourth);
    }

    /// <summary>On the bisector an equal angle bends about its principal axes.</summary>
    [Fact]
    public void Angle_on_its_bisector_bends_about_the_minor_axis()
    {
        EqualAngle angle =
            new(Length.FromMillimeters(50), Length.FromMillimeters(5),
                AngleFillets.Of(Length.FromMillimeters(7), Length.FromMillimeters(3.5)));
        foreach (OrientedSection section in new[] { angle.HeelIn, angle.HeelOut })
        {
            Near(angle.FlangeOut.Properties.PrincipalSecondMomentMinor.MillimetersToTheFourth,
                section.Properties.SecondMomentAboutBendingAxis.MillimetersToTheFourth);
            Near(angle.FlangeOut.Properties.PrincipalSecondMomentMajor.MillimetersToTheFourth,
                section.Properties.SecondMomentAboutRadialAxis.MillimetersToTheFourth);
            Near(50 * Math.Sqrt(2), section.Properties.Width.Millimeters);
            Near(25 * Math.Sqrt(2), section.Properties.CentroidAxial.Millimeters);
        }

        Near(angle.FlangeOut.Properties.CentroidFromInside.Millimeters * Math.Sqrt(2),
            angle.HeelIn.Properties.CentroidFromInside.Millimeters);
        Near((angle.HeelIn.Depth - angle.HeelIn.Properties.CentroidFromInside).Millimeters,
            angle.HeelOut.Properties.CentroidFromInside.Millimeters);
    }

    [Fact]
    public void The_radial_leg_of_an_unequal_angle_is_the_one_asked_for()
    {
        UnequalAngle angle = new(Length.FromMillimeters(100), Length.FromMillimeters(50), Length.FromMillimeters(8), AngleFillets.Sharp);
        Assert.All(new[] { angle.LongLegOut, angle.LongLegIn },
            section => Assert.Equal((100, 50), Box(section)));
        Assert.All(new[] { angle.ShortLegOut, angle.ShortLegIn },
            section => Assert.Equal((50, 100), Box(section)));
        Assert.Equal(
            ["long leg radial, flange out", "long leg radial, flange in", "short leg radial, flange out", "short leg radial, flange in"],
                angle.Orientations.Select(section => section.Orientation.ToString()));
        Assert.Equal(FlangeDirection.In, angle.ShortLegIn.Features.Outstands.Single(leg => leg.IsRadial).Direction);
        Assert.Equal(50, angle.ShortLegIn.Features.Outstands.Single(leg => leg.IsRadial).Length.Millimeters, 1e-9);
    }

    [Fact]
    public void Flanges_and_stems_say_where_their_free_edges_lie()
    {
        Channel channel =
            new(Length.FromMillimeters(80), Length.FromMillimeters(45), Length.FromMillimeters(6), Length.FromMillimeters(8),
                FlangeFillets.Sharp);
        Assert.Equal([FlangeDirection.Out, FlangeDirection.Out], channel.FlangesOut.Features.Outstands.Select(leg => leg.Direction));
        Assert.Equal([FlangeDirection.In, FlangeDirection.In], channel.FlangesIn.Features.Outstands.Select(leg => leg.Direction));
        Assert.Equal([null, null], channel.HardWay.Features.Outstands.Select(leg => leg.Direction));
        Tee tee =
            new(Length.FromMillimeters(40), Length.FromMillimeters(50), Length.FromMillimeters(5), Length.FromMillimeters(6),
                FlangeFillets.Sharp);
        Assert.Equal([FlangeDirection.Out, null, null], tee.StemOut.Features.Outstands.Select(leg => leg.Direction));
        Assert.Equal([FlangeDirection.In, null, null], tee.StemIn.Features.Outstands.Select(leg => leg.Direction));
        Assert.Equal([null, FlangeDirection.In, FlangeDirection.Out], tee.StemUp.Features.Outstands.Select(leg => leg.Direction));
    }

    private static (double Depth, double Width) Box(OrientedSection section) =>
        (Math.Round(section.Depth.Millimeters, 9), Math.Round(section.Properties.Width.Millimeters, 9));

    private static void Near(double expected, double actual) => Assert.Equal(expected, actual, Tolerance * Math.Abs(expected));
}
