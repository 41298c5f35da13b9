using BendMath.Forming.Bumps;
using BendMath.Forming.Effort;
using BendMath.Forming.ThreePoint;
using BendMath.Learning;
using BendMath.Materials.Standard;

namespace BendMath.Tests.Documentation;

/// <summary>The code of the page on dies and springback.</summary>
public sealed class DieRecipes : RecipeSnippets
{
    [Fact]
    public void Smaller_former()
    {
        #region q11
        var wanted = BendRadius.InsideDiameter(Mm(600));
        double Former(OrientedSection bar) =>
            2 * BendAnalysis.Of(bar, Steel).LoadedFor(wanted, Release.Free).InsideRadius.Millimeters;

        Console.WriteLine(
            $"flat 30 x 6: {Former(new FlatBar(Mm(30), Mm(6)).EasyWay):F0} mm");
        //   flat 30 x 6: 493 mm
        Console.WriteLine($"square 12: {Former(new SquareBar(Mm(12)).Section):F0} mm");
        //   square 12: 538 mm
        Console.WriteLine($"tube 25 x 2: {Former(new RoundTube(Mm(25), Mm(2)).Section):F0} mm");
        //   tube 25 x 2: 568 mm

        // A textbook example: sheet of 0.0359 in, 40,000 psi, bent to 0.5 in.
        var metal = Yielding("steel sheet", modulus: Psi(29e6), yieldStress: Psi(40_000));
        var sheet = BendAnalysis.Of(new FlatBar(Inches(1), Inches(0.0359)).EasyWay, metal);
        var released = sheet.LoadedTo(BendRadius.Centroid(Inches(0.5))).Release(Release.Free);
        Console.WriteLine($"springs to {released.Ring.CentroidRadius.Inches:F3} in");
        //   springs to 0.531 in
        #endregion
        Promised("q11");
    }

    [Fact]
    public void Which_die()
    {
        #region q12
        Die Stamped(int radius) => new($"{radius}", Mm(radius), ReferenceFace.InsideOfBar);
        var rack = new DieRack([Stamped(200), Stamped(250), Stamped(300), Stamped(360)]);
        var bar = BendAnalysis.Of(new SquareBar(Mm(12)).Section, Steel);
        var model = new WrapBending();
        var choice = DieChoice.For(rack, bar, BendRadius.InsideDiameter(Mm(600)), model, Release.Free);
        var nearest = choice.Best!;
        Console.WriteLine(
            $"die {nearest.Die.Name} leaves {nearest.Ring!.InsideDiameter.Millimeters:F0} mm");
        //   die 250 leaves 554 mm
        Console.WriteLine(
            $"the die to make: {choice.IdealStampedRadius!.Value.Millimeters:F0} mm");
        //   the die to make: 269 mm

        // The dies for a family of hoops.
        foreach (double diameter in new[] { 400, 500, 600, 800 })
        {
            var wanted = BendRadius.InsideDiameter(Mm(diameter));
            var stamp = model.StampFor(bar, wanted, Release.Free, ReferenceFace.InsideOfBar);
            Console.WriteLine($"{diameter} mm hoop: {stamp!.Value.Millimeters:F1} mm");
        }

        //   400 mm hoop: 185.0 mm
        //   500 mm hoop: 227.7 mm
        //   600 mm hoop: 269.0 mm
        //   800 mm hoop: 348.0 mm
        #endregion
        Promised("q12");
    }

    [Fact]
    public void Past_ninety()
    {
        #region q13
        double Past(BendAnalysis bar, BendRadius loaded) =>
            (90 / bar.LoadedTo(loaded).Release(Release.Free).CurvatureKept) - 90;

        var tube = BendAnalysis.Of(new RoundTube(Mm(25), Mm(2)).Section, Steel);
        Console.WriteLine(
            $"radius 75 mm: {Past(tube, BendRadius.Centroid(Mm(75))):F1} degrees past 90");
        //   radius 75 mm: 1.7 degrees past 90
        Console.WriteLine(
            $"radius 150 mm: {Past(tube, BendRadius.Centroid(Mm(150))):F1} degrees past 90");
        //   radius 150 mm: 2.8 degrees past 90

        // A textbook example: sheet of 0.0359 in, 40,000 psi, bent to 0.5 in inside.
        var metal = Yielding("steel sheet", modulus: Psi(29e6), yieldStress: Psi(40_000));
        var sheet = BendAnalysis.Of(new FlatBar(Inches(1), Inches(0.0359)).EasyWay, metal);
        Console.WriteLine(
            $"sheet: bend to {90 + Past(sheet, BendRadius.Inside(Inches(0.5))):F1} degrees");
        //   sheet: bend to 95.7 degrees
        #endregion
        Promised("q13");
    }

    [Fact]
    public void Grades_side_by_side()
    {
        #region q14
        // Chrome-moly is in no row: 435 MPa is typical of normalized 4130, from memory.
        var chromeMoly = Yielding("4130 normalized", modulus: MPa(205_000), yieldStress: MPa(435));
        var tube = new RoundTube(Mm(25), Mm(2)).Section;
        BarMaterial[] metals =
        [
            Grades.Find("S235JR", "t <= 16 mm").ToMaterial(),
            Grades.Find("304", "annealed").ToMaterial(),
            Grades.Find("304", "cold finished bar, condition A").ToMaterial(),
            Grades.Find("6061-T6", "t <= 0.249 in").ToMaterial(),
            chromeMoly,
        ];
        foreach (var metal in metals)
        {
            var loaded = BendAnalysis.Of(tube, metal).LoadedTo(BendRadius.Centroid(Mm(150)));
            double kept = loaded.Release(Release.Free).CurvatureKept;
            Console.WriteLine($"{metal.Name}: {(90 / kept) - 90:F1} degrees past 90");
        }

        //   S235JR, hot rolled, longitudinal, t <= 16 mm: 1.7 degrees past 90
        //   304, annealed: 1.6 degrees past 90
        //   304, cold finished bar, condition A, <= 1/2 in: 2.5 degrees past 90
        //   6061-T6, extruded, t <= 0.249 in: 5.5 degrees past 90
        //   4130 normalized: 3.3 degrees past 90
        #endregion
        Promised("q14");
    }

    [Fact]
    public void Not_the_radius_of_the_tool()
    {
        #region q15
        var bar = BendAnalysis.Of(new FlatBar(Mm(20), Mm(8)).EasyWay, Steel);
        var die = new Die("250", Mm(250), ReferenceFace.InsideOfBar);

        var wrapped = new WrapBending().Form(bar, die).RingWhen(Release.Free);
        Console.WriteLine($"wrapped: {wrapped.InsideRadius.Millimeters:F0} mm");
        //   wrapped: 290 mm

        // Pinched between three contacts until the circle through them has that radius.
        var bender = new ThreePointSetup(halfSpan: Mm(60), noseRadius: Mm(6));
        var pinching = new IncrementalThreePointBending(bender);
        var pinched = pinching.Form(bar, die);
        Console.WriteLine(
            $"pinched: {pinched.RingWhen(Release.Free).InsideRadius.Millimeters:F0} mm");
        //   pinched: 150 mm
        Console.WriteLine(
            $"under the nose it was {pinched.Loaded.InsideRadius.Millimeters:F0} mm");
        //   under the nose it was 138 mm
        #endregion
        Promised("q15");
    }

    [Fact]
    public void Flat_spots()
    {
        #region q16
        var bar = BendAnalysis.Of(new FlatBar(Mm(20), Mm(8)).EasyWay, Steel);
        var bender = new ThreePointSetup(halfSpan: Mm(60), noseRadius: Mm(6));
        var bumping = new BumpBending(bender, feed: Mm(10));

        var plain = bumping.BendWhole(bar, barLength: Mm(760), stroke: Mm(12.5));
        Console.WriteLine($"nearly straight first {plain.LeadingTail.Millimeters:F0} mm");
        //   nearly straight first 47 mm
        Console.WriteLine($"nearly straight last {plain.TrailingTail.Millimeters:F0} mm");
        //   nearly straight last 54 mm
        Console.WriteLine(
            $"the first bite is {plain.FirstBiteKink:F1} times as sharp as the ring");
        //   the first bite is 2.1 times as sharp as the ring

        var bites = bumping.PassWithLighterFirstBites(bar, barLength: Mm(760), stroke: Mm(12.5));
        var gentle = bumping.Bend(bar, Mm(760), bites);
        Console.WriteLine($"with lighter first bites: {gentle.FirstBiteKink:F1} times");
        //   with lighter first bites: 1.0 times
        Console.WriteLine(EndAllowance.For(gentle, trim: Mm(20)));
        //   53.87 mm at the start, 53.87 mm at the end, 20 mm trim
        #endregion
        Promised("q16");
    }

    [Fact]
    public void Creep_up()
    {
        #region q17
        var bar = BendAnalysis.Of(new FlatBar(Mm(20), Mm(8)).EasyWay, Steel);
        var bender = new ThreePointSetup(halfSpan: Mm(60), noseRadius: Mm(6));
        var bumping = new BumpBending(bender, feed: Mm(10));
        IReadOnlyList<Bump> Pass(double stroke) =>
            Bump.Pass(first: Mm(60), last: Mm(700), feed: Mm(10), Mm(stroke));
        string Radius(BumpedBar bent) => $"{1e3 / bent.MeanCurvature.InverseMeters:F0} mm";

        var straight = bumping.Bend(bar, Mm(760), Pass(12));
        Console.WriteLine($"a straight bar, 12 mm stroke: {Radius(straight)}");
        //   a straight bar, 12 mm stroke: 101 mm
        var once = bumping.Bend(bar, Mm(760), Pass(10));
        Console.WriteLine($"a straight bar, 10 mm stroke: {Radius(once)}");
        //   a straight bar, 10 mm stroke: 120 mm
        Console.WriteLine($"10 mm again: {Radius(once.Again(Pass(10)))}"); // 10 mm again: 120 mm
        Console.WriteLine($"then 12 mm: {Radius(once.Again(Pass(12)))}"); // then 12 mm: 119 mm
        foreach (double stroke in new[] { 16, 18, 20 })
        {
            Console.WriteLine($"then {stroke} mm: {Radius(once.Again(Pass(stroke)))}");
        }

        //   then 16 mm: 116 mm
        //   then 18 mm: 106 mm
        //   then 20 mm: 93 mm
        #endregion
        Promised("q17");
    }

    [Fact]
    public void By_hand()
    {
        #region q18
        var die = new Die("290", Mm(290), ReferenceFace.InsideOfBar);
        foreach (double side in new[] { 10, 12, 16, 20 })
        {
            var bar = BendAnalysis.Of(new SquareBar(Mm(side)).Section, Steel);
            var formed = new WrapBending().Form(bar, die);
            var effort = BendEffort.Of(formed, new HandDrive(leverLength: Mm(900)));
            double moment = effort.BendingMoment.NewtonMeters;
            double hand = effort.HandForce!.Value.Newtons;
            Console.WriteLine($"square {side}: {moment:F0} N*m, {hand:F0} N at the hand");
        }

        //   square 10: 76 N*m, 85 N at the hand
        //   square 12: 133 N*m, 148 N at the hand
        //   square 16: 322 N*m, 358 N at the hand
        //   square 20: 642 N*m, 714 N at the hand

        // A textbook problem: the moment when all of a 36 mm round bar yields, at 240 MPa.
        var metal = Yielding("steel", modulus: MPa(200_000), yieldStress: MPa(240));
        var round = BendAnalysis.Of(new RoundBar(Mm(36)).Section, metal);
        Console.WriteLine($"{round.PlasticMoment.KilonewtonMeters:F3} kN*m"); // 1.866 kN*m
        #endregion
        Promised("q18");
    }
}
