using BendMath.Bending.NeutralAxes;
using BendMath.Sections.Outlines;
using UnitsNet;

namespace BendMath.Tests.Handbook;

/// <summary>
/// Worked examples of textbooks with I-sections, found in companions of the books, drawn as outlines of a bar of any shape with the
/// dimensions of the book.
/// </summary>
public sealed class DrawnBeamTests
{
    /// <summary>
    /// F. P. Beer, E. R. Johnston, J. T. DeWolf, Mechanics of Materials, Sample Problem 4.7, p. 265: flanges 12 × 1 in, web 3/4 in, 16 in
    /// deep, 50 ksi; I = 1524 in⁴, 10 230 kip·in with the flanges just yielded. The drawn section has 1523.5 in⁴ and 10 225 kip·in exactly,
    /// both of which the book rounds up.
    /// </summary>
    [Fact]
    public void Beer_Johnston_DeWolf_4_7_second_moment_and_moment_at_yielded_flanges()
    {
        OrientedSection section =
            Beam(Length.FromInches(16), Length.FromInches(12), Length.FromInches(1), Length.FromInches(1), Length.FromInches(0.75));
        Assert.Equal(1524, section.Properties.SecondMomentAboutBendingAxis.InchesToTheFourth, 0.5 + 1e-9);
        PerfectlyPlasticBar bar = new(section, Pressure.FromPoundsForcePerSquareInch(29e6), Pressure.FromPoundsForcePerSquareInch(50e3));
        Assert.Equal(10230, bar.AtCore(7 / 8.0).BendingMoment.KilopoundForceInches, 5 + 1e-9);
    }

    /// <summary>
    /// R. C. Hibbeler, Mechanics of Materials, Example 6.23, p. 343: flanges 8 × 1/2 in, web 1/2 in, 10 in deep, 36 ksi; I = 211 in⁴,
    /// plastic moment 1732.5 kip·in.
    /// </summary>
    [Fact]
    public void Hibbeler_6_23_second_moment_and_plastic_moment()
    {
        SectionProperties section =
            Beam(Length.FromInches(10), Length.FromInches(8), Length.FromInches(0.5), Length.FromInches(0.5),
                Length.FromInches(0.5)).Properties;
        Assert.Equal(211, section.SecondMomentAboutBendingAxis.InchesToTheFourth, 0.5);
        Assert.Equal(1732.5, 36 * section.PlasticModulus.CubicInches, 0.05);
    }

    /// <summary>
    /// S. M. A. Kazimi, Solid Mechanics, Example 7.14, p. 269: 40 cm deep, flanges 10 × 1.4 cm, web 0.8 cm; shape factor 1.18.
    /// </summary>
    [Fact]
    public void Kazimi_7_14_shape_factor() =>
        Assert.Equal(1.18, Beam(Cm(40), Cm(10), Cm(1.4), Cm(1.4), Cm(0.8)).Properties.ShapeFactor, 0.005);

    /// <summary>
    /// A. P. Boresi, R. J. Schmidt, Advanced Mechanics of Materials, Example 9.6, p. 335: inner flange 150 × 60 mm from radius 80 mm, web
    /// 50 × 120 mm, outer flange 150 × 40 mm, 96 kN·m opening the bar and 120 kN at the center of curvature; 177.5 MPa at the inside.
    /// </summary>
    [Fact]
    public void Boresi_Schmidt_9_6_stress_at_the_inside_of_a_curved_beam()
    {
        OrientedSection section = Beam(Cm(22), Cm(15), Cm(6), Cm(4), Cm(5));
        CurvedBar bar = CurvedBar.Of(section, BendRadius.Inside(Cm(8)));
        Torque moment = Torque.FromKilonewtonMeters(-96 - (120 * bar.CentroidRadius.Meters));
        Assert.Equal(177.5, bar.StressAt(Length.Zero, moment, Force.FromKilonewtons(120)).Megapascals, 0.1);
    }

    private static OrientedSection Beam(Length depth, Length flange, Length inner, Length outer, Length web)
    {
        Length side = (flange - web) / 2;
        (Length X, Length Y)[] corners =
        [
            (Length.Zero, Length.Zero), (flange, Length.Zero), (flange, inner), (flange - side, inner), (flange - side, depth - outer),
            (flange, depth - outer),
            (flange, depth), (Length.Zero, depth), (Length.Zero, depth - outer), (side, depth - outer), (side, inner), (Length.Zero, inner),
        ];
        return new CustomBar("beam",
            new Outline([OutlineLoop.Polygon([.. corners.Select(corner => new OutlinePoint(corner.X, corner.Y))])])).AsDrawn;
    }

    private static Length Cm(double value) => Length.FromCentimeters(value);
}
