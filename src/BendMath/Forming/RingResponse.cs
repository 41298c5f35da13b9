using System.Globalization;
using UnitsNet;

namespace BendMath.Forming;

/// <summary>One number that may differ from ring to ring, in SI units.</summary>
internal readonly record struct ScatterInput(string Name, double Low, double Nominal, double High, bool IsMonotone);

/// <summary>What a set of inputs leaves: the radii of the free or flattened ring and its curvature; or why there is no ring.</summary>
internal readonly record struct RingReply(double Inside, double Centroid, double Outside, double Curvature, string? Refusal)
{
    public static RingReply Refused(string why) => new(0, 0, 0, 0, why);

    /// <summary>A ring of another curvature: every line of the bar keeps its distance from the one that keeps its length.</summary>
    public RingReply Times(double ratio)
    {
        double shift = (1 / ratio - 1) / Curvature;
        return new(Inside + shift, Centroid + shift, Outside + shift, Curvature * ratio, null);
    }
}

/// <summary>A die's answer to every input that scatters.</summary>
internal sealed class RingResponse
{
    private const double SameBar = 1e-9;

    private readonly FormingModel _model;

    private readonly BendAnalysis _analysis;

    private readonly Die _die;

    private readonly Release _release;

    private readonly RingScatter _scatter;

    private readonly int _dimensions;

    public RingResponse(FormingModel model, BendAnalysis analysis, Die die, Release release, RingScatter scatter)
    {
        _model = model;
        _analysis = analysis;
        _die = die;
        _release = release;
        _scatter = scatter;
        List<ScatterInput> inputs = [];
        if (scatter.Yield is { } yield)
        {
            inputs.Add(new("yield", yield.Low.Pascals, analysis.Material.Law.YieldStress.Pascals, yield.High.Pascals, model.IsMonotone));
        }

        if (scatter.Mill is { } mill)
        {
            CheckMill(mill, nameof(scatter));
            _dimensions = mill.Dimensions.Count;
            inputs.AddRange(mill.Dimensions.Select(one => new ScatterInput(Words(one.Dimension), one.LowMeters, one.NominalMeters, one.HighMeters, false)));
        }

        if (scatter.StrokeMeters > 0)
        {
            if (model.WithExtraStroke(0) is null)
            {
                throw Guard.Refused(nameof(scatter), $"must not name a stroke for {model.Name}, which has none", $"names {Guard.MillimetersText(scatter.StrokeMeters)}");
            }

            inputs.Add(new("stroke", -scatter.StrokeMeters, 0, scatter.StrokeMeters, true));
        }

        if (scatter.CurvatureShare > 0)
        {
            inputs.Add(new("repeatability", 1 - scatter.CurvatureShare, 1, 1 + scatter.CurvatureShare, true));
        }

        Inputs = [.. inputs];
    }

    public ScatterInput[] Inputs { get; }

    public double[] Nominal => Array.ConvertAll(Inputs, input => input.Nominal);

    public RingReply At(ReadOnlySpan<double> values)
    {
        int next = 0;
        double? yield = _scatter.Yield is null ? null : values[next++];
        OrientedSection? section = _dimensions > 0 ? SectionOf(values.Slice(next, _dimensions)) : _analysis.Section;
        next += _dimensions;
        FormingModel model = _scatter.StrokeMeters > 0 ? _model.WithExtraStroke(values[next++])! : _model;
        double ratio = _scatter.CurvatureShare > 0 ? values[next] : 1;
        BarMaterial material = yield is { } pascals ? _analysis.Material.WithYield(Pressure.FromPascals(pascals)) : _analysis.Material;
        FormingTrial trial = model.Try(BendAnalysis.Of(section, material, _analysis.StressState), _die);
        if (trial.Formed is not { } formed)
        {
            return RingReply.Refused(trial.Refusal!);
        }

        ReleasedBend released = formed.Loaded.Release(_release);
        if (released.IsStraight)
        {
            return RingReply.Refused("the bar springs back straight");
        }

        FinishedRing ring = released.Ring;
        RingReply reply = new(ring.Inside, ring.CentroidRadius.Meters, ring.OutsideRadius.Meters, ring.TotalCurvature, null);
        return ratio == 1 ? reply : reply.Times(ratio);
    }

    /// <summary>The input as a person would read it.</summary>
    public string Text(int input, double value) => Inputs[input].Name switch
    {
        "yield" => string.Format(CultureInfo.InvariantCulture, "a yield of {0:0.#} MPa", value / 1e6),
        "repeatability" => string.Format(CultureInfo.InvariantCulture, "{0:0.##} times the curvature", value),
        "stroke" => string.Format(CultureInfo.InvariantCulture, "{0:+0.###;-0.###;0} mm of stroke", value * 1e3),
        string name => string.Format(CultureInfo.InvariantCulture, "a {0} of {1:0.###} mm", name, value * 1e3),
    };

    private static string Words(StockDimension dimension) => dimension switch
    {
        StockDimension.LongLeg => "long leg",
        StockDimension.ShortLeg => "short leg",
        _ => dimension.ToString().ToLowerInvariant(),
    };

    private OrientedSection SectionOf(ReadOnlySpan<double> sizes)
    {
        BarStock stock = _scatter.Mill!.Build(sizes.ToArray());
        return stock.Orientations.First(way => way.Orientation == _analysis.Section.Orientation);
    }

    private void CheckMill(MillTolerance mill, string scatter)
    {
        OrientedSection section = _analysis.Section;
        OrientedSection? same = mill.Nominal.Orientations.FirstOrDefault(way => way.Orientation == section.Orientation);
        double area = section.Profile.Moments.Area;
        if (same is null || Math.Abs(same.Height - section.Height) > SameBar * section.Height || Math.Abs(same.Profile.Moments.Area - area) > SameBar * area)
        {
            throw Guard.Refused(scatter, $"must hold the mill tolerance of the bar that is bent, {section}", $"holds that of {mill.Nominal}");
        }
    }
}
