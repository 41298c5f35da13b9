using UnitsNet;

namespace BendMath.Tests.Handbook;

/// <summary>Source: Machinery's Handbook, 31st ed. (2020), Lengths of Angles Bent to Circular Shape, p. 2691.</summary>
public sealed class AngleRingRuleTests
{
    private static readonly ReferenceTable Table = ReferenceTable.Load("Handbook/angle-rings.csv");

    public static TheoryData<ReferenceRow> Rows => Table.AsTheory();

    [Fact]
    public void No_row_drops_out() => Assert.Equal(16, Table.Rows.Count);

    /// <summary>
    /// The print agrees with the closed form to 0.002 in; 3 × 3 × 1/2 and 4 × 4 × 1/2 differ most, by 0.0014 and 0.0016 in.
    /// </summary>
    [Theory]
    [MemberData(nameof(Rows))]
    public void Flange_out_adds_and_flange_in_takes_off_the_printed_constant(ReferenceRow row)
    {
        EqualAngle angle = new(Length.FromInches(row.Number("leg_in")), Length.FromInches(row.Number("thickness_in")), AngleFillets.Sharp);
        Length diameter = Length.FromInches(100);
        double circumference = 100 * Math.PI;
        new Comparison(row)
            .Absolute("constant_in", angle.HandbookBlankLength(diameter, FlangeDirection.Out).Inches - circumference, 0.002)
            .Absolute("constant_in", circumference - angle.HandbookBlankLength(diameter, FlangeDirection.In).Inches, 0.002)
            .Absolute("constant_in", 2 * Math.PI * angle.HandbookFiberFromHeel.Inches, 0.002)
            .Verify(3);
    }

    /// <summary>The worked example takes π·240 in as 754 in, which is 0.018 in more.</summary>
    [Theory]
    [InlineData(FlangeDirection.In, 749.681)]
    [InlineData(FlangeDirection.Out, 758.319)]
    public void Ring_of_3x3x3_8_inside_and_outside_a_stand_pipe_of_20_ft(FlangeDirection flange, double printedInches)
    {
        Length length = new EqualAngle(Length.FromInches(3), Length.FromInches(0.375), AngleFillets.Sharp)
            .HandbookBlankLength(Length.FromFeet(20), flange);
        Assert.Equal(printedInches, length.Inches + (754 - (240 * Math.PI)), 0.002);
    }

    [Fact]
    public void Impossible_rings_are_refused_by_argument()
    {
        Length leg = Length.FromMillimeters(30);
        EqualAngle angle = new(leg, Length.FromMillimeters(3), AngleFillets.Sharp);
        Assert.Throws<ArgumentOutOfRangeException>("heelDiameter",
            () => angle.HandbookBlankLength(Length.Zero, FlangeDirection.Out));
        Assert.Throws<ArgumentOutOfRangeException>("heelDiameter",
            () => angle.HandbookBlankLength(2 * leg, FlangeDirection.In));
        Assert.Throws<ArgumentOutOfRangeException>("flange", () => angle.HandbookBlankLength(10 * leg, (FlangeDirection)2));
    }
}
