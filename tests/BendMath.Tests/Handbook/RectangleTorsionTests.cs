using UnitsNet;

namespace BendMath.Tests.Handbook;

/// <summary>
/// Torsion constants of solid rectangles and the circle; source and provenance of each row stand in <c>rectangle-torsion.csv</c>.
/// </summary>
public sealed class RectangleTorsionTests
{
    public static TheoryData<ReferenceRow> Rows => ReferenceTable.Load("Handbook/rectangle-torsion.csv").AsTheory();

    [Theory]
    [MemberData(nameof(Rows))]
    public void Rectangle_has_the_printed_constant(ReferenceRow row)
    {
        double ratio = row.Number("sides_ratio");
        FlatBar flat = new(Length.FromMillimeters(5 * ratio), Length.FromMillimeters(5));
        new Comparison(row).Printed("constant", flat.TorsionConstant!.Value.MillimetersToTheFourth / (ratio * Math.Pow(5, 4))).Verify(1);
    }

    /// <summary>
    /// Roark's Formulas for Stress and Strain, table of torsion, rectangle 2a × 2b (from memory): J = a·b³·[16/3 − 3.36·(b/a)·(1 −
    /// b⁴/(12·a⁴))], stated there to be close.
    /// </summary>
    [Theory]
    [InlineData(1)]
    [InlineData(1.7)]
    [InlineData(3.3)]
    [InlineData(8)]
    [InlineData(40)]
    public void Rectangle_agrees_with_the_short_formula(double ratio)
    {
        FlatBar flat = new(Length.FromMillimeters(6 * ratio), Length.FromMillimeters(6));
        double roark = 3 * ratio * 27 * ((16.0 / 3) - (3.36 / ratio * (1 - (1 / (12 * Math.Pow(ratio, 4))))));
        Assert.Equal(1, flat.TorsionConstant!.Value.MillimetersToTheFourth / roark, 0.005);
    }

    [Fact]
    public void Square_bar_is_the_rectangle_of_equal_sides()
    {
        SquareBar square = new(Length.FromMillimeters(12));
        FlatBar flat = new(Length.FromMillimeters(12), Length.FromMillimeters(12));
        Assert.Equal(flat.TorsionConstant!.Value.MillimetersToTheFourth, square.TorsionConstant!.Value.MillimetersToTheFourth, 1e-9);
        Assert.Equal(0, square.TorsionConstant.Formula.LargestError!.Value.Percent);
    }

    /// <summary>The polar second moment, as for any circle.</summary>
    [Fact]
    public void Round_bar_and_tube_have_their_polar_second_moment()
    {
        foreach (BarStock stock in new BarStock[] { new RoundBar(Length.FromMillimeters(16)),
            new RoundTube(Length.FromMillimeters(33.7), Length.FromMillimeters(3.2)) })
        {
            double polar = 2 * stock.Orientations[0].Properties.SecondMomentAboutBendingAxis.MillimetersToTheFourth;
            Assert.Equal(polar, stock.TorsionConstant!.Value.MillimetersToTheFourth, 1e-12 * polar);
        }
    }
}
