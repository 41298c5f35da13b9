using BendMath.Tests.Forming;
using BendMath.Tests.Properties;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using UnitsNet;

namespace BendMath.Tests.Layout;

public sealed class ArcOnRingTests
{
    private static readonly FinishedRing Ring = Workshop.RimSteel.LoadedFor(Workshop.Inside(250), Release.Free).Release(Release.Free).Ring;

    private static readonly RadiusReference[] Lines = [RadiusReference.InsideFace, RadiusReference.Centroid, RadiusReference.OutsideFace];

    /// <summary>The side of an inscribed hexagon is the radius (Euclid, Elements IV.15), that of a square √2 times it.</summary>
    [Fact]
    public void Chords_of_the_hexagon_and_the_square()
    {
        Near.Relative(60, ArcExtent.ForChord(Ring, RadiusReference.InsideFace, Ring.InsideRadius).Turn.Degrees, 1e-12);
        Near.Relative(90, ArcExtent.ForChord(Ring, RadiusReference.OutsideFace, Math.Sqrt(2) * Ring.OutsideRadius).Turn.Degrees, 1e-12);
        Near.Relative(300, ArcExtent.ForChord(Ring, RadiusReference.InsideFace, Ring.InsideRadius).Rest!.Turn.Degrees, 1e-12);
        Near.Relative(180, ArcExtent.ForChord(Ring, RadiusReference.Centroid, 2 * Ring.CentroidRadius).Turn.Degrees, 1e-12);
    }

    [Fact]
    public void A_radian_is_as_long_as_the_radius_and_a_circumference_is_a_ring()
    {
        Near.Relative(1, ArcExtent.ForLength(Ring, RadiusReference.OutsideFace, Ring.OutsideRadius).Turn.Radians, 1e-12);
        ArcExtent whole = ArcExtent.ForLength(Ring, RadiusReference.InsideFace, 2 * Math.PI * Ring.InsideRadius);
        Assert.True(whole.IsFullRing);
        Assert.Null(whole.Rest);
        Assert.Equal(0, whole.ChordOn(Ring, RadiusReference.InsideFace).Meters);
    }

    [Property(MaxTest = 500)]
    public Property Chord_and_length_give_the_arc_back() => Prop.ForAll(
        Sold.Part.Select(part => Sold.Between(1, 180, part)).ToArbitrary(), Gen.Elements(Lines).ToArbitrary(), (degrees, line) =>
        {
            ArcExtent arc = ArcExtent.Of(Angle.FromDegrees(degrees));
            Near.Relative(degrees, ArcExtent.ForLength(Ring, line, arc.LengthOn(Ring, line)).Turn.Degrees, 1e-12);
            Near.Absolute(degrees, ArcExtent.ForChord(Ring, line, arc.ChordOn(Ring, line)).Turn.Degrees, 2e-6);
            Near.Relative(arc.ChordOn(Ring, line).Meters, arc.Rest!.ChordOn(Ring, line).Meters, 1e-9);
        });

    [Fact]
    public void What_does_not_fit_the_ring_is_refused_by_name()
    {
        Assert.Throws<ArgumentOutOfRangeException>("chord",
            () => ArcExtent.ForChord(Ring, RadiusReference.InsideFace, Ring.InsideDiameter + Length.FromMillimeters(1)));
        Assert.Throws<ArgumentOutOfRangeException>("length",
            () => ArcExtent.ForLength(Ring, RadiusReference.InsideFace, Length.FromMeters(2)));
        Assert.Throws<ArgumentOutOfRangeException>("line", () => ArcExtent.ForLength(Ring, (RadiusReference)7, Length.FromMeters(1)));
    }
}
