using UnitsNet;

namespace BendMath.Tests.Stock;

/// <summary>Against the shapes made by hand. Invented sizes.</summary>
public sealed class OrientedBarsTests
{
    private static readonly AngleFillets Fillets = AngleFillets.Of(Mm(5), Mm(2.5));

    [Theory]
    [InlineData(40, 40, FlangeDirection.Out)]
    [InlineData(40, 40, FlangeDirection.In)]
    [InlineData(50, 30, FlangeDirection.Out)]
    [InlineData(50, 30, FlangeDirection.In)]
    [InlineData(30, 50, FlangeDirection.Out)]
    [InlineData(30, 50, FlangeDirection.In)]
    public void An_angle_lies_with_the_leg_in_the_plane_of_the_ring_that_was_said(double radial, double axial, FlangeDirection direction)
    {
        OrientedSection section = OrientedBars.Angle(Mm(radial), Mm(axial), Mm(4), Fillets, direction);
        bool isOut = direction == FlangeDirection.Out;
        UnequalAngle unequal = new(Mm(50), Mm(30), Mm(4), Fillets);
        EqualAngle equal = new(Mm(40), Mm(4), Fillets);
        OrientedSection expected = radial == axial ? isOut ? equal.FlangeOut : equal.FlangeIn
            : isOut ? (radial > axial ? unequal.LongLegOut : unequal.ShortLegOut)
            : (radial > axial ? unequal.LongLegIn : unequal.ShortLegIn);
        Assert.Equal(expected.Stock, section.Stock);
        Assert.Equal(expected.Orientation, section.Orientation);
        Assert.Equal(radial, section.Depth.Millimeters, 1e-9);
        Assert.Equal(axial, section.Properties.Width.Millimeters, 1e-9);
        Assert.True(section.IsSameBar(expected, Length.Zero));
    }

    [Theory]
    [InlineData(8, 30)]
    [InlineData(30, 8)]
    [InlineData(20, 20)]
    public void Flats_and_tubes_lie_as_their_dimensions_say(double radial, double axial)
    {
        OrientedSection flat = OrientedBars.Flat(Mm(radial), Mm(axial)), rounded = OrientedBars.Flat(Mm(radial), Mm(axial), Mm(2));
        OrientedSection tube = OrientedBars.Tube(Mm(radial), Mm(axial), Mm(2), CornerRadii.Sharp);
        Assert.All(new[] { flat, rounded, tube }, section =>
        {
            Assert.Equal(radial, section.Depth.Millimeters, 1e-9);
            Assert.Equal(axial, section.Properties.Width.Millimeters, 1e-9);
            Assert.Equal(radial == axial ? Orientation.Usual : radial < axial ? Orientation.EasyWay : Orientation.HardWay,
                section.Orientation);
        });
        Assert.Equal(radial == axial ? new SquareBar(Mm(20)) : new FlatBar(Mm(30), Mm(8)), flat.Stock);
        Assert.Equal(radial == axial ? new SquareBar(Mm(20), Mm(2)) : new FlatBar(Mm(30), Mm(8), Mm(2)), rounded.Stock);
        Assert.Equal(
            radial == axial ? new SquareTube(Mm(20), Mm(2), CornerRadii.Sharp)
                : new RectangularTube(Mm(30), Mm(8), Mm(2), CornerRadii.Sharp), tube.Stock);
    }

    [Fact]
    public void A_fault_names_the_argument_of_the_caller()
    {
        Assert.Throws<ArgumentOutOfRangeException>("axialLeg",
            () => OrientedBars.Angle(Mm(50), Mm(11), Mm(4), Fillets, FlangeDirection.Out));
        Assert.Throws<ArgumentOutOfRangeException>("radialLeg",
            () => OrientedBars.Angle(Mm(11), Mm(50), Mm(4), Fillets, FlangeDirection.Out));
        Assert.Throws<ArgumentOutOfRangeException>("direction",
            () => OrientedBars.Angle(Mm(50), Mm(40), Mm(4), Fillets, (FlangeDirection)5));
        Assert.Throws<ArgumentOutOfRangeException>("cornerRadius", () => OrientedBars.Flat(Mm(50), Mm(10), Mm(6)));
        Assert.Throws<ArgumentOutOfRangeException>("axial", () => OrientedBars.Flat(Mm(50), Mm(0)));
        Assert.Throws<ArgumentOutOfRangeException>("wall", () => OrientedBars.Tube(Mm(50), Mm(10), Mm(6), CornerRadii.Sharp));
        Assert.Throws<ArgumentNullException>("corners", () => OrientedBars.Tube(Mm(50), Mm(10), Mm(2), null!));
    }

    private static Length Mm(double value) => Length.FromMillimeters(value);
}
