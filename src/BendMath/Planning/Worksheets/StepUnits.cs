using BendMath.Evidence;
using UnitsNet;

namespace BendMath.Planning.Worksheets;

/// <summary>One consistent system of units, so that an equation holds for the bare numbers.</summary>
internal sealed class StepUnits(bool inches)
{
    public string Length => inches ? "in" : "mm";

    public string Curvature => inches ? "1/in" : "1/mm";

    public string Moment => inches ? "lbf·in" : "N·mm";

    public string Force => inches ? "lbf" : "N";

    public string Energy => inches ? "in·lbf" : "N·mm";

    public string Mass => inches ? "lb" : "kg";

    private string Second => inches ? "in⁴" : "mm⁴";

    public WorkedTerm Of(string symbol, string meaning, Length value) => new(symbol, meaning, In(value), Length);

    public WorkedTerm Of(string symbol, string meaning, ReciprocalLength value) => new(symbol, meaning, In(value), Curvature);

    public WorkedTerm Of(string symbol, string meaning, Torque value) => new(symbol, meaning, In(value), Moment);

    public WorkedTerm Of(string symbol, string meaning, Pressure value) =>
        new(symbol, meaning, inches ? value.PoundsForcePerSquareInch : value.Megapascals, inches ? "psi" : "MPa");

    public WorkedTerm Of(string symbol, string meaning, AreaMomentOfInertia value) =>
        new(symbol, meaning, inches ? value.InchesToTheFourth : value.MillimetersToTheFourth, Second);

    public WorkedTerm Of(string symbol, string meaning, Area value) =>
        new(symbol, meaning, inches ? value.SquareInches : value.SquareMillimeters, inches ? "in²" : "mm²");

    /// <summary>Pounds per cubic inch from their definition: the factor of UnitsNet has six digits only.</summary>
    public WorkedTerm Of(string symbol, string meaning, Density value) =>
        new(symbol, meaning, value.KilogramsPerCubicMeter * (inches ? 0.0254 * 0.0254 * 0.0254 / 0.45359237 : 1e-9),
            inches ? "lb/in³" : "kg/mm³");

    public double In(Length value) => inches ? value.Inches : value.Millimeters;

    public double In(ReciprocalLength value) => inches ? value.InverseInches : value.InverseMillimeters;

    public double In(Torque value) => inches ? value.PoundForceInches : value.NewtonMillimeters;

    public double In(Energy value) => In(Torque.FromNewtonMeters(value.Joules));

    public double In(Force value) => inches ? value.PoundsForce : value.Newtons;

    public double In(Mass value) => inches ? value.Pounds : value.Kilograms;
}
