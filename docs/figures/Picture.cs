using BendMath;
using BendMath.Plotting;
using BendMath.Stock.Standard;
using UnitsNet;

namespace Figures;

/// <summary>A picture of the documentation: the file, what it shows, and its bytes.</summary>
internal sealed record Picture(string File, string Title, Func<byte[]> Png)
{
    private static readonly EqualAngle Angle = new(Mm(30), Mm(3), AngleFillets.Of(root: Mm(5), toe: Mm(2.5)));

    private static readonly UnequalAngle Unequal = new(Mm(60), Mm(40), Mm(5), AngleFillets.Of(root: Mm(6), toe: Mm(3)));

    private static readonly Channel Channel = new(Mm(80), Mm(45), Mm(6), Mm(8), FlangeFillets.OfRoot(Mm(8)));

    private static readonly Tee Tee = new(Mm(40), Mm(40), Mm(5), Mm(6), FlangeFillets.OfRoot(Mm(5)));

    private static readonly RectangularTube Box = new(Mm(60), Mm(40), Mm(3), CornerRadii.ColdFormed(Mm(3)));

    public static IReadOnlyList<Picture> All { get; } =
    [
        Metric("angle-flange-out", Angle.FlangeOut),
        Metric("angle-flange-in", Angle.FlangeIn),
        Metric("angle-heel-in", Angle.HeelIn),
        Metric("unequal-angle-long-leg-out", Unequal.LongLegOut),
        Metric("unequal-angle-short-leg-in", Unequal.ShortLegIn),
        Metric("flat-easy-way", new FlatBar(Mm(40), Mm(8)).EasyWay),
        Metric("flat-hard-way", new FlatBar(Mm(40), Mm(8), Mm(2)).HardWay),
        Metric("square-on-diagonal", new SquareBar(Mm(16)).OnDiagonal),
        Metric("round-tube", new RoundTube(Mm(33.7), Mm(3)).Section),
        Metric("hexagon-on-corner", new HexagonBar(Mm(24)).OnCorner),
        Metric("rectangular-tube-easy-way", Box.EasyWay),
        Metric("channel-flanges-out", Channel.FlangesOut),
        Metric("channel-hard-way", Channel.HardWay),
        Metric("tee-stem-out", Tee.StemOut),
        Metric("tee-stem-up", Tee.StemUp),
        Listed("size-en-angle", "EN 10056-1 L50x50x5", 0),
        Listed("size-us-angle", "L2X2X1/8", 0),
        Listed("size-us-unequal-angle", "L3X2X1/4", 0),
        Listed("size-en-square-tube", "EN 10219-2 SHS 40x2.5", 0),
        Listed("size-us-rectangular-tube", "HSS3X2X1/4", 1),
        Listed("size-us-pipe", "AISC 1 1/4 std pipe", 0),
        .. BumpPictures.All,
        .. LearningPictures.All,
    ];

    public static Picture Of(string name, BendFigure figure) => new($"{name}.png", figure.Title, () => figure.ToPng());

    private static Picture Metric(string name, OrientedSection section) =>
        Of($"section-{name}", BendFigure.OfSection(section, inInches: false));

    private static Picture Listed(string name, string designation, int orientation)
    {
        StandardSize size = StandardSizes.Find(designation);
        return Of($"section-{name}",
            BendFigure.OfSection(size.Stock.Orientations[orientation], !size.System.IsMetric,
                size.FullName));
    }

    private static Length Mm(double value) => Length.FromMillimeters(value);
}
