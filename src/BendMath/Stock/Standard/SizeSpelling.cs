namespace BendMath.Stock.Standard;

/// <summary>What a written designation says: numbers, schedule of a pipe, and which shapes, unit and system it leaves open.</summary>
internal sealed class SizeSpelling
{
    /// <summary>Every shape: the text names none.</summary>
    public const int AnyKind = (1 << ((int)SizeKind.FlatBar + 1)) - 1;

    public const int Angles = (1 << (int)SizeKind.EqualAngle) | (1 << (int)SizeKind.UnequalAngle);

    /// <summary>From the largest.</summary>
    public List<double> Numbers { get; } = [];

    /// <summary>One bit for each <see cref="SizeKind"/> the words leave open.</summary>
    public int Kinds { get; set; } = AnyKind;

    /// <summary>Schedule or weight of a pipe, such as <c>40</c> or <c>STD</c>; empty without one.</summary>
    public string Schedule { get; set; } = string.Empty;

    /// <summary>Whether a unit or a fraction says millimeters (true) or inches (false).</summary>
    public bool? IsMetric { get; set; }

    public SizeSystem? System { get; set; }

    public SizeKey Key => SizeKey.Of(Numbers, Schedule);

    /// <summary>
    /// The shapes that have so many numbers: one for a bar, two for a round tube or flat, three for an angle or a tube with sides.
    /// </summary>
    public int FittingKinds => Kinds & (Schedule.Length > 0 ? Bit(SizeKind.RoundTube)
        : Numbers.Count switch
        {
            1 => Bit(SizeKind.RoundBar) | Bit(SizeKind.SquareBar),
            2 => Bit(SizeKind.RoundTube) | Bit(SizeKind.FlatBar),
            3 when Numbers[0] == Numbers[1] => Bit(SizeKind.EqualAngle) | Bit(SizeKind.SquareTube),
            3 => Bit(SizeKind.UnequalAngle) | Bit(SizeKind.RectangularTube),
            _ => 0,
        });

    /// <summary>
    /// Whether two numbers may stand for three, as in <c>SHS 40x3</c>: only where the words say that the sides are equal or that it is an
    /// angle.
    /// </summary>
    public bool MayBeShort =>
        Numbers.Count == 2 && Schedule.Length == 0 && (Kinds & ~(Angles | Bit(SizeKind.SquareTube) | Bit(SizeKind.SquareBar))) == 0;

    public static int Bit(SizeKind kind) => 1 << (int)kind;

    /// <summary>Whether unit and system fit. A bar in inches wants one of them said: a bare number is millimeters.</summary>
    public bool Allows(StandardSize size, SizeSystem? wanted)
    {
        SizeSystem system = size.System;
        bool unitFits =
            IsMetric is { } metric ? metric == system.IsMetric : system != SizeSystem.UsBars || wanted is not null || System is not null;
        return unitFits && (wanted is null || wanted == system) && (System is null || System == system);
    }
}

/// <summary>Dimensions from the largest, and the schedule: equal for every spelling of a size.</summary>
internal readonly record struct SizeKey(double First, double Second, double Third, string Schedule)
{
    public static SizeKey Of(IReadOnlyList<double> numbers, string schedule) => new(
        Snapped(numbers[0]), numbers.Count > 1 ? Snapped(numbers[1]) : 0, numbers.Count > 2 ? Snapped(numbers[2]) : 0, schedule);

    /// <summary>
    /// Tables print sixteenths of an inch with three decimals, 0.188 or 0.187 for 3/16; sizes in millimeters have two decimals at most and
    /// come no nearer to a sixteenth than 0.0025.
    /// </summary>
    private static double Snapped(double value)
    {
        double sixteenth = Math.Round(value * 16) / 16;
        return Math.Abs(value - sixteenth) <= 0.00050001 ? sixteenth : value;
    }
}
