namespace BendMath.Stock.Standard;

internal enum SizeWordRole
{
    /// <summary>Narrows the shapes, or says nothing.</summary>
    Shape,

    /// <summary>The next number is a schedule.</summary>
    Schedule,

    /// <summary>A weight class of pipe.</summary>
    Weight,

    /// <summary>The number is a nominal diameter in millimeters.</summary>
    NominalDiameter,
}

/// <summary>What a word of a designation says.</summary>
internal sealed class SizeWord(int kinds, SizeWordRole role = SizeWordRole.Shape, SizeSystem? system = null, string weight = "")
{
    public int Kinds { get; } = kinds;

    public SizeWordRole Role { get; } = role;

    public SizeSystem? System { get; } = system;

    public string Weight { get; } = weight;
}

/// <summary>Words and signs that people write around the numbers of a size. Common practice, no source.</summary>
internal static class SizeWords
{
    private const int RoundTube = 1 << (int)SizeKind.RoundTube;
    private const int SquareTube = 1 << (int)SizeKind.SquareTube;
    private const int RectangularTube = 1 << (int)SizeKind.RectangularTube;
    private const int RoundBar = 1 << (int)SizeKind.RoundBar;
    private const int SquareBar = 1 << (int)SizeKind.SquareBar;
    private const int FlatBar = 1 << (int)SizeKind.FlatBar;
    private const int Tubes = RoundTube | SquareTube | RectangularTube;
    private const int Bars = RoundBar | SquareBar | FlatBar;

    private static readonly SizeWord Any = new(SizeSpelling.AnyKind);
    private static readonly SizeWord Angle = new(SizeSpelling.Angles);
    private static readonly SizeWord Tube = new(Tubes);
    private static readonly SizeWord Pipe = new(RoundTube);
    private static readonly SizeWord Round = new(RoundTube | RoundBar);
    private static readonly SizeWord Square = new(SquareTube | SquareBar);
    private static readonly SizeWord Rectangular = new(RectangularTube | FlatBar);
    private static readonly SizeWord Flat = new(FlatBar);
    private static readonly SizeWord Bar = new(Bars | SizeSpelling.Angles);
    private static readonly SizeWord Schedule = new(RoundTube, SizeWordRole.Schedule);
    private static readonly SizeWord Standard = new(RoundTube, SizeWordRole.Weight, weight: "STD");
    private static readonly SizeWord ExtraStrong = new(RoundTube, SizeWordRole.Weight, weight: "XS");
    private static readonly SizeWord DoubleExtraStrong = new(RoundTube, SizeWordRole.Weight, weight: "XXS");

    private static readonly Dictionary<string, SizeWord> Words = new(StringComparer.OrdinalIgnoreCase)
    {
        ["l"] = Angle,
        ["angle"] = Angle,
        ["angles"] = Angle,
        ["rsa"] = Angle,
        ["∟"] = Angle,
        ["∠"] = Angle,
        ["ea"] = new(1 << (int)SizeKind.EqualAngle),
        ["equal"] = new(1 << (int)SizeKind.EqualAngle),
        ["ua"] = new(1 << (int)SizeKind.UnequalAngle),
        ["unequal"] = new(1 << (int)SizeKind.UnequalAngle),
        ["hss"] = Tube,
        ["tube"] = Tube,
        ["tubes"] = Tube,
        ["tubing"] = Tube,
        ["hollow"] = Tube,
        ["box"] = new(SquareTube | RectangularTube),
        ["chs"] = Pipe,
        ["shs"] = new(SquareTube),
        ["rhs"] = new(SquareTube | RectangularTube),
        ["cfchs"] = new(RoundTube, system: SizeSystem.En10219),
        ["cfshs"] = new(SquareTube, system: SizeSystem.En10219),
        ["cfrhs"] = new(SquareTube | RectangularTube, system: SizeSystem.En10219),
        ["hfchs"] = new(RoundTube, system: SizeSystem.En10210),
        ["hfshs"] = new(SquareTube, system: SizeSystem.En10210),
        ["hfrhs"] = new(SquareTube | RectangularTube, system: SizeSystem.En10210),
        ["pipe"] = Pipe,
        ["pipes"] = Pipe,
        ["nps"] = Pipe,
        ["dn"] = new(RoundTube, SizeWordRole.NominalDiameter),
        ["sch"] = Schedule,
        ["sched"] = Schedule,
        ["schedule"] = Schedule,
        ["std"] = Standard,
        ["standard"] = Standard,
        ["xs"] = ExtraStrong,
        ["xh"] = ExtraStrong,
        ["extra"] = ExtraStrong,
        ["xxs"] = DoubleExtraStrong,
        ["xxh"] = DoubleExtraStrong,
        ["strong"] = Pipe,
        ["heavy"] = Pipe,
        ["round"] = Round,
        ["rounds"] = Round,
        ["circular"] = Round,
        ["dia"] = Round,
        ["diameter"] = Round,
        ["od"] = Round,
        ["ø"] = Round,
        ["⌀"] = Round,
        ["rod"] = new(RoundBar),
        ["square"] = Square,
        ["squares"] = Square,
        ["sq"] = Square,
        ["□"] = Square,
        ["rectangular"] = Rectangular,
        ["rect"] = Rectangular,
        ["flat"] = Flat,
        ["flats"] = Flat,
        ["strip"] = Flat,
        ["fl"] = Flat,
        ["fb"] = Flat,
        ["bar"] = Bar,
        ["bars"] = Bar,
        ["solid"] = new(Bars),
        ["steel"] = Any,
        ["iron"] = Any,
        ["section"] = Any,
        ["sections"] = Any,
        ["nominal"] = Any,
    };

    /// <summary>Nominal pipe size (NPS, inches) of each nominal diameter (DN). ASME B36.10M, Table 1, from memory.</summary>
    private static readonly Dictionary<double, double> NominalPipeSizes = new()
    {
        [6] = 0.125,
        [8] = 0.25,
        [10] = 0.375,
        [15] = 0.5,
        [20] = 0.75,
        [25] = 1,
        [32] = 1.25,
        [40] = 1.5,
        [50] = 2,
        [65] = 2.5,
        [80] = 3,
        [90] = 3.5,
        [100] = 4,
        [125] = 5,
        [150] = 6,
        [200] = 8,
        [250] = 10,
        [300] = 12,
        [350] = 14,
        [400] = 16,
        [450] = 18,
        [500] = 20,
        [600] = 24,
        [650] = 26,
    };

    public static bool TryFind(string text, out SizeWord word)
    {
        bool found = Words.TryGetValue(text, out SizeWord? known);
        word = known ?? Any;
        return found;
    }

    /// <summary>A sign that is a word by itself, though not a letter.</summary>
    public static bool IsSign(char c) => c is '∟' or '∠' or '⌀' or '□';

    public static bool TryNominalPipeSize(double nominalDiameter, out double nominalPipeSize) =>
        NominalPipeSizes.TryGetValue(nominalDiameter, out nominalPipeSize);
}
