using BendMath.Forming.Bumps;
using BendMath.Tests.Forming;
using UnitsNet;

namespace BendMath.Tests.Learning;

/// <summary>
/// The ring bump-by-bump bending leaves on a die, over yield and closing, as a polynomial through the model's own answers: logarithm of the
/// inside diameter at 9 × 9 Chebyshev places. One such table a die stands in for tens of thousands of runs of the model;
/// <see cref="BumpCoverageTests"/> measures how far it is off.
/// </summary>
internal sealed class BumpResponse
{
    private const int Places = 9;

    private readonly double[,] _values = new double[Places, Places];

    private readonly Die _die;

    private BumpResponse(Die die)
    {
        _die = die;
        for (int i = 0; i < Places; i++)
        {
            for (int k = 0; k < Places; k++)
            {
                _values[i, k] =
                    Math.Log(
                        Direct(LeastYield + (MostYield - LeastYield) * Place(i), LeastClosing + (MostClosing - LeastClosing) * Place(k)));
            }
        }
    }

    public static double LeastYield => 200;

    public static double MostYield => 400;

    public static double LeastClosing => 0.92;

    public static double MostClosing => 1.10;

    public static BumpBending Model { get; } = new(Workshop.Bender, Length.FromMillimeters(40));

    /// <summary>One table for each die of the rack, in its order.</summary>
    public static IReadOnlyList<BumpResponse> Rack { get; } = [.. Workshop.Rack.Select(die => new BumpResponse(die))];

    public Die Die => _die;

    /// <summary>Inside diameter in millimeters by the model itself.</summary>
    public double Direct(double megapascals, double closing)
    {
        BendAnalysis bar = BendAnalysis.Of(Workshop.Rim, Workshop.Mild(megapascals, null));
        Length stroke = closing * Model.Form(bar, _die).Contact!.Stroke;
        return Model.FormAtStroke(bar, stroke).RingWhen(Release.Free).InsideDiameter.Millimeters;
    }

    /// <summary>The same from the table, by the barycentric formula in both directions.</summary>
    public double InsideDiameter(double megapascals, double closing)
    {
        double[] row = Weights((megapascals - LeastYield) / (MostYield - LeastYield));
        double[] column = Weights((closing - LeastClosing) / (MostClosing - LeastClosing));
        double sum = 0;
        for (int i = 0; i < Places; i++)
        {
            for (int k = 0; k < Places; k++)
            {
                sum += row[i] * column[k] * _values[i, k];
            }
        }

        return Math.Exp(sum);
    }

    private static double Place(int i) => (1 - Math.Cos(Math.PI * i / (Places - 1))) / 2;

    private static double[] Weights(double share)
    {
        double[] weights =
            [.. Enumerable.Range(0, Places).Select(i => (i % 2 == 0 ? 1.0 : -1.0) * (i is 0 or Places - 1 ? 0.5 : 1) / (share - Place(i)))];
        int hit = Array.FindIndex(weights, double.IsInfinity);
        double sum = weights.Sum();
        return [.. weights.Select((weight, i) => hit >= 0 ? (i == hit ? 1.0 : 0) : weight / sum)];
    }
}
