using System.Globalization;
using BendMath.Guards;
using UnitsNet;
using UnitsNet.Units;

namespace BendMath.Tests.Guards;

public sealed class GuardTests
{
    [Fact]
    public void HandsOutSiValues()
    {
        Assert.Equal(0.03, Guard.Positive(Length.FromMillimeters(30), "leg"));
        Assert.Equal(0.025, Guard.Positive(Length.FromCentimeters(2.5), "leg"));
        Assert.Equal(1.2, Guard.Positive(Length.FromMeters(1.2), "leg"));
        Assert.Equal(0.0762, Guard.Positive(Length.FromInches(3), "leg"));
        Assert.Equal(0.6096, Guard.Positive(Length.FromFeet(2), "leg"));
        Assert.Equal(235e6, Guard.Positive(Pressure.FromMegapascals(235), "yield"));
        Assert.Equal(210e9, Guard.Positive(Pressure.FromGigapascals(210), "modulus"));
        Assert.Equal(Math.PI / 2, Guard.Positive(Angle.FromDegrees(90), "arc"));
        Assert.Equal(1500, Guard.Positive(Torque.FromKilonewtonMeters(1.5), "moment"));
        Assert.Equal(0.5, Guard.Positive(Torque.FromNewtonMillimeters(500), "moment"));
        Assert.Equal(2000, Guard.Positive(Force.FromKilonewtons(2), "pull"));
        Assert.Equal(7850, Guard.Positive(Density.FromGramsPerCubicCentimeter(7.85), "density"), 9);
        Assert.Equal(0.05, Guard.Positive(Ratio.FromPercent(5), "scatter"));
        Assert.Equal(3.5, Guard.Positive(3.5, "count"));
    }

    /// <summary>
    /// NIST SP 811 (2008), appendix B.8: yard 9.144 E-01 m, mil 2.54 E-05 m, psi 6.894 757 E+03 Pa, lbf 4.448 222 E+00 N, lbf·ft 1.355 818
    /// E+00 N·m, lb/ft³ 1.601 846 E+01 kg/m³. From memory.
    /// </summary>
    [Fact]
    public void ConvertsTheRarerUnits()
    {
        Assert.Equal(0.9144, Guard.Positive(Length.FromYards(1), "leg"), 12);
        Assert.Equal(2.54e-5, Guard.Positive(Length.FromMils(1), "leg"), 15);
        Assert.Equal(6894.757, Guard.Positive(Pressure.FromPoundsForcePerSquareInch(1), "yield"), 3);
        Assert.Equal(4.448222, Guard.Positive(Force.FromPoundsForce(1), "pull"), 6);
        Assert.Equal(1.355818, Guard.Positive(Torque.FromPoundForceFeet(1), "moment"), 6);
        Assert.Equal(16.01846, Guard.Positive(Density.FromPoundsPerCubicFoot(1), "density"), 5);
        Assert.Equal(2 * Math.PI, Guard.Positive(Angle.FromRevolutions(1), "arc"), 12);
        Assert.Equal(1e-6, Guard.Positive(Ratio.FromPartsPerMillion(1), "strain"), 15);
    }

    /// <summary>
    /// Pounds by their definition, 0.45359237 kg, over inches of 25.4 mm and feet of 304.8 mm: the factors of UnitsNet are off by 2e-7 and
    /// 7e-9.
    /// </summary>
    [Fact]
    public void PoundsPerVolumeFollowFromTheirDefinitions()
    {
        Near.Relative(0.284 * 0.45359237 / Math.Pow(0.0254, 3), Guard.Positive(Density.FromPoundsPerCubicInch(0.284), "x"), 1e-14);
        Near.Relative(490 * 0.45359237 / Math.Pow(0.3048, 3), Guard.Positive(Density.FromPoundsPerCubicFoot(490), "x"), 1e-14);
    }

    /// <summary>Each unit UnitsNet defines passes, whichever branch converts it, and agrees with UnitsNet's own conversion.</summary>
    [Fact]
    public void AcceptsEveryDefinedUnit()
    {
        Assert.All(Length.Units.Select(Length.FromMeters(0.3).ToUnit), value => AssertClose(value.Meters, Guard.Positive(value, "x")));
        Assert.All(Pressure.Units.Select(Pressure.FromPascals(0.3).ToUnit), value => AssertClose(value.Pascals, Guard.Finite(value, "x")));
        Assert.All(Angle.Units.Select(Angle.FromRadians(0.3).ToUnit), value => AssertClose(value.Radians, Guard.Positive(value, "x")));
        Assert.All(Torque.Units.Select(Torque.FromNewtonMeters(0.3).ToUnit),
            value => AssertClose(value.NewtonMeters, Guard.Positive(value, "x")));
        Assert.All(Force.Units.Select(Force.FromNewtons(0.3).ToUnit), value => AssertClose(value.Newtons, Guard.Positive(value, "x")));
        Assert.All(
            Density.Units.Where(unit => unit is not (DensityUnit.PoundPerCubicInch or DensityUnit.PoundPerCubicFoot))
                .Select(Density.FromKilogramsPerCubicMeter(0.3).ToUnit),
            value => AssertClose(value.KilogramsPerCubicMeter, Guard.Positive(value, "x")));
        Assert.All(Ratio.Units.Select(Ratio.FromDecimalFractions(0.3).ToUnit),
            value => AssertClose(value.DecimalFractions, Guard.Positive(value, "x")));

        static void AssertClose(double expected, double actual) => Assert.Equal(expected, actual, Math.Abs(expected) * 1e-14);
    }

    /// <summary>
    /// Zero is meant (an edge, no kerf), a size below the smallest dimension is a slip of the unit; a place on a section or a curve may lie
    /// anywhere.
    /// </summary>
    [Fact]
    public void RefusesASizeThatIsAlmostZeroButNotAPlaceThatIs()
    {
        AssertRefused("nose", "nose must be 0 mm, or between 0.001 mm and 1000000000 mm in size, but is 1E-21 mm.",
            () => Guard.NonNegative(Length.FromMillimeters(1e-21), "nose"));
        AssertRefused("nose", "nose must not be less than 0 mm, but is -1E-21 mm.",
            () => Guard.NonNegative(Length.FromMillimeters(-1e-21), "nose"));
        Assert.Equal(0, Guard.NonNegative(Length.Zero, "nose"));
        Assert.Equal(1e-6, Guard.NonNegative(Length.FromMeters(1e-6), "nose"));
        Assert.Equal(1e-24, Guard.Place(Length.FromMeters(1e-24), "axial"));
        Assert.Equal(1e-24, Guard.Place(ReciprocalLength.FromInverseMeters(1e-24), "curvature"));
        AssertRefused("axial", "axial must not be less than 0 mm, but is -1 mm.", () => Guard.Place(Length.FromMillimeters(-1), "axial"));
    }

    [Fact]
    public void RefusesASizeNoShopCanMeanWithBothBounds()
    {
        AssertRefused("leg", "leg must be between 0.001 mm and 1000000000 mm in size, but is 3E-08 mm.",
            () => Guard.Positive(Length.FromAngstroms(0.3), "leg"));
        AssertRefused("leg", "leg must be between 0.001 mm and 1000000000 mm in size, but is 300000000000 mm.",
            () => Guard.NonNegative(Length.FromGigameters(0.3), "leg"));
    }

    [Theory]
    [InlineData(999)]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(int.MaxValue)]
    [InlineData(int.MinValue)]
    public void RefusesAUnitOutsideItsEnumerationByName(int unit)
    {
        AssertUnit("LengthUnit", () => Guard.Positive(new Length(1, (LengthUnit)unit), "leg"));
        AssertUnit("PressureUnit", () => Guard.NonNegative(new Pressure(1, (PressureUnit)unit), "leg"));
        AssertUnit("AngleUnit", () => Guard.Finite(new Angle(1, (AngleUnit)unit), "leg"));
        AssertUnit("TorqueUnit", () => Guard.Positive(new Torque(1, (TorqueUnit)unit), "leg"));
        AssertUnit("ForceUnit", () => Guard.NonNegative(new Force(1, (ForceUnit)unit), "leg"));
        AssertUnit("DensityUnit", () => Guard.Finite(new Density(1, (DensityUnit)unit), "leg"));
        AssertUnit("RatioUnit", () => Guard.Positive(new Ratio(1, (RatioUnit)unit), "leg"));

        void AssertUnit(string enumeration, Func<object> act)
            => AssertRefused("leg", FormattableString.Invariant($"leg must have a unit defined in {enumeration}, but its unit is {unit}."), act);
    }

    /// <summary>
    /// The unit numbers of UnitsNet have gaps, so a check of the range alone would let these through to endless recursion.
    /// </summary>
    [Fact]
    public void RefusesTheGapsBetweenUnitNumbers()
    {
        var defined = Length.Units.Select(unit => (int)unit).ToHashSet();
        var gaps = Enumerable.Range(1, defined.Max()).Where(number => !defined.Contains(number)).ToList();

        Assert.NotEmpty(gaps);
        Assert.All(gaps,
            gap => Assert.Throws<ArgumentOutOfRangeException>("leg", () => Guard.Positive(new Length(1, (LengthUnit)gap), "leg")));
    }

    [Fact]
    public void NamesArgumentRuleAndValueWithItsUnit()
    {
        AssertRefused("thickness", "thickness must be greater than 0 mm, but is -2 mm.",
            () => Guard.Positive(Length.FromMeters(-0.002), "thickness"));
        AssertRefused("thickness", "thickness must be greater than 0 mm, but is 0 mm.", () => Guard.Positive(default(Length), "thickness"));
        AssertRefused("thickness", "thickness must be greater than 0 mm, but is 0 mm.",
            () => Guard.Positive(Length.FromMeters(-0.0), "thickness"));
        AssertRefused("offset", "offset must not be less than 0 mm, but is -12.7 mm.",
            () => Guard.NonNegative(Length.FromInches(-0.5), "offset"));
        AssertRefused("yield", "yield must be greater than 0 MPa, but is -235 MPa.",
            () => Guard.Positive(Pressure.FromGigapascals(-0.235), "yield"));
        AssertRefused("arc", "arc must be greater than 0°, but is -90°.", () => Guard.Positive(Angle.FromRadians(-Math.PI / 2), "arc"));
        AssertRefused("moment", "moment must not be less than 0 N·m, but is -1.5 N·m.",
            () => Guard.NonNegative(Torque.FromNewtonMeters(-1.5), "moment"));
        AssertRefused("pull", "pull must be greater than 0 N, but is -2000 N.", () => Guard.Positive(Force.FromKilonewtons(-2), "pull"));
        AssertRefused("density", "density must be greater than 0 kg/m³, but is 0 kg/m³.",
            () => Guard.Positive(default(Density), "density"));
        AssertRefused("scatter", "scatter must not be less than 0 %, but is -5 %.",
            () => Guard.NonNegative(Ratio.FromDecimalFractions(-0.05), "scatter"));
        AssertRefused("count", "count must be greater than 0, but is -2.5.", () => Guard.Positive(-2.5, "count"));
    }

    [Fact]
    public void MessagesDoNotFollowTheCultureOfTheThread()
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            AssertRefused("offset", "offset must not be less than 0 mm, but is -12.7 mm.",
                () => Guard.NonNegative(Length.FromMillimeters(-12.7), "offset"));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void ZeroAndNegativeValuesPassWhereTheyMay()
    {
        Assert.Equal(0, Guard.NonNegative(default(Length), "offset"));
        Assert.Equal(0, Guard.NonNegative(0d, "offset"));
        Assert.Equal(-0.002, Guard.Finite(Length.FromMillimeters(-2), "offset"));
        Assert.Equal(-4, Guard.Finite(-4d, "offset"));
    }

    [Fact]
    public void RefusesWhatIsNotFinite()
    {
        AssertRefused("count", "count must be finite, but is NaN.", () => Guard.Positive(double.NaN, "count"));
        AssertRefused("count", "count must be finite, but is Infinity.", () => Guard.NonNegative(double.PositiveInfinity, "count"));
        AssertRefused("count", "count must be finite, but is -Infinity.", () => Guard.Finite(double.NegativeInfinity, "count"));
        AssertRefused("leg", "leg must be finite when converted to SI units, but is 1E+308 Gigameter.",
            () => Guard.Positive(Length.FromGigameters(1e308), "leg"));
        AssertRefused("lean", "lean must be finite when converted to SI units, but is 3 Tilt.",
            () => Guard.Positive(Angle.FromTilt(3), "lean"));
        AssertRefused("leg", "leg must be finite, but is Infinity mm.", () => Guard.Positive(Length.FromInches(1e308), "leg"));
    }

    [Fact]
    public void CrossRulesReadAsOneSentence()
    {
        const string sentence = "thickness must be smaller than the leg, 30 mm, but is 35 mm.";
        var thickness = Length.FromMillimeters(35);
        var rule = $"must be smaller than the leg, {Guard.Text(Length.FromCentimeters(3))}";

        AssertRefused("thickness", sentence, () => throw Guard.Fault("thickness", thickness, rule));
        AssertRefused("thickness", sentence, () =>
        {
            Guard.Throw("thickness", thickness, rule);
            return thickness;
        });
        Assert.Equal("76.2 mm", Guard.MillimetersText(0.0762));
    }

    [Fact]
    public void NullIsRefusedByName()
    {
        Assert.Equal("text", Guard.NotNull("text", "label"));
        Assert.Throws<ArgumentNullException>("label", () => Guard.NotNull<string>(null, "label"));
    }

    [Fact]
    public void TheWayThroughAllocatesNothing()
    {
        var leg = Length.FromYards(1);
        var yield = Pressure.FromMegapascals(235);
        var sum = Guard.Positive(leg, "leg") + Guard.Positive(yield, "yield");

        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var i = 0; i < 1000; i++)
        {
            sum += Guard.Positive(leg, "leg") + Guard.Positive(yield, "yield");
        }

        var allocated = GC.GetAllocatedBytesForCurrentThread() - before;
        Assert.Equal(0, allocated);
        Assert.True(sum > 0);
    }

    private static void AssertRefused(string name, string sentence, Func<object> act)
    {
        var fault = Assert.Throws<ArgumentOutOfRangeException>(name, act);
        Assert.StartsWith(sentence, fault.Message, StringComparison.Ordinal);
    }
}
