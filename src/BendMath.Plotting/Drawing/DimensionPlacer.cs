namespace BendMath.Plotting.Drawing;

/// <summary>Finds for each distance between parallel faces the place where its number covers least.</summary>
internal sealed class DimensionPlacer(SectionShape shape, Box room, IEnumerable<Spot> marks, double equalAreaAxis)
{
    private const int Most = 6;

    private const double Beside = 16;

    private static readonly int[] Sides = [0, -1, 1];

    private static readonly double[] Shares = [0.5, 0.65, 0.35, 0.8, 0.2, 0.9];

    private readonly List<Box> _taken = [];

    private readonly List<Spot> _lines = [];

    private readonly List<Spot> _marks = [.. marks];

    /// <summary>
    /// One dimension for each distance; a thin wall counts once in each direction unless the section is known to have one wall.
    /// </summary>
    public IReadOnlyList<Dimension> Place(bool oneWall, Func<double, string> text)
    {
        double thin = Math.Min(shape.Width, shape.Depth) / 3;
        return [.. FacePair.Of(shape)
            .GroupBy(pair => (Math.Round(pair.Distance, 6), oneWall || pair.Distance > thin ? 0 : Math.Round(Math.Abs(pair.Along.X), 6)))
            .OrderByDescending(group => group.Key)
            .Take(Most)
            .Select(group => Best(group.SelectMany(pair => Candidates(pair, text(pair.Distance)))))];
    }

    /// <summary>The wall of a round tube.</summary>
    public Dimension AcrossRing(Spot center, double inner, double outer, string text) => Best(
        new[] { 45.0, 30, 60, 135 }.Select(degrees => new Spot(Math.Cos(degrees * Math.PI / 180), Math.Sin(degrees * Math.PI / 180)))
            .SelectMany(outward => new[]
            {
                new Dimension(text, center + outward * outer, center + outward * inner),
                new Dimension(text, center + outward * inner, center + outward * outer),
            }));

    private Dimension Best(IEnumerable<Dimension> candidates)
    {
        Dimension best =
            candidates.Select((candidate, i) => (candidate, Cost: Cost(candidate) + 0.01 * i)).OrderBy(pair => pair.Cost).First().candidate;
        _taken.Add(best.Box);
        _marks.AddRange(best.Trace());
        _lines.AddRange(best.Trace());
        return best;
    }

    private IEnumerable<Dimension> Candidates(FacePair pair, string text)
    {
        Spot across = pair.Across * pair.Distance;
        if (pair.Distance < 60)
        {
            foreach (double share in Shares)
            {
                Spot foot = pair.Origin + pair.Along * (pair.Low + share * (pair.High - pair.Low));
                foreach (int side in Sides)
                {
                    yield return new(text, foot, foot + across, side);
                    yield return new(text, foot + across, foot, side);
                }
            }

            yield break;
        }

        double[] along = [.. shape.Polygons[0].Select(spot => (spot - pair.Origin).Dot(pair.Along))];
        double high = along.Max();
        double low = along.Min();
        foreach ((double edge, double at) in new[]
        {
            (pair.High, high + Beside), (pair.Low, low - Beside), (pair.High, high + 1.6 * Beside), (pair.Low, low - 1.6 * Beside),
        })
        {
            Spot foot = pair.Origin + pair.Along * at;
            Spot reach = pair.Origin + pair.Along * edge;
            yield return new(text, foot, foot + across, reach: (reach, reach + across));
        }
    }

    private double Cost(Dimension dimension)
    {
        Box box = dimension.Box;
        double cost = 0;
        cost += 10 * box.Spread().Count(shape.IsSolid);
        cost += 50 * box.Spread().Count(spot => !room.Contains(spot));
        cost += 100 * _taken.Count(box.Meets);
        cost += 30 * dimension.Open().Count(spot => _taken.Exists(taken => taken.Contains(spot, 2)));
        cost += 8 * dimension.Trace().Count(spot => _lines.Exists(line => (line - spot).Length < 8));
        cost += 4 * dimension.Open().Count(shape.IsSolid);
        cost += 50 * dimension.Open().Count(spot => !room.Contains(spot));
        cost += 15 * _marks.Count(mark => box.Contains(mark, 6));
        cost += new[] { equalAreaAxis, 0, shape.Depth }.Count(level => box.Contains(new(box.Center.X, level), 2)) * 6;
        return cost + (box.Center.X < shape.Width / 2 ? 1 : 0);
    }
}
