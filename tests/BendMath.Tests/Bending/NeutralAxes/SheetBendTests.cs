using BendMath.Bending.NeutralAxes;
using UnitsNet;

namespace BendMath.Tests.Bending.NeutralAxes;

public sealed class SheetBendTests
{
    private static readonly Angle Right = Angle.FromDegrees(90);

    /// <summary>Groover, Fundamentals of Modern Manufacturing, Example 19.2 (found): t = 3.2 mm, R = 4.75 mm, bent 60°, K = 0.33.</summary>
    [Fact]
    public void Groover_example_19_2_bend_allowance()
    {
        SheetBend bend =
            SheetBend.Of(Length.FromMillimeters(3.2), Length.FromMillimeters(4.75), Angle.FromDegrees(60),
                Length.FromMillimeters(0.33 * 3.2));
        Assert.Equal(6.08, bend.BendAllowance.Millimeters, 0.005);
        Assert.Equal(0.33, bend.ThicknessFactor, 1e-12);
        Assert.Equal(0.66, bend.HalfThicknessFactor, 1e-12);
    }

    /// <summary>
    /// Machinery's Handbook, 31st ed. (2020), p. 1421, formulas 32 to 34 (found): 0.55T, 0.64T, 0.71T + 1.57R; K = 0.350, 0.408, 0.452. The
    /// lengths agree within the rounding of 1.57 for π/2. The worked total of 5.545 in is left out: its inputs were not read.
    /// </summary>
    [Theory]
    [InlineData(SheetMetal.SoftBrass, 0.55, 0.350)]
    [InlineData(SheetMetal.SoftCopper, 0.55, 0.350)]
    [InlineData(SheetMetal.HalfHardBrass, 0.64, 0.408)]
    [InlineData(SheetMetal.HalfHardCopper, 0.64, 0.408)]
    [InlineData(SheetMetal.SoftSteel, 0.64, 0.408)]
    [InlineData(SheetMetal.Aluminum, 0.64, 0.408)]
    [InlineData(SheetMetal.Bronze, 0.71, 0.452)]
    [InlineData(SheetMetal.HardCopper, 0.71, 0.452)]
    [InlineData(SheetMetal.ColdRolledSteel, 0.71, 0.452)]
    [InlineData(SheetMetal.SpringSteel, 0.71, 0.452)]
    public void Machinerys_Handbook_right_angle_bends(SheetMetal metal, double share, double factor)
    {
        foreach ((double t, double r) in new[] { (1.0, 0.0), (1, 1), (2, 12.5) })
        {
            SheetBend bend = SheetBend.ByMetal(Length.FromMillimeters(t), Length.FromMillimeters(r), Right, metal);
            Assert.Equal(factor, bend.ThicknessFactor, 0.0005);
            Assert.Equal(1, bend.BendAllowance.Millimeters / (share * t + 1.57 * r), 0.005 / 1.57 / 2);
        }
    }

    /// <summary>
    /// Workshop form found in print: v = 0.43 r + 1.48 s for a right angle, which is k = 0.66; half a unit of the last digit of each
    /// coefficient.
    /// </summary>
    [Theory]
    [InlineData(1, 1)]
    [InlineData(2, 1)]
    [InlineData(3, 4)]
    public void Workshop_form_of_the_compensation(double r, double s)
    {
        SheetBend bend = SheetBend.Of(Length.FromMillimeters(s), Length.FromMillimeters(r), Right, Length.FromMillimeters(0.66 * s / 2));
        Assert.Equal(0.43 * r + 1.48 * s, bend.BendDeduction.Millimeters, 0.005 * (r + s));
        Assert.Equal(-bend.BendDeduction.Millimeters, bend.Compensation.Millimeters, 1e-12);
    }

    /// <summary>DIN 6935 (from memory): stepped factor, and the formula at the ends of the steps to two decimals.</summary>
    [Theory]
    [InlineData(1, 0.6, 0.65)]
    [InlineData(1.5, 0.7, 0.74)]
    [InlineData(2.4, 0.8, 0.84)]
    [InlineData(3.8, 0.9, 0.94)]
    public void Factor_of_the_standard_at_the_ends_of_its_steps(double ratio, double step, double formula)
    {
        Length thickness = Length.FromMillimeters(2);
        Assert.Equal(step, SheetBend.SteppedStandardFactor(thickness, ratio * thickness));
        Assert.True(SheetBend.SteppedStandardFactor(thickness, 1.001 * ratio * thickness) > step);
        Assert.Equal(formula, SheetBend.StandardFactor(thickness, ratio * thickness), 0.0051);
    }

    /// <summary>DIN 6935 (from memory): the middle fiber above r/s = 5; the formula ends at 0.9995 there, so nothing jumps.</summary>
    [Fact]
    public void Above_five_thicknesses_the_standard_takes_the_middle_fiber()
    {
        Length thickness = Length.FromMillimeters(2);
        Assert.Equal(1, SheetBend.StandardFactor(thickness, 5.001 * thickness));
        Assert.Equal(1, SheetBend.StandardFactor(thickness, 5 * thickness), 0.001);
        Assert.Equal(0.5, SheetBend.ByStandard(thickness, 10 * thickness, Right).ThicknessFactor, 1e-15);
        Assert.Equal("insideRadius",
            Assert.Throws<ArgumentOutOfRangeException>(() => SheetBend.StandardFactor(thickness, 0.05 * thickness)).ParamName);
        Assert.Equal("insideRadius",
            Assert.Throws<ArgumentOutOfRangeException>(() => SheetBend.SteppedStandardFactor(thickness, 0.6 * thickness)).ParamName);
    }

    /// <summary>
    /// DIN 6935 (from memory): v of s = 2, r = 4 mm, k = 0.65 + 0.5·lg 2, written out for opening angles of 60°, 90°, 120° and 170°.
    /// </summary>
    [Theory]
    [InlineData(60, 1)]
    [InlineData(90, 1)]
    [InlineData(120, 0.57735026918962576)]
    public void Compensation_by_opening_angle(double opening, double tangent)
    {
        double expected = Math.PI * (180 - opening) / 180 * (4 + 0.80051499783199063 * 2 / 2) - 2 * (4 + 2) * tangent;
        Assert.Equal(expected, Standard(180 - opening).Compensation.Millimeters, 1e-9);
    }

    [Fact]
    public void Compensation_and_deduction_end_where_their_legs_end()
    {
        Assert.Equal(0, Standard(10).Compensation.Millimeters);
        Assert.True(Standard(180).Compensation.Millimeters > 0);
        Assert.Throws<InvalidOperationException>(() => Standard(180).BendDeduction);
        Assert.Throws<InvalidOperationException>(() => Standard(181).Compensation);
        Assert.Equal("bendAngle", Assert.Throws<ArgumentOutOfRangeException>(() => Standard(361)).ParamName);
        Assert.Equal("fiber", Assert.Throws<ArgumentOutOfRangeException>(
            () => SheetBend.Of(Length.FromMillimeters(2), Length.FromMillimeters(1), Right, Length.FromMillimeters(-1))).ParamName);
    }

    private static SheetBend Standard(double degrees) =>
        SheetBend.ByStandard(Length.FromMillimeters(2), Length.FromMillimeters(4), Angle.FromDegrees(degrees));
}
