using BendMath.Distortion;
using BendMath.Distortion.Checks;
using BendMath.Sections.Outlines;
using UnitsNet;
using static BendMath.Tests.Distortion.Bends;

namespace BendMath.Tests.Distortion;

/// <summary>Whatever a finding offers lowers it when it is applied, and for every check there is a finding that offers something.</summary>
public sealed class DistortionRemedyTests
{
    private static readonly DistortionSettings Asked = new(
        new(unsupportedLength: Mm(2000)),
        requiredWall: Mm(3.1),
        rules: [StrainRule.FivePercent, StrainRule.TenThicknesses, StrainRule.FourAndHalfThicknesses, StrainRule.TwoThicknesses]);

    private static readonly LoadedBend[] Doubtful =
    [
        At(RimAngle.FlangeOut, 100),
        At(RimAngle.FlangeOut, 240),
        At(RimAngle.FlangeIn, 100),
        At(RimAngle.HeelOut, 240),
        At(Flat.HardWay, 40),
        At(new RoundBar(Mm(10)).Section, 60),
        At(new SquareBar(Mm(12)).Section, 150),
        At(Tube.Section, 60),
        At(Tube.Section, 30),
        At(Tube.Section, 120),
        At(new RoundTube(Mm(41), Mm(1)).Section, 150),
        At(new SquareTube(Mm(40), Mm(2), CornerRadii.Of(Mm(4), Mm(2))).Orientations[0], 120),
        At(new RectangularTube(Mm(60), Mm(30), Mm(2), CornerRadii.Of(Mm(4), Mm(2))).Orientations[0], 220),
        At(new RectangularTube(Mm(60), Mm(30), Mm(2), CornerRadii.Of(Mm(4), Mm(2))).Orientations[1], 220),
    ];

    [Fact]
    public void Every_remedy_lowers_its_finding()
    {
        HashSet<(string, string)> applied = [];
        foreach (LoadedBend bend in Doubtful)
        {
            foreach (DistortionFinding finding in DistortionReport.Of(bend, Asked).Findings)
            {
                foreach (DistortionRemedy remedy in finding.Remedies)
                {
                    DistortionFinding? after = Apply(bend, remedy).Find(finding.Check);
                    Assert.True((after?.Level ?? RiskLevel.Low) < finding.Level, $"{bend}: {finding}. {remedy} leaves {after}");
                    Assert.True(
                        KindOf(remedy) is "support" or "orientation" || after is null || after.Level == RiskLevel.Low,
                            $"{bend}: {remedy} leaves {after}");
                    applied.Add((finding.Check, KindOf(remedy)));
                }
            }
        }

        string[] checks =
        [
            "compressed free edge", "dish", "extreme fiber strain of 5 %", "inside radius of 10 depths", "inside radius of 2 depths",
            "inside radius of 4.5 depths", "keystoning", "leg angle",
            "leg to radius", "outside face strain", "pipe wall to order", "rolling over", "tube ovality", "tube radius in diameters",
            "tube wall thinning", "tube wrinkling", "twist", "wall sinking", "wall wrinkling",
        ];
        Assert.Equal(checks, applied.Select(pair => pair.Item1).Distinct().Order(StringComparer.Ordinal));
        Assert.Equal(["leg", "orientation", "radius", "support", "support distance", "thickness"],
            applied.Select(pair => pair.Item2).Distinct().Order(StringComparer.Ordinal));
    }

    /// <summary>The printed number is the one that passes, and not far on the safe side.</summary>
    [Fact]
    public void A_least_radius_is_the_least()
    {
        DistortionFinding finding = DistortionReport.Of(At(RimAngle.FlangeIn, 100)).Find("compressed free edge")!;
        DistortionRemedy wider = finding.Remedies.Single(remedy => remedy.LeastRadius is not null);
        double radius = wider.LeastRadius!.Value.Millimeters;
        Assert.Contains(FormattableString.Invariant($"{radius:0.#####} mm"), wider.Sentence, StringComparison.Ordinal);
        Assert.Equal(RiskLevel.Low, FreeEdgeCheck.Judge(At(RimAngle.FlangeIn, radius), DistortionSettings.Default).Finding!.Level);
        Assert.Equal(RiskLevel.Medium,
            FreeEdgeCheck.Judge(At(RimAngle.FlangeIn, 0.998 * radius), DistortionSettings.Default).Finding!.Level);
    }

    [Fact]
    public void The_report_gives_the_advice_of_its_worst_finding()
    {
        DistortionReport report = DistortionReport.Of(At(RimAngle.FlangeIn, 100));
        Assert.Equal(report.Findings[0].Remedies, report.Advice);
        Assert.NotEmpty(report.Advice);
        Assert.Equal(report.Findings.OrderByDescending(finding => finding.Level).ThenBy(finding => finding.Margin), report.Findings);
        Assert.Empty(DistortionReport.Of(At(Flat.EasyWay, 400)).Advice);
    }

    private static DistortionReport Apply(LoadedBend bend, DistortionRemedy remedy)
    {
        double inside = bend.InsideRadius.Millimeters;
        OrientedSection section = bend.Analysis.Section;
        return remedy switch
        {
            { LeastRadius: { } radius } => DistortionReport.Of(At(section, radius.Millimeters), Asked),
            { LargestLeg: { } leg } => DistortionReport.Of(At(WithDepth(section, leg), inside), Asked),
            { LeastThickness: { } wall } => DistortionReport.Of(At(new RoundTube(section.Depth, wall).Section, inside), Asked),
            { Section: { } other } => DistortionReport.Of(At(other, inside), Asked),
            { LargestSupportDistance: { } distance } => DistortionReport.Of(bend, new DistortionSettings(new(unsupportedLength: distance))),
            _ =>
                DistortionReport.Of(bend,
                    new DistortionSettings(new(holdsFreeEdge: true, backsAxialLeg: true, holdsTube: true), Release.HeldFlat)),
        };
    }

    private static string KindOf(DistortionRemedy remedy) => remedy switch
    {
        { LeastRadius: not null } => "radius",
        { LargestLeg: not null } => "leg",
        { LeastThickness: not null } => "thickness",
        { Section: not null } => "orientation",
        { LargestSupportDistance: not null } => "support distance",
        _ => "support",
    };

    private static OrientedSection WithDepth(OrientedSection section, Length depth) => section.Stock switch
    {
        EqualAngle when section.Orientation == Orientation.HeelOut =>
            new CustomBar("block",
                new Outline([OutlineLoop.Polygon([new(Mm(0), Mm(0)), new(Mm(10), Mm(0)), new(Mm(10), depth), new(Mm(0), depth)])])).AsDrawn,
        EqualAngle =>
            OrientedBars.Angle(depth, depth, Mm(3), AngleFillets.Sharp,
                section.Orientation == Orientation.FlangeIn ? FlangeDirection.In : FlangeDirection.Out),
        FlatBar => OrientedBars.Flat(radial: depth, axial: Mm(5)),
        RoundTube => new RoundTube(depth, depth / 10).Section,
        RoundBar => new RoundBar(depth).Section,
        _ => new SquareBar(depth).Section,
    };
}
