using BendMath.Layout.BentBars;
using BendMath.Measurement;
using BendMath.Tests.Forming;
using BendMath.Tests.Properties;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using UnitsNet;

namespace BendMath.Tests.Layout.BentBars;

public sealed class RingPlacesTests
{
    private static readonly FinishedRing Ring = Workshop.RimSteel.LoadedFor(Workshop.Inside(250), Release.Free).Release(Release.Free).Ring;

    private static readonly DevelopedLayout Layout = DevelopedLayout.For(
        Ring, Workshop.Rim, ArcExtent.FullRing,
            new EndAllowance(Length.FromMillimeters(100), Length.FromMillimeters(90), Length.FromMillimeters(5)),
                Length.FromMillimeters(2));

    private static readonly Length OnAxis = Workshop.Rim.Properties.CentroidAxial;

    /// <summary>
    /// The fiber that keeps its length is not strained, and four holes on it are a quarter of its circumference apart before and after.
    /// </summary>
    [Fact]
    public void Holes_on_the_length_preserving_fiber_keep_their_spacing()
    {
        Length fiber = Ring.LengthPreservingFiberFromInside / (Ring.OutsideRadius - Ring.InsideRadius) * Workshop.Rim.Depth;
        RingPlace[] holes = [.. Enumerable.Range(0, 4).Select(i => Layout.PlaceFromAngle(Angle.FromDegrees(90 * i), fiber, OnAxis))];
        Assert.All(holes, hole => Near.Absolute(0, hole.Strain.DecimalFractions, 1e-12));
        Near.Relative((Math.PI / 2 * holes[0].Radius).Millimeters, (holes[1].Along - holes[0].Along).Millimeters, 1e-12);
        Near.Relative(100, holes[0].Along.Millimeters, 1e-12);
        Near.Absolute(0, holes[1].X.Millimeters, 1e-9);
        Near.Relative(holes[1].Radius.Millimeters, holes[1].Y.Millimeters, 1e-12);
    }

    /// <summary>
    /// The strain of the faces is the loaded strain less what springs back: e − Δκ·(y − ȳ), and R = (1 + e_f)/κ_t, here by way of the
    /// loaded and the released curvature of a symmetric bar.
    /// </summary>
    [Fact]
    public void Strain_is_what_the_release_leaves()
    {
        OrientedSection square = new SquareBar(Length.FromMillimeters(12)).Section;
        LoadedBend loaded = BendAnalysis.Of(square, Workshop.Steel).LoadedTo(Workshop.Inside(60));
        FinishedRing ring = loaded.Release(Release.Free).Ring;
        DevelopedLayout places = DevelopedLayout.For(ring, square, ArcExtent.FullRing, EndAllowance.None, Length.Zero);
        double springback = loaded.Curvature.InverseMeters - ring.Curvature.InverseMeters;
        foreach (double y in new[] { 0, 3, 6, 9, 12.0 })
        {
            double expected = loaded.StrainAt(Length.FromMillimeters(y)).DecimalFractions - springback * (y - 6) / 1e3;
            Near.Absolute(expected,
                places.PlaceFromAngle(Angle.FromDegrees(10), Length.FromMillimeters(y), Length.FromMillimeters(6)).Strain.DecimalFractions,
                    1e-12, $"strain at {y} mm");
        }
    }

    [Fact]
    public void A_tape_along_a_face_and_an_angle_agree()
    {
        RingPlace byTape =
            Layout.PlaceFromFace(RadiusReference.OutsideFace, Math.PI / 3 * Ring.OutsideRadius, Length.FromMillimeters(15), OnAxis);
        RingPlace byAngle = Layout.PlaceFromAngle(Angle.FromDegrees(60), Length.FromMillimeters(15), OnAxis);
        Near.Relative(byAngle.Along.Meters, byTape.Along.Meters, 1e-12);
        Near.Relative(Ring.InsideRadius.Meters, Layout.PlaceFromAngle(Angle.FromDegrees(60), Length.Zero, OnAxis).Radius.Meters, 1e-12);
        Near.Relative(Ring.InsideRadiusAtHeel.Meters, Layout.PlaceFromAngle(Angle.FromDegrees(60), Length.Zero, Length.Zero).Radius.Meters,
            1e-12);
        Near.Relative(Ring.OutsideRadius.Meters, Layout.PlaceFromAngle(Angle.FromDegrees(60), Workshop.Rim.Depth, OnAxis).Radius.Meters,
            1e-12);
    }

    /// <summary>The section turns rigidly by the dish angle: distances in it stay.</summary>
    [Fact]
    public void A_dished_section_keeps_its_shape()
    {
        RingPlace heel = Layout.PlaceFromAngle(Angle.Zero, Length.Zero, Length.Zero);
        RingPlace toe = Layout.PlaceFromAngle(Angle.Zero, Length.FromMillimeters(3), Length.FromMillimeters(30));
        double radial = (toe.Radius - heel.Radius).Millimeters;
        double axial = (toe.Height - heel.Height).Millimeters;
        Near.Relative(Math.Sqrt(909), Math.Sqrt(radial * radial + axial * axial), 1e-12);
        Assert.True(Ring.DishAngle.Degrees > 0.1 && radial > 3, "the toe of a flange-out ring leans outward");
    }

    /// <summary>
    /// The edges of the face on the plate lie as high as the dish angle says, and a dish measured from those heights is that angle again.
    /// </summary>
    [Fact]
    public void Heights_of_the_edges_show_the_dish()
    {
        HeightReading[] readings = [.. Enumerable.Range(0, 6).Select(i => Angle.FromDegrees(60 * i)).Select(at => new HeightReading(
            at, Layout.PlaceFromAngle(at, Length.Zero, Length.Zero).Height,
                Layout.PlaceFromAngle(at, Workshop.Rim.Depth, Length.Zero).Height))];
        RingFlatness flatness = RingFlatness.Of(readings, Workshop.Rim.Depth);
        Near.Relative(Ring.DishAngle.Degrees, flatness.Dish!.Value.Degrees, 1e-9);
        Near.Absolute(0, flatness.Flatness.Millimeters, 1e-9);
    }

    [Property(MaxTest = 500)]
    public Property Straight_to_ring_to_straight_is_the_same_hole() => Prop.ForAll(
        Sold.Part.ToArbitrary(), Sold.Part.ToArbitrary(), Sold.Part.ToArbitrary(), (along, across, axial) =>
        {
            Length y = across * Workshop.Rim.Depth;
            Length z = axial * Workshop.Rim.Properties.Width;
            RingPlace place = Layout.PlaceFromBar(Length.FromMillimeters(100) + along * Layout.DevelopedLength, y, z);
            foreach (RingPlace back in new[] { Layout.PlaceFromAngle(place.Angle, y, z),
                Layout.PlaceFromFace(RadiusReference.InsideFace, place.Angle.Radians * Ring.InsideRadius, y, z) })
            {
                Near.Relative(place.Along.Meters, back.Along.Meters, 1e-12, "along");
                Near.Relative(place.Radius.Meters, back.Radius.Meters, 1e-12, "radius");
                Near.Absolute(place.X.Meters, back.X.Meters, 1e-12, "x");
            }

            Near.Relative(place.Radius.Meters, Math.Sqrt(place.X.Meters * place.X.Meters + place.Y.Meters * place.Y.Meters), 1e-12,
                "distance from the axis");
        });

    [Fact]
    public void A_hole_stretches_with_its_fiber_and_says_what_to_mind()
    {
        RingPlace place = Layout.PlaceFromAngle(Angle.FromDegrees(30), Length.FromMillimeters(27), Length.FromMillimeters(1.5));
        Length drilled = Length.FromMillimeters(11);
        Near.Relative(11 * (1 + place.Strain.DecimalFractions), place.HoleLength(drilled).Millimeters, 1e-12);
        Assert.True(place.HoleLength(drilled) > drilled, "outside the fiber that keeps its length a hole grows");
        Assert.Equal(["hole-near-edge", "hole-outer-fiber", "hole-weakens", "hole-in-bend"],
            place.HoleAdvisories(drilled).Select(advisory => advisory.Code));
        Assert.Equal(["hole-in-bend"],
            Layout.PlaceFromAngle(Angle.FromDegrees(30), Length.FromMillimeters(15), Length.Zero)
                .HoleAdvisories(Length.FromMillimeters(6)).Select(advisory => advisory.Code));
    }

    [Fact]
    public void Points_off_the_ring_are_refused_by_name()
    {
        Assert.Throws<ArgumentOutOfRangeException>("along",
            () => Layout.PlaceFromBar(Length.FromMillimeters(99), Length.Zero, Length.Zero));
        Assert.Throws<ArgumentOutOfRangeException>("angle", () => Layout.PlaceFromAngle(Angle.FromDegrees(361), Length.Zero, Length.Zero));
        Assert.Throws<ArgumentOutOfRangeException>("fromInside",
            () => Layout.PlaceFromAngle(Angle.Zero, Length.FromMillimeters(31), Length.Zero));
        Assert.Throws<ArgumentOutOfRangeException>("axial",
            () => Layout.PlaceFromAngle(Angle.Zero, Length.Zero, Length.FromMillimeters(31)));
        Assert.Throws<ArgumentOutOfRangeException>("diameter",
            () => Layout.PlaceFromAngle(Angle.Zero, Length.Zero, Length.Zero).HoleLength(Length.FromMillimeters(31)));
    }
}
