using BendMath.Forming.Effort;
using BendMath.Forming.Pairs;
using BendMath.Forming.ThreePoint;
using UnitsNet;

namespace BendMath.Tests.Documentation;

/// <summary>The code of the page on dies, compiled and run. What a page prints behind <c>//</c> is what the code gives.</summary>
public sealed class DieSnippets
{
    private static readonly BarMaterial Steel = new(
        "steel", new PerfectlyPlastic(Pressure.FromGigapascals(210), Pressure.FromMegapascals(290)), Density.FromKilogramsPerCubicMeter(7850));

    private static readonly BendAnalysis Bending = BendAnalysis.Of(new FlatBar(Length.FromMillimeters(25), Length.FromMillimeters(10)).EasyWay, Steel);

    [Fact]
    public void Short_die()
    {
        BendAnalysis bending = Bending;

        #region short-die
        var die = new Die(
            "R240", stampedRadius: Length.FromMillimeters(240), face: ReferenceFace.InsideOfBar,
            faceLength: Length.FromMillimeters(50), noseRadius: Length.FromMillimeters(20));
        var reach = die.LongestReach(new WrapBending().Form(bending, die).Loaded);
        Console.WriteLine($"push within {reach!.Value.Millimeters:F0} mm of the face"); // push within 150 mm of the face
        #endregion

        Assert.Equal(Promised("short-die"), [FormattableString.Invariant($"push within {reach.Value.Millimeters:F0} mm of the face")]);
    }

    [Fact]
    public void Closed_pair()
    {
        BendAnalysis bending = Bending;

        #region closed-pair
        var mate = MatingDie.OfFace(radius: Length.FromMillimeters(300), halfSpan: Length.FromMillimeters(90));
        var die = new Die("R240", Length.FromMillimeters(240), ReferenceFace.InsideOfBar, mate: mate);
        var pair = ClosedPair.Of(die, bending.Section);
        Console.WriteLine(pair); // stops at the middle, 2.75 mm before its ends reach a bar on the die; circle through the contacts 290 mm inside
        Console.WriteLine($"a mate of {pair.MatchingRadius.Millimeters:F0} mm would match"); // a mate of 250 mm would match

        var ring = new PairBending().Form(bending, die).RingWhen(Release.Free);
        Console.WriteLine($"{ring.InsideDiameter.Millimeters:F0} mm inside diameter"); // 553 mm inside diameter
        #endregion

        Assert.Equal(Promised("closed-pair"), [
            pair.ToString(),
            FormattableString.Invariant($"a mate of {pair.MatchingRadius.Millimeters:F0} mm would match"),
            FormattableString.Invariant($"{ring.InsideDiameter.Millimeters:F0} mm inside diameter"),
        ]);
    }

    [Fact]
    public void Bender_that_gives()
    {
        BendAnalysis bending = Bending;

        #region bender-that-gives
        // Measured on an invented bender: nose and supports part by 1.2 mm more when the force rises by 8 kN.
        var stiffness = Force.FromKilonewtons(8) / Length.FromMillimeters(1.2);
        var bender = new ThreePointSetup(halfSpan: Length.FromMillimeters(100), noseRadius: Length.FromMillimeters(20), stiffness);
        var formed = new IncrementalThreePointBending(bender).FormAtStroke(bending, stroke: Length.FromMillimeters(12));
        Console.WriteLine($"{formed.Contact!.Stroke.Millimeters:F2} mm close, the bender gives {formed.Contact.Give.Millimeters:F2} mm"); // 11.46 mm close, the bender gives 0.54 mm
        #endregion

        Assert.Equal(
            Promised("bender-that-gives"),
            [FormattableString.Invariant($"{formed.Contact.Stroke.Millimeters:F2} mm close, the bender gives {formed.Contact.Give.Millimeters:F2} mm")]);
    }

    [Fact]
    public void Softer_release()
    {
        BendAnalysis bending = Bending;

        #region softer-release
        var softer = BendAnalysis.Of(bending.Section, bending.Material.WithSofterUnloading(Ratio.FromPercent(85)));
        var lying = BendRadius.Inside(Length.FromMillimeters(240));
        var stiffRing = bending.LoadedTo(lying).Release(Release.Free).Ring;
        var softRing = softer.LoadedTo(lying).Release(Release.Free).Ring;
        Console.WriteLine($"{stiffRing.InsideDiameter.Millimeters:F1} mm or {softRing.InsideDiameter.Millimeters:F1} mm"); // 535.3 mm or 546.3 mm
        #endregion

        Assert.Equal(
            Promised("softer-release"),
            [FormattableString.Invariant($"{stiffRing.InsideDiameter.Millimeters:F1} mm or {softRing.InsideDiameter.Millimeters:F1} mm")]);
    }

    [Fact]
    public void Pull()
    {
        BendAnalysis bending = Bending;

        #region pull
        var formed = new WrapBending().Form(bending, new Die("R240", Length.FromMillimeters(240), ReferenceFace.InsideOfBar));
        var drive = new HandDrive(leverLength: Length.FromMeters(0.9), pullLimit: Force.FromNewtons(250));
        var effort = BendEffort.Of(formed, drive);
        Console.WriteLine($"{effort.HandForce!.Value.Newtons:F0} N, within the limit: {effort.IsWithinPullLimit}"); // 201 N, within the limit: True
        Console.WriteLine($"{effort.WorkFor(Length.FromMeters(1.5)).Joules:F0} J to bend 1.5 m"); // 1036 J to bend 1.5 m
        #endregion

        Assert.Equal(Promised("pull"), [
            FormattableString.Invariant($"{effort.HandForce.Value.Newtons:F0} N, within the limit: {effort.IsWithinPullLimit}"),
            FormattableString.Invariant($"{effort.WorkFor(Length.FromMeters(1.5)).Joules:F0} J to bend 1.5 m"),
        ]);
    }

    /// <summary>What stands behind <c>WriteLine(…); //</c> in a region.</summary>
    private static IEnumerable<string> Promised(string region) =>
        File.ReadAllLines(Path.Combine(Repository.Root, "tests", "BendMath.Tests", "Documentation", "DieSnippets.cs"))
            .Select(line => line.Trim())
            .SkipWhile(line => line != "#region " + region)
            .TakeWhile(line => line != "#endregion")
            .Where(line => line.Contains("WriteLine", StringComparison.Ordinal))
            .Select(line => line[(line.IndexOf("; // ", StringComparison.Ordinal) + 5)..]);
}
