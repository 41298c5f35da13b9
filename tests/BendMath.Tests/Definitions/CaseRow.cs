using BendMath.Materials.Unloading;
using UnitsNet;

namespace BendMath.Tests.Definitions;

/// <summary>Builds the section and the law of a computed case, of those the library has.</summary>
internal static class CaseRow
{
    private static readonly string[] Shapes = ["angle", "flat", "square", "round", "tube"];

    private static readonly string[] Laws = ["perfectly plastic", "linear hardening", "power law", "Ramberg-Osgood"];

    public static bool IsCovered(ReferenceRow row) => Shapes.Contains(row["shape"]) && Laws.Contains(row["law"]);

    public static BendAnalysis Analysis(ReferenceRow row) =>
        BendAnalysis.Of(Section(row), new BarMaterial("case " + row["case"], Law(row), Density.FromKilogramsPerCubicMeter(7850)));

    public static Length Millimeters(ReferenceRow row, string column) => Length.FromMillimeters(row.Number(column));

    public static OrientedSection Section(ReferenceRow row)
    {
        Length depth = Millimeters(row, "depth_mm");
        Length width = Millimeters(row, "width_mm");
        return row["shape"] switch
        {
            "angle" => Angle(row, depth, width),
            "flat" => depth < width ? new FlatBar(width, depth).EasyWay : new FlatBar(depth, width).HardWay,
            "square" => new SquareBar(depth).Section,
            "round" => new RoundBar(depth).Section,
            "tube" => new RoundTube(depth, Millimeters(row, "thickness_mm")).Section,
            var shape => throw new NotSupportedException($"{row}: no shape '{shape}'."),
        };
    }

    private static OrientedSection Angle(ReferenceRow row, Length radial, Length axial)
    {
        FlangeDirection direction = row["orientation"] switch
        {
            "flange out" => FlangeDirection.Out,
            "flange in" => FlangeDirection.In,
            var other => throw new NotSupportedException($"{row}: no orientation '{other}'."),
        };
        AngleFillets fillets = AngleFillets.Of(Millimeters(row, "root_radius_mm"), Millimeters(row, "toe_radius_mm"));
        return OrientedBars.Angle(radial, axial, Millimeters(row, "thickness_mm"), fillets, direction);
    }

    public static StressStrainLaw Law(ReferenceRow row)
    {
        Pressure modulus = Pressure.FromMegapascals(row.Number("elastic_modulus_mpa"));
        return row["law"] switch
        {
            "perfectly plastic" => new PerfectlyPlastic(modulus, Megapascals("yield_mpa")),
            "linear hardening" => new LinearHardening(modulus, Megapascals("yield_mpa"), Megapascals("tangent_modulus_mpa")),
            "power law" => new PowerHardening(modulus, Megapascals("strength_coefficient_mpa"), row.Number("hardening_exponent")),
            "hot-rolled as printed" =>
                HotRolledSteel.AsPrinted(modulus, Megapascals("yield_mpa"), Megapascals("ultimate_mpa")),
            "hot-rolled four lines" =>
                HotRolledSteel.AsFourLines(modulus, Megapascals("yield_mpa"), Megapascals("ultimate_mpa")),
            "hot-rolled true stress" => new HotRolledSteel(modulus, Megapascals("yield_mpa"), Megapascals("ultimate_mpa")),
            "kinematic hardening" => new KinematicHardening(
                modulus,
                Megapascals("yield_mpa"),
                Megapascals("back_stress_mpa"),
                row.Number("back_stress_rate"),
                Megapascals("linear_range_mpa"),
                Megapascals("range_change_mpa"),
                row.Number("range_rate")),
            "Ramberg-Osgood" => new RambergOsgood(modulus, Megapascals("yield_mpa"), row.Number("hardening_exponent")),
            var law => throw new NotSupportedException($"{row}: no law '{law}'."),
        };

        Pressure Megapascals(string column) => Pressure.FromMegapascals(row.Number(column));
    }
}
