using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using UnitsNet;

namespace BendMath.Tests.Properties;

/// <summary>The mechanics know no absolute size and no unit.</summary>
public sealed class ScaleProperties
{
    private const double Tolerance = 1e-10;

    /// <summary>
    /// All lengths times s: radii and distances times s, curvatures by s, moments times s³, couples per length times s², strains as they
    /// were.
    /// </summary>
    [Property(MaxTest = 300)]
    public Property Scaling_all_lengths_scales_every_result() => Prop.ForAll(
        Sold.AnyBend.ToArbitrary(), Sold.Part.Select(part => Sold.Between(0.02, 50, part)).ToArbitrary(), (bend, s) =>
        {
            LoadedBend one = bend.Loaded();
            LoadedBend scaled = bend.Loaded(s);
            Near.Relative(s * one.NeutralAxisFromInside.Meters, scaled.NeutralAxisFromInside.Meters, Tolerance, "neutral axis");
            Near.Relative(one.Curvature.InverseMeters / s, scaled.Curvature.InverseMeters, Tolerance, "curvature");
            double moment = one.BendingMoment.NewtonMeters;
            Near.Relative(s * s * s * moment, scaled.BendingMoment.NewtonMeters, Tolerance, "bending moment");
            Near.Absolute(s * s * s * one.HoldDownMoment.NewtonMeters, scaled.HoldDownMoment.NewtonMeters, Tolerance * s * s * s * moment,
                "hold-down moment");
            Near.Absolute(
                s * s * one.HoldDownCouplePerLength.Newtons,
                scaled.HoldDownCouplePerLength.Newtons,
                Tolerance * s * s * moment * one.Curvature.InverseMeters,
                "couple per length");
            Near.Relative(one.OuterFiberStrain.DecimalFractions, scaled.OuterFiberStrain.DecimalFractions, Tolerance, "outer strain");
            foreach (Release release in Enum.GetValues<Release>())
            {
                FinishedRing ring = one.Release(release).Ring;
                FinishedRing larger = scaled.Release(release).Ring;
                Near.Relative(s * ring.InsideRadius.Meters, larger.InsideRadius.Meters, Tolerance, "finished radius");
                Near.Relative(ring.Curvature.InverseMeters / s, larger.Curvature.InverseMeters, Tolerance, "finished curvature");
                Near.Absolute(ring.DishAngle.Radians, larger.DishAngle.Radians, Tolerance, "dish angle");
            }
        });

    /// <summary>The same bar in inches and kilopounds per square inch.</summary>
    [Property(MaxTest = 200)]
    public Property Inches_are_millimeters() => Prop.ForAll(Sold.AnyBend.ToArbitrary(), bend =>
    {
        LoadedBend metric = bend.Loaded();
        OrientedSection section = bend.Bar.Section(millimeters => Length.FromInches(millimeters / 25.4));
        BarMaterial material =
            bend.Metal.Material(megapascals => Pressure.FromKilopoundsForcePerSquareInch(megapascals / 6.894757293168361));
        LoadedBend imperial =
            BendAnalysis.Of(section, material).LoadedTo(BendRadius.Inside(Length.FromInches(metric.InsideRadius.Millimeters / 25.4)));
        Near.Relative(metric.NeutralAxisFromInside.Millimeters, imperial.NeutralAxisFromInside.Inches * 25.4, Tolerance, "neutral axis");
        Near.Relative(metric.BendingMoment.NewtonMeters, imperial.BendingMoment.NewtonMeters, Tolerance, "bending moment");
        foreach (Release release in Enum.GetValues<Release>())
        {
            FinishedRing ring = metric.Release(release).Ring;
            FinishedRing other = imperial.Release(release).Ring;
            Near.Relative(ring.InsideRadius.Millimeters, other.InsideRadius.Inches * 25.4, Tolerance, "finished radius");
            Near.Relative(
                ring.BlankLengthFor(Angle.FromDegrees(360)).Millimeters, other.BlankLengthFor(Angle.FromRevolutions(1)).Inches * 25.4,
                    Tolerance, "blank length");
        }
    });
}
