using BendMath.Evidence;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Forming.Variation;

/// <summary>How much one input moves the ring while all others stay as they are. Immutable and thread-safe.</summary>
public sealed record InputContribution
{
    private readonly double _low;

    private readonly double _high;

    internal InputContribution(string input, double low, double high, double share)
    {
        Input = input;
        _low = low;
        _high = high;
        Share = Ratio.FromDecimalFractions(share);
    }

    /// <summary>The input: yield, a dimension of the bar, stroke, or repeatability.</summary>
    public string Input { get; }

    /// <summary>Inside diameters it leads to alone.</summary>
    public LengthRange InsideDiameter => new(Length.FromMeters(_low), Length.FromMeters(_high));

    /// <summary>Its share of the spread: the square of its width over the sum of all squares.</summary>
    /// <remarks>
    /// Equation: w_i²/∑w², w the width of the inside diameter while only that input moves.
    /// Range: a ranking; exact for small independent inputs.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public Ratio Share { get; }

    /// <summary>Input, range and share.</summary>
    public override string ToString() => Invariant($"{Input}: {InsideDiameter}, {Share.Percent:0} % of the spread");
}

/// <summary>
/// Between which sizes the ring of one die lies when what scatters lies anywhere in its range: bounds, found by trying every corner of the
/// ranges and searching between them where the answer may turn. Immutable and thread-safe.
/// </summary>
public sealed class RingBounds
{
    private readonly (double Low, double High)? _perTurn;

    private readonly double _turn;

    private RingBounds(InputVariation scatter, LengthRange? insideDiameter, (double Low, double High)? perTurn, double turn,
        IReadOnlyList<InputContribution> contributions, string? note)
    {
        Scatter = scatter;
        InsideDiameter = insideDiameter;
        _perTurn = perTurn;
        _turn = turn;
        Contributions = contributions;
        Note = note;
    }

    /// <summary>What scatters.</summary>
    public InputVariation Scatter { get; }

    /// <summary>Range of the finished inside diameter, or null; <see cref="Note"/> says why.</summary>
    public LengthRange? InsideDiameter { get; }

    /// <summary>Range of the straight length that becomes the wanted turn, or null.</summary>
    public LengthRange? DevelopedLength => _perTurn is { } ends ? Range((_turn * ends.Low, _turn * ends.High)) : null;

    /// <summary>What each input does alone, the most important first; empty without a range.</summary>
    public IReadOnlyList<InputContribution> Contributions { get; }

    /// <summary>Why there is no range, or null.</summary>
    public string? Note { get; }

    /// <summary>Whether there is no range because the bar may spring back straight, or so nearly that no length says how far.</summary>
    public bool MaySpringStraight { get; private init; }

    /// <summary>Finds the bounds. Wrap bending is monotone in yield; pinching is not, and is searched between the ends as well.</summary>
    /// <param name="model">How the bender forms.</param>
    /// <param name="analysis">Section and material.</param>
    /// <param name="die">The die.</param>
    /// <param name="release">How the ring is let go.</param>
    /// <param name="turn">How much of the ring is wanted, greater than zero.</param>
    /// <param name="scatter">What scatters.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The mill tolerance is of another bar, or a stroke scatters where the model has none.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The die does not suit the bar, the release is not a defined value, or the turn is not
    /// positive and finite.</exception>
    public static RingBounds Of(FormingModel model, BendAnalysis analysis, Die die, Release release, Angle turn, InputVariation scatter)
    {
        RingResponse response = ResponseOf(model, analysis, die, release, scatter);
        return Of(response, scatter, Guard.Positive(turn, nameof(turn)));
    }

    /// <summary>The range or why there is none.</summary>
    public override string ToString() => InsideDiameter?.ToString() ?? Note!;

    internal static RingBounds Of(RingResponse response, InputVariation scatter, double turn)
    {
        if (response.Inputs.Length == 0)
        {
            return new(scatter, null, null, turn, [],
                $"no range: the yield of {response.Material.Name} is given as one number, and nothing else is said to scatter");
        }

        RingExtremes extremes = new(response);
        (double Low, double High)? inside = extremes.Of(reply => 2 * reply.Inside);
        (double Low, double High)? perTurn = extremes.Of(reply => 1 / reply.Curvature);
        IReadOnlyList<InputContribution> contributions = extremes.Refusal is null ? ContributionsOf(response, extremes) : [];
        return extremes.Refusal is { } refusal
            ? new(scatter, null, null, turn, [], refusal) { MaySpringStraight = extremes.IsStraight }
            : new(scatter, Range(inside!.Value), perTurn, turn, contributions, null);
    }

    internal static RingResponse ResponseOf(FormingModel model, BendAnalysis analysis, Die die, Release release, InputVariation scatter)
    {
        Guard.NotNull(model, nameof(model)).Form(Guard.NotNull(analysis, nameof(analysis)), Guard.NotNull(die, nameof(die)));
        return new(model, analysis, die, Guard.Defined(release, nameof(release)), Guard.NotNull(scatter, nameof(scatter)));
    }

    private static LengthRange Range((double Low, double High) ends) => new(Length.FromMeters(ends.Low), Length.FromMeters(ends.High));

    private static IReadOnlyList<InputContribution> ContributionsOf(RingResponse response, RingExtremes extremes)
    {
        List<(string Name, double Low, double High)> alone = [];
        for (int i = 0; i < response.Inputs.Length; i++)
        {
            if (extremes.OfOne(i, reply => 2 * reply.Inside) is { } ends)
            {
                alone.Add((response.Inputs[i].Name, ends.Low, ends.High));
            }
        }

        double sum = alone.Sum(one => (one.High - one.Low) * (one.High - one.Low));
        return [.. alone.OrderByDescending(one => one.High - one.Low)
            .Select(
                one =>
                    new InputContribution(one.Name, one.Low, one.High, sum > 0 ? (one.High - one.Low) * (one.High - one.Low) / sum : 0))];
    }
}
