using BendMath.Measurement;
using BendMath.Tests.Properties;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using UnitsNet;

namespace BendMath.Tests.Measurement;

/// <summary>Tape, diameters, heights and the verdict.</summary>
public sealed class RingChecksTests
{
    /// <summary>A tape 0.2 mm thick around 500 mm lies with its middle on 500.2 mm, inside on 499.8 mm.</summary>
    [Fact]
    public void A_tape_shows_the_length_of_its_middle()
    {
        MeasuredLength outside =
            MeasuredLength.DiameterByTapeAround(Length.FromMillimeters(Math.PI * 500.2), Length.FromMillimeters(1),
                Length.FromMillimeters(0.2));
        Near.Relative(500, outside.Value.Millimeters, 1e-12);
        Near.Relative(1 / Math.PI, outside.Error.Millimeters, 1e-12);
        Near.Relative(500,
            MeasuredLength.DiameterByTapeWithin(Length.FromMillimeters(Math.PI * 499.8), Length.Zero,
                Length.FromMillimeters(0.2)).Value.Millimeters,
                1e-12);
        Assert.Throws<ArgumentOutOfRangeException>("tapeThickness",
            () => MeasuredLength.DiameterByTapeAround(Length.FromMillimeters(10), Length.Zero, Length.FromMillimeters(4)));
        Assert.Throws<ArgumentOutOfRangeException>("readingError",
            () => MeasuredLength.DiameterByTapeAround(Length.FromMillimeters(10), Length.FromMillimeters(11), Length.Zero));
    }

    [Property(MaxTest = 200)]
    public Property An_oval_is_found_with_its_axis() => Prop.ForAll(
        Sold.Part.Select(part => Sold.Between(0.1, 8, part)).ToArbitrary(), Gen.Choose(-89, 89).ToArbitrary(),
        Gen.Choose(3, 12).ToArbitrary(), (amplitude, axis, count) =>
        {
            OutOfRound oval = OutOfRound.Of([.. Enumerable.Range(0, count).Select(i => 180d * i / count).Select(at => new DiameterReading(
                Angle.FromDegrees(at), Length.FromMillimeters(500 + amplitude * Math.Cos(2 * (at - axis) * Math.PI / 180))))]);
            Near.Absolute(amplitude, oval.OvalAmplitude!.Value.Millimeters, 1e-9, "amplitude");
            Near.Absolute(axis, oval.LongAxis!.Value.Degrees, 1e-7, "axis");
            Near.Absolute(500, oval.Mean.Millimeters, 1e-9, "mean");
            Assert.InRange(oval.Difference.Millimeters, 0, 2 * amplitude + 1e-9);
            Near.Relative((oval.Largest - oval.Smallest) / oval.Mean * 100, oval.Ovality.Percent, 1e-9, "ovality");
        });

    [Fact]
    public void Two_directions_show_no_oval()
    {
        OutOfRound two =
            OutOfRound.Of(
                [new(Angle.Zero, Length.FromMillimeters(503)), new(Angle.FromDegrees(90), Length.FromMillimeters(498)),
                    new(Angle.FromDegrees(180), Length.FromMillimeters(503))]);
        Assert.Null(two.OvalAmplitude);
        Assert.Null(two.LongAxis);
        Near.Relative(5, two.Difference.Millimeters, 1e-12);
        Assert.Throws<ArgumentException>("readings", () => OutOfRound.Of([new(Angle.Zero, Length.FromMillimeters(503))]));
    }

    /// <summary>
    /// A dished ring tilted on the plate: the plane takes the tilt, the edges show the dish, and a saddle of ±1 mm stays as 2 mm of
    /// flatness.
    /// </summary>
    [Fact]
    public void A_tilted_dished_saddle_is_taken_apart()
    {
        double lean = 2 * Math.PI / 180;
        RingFlatness ring = RingFlatness.Of(
            [.. Enumerable.Range(0, 8).Select(i => Math.PI * i / 4).Select(at => (At: at, Height: 5 + 3 * Math.Cos(at - 0.4) + Math.Cos(2 * at))).Select(reading => new HeightReading(
                Angle.FromRadians(reading.At), Length.FromMillimeters(reading.Height),
                    Length.FromMillimeters(reading.Height - 30 * Math.Sin(lean))))],
            Length.FromMillimeters(30));
        Near.Absolute(2, ring.Flatness.Millimeters, 1e-9);
        Near.Absolute(6, ring.Tilt.Millimeters, 1e-9);
        Near.Absolute(2, ring.Dish!.Value.Degrees, 1e-9);
        Near.Absolute(0, ring.LeanDifference!.Value.Degrees, 1e-9);
        Assert.True(ring.HeightDifference.Millimeters > 6);
    }

    [Fact]
    public void Readings_that_show_no_plane_are_refused_by_name()
    {
        HeightReading[] heap = [.. Enumerable.Range(0, 5).Select(i => new HeightReading(Angle.FromDegrees(i), Length.FromMillimeters(1)))];
        Assert.Throws<ArgumentException>("readings", () => RingFlatness.Of(heap, Length.FromMillimeters(30)));
        Assert.Throws<ArgumentException>("readings", () => RingFlatness.Of([.. heap.Take(3)], Length.FromMillimeters(30)));
        HeightReading[] steep =
            [.. Enumerable.Range(0, 4).Select(i => new HeightReading(Angle.FromDegrees(90 * i), Length.FromMillimeters(31), Length.Zero))];
        Assert.Throws<ArgumentOutOfRangeException>("edgeDistance", () => RingFlatness.Of(steep, Length.FromMillimeters(30)));
        Assert.Null(
            RingFlatness.Of([.. steep.Select(reading => new HeightReading(reading.At, reading.Inner))], Length.FromMillimeters(30)).Dish);
    }

    [Theory]
    [InlineData(501, 0.5, true)]
    [InlineData(501.8, 0.5, null)]
    [InlineData(502.4, 0.5, null)]
    [InlineData(502.6, 0.5, false)]
    [InlineData(497.4, 0.5, false)]
    [InlineData(498, 0, true)]
    [InlineData(497.99, 0, false)]
    [InlineData(500, 2.1, null)]
    public void The_error_counts_against_whoever_claims(double measured, double error, bool? expected) => Assert.Equal(
        expected,
            RingVerdict.Of(new(Length.FromMillimeters(measured), Length.FromMillimeters(error)), Length.FromMillimeters(500),
                Length.FromMillimeters(2)).IsWithin);

    /// <summary>
    /// At the limit itself the chance is one half; an error of two standard deviations inside it, the normal distribution gives 97.72 %
    /// (two-sided rest negligible).
    /// </summary>
    [Fact]
    public void Chances_are_those_of_the_normal_distribution()
    {
        Near.Absolute(50, Chance(502, 0.2, 2), 1e-9);
        Near.Absolute(97.725, Chance(501.8, 0.2, 2), 0.001);
        Near.Absolute(95.45, Chance(500, 2, 2), 0.001);
        Near.Absolute(100, Chance(501.9, 0, 2), 1e-12);
    }

    /// <summary>More tolerance, more chance, and a verdict that never gets worse.</summary>
    [Property(MaxTest = 500)]
    public Property More_tolerance_gives_more_chance() => Prop.ForAll(
        Gen.Choose(-400, 400).Select(hundredths => hundredths / 100d).ToArbitrary(),
        Sold.Part.Select(part => Sold.Between(0.01, 3, part)).ToArbitrary(),
        Sold.Part.Select(part => Sold.Between(0.1, 4, part)).ToArbitrary(), (off, error, tolerance) =>
        {
            Assert.True(Chance(500 + off, error, 1.1 * tolerance) >= Chance(500 + off, error, tolerance));
            bool? tight = Fit(tolerance);
            bool? wide = Fit(1.1 * tolerance);
            Assert.True(
                tight switch
                {
                    true => wide == true,
                    null => wide is true or null,
                    _ => true
                });
            Assert.Equal(tight is null, error > Verdict(tolerance).ErrorThatWouldTell.Millimeters * (1 + 1e-9));
            bool? Fit(double accepted) => Verdict(accepted).IsWithin;
            RingVerdict Verdict(double accepted) =>
                RingVerdict.Of(new(Length.FromMillimeters(500 + off), Length.FromMillimeters(error)), Length.FromMillimeters(500),
                    Length.FromMillimeters(accepted));
        });

    private static double Chance(double measured, double error, double tolerance) =>
        RingVerdict.Of(new(Length.FromMillimeters(measured), Length.FromMillimeters(error)), Length.FromMillimeters(500),
            Length.FromMillimeters(tolerance)).ChanceWithin.Percent;
}
