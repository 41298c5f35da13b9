using BendMath.Guards;

namespace BendMath.Forming.Variation;

/// <summary>A die's answer to every input that scatters.</summary>
internal sealed class RingResponse
{
    private readonly FormingModel _model;

    private readonly BendAnalysis _analysis;

    private readonly Die _die;

    private readonly Release _release;

    private readonly ScatterBars _bars;

    private readonly int _dimensions;

    /// <param name="model">How the bender forms.</param>
    /// <param name="analysis">Section and material.</param>
    /// <param name="die">The die.</param>
    /// <param name="release">How the ring is let go.</param>
    /// <param name="scatter">What scatters.</param>
    /// <param name="bars">The bars of that analysis and scatter, where other dies share them; or null.</param>
    public RingResponse(FormingModel model, BendAnalysis analysis, Die die, Release release, InputVariation scatter,
        ScatterBars? bars = null)
    {
        _model = model;
        _analysis = analysis;
        _die = die;
        _release = release;
        _bars = bars ?? new(analysis, scatter.Mill);
        if (scatter.RefusalFor(model, analysis) is { } refusal)
        {
            throw Guard.Refused(nameof(scatter), refusal);
        }

        List<ScatterInput> inputs = [];
        if (scatter.Yield is { } yield)
        {
            inputs.Add(new YieldInput(yield, analysis.Material, model.IsMonotone));
        }

        if (scatter.Mill is { } mill)
        {
            _dimensions = mill.Dimensions.Count;
            inputs.AddRange(mill.Dimensions.Select((one, i) => new DimensionInput(one, i)));
        }

        if (scatter.StrokeMeters > 0)
        {
            inputs.Add(new StrokeInput(scatter.StrokeMeters));
        }

        if (scatter.CurvatureShare > 0)
        {
            inputs.Add(new RepeatabilityInput(scatter.CurvatureShare));
        }

        Inputs = [.. inputs];
    }

    public BarMaterial Material => _analysis.Material;

    public ScatterInput[] Inputs { get; }

    public double[] Nominal => Array.ConvertAll(Inputs, input => input.Nominal);

    /// <summary>Whether a bar of another yield takes no new table.</summary>
    public bool IsYieldCheap => _analysis.Law.IsScaledByYield;

    public RingReply At(double[] values)
    {
        RingReply reply = Unscaled(values);
        return reply.Refusal is null ? Scaled(reply, values) : reply;
    }

    /// <summary>The answer without the inputs that only scale the ring.</summary>
    public RingReply Unscaled(double[] values)
    {
        RingCase ring = new(_model, _analysis.Material, _dimensions);
        for (int i = 0; i < Inputs.Length; i++)
        {
            if (!Inputs[i].ScalesRing)
            {
                Inputs[i].PutIn(ring, values[i]);
            }
        }

        FormingTrial trial = ring.Model.Try(_bars.Of(ring.Sizes, ring.Material), _die);
        if (trial.Formed is not { } formed)
        {
            return RingReply.Refused(trial.Refusal!);
        }

        ReleasedBend released = formed.Loaded.Release(_release);
        if (released.IsStraight)
        {
            return RingReply.Straight;
        }

        FinishedRing finished = released.Ring;
        return new(finished.Inside, finished.CentroidRadius.Meters, finished.OutsideRadius.Meters, finished.TotalCurvature, null);
    }

    /// <summary>An answer with the inputs that scale the ring.</summary>
    public RingReply Scaled(in RingReply reply, double[] values)
    {
        RingCase ring = new(_model, _analysis.Material, 0);
        for (int i = 0; i < Inputs.Length; i++)
        {
            if (Inputs[i].ScalesRing)
            {
                Inputs[i].PutIn(ring, values[i]);
            }
        }

        return (ring.CurvatureRatio == 1 ? reply : reply.Times(ring.CurvatureRatio)).Checked();
    }

    /// <summary>The input as a person would read it.</summary>
    public string Text(int input, double value) => Inputs[input].Text(value);
}
