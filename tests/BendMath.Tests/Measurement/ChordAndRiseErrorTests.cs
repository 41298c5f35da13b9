using BendMath.Measurement;
using BendMath.Tests.Properties;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using UnitsNet;

namespace BendMath.Tests.Measurement;

public sealed class ChordAndRiseErrorTests
{
    /// <summary>
    /// Chord 400 ± 1 mm, rise 89.9 ± 0.5 mm, by hand: R = 400²/(8·89.9) + 44.95 = 267.42; by the chord 400/(4·89.9) = 1.112, by the rise
    /// (400²/(8·89.9²) − 0.5)·0.5 = 0.987.
    /// </summary>
    [Fact]
    public void An_error_worked_by_hand()
    {
        MeasuredLength radius =
            ChordAndRise.RadiusOf(Length.FromMillimeters(400), Length.FromMillimeters(89.9), Length.FromMillimeters(1),
                Length.FromMillimeters(0.5));
        Near.Absolute(267.42, radius.Value.Millimeters, 0.005);
        Near.Absolute(Math.Sqrt(1.112 * 1.112 + 0.987 * 0.987), radius.Error.Millimeters, 0.001);
        Near.Absolute(2 * radius.Error.Millimeters, radius.Twice.Error.Millimeters, 1e-12);
        Near.Absolute(2 * radius.WorstCase!.Low.Millimeters, radius.Twice.WorstCase!.Low.Millimeters, 1e-9);
    }

    /// <summary>No reading within the errors gives a radius outside the worst case, and some come close to its ends.</summary>
    [Property(MaxTest = 200)]
    public Property The_worst_case_holds_every_reading_and_is_reached() => Prop.ForAll(
        Sold.Part.Select(part => Sold.Between(0.05, 0.8, part)).ToArbitrary(),
        Sold.Part.Select(part => Sold.Between(0.001, 0.3, part)).ToArbitrary(),
        Sold.Part.Select(part => Sold.Between(0.001, 0.5, part)).ToArbitrary(),
        (riseShare, chordPart, risePart) =>
        {
            double chord = 300;
            double rise = riseShare * chord;
            (double dc, double dh) = (chordPart * chord, risePart * rise);
            LengthRange worst =
                ChordAndRise.RadiusOf(Length.FromMillimeters(chord), Length.FromMillimeters(rise), Length.FromMillimeters(dc),
                    Length.FromMillimeters(dh)).WorstCase!;
            double[] steps = [.. Enumerable.Range(-50, 101).Select(i => i / 50d)];
            double[] radii =
                [.. steps.SelectMany(i => steps.Select(k => ChordAndRise.RadiusOf(Length.FromMillimeters(chord + i * dc), Length.FromMillimeters(rise + k * dh)).Millimeters))];
            Assert.InRange(radii.Min(), worst.Low.Millimeters * (1 - 1e-9), worst.Low.Millimeters * (1 + 1e-3));
            Assert.InRange(radii.Max(), worst.High.Millimeters * (1 - 1e-9), worst.High.Millimeters * (1 + 1e-9));
        });

    /// <summary>
    /// Small errors: the first order is the root of the sum of squares of differences of the radius itself, and the worst case their sum.
    /// </summary>
    [Property(MaxTest = 200)]
    public Property First_order_is_what_small_differences_give() => Prop.ForAll(
        Sold.Part.Select(part => Sold.Between(0.03, 0.45, part)).ToArbitrary(),
        Sold.Part.Select(part => Sold.Between(50, 2000, part)).ToArbitrary(), (riseShare, chord) =>
        {
            Length c = Length.FromMillimeters(chord);
            Length h = riseShare * c;
            Length dc = 1e-5 * c;
            Length dh = 1e-5 * h;
            double byChord = (ChordAndRise.RadiusOf(c + dc, h) - ChordAndRise.RadiusOf(c - dc, h)).Millimeters / 2;
            double byRise = (ChordAndRise.RadiusOf(c, h + dh) - ChordAndRise.RadiusOf(c, h - dh)).Millimeters / 2;
            MeasuredLength radius = ChordAndRise.RadiusOf(c, h, dc, dh);
            Near.Relative(Math.Sqrt(byChord * byChord + byRise * byRise), radius.Error.Millimeters, 1e-6, "error");
            Near.Relative(Math.Abs(byChord) + Math.Abs(byRise), (radius.WorstCase!.High - radius.WorstCase.Low).Millimeters / 2, 1e-4,
                "half of the worst case");
        });

    [Property(MaxTest = 200)]
    public Property On_the_shortest_chord_the_error_is_the_accepted_one_and_on_a_longer_one_less() => Prop.ForAll(
        Sold.Part.Select(part => Sold.Between(200, 3000, part)).ToArbitrary(),
        Sold.Part.Select(part => Sold.Between(0.5, 50, part)).ToArbitrary(), (radius, quotient) =>
        {
            Length r = Length.FromMillimeters(radius);
            Length dh = 1e-5 * r;
            Length chord = ChordAndRise.ShortestChordFor(r, dh, quotient * dh);
            Near.Relative(quotient * dh.Millimeters, ErrorOn(chord), 1e-3, "error on the shortest chord");
            Assert.True(ErrorOn(1.02 * chord) < ErrorOn(chord), "a longer chord is better");
            double ErrorOn(Length c) => ChordAndRise.RadiusOf(c, ChordAndRise.RiseFor(r, c), Length.Zero, dh).Error.Millimeters;
        });

    /// <summary>A diameter may be twice as long as any length that is given.</summary>
    [Fact]
    public void Twice_the_longest_radius_is_a_diameter()
    {
        MeasuredLength radius =
            ChordAndRise.RadiusOf(Length.FromMeters(1e6), Length.FromMeters(150e3), Length.Zero, Length.FromMeters(1e3));
        Assert.Equal(2 * radius.WorstCase!.High.Meters, radius.Twice.WorstCase!.High.Meters);
        Assert.True(radius.Twice.WorstCase.High.Meters > 1e6);
        Assert.Equal(2e6, new MeasuredLength(Length.FromMeters(1e6), Length.Zero).Twice.Value.Meters);
    }

    [Fact]
    public void The_band_of_a_template_is_the_rise_of_its_limits()
    {
        LengthRange band = ChordAndRise.RiseBand(Length.FromMillimeters(250), Length.FromMillimeters(2), Length.FromMillimeters(400));
        Assert.Equal(ChordAndRise.RiseFor(Length.FromMillimeters(252), Length.FromMillimeters(400)), band.Low);
        Assert.Equal(ChordAndRise.RiseFor(Length.FromMillimeters(248), Length.FromMillimeters(400)), band.High);
        Assert.Throws<ArgumentOutOfRangeException>("chord",
            () => ChordAndRise.RiseBand(Length.FromMillimeters(250), Length.FromMillimeters(2), Length.FromMillimeters(497)));
        Assert.Throws<ArgumentOutOfRangeException>("tolerance",
            () => ChordAndRise.RiseBand(Length.FromMillimeters(250), Length.FromMillimeters(250), Length.FromMillimeters(400)));
        Assert.Throws<ArgumentOutOfRangeException>("riseError",
            () => ChordAndRise.RadiusOf(Length.FromMillimeters(400), Length.FromMillimeters(90), Length.Zero, Length.FromMillimeters(90)));
        Assert.Throws<ArgumentOutOfRangeException>("chordError",
            () => ChordAndRise.RadiusOf(Length.FromMillimeters(400), Length.FromMillimeters(90), Length.FromMillimeters(400), Length.Zero));
    }
}
