using BendMath.Measurement;
using UnitsNet;

namespace BendMath.Tests.Measurement;

/// <summary>Readings into radii, by elementary geometry.</summary>
public sealed class RingReadingTests
{
    private static Length Mm(double value) => Length.FromMillimeters(value);

    public static TheoryData<string> Ways() => ["across", "tape inside", "tape outside", "chord inside", "chord outside"];

    /// <summary>One circle of 250 mm, read in every way.</summary>
    [Theory]
    [MemberData(nameof(Ways))]
    public void Every_way_gives_the_radius_of_the_circle(string way)
    {
        RingReading reading = Read(way, 0);
        Near.Relative(250, reading.Radius.Value.Millimeters, 1e-12);
        Assert.Equal(way.EndsWith("outside", StringComparison.Ordinal) ? RadiusReference.OutsideFace : RadiusReference.InsideFace,
            reading.Radius.Reference);
    }

    /// <summary>The error of the radius is the difference quotient of the radius.</summary>
    [Theory]
    [MemberData(nameof(Ways))]
    public void An_error_of_the_reading_moves_the_radius_as_said(string way)
    {
        double quotient = (Read(way, 1e-4).Radius.Value - Read(way, -1e-4).Radius.Value).Millimeters / 2e-4;
        Near.Relative(Math.Abs(quotient) * 0.5, Read(way, 0).RadiusErrorFor(Mm(0.5)).Millimeters, 1e-6);
    }

    [Fact]
    public void The_reading_itself_is_kept_and_printed()
    {
        RingReading chord = RingReading.ChordAgainstInside(Mm(400), Mm(100));
        Assert.Equal((400, 100), (chord.Chord!.Value.Millimeters, chord.Rise!.Value.Millimeters));
        Assert.Null(chord.Tape);
        Assert.Equal("rise of 100 mm over a chord of 400 mm against the inside", chord.ToString());
        Assert.Equal("tape of 1570.8 mm around the outside", RingReading.TapeAroundOutside(Mm(1570.8)).ToString());
        Assert.Equal(chord, RingReading.ChordAgainstInside(Mm(400), Mm(100)));
        Near.Relative(1650 / (2 * Math.PI), new MarkedLength(Mm(1650), Angle.FromDegrees(360)).KeptRadius.Millimeters, 1e-12);
    }

    /// <summary>
    /// What a reading keeps is what its radius was computed from, whatever the unit: the same chord and rise in meters make the same ring,
    /// to the last bit.
    /// </summary>
    [Fact]
    public void A_reading_in_millimeters_is_the_reading_in_meters_to_the_last_bit()
    {
        foreach (double chord in Enumerable.Range(0, 105).Select(i => 100 + 3.7 * i))
        {
            foreach (double rise in Enumerable.Range(0, 31).Select(i => 10 + 1.3 * i))
            {
                RingReading given = RingReading.ChordAgainstInside(Mm(chord), Mm(rise));
                RingReading again =
                    RingReading.ChordAgainstInside(Length.FromMeters(given.Chord!.Value.Meters),
                        Length.FromMeters(given.Rise!.Value.Meters));
                Assert.Equal((given.Radius.Value.Meters, given.Chord, given.Rise), (again.Radius.Value.Meters, again.Chord, again.Rise));
            }
        }
    }

    private static RingReading Read(string way, double more) => way switch
    {
        "across" => RingReading.Of(BendRadius.InsideDiameter(Mm(500 + more))),
        "tape inside" => RingReading.TapeAroundInside(Mm(500 * Math.PI + more)),
        "tape outside" => RingReading.TapeAroundOutside(Mm(500 * Math.PI + more)),
        "chord inside" => RingReading.ChordAgainstInside(Mm(300), Mm(50 + more)),
        _ => RingReading.ChordAgainstOutside(Mm(300), Mm(50 + more)),
    };
}
