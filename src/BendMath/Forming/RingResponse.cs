namespace BendMath.Forming;

/// <summary>A die's answer to every input that scatters.</summary>
internal sealed class RingResponse
{
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

    public ScatterInput[] Inputs { get; }

    public double[] Nominal => Array.ConvertAll(Inputs, input => input.Nominal);

    public RingReply At(ReadOnlySpan<double> values)
    {
        RingCase ring = new(_model, _analysis.Material, _dimensions);
        for (int i = 0; i < Inputs.Length; i++)
        {
            Inputs[i].PutIn(ring, values[i]);
        }

        OrientedSection section = _dimensions > 0 ? SectionOf(ring.Sizes) : _analysis.Section;
        FormingTrial trial = ring.Model.Try(BendAnalysis.Of(section, ring.Material, _analysis.StressState), _die);
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
        RingReply reply = new(finished.Inside, finished.CentroidRadius.Meters, finished.OutsideRadius.Meters, finished.TotalCurvature, null);
        return (ring.CurvatureRatio == 1 ? reply : reply.Times(ring.CurvatureRatio)).Checked();
    }

    /// <summary>The input as a person would read it.</summary>
    public string Text(int input, double value) => Inputs[input].Text(value);

    private OrientedSection SectionOf(double[] sizes) => _scatter.Mill!.Build(sizes).Lying(_analysis.Section.Orientation)!;
}
