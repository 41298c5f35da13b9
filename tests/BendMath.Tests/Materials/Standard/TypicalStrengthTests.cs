using BendMath.Materials.Standard;
using UnitsNet;

namespace BendMath.Tests.Materials.Standard;

/// <summary>
/// Factors of expected strength: ANSI/AISC 341 Table A3.1 (R_y 1.5 and R_t 1.2 of A36 bars, 1.1 and 1.1 of A572 Grade 50) and EN 1998-1,
/// second generation (1.45, 1.35, 1.25), from memory.
/// </summary>
public sealed class TypicalStrengthTests
{
    [Theory]
    [InlineData("A36", null, 375, 480)]
    [InlineData("A572 Grade 50", null, 379.5, 495)]
    [InlineData("S235JR", "t <= 16 mm", 340.75, 435)]
    [InlineData("S275JR", "t <= 16 mm", 371.25, 485)]
    [InlineData("S355J2", "16 < t <= 40 mm", 431.25, 550)]
    public void Delivered_steel_is_stronger_than_its_minimum(string name, string? detail, double yield, double ultimate)
    {
        Grade grade = Grades.Find(name, detail);
        TensileProperties typical = grade.Typical!;
        Near.Relative(yield, typical.YieldStrength.Megapascals, 1e-12);
        Near.Relative(ultimate, typical.UltimateStrength!.Value.Megapascals, 1e-12);
        Assert.Contains("typical", grade.ToTypicalMaterial()!.Name, StringComparison.Ordinal);
        Assert.IsType<HotRolledSteel>(grade.ToTypicalMaterial()!.Law);
    }

    [Fact]
    public void Grades_without_a_factor_have_no_typical_row() => Assert.Null(Grades.Find("6063-T4").Typical);

    /// <summary>More yield springs back more: a bend included the guaranteed minimum comes off wider by 2 % and more.</summary>
    [Theory]
    [InlineData(150, 6)]
    [InlineData(300, 6)]
    [InlineData(500, 12)]
    public void The_minimum_of_a_grade_understates_springback(double radius, double thickness)
    {
        Grade grade = Grades.Find("A36");
        double least = Finished(grade.ToMaterial());
        double typical = Finished(grade.ToTypicalMaterial()!);
        Assert.True(typical > 1.02 * least, FormattableString.Invariant($"{least} mm at the minimum, {typical} mm as delivered"));

        double Finished(BarMaterial material) =>
            BendAnalysis.Of(new FlatBar(Length.FromMillimeters(30), Length.FromMillimeters(thickness)).EasyWay, material)
            .LoadedTo(BendRadius.Inside(Length.FromMillimeters(radius))).Release(Release.Free).Ring.InsideRadius.Millimeters;
    }
}
