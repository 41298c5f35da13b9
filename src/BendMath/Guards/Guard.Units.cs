using UnitsNet;
using UnitsNet.Units;

namespace BendMath.Guards;

internal static partial class Guard
{
    // Inches and feet are multiplied by an integer and divided once, so that 3 in is the double nearest to 0.0762 m.
    private static double Meters(Length value, string name) => value.Unit switch
    {
        LengthUnit.Meter => value.Value,
        LengthUnit.Millimeter => value.Value / 1e3,
        LengthUnit.Centimeter => value.Value / 1e2,
        LengthUnit.Inch => value.Value * 254 / 1e4,
        LengthUnit.Foot => value.Value * 3048 / 1e4,
        var unit when DefinedUnits.OfLength((int)unit) => Convert(value, name, static quantity => quantity.Meters),
        var unit => throw UnknownUnit(name, nameof(LengthUnit), (int)unit),
    };

    private static double Pascals(Pressure value, string name) => value.Unit switch
    {
        PressureUnit.Pascal => value.Value,
        PressureUnit.Megapascal or PressureUnit.NewtonPerSquareMillimeter => value.Value * 1e6,
        PressureUnit.Gigapascal => value.Value * 1e9,
        var unit when DefinedUnits.OfPressure((int)unit) => Convert(value, name, static quantity => quantity.Pascals),
        var unit => throw UnknownUnit(name, nameof(PressureUnit), (int)unit),
    };

    private static double Radians(Angle value, string name) => value.Unit switch
    {
        AngleUnit.Radian => value.Value,
        AngleUnit.Degree => value.Value * Math.PI / 180,
        var unit when DefinedUnits.OfAngle((int)unit) => Convert(value, name, static quantity => quantity.Radians),
        var unit => throw UnknownUnit(name, nameof(AngleUnit), (int)unit),
    };

    private static double NewtonMeters(Torque value, string name) => value.Unit switch
    {
        TorqueUnit.NewtonMeter => value.Value,
        TorqueUnit.NewtonMillimeter => value.Value / 1e3,
        TorqueUnit.KilonewtonMeter => value.Value * 1e3,
        var unit when DefinedUnits.OfTorque((int)unit) => Convert(value, name, static quantity => quantity.NewtonMeters),
        var unit => throw UnknownUnit(name, nameof(TorqueUnit), (int)unit),
    };

    private static double Newtons(Force value, string name) => value.Unit switch
    {
        ForceUnit.Newton => value.Value,
        ForceUnit.Kilonewton => value.Value * 1e3,
        var unit when DefinedUnits.OfForce((int)unit) => Convert(value, name, static quantity => quantity.Newtons),
        var unit => throw UnknownUnit(name, nameof(ForceUnit), (int)unit),
    };

    private static double KilogramsPerCubicMeter(Density value, string name) => value.Unit switch
    {
        DensityUnit.KilogramPerCubicMeter => value.Value,
        DensityUnit.GramPerCubicCentimeter => value.Value * 1e3,

        // From their definitions: the factors of UnitsNet have six and eight digits only.
        DensityUnit.PoundPerCubicInch => value.Value * (0.45359237 / (0.0254 * 0.0254 * 0.0254)),
        DensityUnit.PoundPerCubicFoot => value.Value * (0.45359237 / (0.3048 * 0.3048 * 0.3048)),
        var unit when DefinedUnits.OfDensity((int)unit) => Convert(value, name, static quantity => quantity.KilogramsPerCubicMeter),
        var unit => throw UnknownUnit(name, nameof(DensityUnit), (int)unit),
    };

    private static double DecimalFraction(Ratio value, string name) => value.Unit switch
    {
        RatioUnit.DecimalFraction => value.Value,
        RatioUnit.Percent => value.Value / 1e2,
        var unit when DefinedUnits.OfRatio((int)unit) => Convert(value, name, static quantity => quantity.DecimalFractions),
        var unit => throw UnknownUnit(name, nameof(RatioUnit), (int)unit),
    };

    // UnitsNet refuses a result that is infinite, or a tilt beyond 1, under its own argument name; here it gets the caller's.
    private static double Convert<TQuantity>(TQuantity value, string name, Func<TQuantity, double> convert)
        where TQuantity : IQuantity
    {
        try
        {
            return convert(value);
        }
        catch (ArgumentException)
        {
            throw OutOfRange(name, "must be finite when converted to SI units", Invariant($"is {(double)value.Value:G12} {value.Unit}"));
        }
    }

    private static ArgumentOutOfRangeException UnknownUnit(string name, string enumeration, int unit)
        => OutOfRange(name, $"must have a unit defined in {enumeration}", Invariant($"its unit is {unit}"));

    /// <summary>Which unit numbers exist, from UnitsNet's own lists; the numbers have gaps, and a later UnitsNet may add to them.</summary>
    private static class DefinedUnits
    {
        private static readonly bool[] Lengths = Table(Length.Units, unit => (int)unit);
        private static readonly bool[] Pressures = Table(Pressure.Units, unit => (int)unit);
        private static readonly bool[] Angles = Table(Angle.Units, unit => (int)unit);
        private static readonly bool[] Torques = Table(Torque.Units, unit => (int)unit);
        private static readonly bool[] Forces = Table(Force.Units, unit => (int)unit);
        private static readonly bool[] Densities = Table(Density.Units, unit => (int)unit);
        private static readonly bool[] Ratios = Table(Ratio.Units, unit => (int)unit);

        public static bool OfLength(int unit) => Has(Lengths, unit);

        public static bool OfPressure(int unit) => Has(Pressures, unit);

        public static bool OfAngle(int unit) => Has(Angles, unit);

        public static bool OfTorque(int unit) => Has(Torques, unit);

        public static bool OfForce(int unit) => Has(Forces, unit);

        public static bool OfDensity(int unit) => Has(Densities, unit);

        public static bool OfRatio(int unit) => Has(Ratios, unit);

        private static bool Has(bool[] defined, int unit) => (uint)unit < (uint)defined.Length && defined[unit];

        private static bool[] Table<TUnit>(TUnit[] units, Func<TUnit, int> number)
        {
            var defined = new bool[units.Max(number) + 1];
            foreach (var unit in units)
            {
                defined[number(unit)] = true;
            }

            return defined;
        }
    }
}
