using System.Reflection;
using BendMath.Bending.Guides;
using BendMath.Bending.NeutralAxes;
using BendMath.Bending.Unloading;
using BendMath.Csv;
using BendMath.Cutting;
using BendMath.Distortion;
using BendMath.Evidence;
using BendMath.Forming.Bumps;
using BendMath.Forming.Effort;
using BendMath.Forming.Pairs;
using BendMath.Forming.ThreePoint;
using BendMath.Forming.Variation;
using BendMath.Json;
using BendMath.Layout.BentBars;
using BendMath.Learning;
using BendMath.Lengths;
using BendMath.Materials.Standard;
using BendMath.Materials.Unloading;
using BendMath.Measurement;
using BendMath.Planning.Worksheets;
using BendMath.Plotting;
using BendMath.Sections.Outlines;
using BendMath.Stock.Standard;
using BendMath.Stock.Tolerances;
using UnitsNet;

namespace BendMath.Tests.Conventions;

/// <summary>
/// Valid values for every public type and parameter, from which the convention tests build calls. A new public type without an example
/// fails <c>Every_public_type_has_an_example</c>; a parameter whose type alone does not say what is valid gets an entry in
/// <see cref="Named"/>.
/// </summary>
internal static class ExampleValues
{
    private static readonly EqualAngle Angle30 =
        new(Length.FromMillimeters(30), Length.FromMillimeters(3), AngleFillets.Of(Length.FromMillimeters(5), Length.FromMillimeters(2.5)));

    private static readonly PerfectlyPlastic Plastic = new(Pressure.FromGigapascals(205), Pressure.FromMegapascals(290));

    private static readonly BarMaterial Steel = new("mild steel", Plastic, Density.FromKilogramsPerCubicMeter(7850), Ratio.FromPercent(26));

    private static readonly LoadedBend Loaded =
        BendAnalysis.Of(Angle30.FlangeOut, Steel).LoadedTo(BendRadius.Inside(Length.FromMillimeters(240)));

    private static readonly LoadedBend Tight =
        BendAnalysis.Of(Angle30.FlangeIn, Steel).LoadedTo(BendRadius.Inside(Length.FromMillimeters(60)));

    private static readonly FlatBar Flat = new(Length.FromMillimeters(25), Length.FromMillimeters(5));

    private static readonly LoadedBend Elastic = BendAnalysis.Of(Flat.EasyWay, Steel).LoadedTo(BendRadius.Inside(Length.FromMeters(50)));

    private static readonly LoadedBend OnEdge =
        BendAnalysis.Of(Flat.HardWay, Steel).LoadedTo(BendRadius.Inside(Length.FromMillimeters(240)));

    private static readonly LegShape Turning = DistortionReport.Of(Loaded).ShapeOfLegs()!;

    private static readonly Die Die250 = new("250", Length.FromMillimeters(250), ReferenceFace.InsideOfBar);

    private static readonly MatingDie Mate =
        MatingDie.OfFace(Length.FromMillimeters(290), Length.FromMillimeters(120), Length.FromMillimeters(2));

    private static readonly Die Paired =
        new("250 with a mate", Length.FromMillimeters(250), ReferenceFace.InsideOfBar, Length.FromMillimeters(150),
            Length.FromMillimeters(20), Mate);

    private static readonly HandDrive Drive = new(Length.FromMeters(0.9), 12, Force.FromNewtons(200));

    private static readonly DieRack Rack = new([Die250, new("300", Length.FromMillimeters(300), ReferenceFace.OutsideOfBar)]);

    private static readonly ThreePointSetup Setup = new(Length.FromMillimeters(100), Length.FromMillimeters(20));

    private static readonly IncrementalThreePointBending ThreePoint = new(Setup);

    private static readonly BumpBending Bumping = new(Setup, Length.FromMillimeters(40));

    private static readonly BumpedBar Bumped = Bumping.BendWhole(Loaded.Analysis, Length.FromMillimeters(700), Length.FromMillimeters(12));

    private static readonly MeasuredRing Measured =
        new(Die250, Loaded.Analysis, BendRadius.InsideDiameter(Length.FromMillimeters(490)), Release.Free);

    private static readonly RingDiagnosis Correction = RingDiagnosis.Of(Measured, new WrapBending(Setup));

    private static readonly EndAllowance Ends = new(Length.FromMillimeters(100), Length.FromMillimeters(100), Length.FromMillimeters(5));

    private static readonly RingJob Job = JobFor(250, ThreePoint);

    private static readonly PlanCuts PlannedCuts =
        PlanCuts.For([RingPlan.For(Job.With(cutting: Job.Cutting.With(barLength: Length.FromMeters(6))))], Length.Zero);

    private static readonly InputVariation Scattering =
        new(new PressureRange(Pressure.FromMegapascals(270), Pressure.FromMegapascals(310)), curvature: Ratio.FromPercent(1));

    private static readonly RingPlan Plan = RingPlan.For(Job);

    private static readonly RingDiagnosis OnAnotherDie = RingDiagnosis.Of(
        new(new("300", Length.FromMillimeters(300), ReferenceFace.InsideOfBar), Loaded.Analysis,
            BendRadius.InsideDiameter(Length.FromMillimeters(590)), Release.Free), new WrapBending(Setup));

    private static readonly BarPart Curve =
        BarPart.BendLeft(Plan.Ring!.Free, Angle30.FlangeOut, ArcExtent.Of(Angle.FromDegrees(90)));

    private static readonly BentBar Curved =
        BentBar.For([BarPart.Straight(Length.FromMillimeters(200)), Curve], Ends, Length.FromMillimeters(2));

    private static readonly CutList Cuts = CutList.For(
        [new("planter rim", Length.FromMillimeters(1650), 5), new("hoop", Length.FromMillimeters(900), 4)], [new(Length.FromMeters(6), 2)],
            Length.FromMillimeters(2), Length.FromMillimeters(300));

    private static readonly OutlinePoint[] Spots =
        [Sections.Drawn.At(250, 1), Sections.Drawn.At(1, 250), Sections.Drawn.At(-251, 2), Sections.Drawn.At(0, -249),
            Sections.Drawn.At(177, 177)];

    private static readonly HeightReading[] Heights =
        [.. new[] { 1, 0, 2, 0.5 }.Select((height, i) => new HeightReading(Angle.FromDegrees(90 * i), Length.FromMillimeters(height), Length.FromMillimeters(height + 0.5)))];

    private static readonly RingFit Fitted = RingFit.Of(
        [Measured, OnAnotherDie.Ring, new(Die250, Loaded.Analysis, BendRadius.InsideDiameter(Length.FromMillimeters(493)), Release.Free),
            new(Die250, Loaded.Analysis, BendRadius.InsideDiameter(Length.FromMillimeters(488)), Release.Free)],
        Loaded.Analysis,
        new WrapBending());

    private static readonly MarkedLength Marked = new(Length.FromMillimeters(1600), Angle.FromDegrees(360));

    private static readonly MeasuredRing Remembered =
        new(Die250, Loaded.Analysis, RingReading.TapeAroundInside(Length.FromMillimeters(1540)), Release.Free, Marked, "14 March");

    private static readonly DieChoice Advice =
        DieChoice.For(Rack, Loaded.Analysis, BendRadius.InsideDiameter(Length.FromMillimeters(500)),
            Fitted.Model, Release.Free, Length.FromMillimeters(5));

    private static readonly TrialRing Second = TrialRing.ToTellApart(Correction, Rack, Length.FromMillimeters(0.5));

    private static readonly TrialRing Next =
        TrialRing.ToNarrow(Fitted, Rack, BendRadius.InsideDiameter(Length.FromMillimeters(500)), Release.Free);

    private static readonly ArgumentException Refused = Assert.Throws<ArgumentException>(() => new DieRack([]));

    private static readonly MeasuredRingCsv Rows = MeasuredRingCsv.Read("die\nA");

    private static readonly RingJobFile Reading = RingJobFile.Read(Json.JobTexts.Sound);
    private static readonly (Ratio Strain, Pressure Stress)[] CurvePoints =
    [
        (Ratio.FromPercent(0.141), Pressure.FromMegapascals(290)),
        (Ratio.FromPercent(2), Pressure.FromMegapascals(330)),
        (Ratio.FromPercent(10), Pressure.FromMegapascals(420)),
    ];

    private static readonly HotRolledSteel Hot =
        new(Pressure.FromGigapascals(205), Pressure.FromMegapascals(290), Pressure.FromMegapascals(440));

    private static readonly KinematicHardening Mild = new(
        Pressure.FromGigapascals(205), Pressure.FromMegapascals(150), Pressure.FromMegapascals(150), 300, Pressure.FromMegapascals(1000),
            Pressure.FromMegapascals(20), 10);

    private static readonly ReleasedBend MemoryLetGo =
        BendAnalysis.Of(Flat.EasyWay, new BarMaterial("mild steel", Mild, Density.FromKilogramsPerCubicMeter(7850)))
        .LoadedTo(BendRadius.Inside(Length.FromMillimeters(240))).Release(Release.Free, UnloadingRule.WithMemory);

    private static readonly GuideEstimate Leaning = GuideEstimate.FromDish(
        Loaded.Analysis, BendRadius.Inside(Length.FromMillimeters(240)), Angle.FromDegrees(10), Angle.FromDegrees(0.3));

    private static readonly OutlineLoop Slot = Sections.Drawn.Slot();

    private static readonly CustomBar Drawn =
        new("slot", new Outline([Sections.Drawn.Reversed(Slot), Sections.Drawn.Circle(20, 5, 2)]),
            AreaMomentOfInertia.FromMillimetersToTheFourth(9000));

    /// <summary>Valid instances by type; the first one also serves as an argument.</summary>
    private static readonly object[] Instances =
    [
        Sources.Gardiner1957,
        Sources.CommonPractice,
        Tight.Advisories[0],
        new PressureRange(Pressure.FromMegapascals(235), Pressure.FromMegapascals(360)),
        new LengthRange(Length.FromMillimeters(29), Length.FromMillimeters(31)),
        Plastic,
        new LinearHardening(Pressure.FromGigapascals(205), Pressure.FromMegapascals(290), Pressure.FromMegapascals(900)),
        Steel,
        AngleFillets.Of(Length.FromMillimeters(5), Length.FromMillimeters(2.5)),
        Angle30,
        Angle30.FlangeOut,
        Angle30.FlangeOut.Orientation,
        Orientation.TurnedBy(Angle.FromDegrees(30)),
        Angle30.FlangeOut.Properties,
        Angle30.FlangeOut.Outstands![0],
        Flat,
        new SquareBar(Length.FromMillimeters(12)),
        new RoundBar(Length.FromMillimeters(10)),
        new RoundTube(Length.FromMillimeters(25), Length.FromMillimeters(2)),
        Sections.Drawn.At(3, 4),
        Slot.Edges[1],
        Slot.Edges[0],
        Slot,
        Drawn.Outline,
        Drawn,
        new UnequalAngle(Length.FromMillimeters(50), Length.FromMillimeters(30), Length.FromMillimeters(5), AngleFillets.Sharp),
        Angle30.TorsionConstant!,
        Angle30.TorsionConstant!.Formula,
        Angle30.FlangeOut.ShearCenter!,
        MillTolerance.En10056(Angle30),
        new HexagonBar(Length.FromMillimeters(17)),
        FlangeFillets.Of(Length.FromMillimeters(4), Length.FromMillimeters(2), Length.FromMillimeters(1)),
        new Channel(Length.FromMillimeters(50), Length.FromMillimeters(25), Length.FromMillimeters(5), Length.FromMillimeters(6),
            FlangeFillets.Sharp),
        new Tee(Length.FromMillimeters(40), Length.FromMillimeters(40), Length.FromMillimeters(5), Length.FromMillimeters(5),
            FlangeFillets.Sharp),
        CornerRadii.Of(Length.FromMillimeters(4), Length.FromMillimeters(2)),
        new SquareTube(Length.FromMillimeters(25), Length.FromMillimeters(2), CornerRadii.Sharp),
        new RectangularTube(Length.FromMillimeters(40), Length.FromMillimeters(25), Length.FromMillimeters(2), CornerRadii.Sharp),
        BendRadius.InsideDiameter(Length.FromMillimeters(480)),
        Loaded.Analysis,
        Loaded,
        Tight,
        Elastic,
        Loaded.Release(Release.Free),
        Elastic.Release(Release.HeldFlat),
        Loaded.Release(Release.Free).Ring,
        new PowerHardening(Pressure.FromGigapascals(205), Pressure.FromMegapascals(600), 0.2),
        new RambergOsgood(Pressure.FromGigapascals(70), Pressure.FromMegapascals(240), 12),
        Hot,
        Mild,
        OutOfPlaneGuide.None,
        OutOfPlaneGuide.Of(50),
        BarGuide.AgainstTurning(Force.FromNewtons(500)),
        RingSensitivity.Of(
            Loaded.Analysis.LoadedTo(BendRadius.Inside(Length.FromMillimeters(240)), OutOfPlaneGuide.None).Release(Release.Free),
                OutOfPlaneGuide.None),
        Leaning,
        Leaning.Ranges[0],
        new ChordModulus(Ratio.FromPercent(80), 50),
        UnloadingRule.WithChord(new ChordModulus(Ratio.FromPercent(80), 50)),
        UnloadingRule.WithMemoryAndChord(new ChordModulus(Ratio.FromPercent(80), 50)),
        UnloadingRule.Elastic,
        MemoryLetGo,
        MemoryLetGo.BendAgainTo(BendRadius.Inside(Length.FromMillimeters(150))),
        LengthStyle.Millimeters(1, LengthRounding.Up),
        ReferenceFace.OutsideOfBar,
        ReferenceFace.OffsetBy(Length.FromMillimeters(3)),
        Die250,
        Paired,
        Mate,
        ClosedPair.Of(Paired, Angle30.FlangeOut),
        new PairBending(),
        new PairBending().Form(Loaded.Analysis, Paired),
        Drive,
        BendEffort.Of(new WrapBending().Form(Loaded.Analysis, Paired), Drive),
        Rack,
        Setup,
        new WrapBending(),
        ThreePoint,
        ThreePoint.FormAtStroke(Loaded.Analysis, Length.FromMillimeters(12)),
        ThreePoint.FormAtStroke(Loaded.Analysis, Length.FromMillimeters(12)).Contact!,
        new WrapBending().Form(Loaded.Analysis, Die250),
        Bumping,
        Bumping.FormAtStroke(Loaded.Analysis, Length.FromMillimeters(12)),
        new Bump(Length.FromMillimeters(200), Length.FromMillimeters(12)),
        Bumped,
        Bumped.Outcomes[0],
        Bumped.Trim(),
        Measured,
        Correction,
        Correction.Hypotheses[0],
        OnAnotherDie,
        Hypothesis.AgreementOf([Correction, OnAnotherDie])[0],
        Correction.Find(HypothesisKind.CurvatureRatio)!.Model!,
        Plan.Choice,
        Plan.Ring!.Effort,
        ArcExtent.FullRing,
        Ends,
        Plan.Ring.Layout,
        Plan.Ring.Layout.PiecesFrom(Length.FromMeters(6)),
        BarPart.Straight(Length.FromMillimeters(200)),
        Curve,
        Curved,
        Curved.Bends[0],
        Curved.End,
        RingClosure.For(Plan.Ring.Layout, JointPreparation.CutTogether(Length.FromMillimeters(2))),
        Plan.Ring.Layout.PlaceFromAngle(Angle.FromDegrees(30), Length.FromMillimeters(20), Length.FromMillimeters(1)),
        new CutPiece("planter rim", Length.FromMillimeters(1650), 3),
        new BarKind(Angle30, Steel),
        new BarSupply(Length.FromMeters(6)),
        Cuts,
        Cuts.Groups[0],
        Cuts.Groups[0].Bars[0],
        new MeasuredLength(Length.FromMillimeters(501), Length.FromMillimeters(2)),
        new DiameterReading(Angle.FromDegrees(30), Length.FromMillimeters(501)),
        OutOfRound.Of(
            [new(Angle.Zero, Length.FromMillimeters(503)), new(Angle.FromDegrees(60), Length.FromMillimeters(499)),
                new(Angle.FromDegrees(120), Length.FromMillimeters(500))]),
        OutOfRound.Of([new(Angle.Zero, Length.FromMillimeters(503)), new(Angle.FromDegrees(60), Length.FromMillimeters(499))]),
        FittedCircle.Of(Spots),
        FittedCircle.Of([.. Spots.Take(3)]),
        Heights[1],
        RingFlatness.Of(Heights, Length.FromMillimeters(30)),
        RingVerdict.Of(new(Length.FromMillimeters(501), Length.FromMillimeters(2)), Length.FromMillimeters(500), Length.FromMillimeters(2)),
        RingVerdict.Of(new(Length.FromMillimeters(501), Length.Zero), Length.FromMillimeters(500), Length.FromMillimeters(2)),
        BendCorrection.For(Measured, BendRadius.InsideDiameter(Length.FromMillimeters(500))),
        DistortionSettings.Default,
        Plan.Ring.Distortion,
        Plan.Ring.Distortion.Findings[0],
        Plan.Ring.Distortion.Advice[0],
        DistortionSettings.Default.Support,
        LateralBuckling.Of(OnEdge, DistortionSettings.Default)!,
        Turning,
        Turning.Turns[0],
        DistortionReport.Of(OnEdge).RippleOfFlat()!,
        DistortionReport.Of(
            BendAnalysis.Of(new RoundTube(Length.FromMillimeters(25), Length.FromMillimeters(1.5)).Section, Steel)
                .LoadedTo(BendRadius.Inside(Length.FromMillimeters(600)))).ShapeOfTube()!,
        DistortionReport.Of(
            BendAnalysis.Of(new SquareTube(Length.FromMillimeters(25), Length.FromMillimeters(1.5), CornerRadii.Sharp).Section, Steel)
                .LoadedTo(BendRadius.Inside(Length.FromMillimeters(600)))).ShapeOfWalls()!,
        OnEdge,
        Job,
        Plan,
        Plan.Ring,
        Plan.Ring.Check,
        PlannedCuts,
        ThreePoint.SettingsOn(Loaded.Analysis, Die250)[0],
        Bumping.SettingsOn(Loaded.Analysis, Die250)[0],
        Bumping.SettingsOn(Loaded.Analysis, Die250)[1],
        Job.Wanted,
        Job.Bender,
        Job.Cutting,
        EndAllowance.FromModel(Length.FromMillimeters(9)),
        Job.Cutting.Ends,
        new Calibration([Measured], HypothesisKind.CurvatureRatio),
        JointPreparation.CutTogether(Length.FromMillimeters(2)),
        Scattering,
        new WorkedTerm("R", "loaded radius of the inside face", 240, "mm"),
        PlanWorksheet.Of(Job, Plan.Ring)[1],
        RingBounds.Of(new WrapBending(), Loaded.Analysis, Die250, Release.Free, Angle.FromDegrees(360), Scattering),
        RingBounds.Of(new WrapBending(), Loaded.Analysis, Die250, Release.Free, Angle.FromDegrees(360), Scattering).Contributions[0],
        MonteCarloSample.Of(new WrapBending(), Loaded.Analysis, Die250, Release.Free, Angle.FromDegrees(360), Scattering, count: 20),
        BendSweep.Of(Loaded.Analysis),
        Loaded.Release(Release.Free).Sensitivity,
        CurvedBar.Of(Angle30.FlangeOut, BendRadius.Inside(Length.FromMillimeters(90))),
        NeutralAxisAnswers.For(Loaded.Analysis, BendRadius.Inside(Length.FromMillimeters(240))),
        NeutralAxisAnswers.For(Elastic.Analysis, BendRadius.Inside(Length.FromMeters(50)), 0.2),
        NeutralAxisAnswers.For(Loaded.Analysis, BendRadius.Inside(Length.FromMillimeters(240))).Answers[0],
        SheetBend.ByStandard(Length.FromMillimeters(2), Length.FromMillimeters(3), Angle.FromDegrees(90)),
        SheetBend.ByMetal(Length.FromMillimeters(2), Length.FromMillimeters(3), Angle.FromDegrees(240), SheetMetal.ColdRolledSteel),
        Reading,
        Reading.Jobs[0],
        RingJobFile.Read("{}").Faults[0],
        MeasuredCurve.FromEngineering(Pressure.FromGigapascals(205), CurvePoints),
        MeasuredCurve.FromTrue(Pressure.FromGigapascals(205), CurvePoints).WithYield(Pressure.FromMegapascals(320)),
        new HardeningPair("steel 1020, annealed", Pressure.FromMegapascals(745), 0.2, Sources.KalpakjianSchmid),
        Grades.Find("304", "annealed"),
        Grades.Find("304", "annealed").Physical,
        Grades.Find("304", "annealed").Tensile,
        Grades.Find("C11000", "soft"),
        SizeSystem.Aisc,
        SizeSystem.UsBars,
        StandardSizes.Find("HSS2X2X1/8"),
        StandardSizes.Find("CHS 33.7x3"),
        BendFigure.OfSection(Angle30.FlangeOut, inInches: false),
        BendFigure.OfCurvature(Bumped, inInches: false),
        BendFigure.OfDies(Advice, inInches: false, Fitted),
        RingReading.ChordAgainstInside(Length.FromMillimeters(400), Length.FromMillimeters(90)),
        RingReading.Of(BendRadius.InsideDiameter(Length.FromMillimeters(490))),
        RingReading.TapeAroundOutside(Length.FromMillimeters(1700)),
        Marked,
        Remembered,
        Fitted,
        Fitted.Rings[0],
        Fitted.Model,
        Fitted.Forecast(Die250, Release.Free),
        LengthPreservingFiber.Of([Remembered], Angle30.FlangeOut)!,
        Second,
        Second.Options[0],
        Next,
        Next.Options[0],
        Advice,
        Advice.Predictions[0],
        Advice.Changes[0],
        MeasuredRingFile.Read(MeasuredRingFile.Write([Remembered])),
        Rows,
        Rows.Faults[0],
        ArgumentFault.Of(Refused)!,
    ];

    /// <summary>Valid arguments by parameter: <c>Type.Member.parameter</c>, <c>Type..ctor.parameter</c>, or the name alone.</summary>
    private static readonly Dictionary<string, object> Named = new(StringComparer.Ordinal)
    {
        ["DieRack.get_Item.index"] = 1,
        ["quantity"] = 2,
        ["FormingSetting.FormedAt.value"] = Length.FromMillimeters(12),
        ["FittedCircle.Of.points"] = Spots,
        ["RingFlatness.Of.readings"] = Heights,
        ["OutOfRound.Of.readings"] =
            new DiameterReading[] { new(Angle.Zero, Length.FromMillimeters(503)), new(Angle.FromDegrees(60), Length.FromMillimeters(499)) },
        ["edgeDistance"] = Length.FromMillimeters(30),
        ["confidence"] = Ratio.FromPercent(95),
        ["chordError"] = Length.FromMillimeters(1),
        ["riseError"] = Length.FromMillimeters(0.5),
        ["radiusError"] = Length.FromMillimeters(2),
        ["readingError"] = Length.FromMillimeters(2),
        ["tapeThickness"] = Length.FromMillimeters(0.2),
        ["tolerance"] = Length.FromMillimeters(2),
        ["reading"] = Length.FromMillimeters(1600),
        ["wanted"] = BendRadius.InsideDiameter(Length.FromMillimeters(500)),
        ["leastUsefulOffcut"] = Length.FromMillimeters(300),
        ["rootOpening"] = Length.FromMillimeters(2),
        ["order"] = new[] { 1 },
        ["part"] = 1,
        ["alongFiber"] = Length.FromMillimeters(50),
        ["fromLeft"] = Length.FromMillimeters(2),
        ["RingPlace.Hole.diameter"] = Length.FromMillimeters(6),
        ["OutlineLoop..ctor.edges"] = Slot.Edges,
        ["OutlineLoop.Polygon.corners"] = new[] { Sections.Drawn.At(0, 0), Sections.Drawn.At(3, 0), Sections.Drawn.At(0, 4) },
        ["OutlineEdge.Arc.start"] = Sections.Drawn.At(5, 0),
        ["OutlineEdge.Arc.end"] = Sections.Drawn.At(0, 5),
        ["OutlineEdge.Arc.center"] = Sections.Drawn.At(0, 0),
        ["Outline..ctor.loops"] = new[] { Slot },
        ["torsionConstant"] = AreaMomentOfInertia.FromMillimetersToTheFourth(9000),
        ["Outstand..ctor.length"] = Length.FromMillimeters(30),
        ["longLeg"] = Length.FromMillimeters(50),
        ["shortLeg"] = Length.FromMillimeters(30),
        ["dimension"] = StockDimension.Thickness,
        ["OrientedBars.Tube.radial"] = Length.FromMillimeters(25),
        ["OrientedBars.Tube.axial"] = Length.FromMillimeters(40),
        ["acrossFlats"] = Length.FromMillimeters(17),
        ["cornerRadius"] = Length.FromMillimeters(1),
        ["depth"] = Length.FromMillimeters(50),
        ["flangeWidth"] = Length.FromMillimeters(25),
        ["webThickness"] = Length.FromMillimeters(5),
        ["stemThickness"] = Length.FromMillimeters(5),
        ["flangeThickness"] = Length.FromMillimeters(6),
        ["outer"] = Length.FromMillimeters(1),
        ["side"] = Length.FromMillimeters(25),
        ["height"] = Length.FromMillimeters(40),
        ["designWall"] = Length.FromMillimeters(2),
        ["outside"] = Length.FromMillimeters(4),
        ["inside"] = Length.FromMillimeters(2),
        ["leg"] = Length.FromMillimeters(30),
        ["width"] = Length.FromMillimeters(25),
        ["radiusOverDiameter"] = 4.5,
        ["diameter"] = Length.FromMillimeters(25),
        ["largest"] = Length.FromMillimeters(26),
        ["smallest"] = Length.FromMillimeters(24),
        ["thickness"] = Length.FromMillimeters(3),
        ["wall"] = Length.FromMillimeters(2),
        ["outsideDiameter"] = Length.FromMillimeters(25),
        ["toe"] = Length.FromMillimeters(2),
        ["fromInside"] = Length.FromMillimeters(2),
        ["axial"] = Length.FromMillimeters(4),
        ["low"] = Length.FromMillimeters(29),
        ["high"] = Length.FromMillimeters(31),
        ["PressureRange..ctor.low"] = Pressure.FromMegapascals(235),
        ["PressureRange..ctor.high"] = Pressure.FromMegapascals(360),
        ["elasticModulus"] = Pressure.FromGigapascals(205),
        ["plateauStress"] = Pressure.FromMegapascals(290),
        ["elasticRange"] = Pressure.FromMegapascals(150),
        ["saturatedBackStress"] = Pressure.FromMegapascals(150),
        ["saturationRate"] = 300.0,
        ["linearHardening"] = Pressure.FromMegapascals(1000),
        ["rangeChange"] = Pressure.FromMegapascals(20),
        ["rangeRate"] = 10.0,
        ["saturatedShare"] = Ratio.FromPercent(80),
        ["ChordModulus..ctor.rate"] = 50.0,
        ["plasticStrain"] = Ratio.FromPercent(2),
        ["newtonSquareMeters"] = 50.0,
        ["OutOfPlaneGuide.OfStations.deflection"] = Length.FromMillimeters(2),
        ["OutOfPlaneGuide.OfStations.distance"] = Length.FromMillimeters(100),
        ["OutOfPlaneGuide.Clamped.secondMoment"] = AreaMomentOfInertia.FromMillimetersToTheFourth(9000),
        ["RingSensitivity.Of.guide"] = OutOfPlaneGuide.Rigid,
        ["GuideEstimate.FromDish.dish"] = Angle.FromDegrees(10),
        ["GuideEstimate.FromDish.error"] = Angle.FromDegrees(0.3),
        ["GuideEstimate.FromPressedFlat.error"] = Length.FromMillimeters(0.5),
        ["GuideEstimate.FromFreeRadius.error"] = Length.FromMillimeters(0.5),
        ["ReleasedBend.BendAgainTo.radius"] = BendRadius.Inside(Length.FromMillimeters(150)),
        ["yieldStress"] = Pressure.FromMegapascals(290),
        ["tangentModulus"] = Pressure.FromMegapascals(900),
        ["curvature"] = ReciprocalLength.FromInverseMeters(4),
        ["density"] = Density.FromKilogramsPerCubicMeter(7850),
        ["denominator"] = 16,
        ["exponent"] = 12.0,
        ["strengthCoefficient"] = Pressure.FromMegapascals(600),
        ["hardeningExponent"] = 0.2,
        ["proofStress"] = Pressure.FromMegapascals(240),
        ["stroke"] = Length.FromMillimeters(12),
        ["measuringError"] = Length.FromMillimeters(0.5),
        ["tape"] = Length.FromMillimeters(1540),
        ["before"] = Length.FromMillimeters(1600),
        ["radiusOverDepth"] = 8.5,
        ["chord"] = Length.FromMillimeters(200),
        ["rise"] = Length.FromMillimeters(20),
        ["fiber"] = Length.FromMillimeters(1),
        ["feed"] = Length.FromMillimeters(40),
        ["position"] = Length.FromMillimeters(200),
        ["Bump.Pass.first"] = Length.FromMillimeters(100),
        ["Bump.Pass.last"] = Length.FromMillimeters(600),
        ["from"] = Length.FromMillimeters(200),
        ["to"] = Length.FromMillimeters(240),
        ["start"] = Length.FromMillimeters(200),
        ["count"] = 40,
        ["barLength"] = Length.FromMeters(6),
        ["advantage"] = 12.0,
        ["mechanicalAdvantage"] = 12.0,
        ["shims"] = Length.FromMillimeters(2),
        ["ClosedPair.Of.die"] = Paired,
        ["FormingModel.Form.die"] = Paired,
        ["RingBounds.Of.die"] = Paired,
        ["PlanCuts.PlansOf.group"] = PlannedCuts.List!.Groups[0],
        ["PlanCuts.BarMassOf.group"] = PlannedCuts.List!.Groups[0],
        ["RingFit.Of.line"] = false,
        ["BendFigure.OfDies.choice"] = Advice,
        ["RingFit.Of.rings"] =
            new[] { new MeasuredRing(Paired, Loaded.Analysis, BendRadius.InsideDiameter(Length.FromMillimeters(490)), Release.Free) },
        ["MonteCarloSample.Of.die"] = Paired,
        ["BarMaterial.WithSofterUnloading.share"] = Ratio.FromPercent(85),
        ["MatingDie.OfFace.radius"] = Length.FromMillimeters(290),
        ["supportRadius"] = Length.FromMillimeters(10),
        ["halfSpan"] = Length.FromMillimeters(100),
        ["noseRadius"] = Length.FromMillimeters(20),
        ["BendAnalysis.YieldFrom.loaded"] = BendRadius.Inside(Length.FromMillimeters(240)),
        ["BendAnalysis.YieldFrom.finished"] = BendRadius.Inside(Length.FromMillimeters(250)),
        ["name"] = "mild steel",
        ["points"] = CurvePoints,
        ["poissonsRatio"] = 0.3,
        ["yieldStrength"] = Pressure.FromMegapascals(235),
        ["maximumYield"] = Pressure.FromMegapascals(360),
        ["ultimateStrength"] = Pressure.FromMegapascals(360),
        ["maximumUltimate"] = Pressure.FromMegapascals(510),
        ["seed"] = 1,
        ["symbol"] = "R_1",
        ["equation"] = "1/(R + y_n)",
        ["unit"] = "mm",
        ["BendFigure.ToPlot.width"] = 640,
        ["BendFigure.ToPlot.height"] = 480,
        ["BendFigure.ToPng.width"] = 640,
        ["BendFigure.ToPng.height"] = 480,
        ["BendFigure.ToSvg.width"] = 640,
        ["BendFigure.ToSvg.height"] = 480,
        ["BendFigure.SavePng.width"] = 640,
        ["BendFigure.SavePng.height"] = 480,
        ["BendFigure.SaveSvg.width"] = 640,
        ["BendFigure.SaveSvg.height"] = 480,
        ["designation"] = "L2X2X1/8",
        ["designDistance"] = Length.FromMillimeters(9),
        ["Grades.Find.name"] = "A36",
        ["Grades.Find.detail"] = "hot rolled",
        ["BarMaterial..ctor.yieldRange"] = new PressureRange(Pressure.FromMegapascals(235), Pressure.FromMegapascals(360)),
    };

    /// <summary>Valid arguments of types that are not ours, where no name says more.</summary>
    private static readonly Dictionary<Type, object> ByType = new()
    {
        [typeof(double)] = 0.5,
        [typeof(int)] = 3,
        [typeof(bool)] = true,
        [typeof(string)] = "25 mm",
        [typeof(Length)] = Length.FromMillimeters(240),
        [typeof(Angle)] = Angle.FromDegrees(90),
        [typeof(Pressure)] = Pressure.FromMegapascals(250),
        [typeof(Ratio)] = Ratio.FromPercent(2),
        [typeof(Force)] = Force.FromNewtons(500),
        [typeof(Torque)] = Torque.FromNewtonMeters(100),
        [typeof(Density)] = Density.FromKilogramsPerCubicMeter(7850),
        [typeof(ForcePerLength)] = ForcePerLength.FromKilonewtonsPerMillimeter(4),
        [typeof(ReciprocalLength)] = ReciprocalLength.FromInverseMeters(4),
        [typeof(CancellationToken)] = CancellationToken.None,
        [typeof(ArgumentException)] = Refused,
        [typeof(Stream)] = Stream.Null,
        [typeof(TextWriter)] = TextWriter.Null,
        [typeof(IFormatProvider)] = System.Globalization.CultureInfo.InvariantCulture,
    };

    public static FormingModel Pinching => ThreePoint;

    /// <summary>The example job for a ring of another size, in millimeters of inside radius.</summary>
    public static RingJob JobFor(double insideRadius, FormingModel model) => new(
        "planter rim",
        BendAnalysis.Of(Angle30.FlangeOut, Steel),
        new(BendRadius.Inside(Length.FromMillimeters(insideRadius)), ArcExtent.FullRing),
        new(Rack, model),
        new(Ends, Length.FromMillimeters(2)));

    /// <summary>Every example that is of a type; for an abstract type, those of the types derived from it.</summary>
    public static IReadOnlyList<object> Of(Type type) => type.IsEnum
        ? [.. Enum.GetValues(type).Cast<object>()]
        : [.. Instances.Where(type.IsInstanceOfType)];

    /// <summary>A valid argument, or false when the registry has none.</summary>
    public static bool TryFind(ParameterInfo parameter, out object? value)
    {
        Type type = Nullable.GetUnderlyingType(parameter.ParameterType) ?? parameter.ParameterType;
        string name = $"{parameter.Member.DeclaringType!.Name}.{parameter.Member.Name}.{parameter.Name}";
        if ((Named.TryGetValue(name, out value) || Named.TryGetValue(parameter.Name!, out value)) && type.IsInstanceOfType(value))
        {
            return true;
        }

        if (Of(type) is [var first, ..])
        {
            value = first;
            return true;
        }

        if (ElementOf(type) is { } element && Of(element) is { Count: > 0 } items)
        {
            Array array = Array.CreateInstance(element, items.Count);
            items.ToArray().CopyTo(array, 0);
            value = array;
            return true;
        }

        return ByType.TryGetValue(type, out value);
    }

    /// <summary>The element type of an array or of a read-only collection interface.</summary>
    public static Type? ElementOf(Type type) => type.IsArray ? type.GetElementType()
        : type.IsGenericType && type.GetGenericTypeDefinition() is var definition
            && (definition == typeof(IEnumerable<>) || definition == typeof(IReadOnlyList<>) || definition == typeof(IReadOnlyCollection<>)
                || definition == typeof(IList<>))
            ? type.GetGenericArguments()[0]
            : null;
}
