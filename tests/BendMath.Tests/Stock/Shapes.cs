using UnitsNet;

namespace BendMath.Tests.Stock;

/// <summary>One or more bars of every shape: sharp, rounded, and with radii that use up a whole side. Invented sizes.</summary>
internal static class Shapes
{
    public static IReadOnlyList<BarStock> All { get; } =
    [
        new EqualAngle(Mm(30), Mm(3), AngleFillets.Sharp),
        new EqualAngle(Mm(50), Mm(5), AngleFillets.Of(Mm(7), Mm(3.5))),
        new EqualAngle(Mm(50), Mm(5), AngleFillets.Of(Mm(7), Mm(5))),
        new UnequalAngle(Mm(100), Mm(50), Mm(8), AngleFillets.Of(Mm(8), Mm(4))),
        new FlatBar(Mm(30), Mm(8)),
        new FlatBar(Mm(30), Mm(8), Mm(2)),
        new FlatBar(Mm(30), Mm(8), Mm(4)),
        new SquareBar(Mm(20)),
        new SquareBar(Mm(20), Mm(1.5)),
        new SquareBar(Mm(20), Mm(10)),
        new RoundBar(Mm(16)),
        new RoundTube(Mm(33.7), Mm(3.2)),
        new SquareTube(Mm(40), Mm(3), CornerRadii.Sharp),
        new SquareTube(Mm(40), Mm(3), CornerRadii.ColdFormed(Mm(3))),
        new RectangularTube(Mm(60), Mm(40), Mm(4), CornerRadii.HotFinished(Mm(4))),
        new HexagonBar(Mm(17)),
        new Channel(Mm(80), Mm(45), Mm(6), Mm(8), FlangeFillets.Of(Mm(8), Mm(4), Mm(3))),
        new Channel(Mm(80), Mm(45), Mm(6), Mm(8), FlangeFillets.OfRoot(Mm(8))),
        new Tee(Mm(50), Mm(60), Mm(6), Mm(7), FlangeFillets.Of(Mm(7), Mm(3.5), Mm(1.75))),
        new Tee(Mm(50), Mm(60), Mm(6), Mm(7), FlangeFillets.Sharp),
    ];

    private static Length Mm(double value) => Length.FromMillimeters(value);
}
