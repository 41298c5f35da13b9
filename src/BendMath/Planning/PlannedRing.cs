using BendMath.Bending.NeutralAxes;
using BendMath.Cutting;
using BendMath.Distortion;
using BendMath.Forming.Effort;
using BendMath.Forming.Variation;
using BendMath.Guards;
using BendMath.Learning;
using BendMath.Lengths;
using BendMath.Sections.Features;
using UnitsNet;

namespace BendMath;

/// <summary>The plan on the best die, step by step. Immutable and thread-safe.</summary>
public sealed class PlannedRing
{
    private readonly RingJob _job;

    private readonly FormingModel _model;

    private RingBounds? _range;

    internal PlannedRing(RingJob job, FormingModel model, DiePrediction prediction)
    {
        Prediction = prediction;
        FormedBend formed = prediction.Formed!;
        Free = prediction.Ring!;
        Flattened = formed.RingWhen(Release.HeldFlat);
        if (job.Scatter.RefusalFor(model, job.Analysis) is { } refusal)
        {
            throw Guard.Refused("scatter", refusal);
        }

        _job = job;
        _model = model;
        Layout = DevelopedLayout.For(Free, job.Analysis.Section, job.Wanted.Arc, job.Cutting.Ends.On(formed), job.Cutting.Kerf);
        Closure = job.Wanted.Joint is { } joint && RingClosure.TryFor(Layout, joint, out RingClosure? closure) ? closure : null;
        HandbookLength = Handbook(job, Free);
        CutLength = Layout.CutLengthIn(job.Cutting.CutStyle);
        Bar =
            job.Cutting.BarLength is { } bar && Layout.TryPiecesFrom(bar, job.Cutting.CutStyle, out BarUtilization? pieces) ? pieces : null;
        BlankMass = Layout.MassOf(job.Analysis.Material.Density);
        Effort = BendEffort.Of(formed, job.Bender.Drive);
        Work = Energy.FromJoules(Layout.DevelopedLength.Meters * Effort.WorkPerLength.Newtons);
        Serves = 2 * Math.Abs(prediction.Difference!.Value.Meters) <= job.Wanted.Tolerance.Meters * (1 + 1e-12);
        Check = RingCheck.Of(Free, RoundChord(ReachOf(Free, job.Wanted.Arc), job.Cutting.CutStyle), job.Wanted.Arc);
    }

    /// <summary>The die with the interval of its ring, the chance of the tolerance and the risk.</summary>
    public DiePrediction Prediction { get; }

    /// <summary>Whether the ring is within the tolerance of the job; if not, no die of the rack serves.</summary>
    public bool Serves { get; }

    /// <summary>The ring as it comes off, free.</summary>
    public FinishedRing Free { get; }

    /// <summary>The ring when it is held or pressed flat.</summary>
    public FinishedRing Flattened { get; }

    /// <summary>The free ring over everything that scatters.</summary>
    public RingBounds Range =>
        _range ??= RingBounds.Of(_model, _job.Analysis, Prediction.Die, Release.Free, _job.Wanted.Arc.Turn, _job.Scatter);

    /// <summary>Distortion checks of the loaded bend.</summary>
    public DistortionReport Distortion => Prediction.Distortion!;

    /// <summary>Developed and blank length and marks, for the free ring.</summary>
    public DevelopedLayout Layout { get; }

    /// <summary>
    /// How a full ring is trimmed and closed; null when the job does not say, or the ring is too small for the saw cut or the root opening.
    /// </summary>
    public RingClosure? Closure { get; }

    /// <summary>
    /// Developed length of the same ring by the handbook angle-ring rule, to set beside <see cref="Layout"/>; null unless it is a full ring
    /// of equal angle.
    /// </summary>
    public Length? HandbookLength { get; }

    /// <summary>The blank as it is cut: rounded up by the rule of the job.</summary>
    public Length CutLength { get; }

    /// <summary>
    /// Blanks of that cut length from a bar, or null when no bar length is given or a bar is more than a million of them long.
    /// </summary>
    public BarUtilization? Bar { get; }

    /// <summary>Mass of one blank.</summary>
    public Mass BlankMass { get; }

    /// <summary>Moments and forces.</summary>
    public BendEffort Effort { get; }

    /// <summary>Work to bend the ring: its developed length, every section as under the tool. Friction comes on top.</summary>
    public Energy Work { get; }

    /// <summary>What to measure afterwards.</summary>
    public RingCheck Check { get; }

    /// <summary>Die and ring.</summary>
    public override string ToString() => $"{Prediction.Die}: {Free}";

    private static Length? Handbook(RingJob job, FinishedRing ring)
    {
        if (!job.Wanted.Arc.IsFullRing || job.Analysis.Section.EqualLegs is not { Direction: { } direction } radial)
        {
            return null;
        }

        Length heel = direction == FlangeDirection.Out ? ring.InsideDiameter : ring.OutsideDiameter;
        return direction == FlangeDirection.Out || heel > 2 * radial.Length
            ? new EqualAngle(radial.Length, radial.Thickness, AngleFillets.Sharp).HandbookBlankLength(heel, direction)
            : null;
    }

    /// <summary>
    /// The longest chord that fits: the distance between the ends of a short arc, nine tenths of the inside diameter of a ring, where the
    /// rule still rests on its ends.
    /// </summary>
    private static double ReachOf(FinishedRing ring, ArcExtent arc) =>
        ring.InsideDiameter.Meters * (arc.Turn.Radians < Math.PI ? Math.Min(0.9, Math.Sin(arc.Turn.Radians / 2)) : 0.9);

    /// <summary>Rounded down to whole inches or to 10 mm, to 1 mm where that is too coarse.</summary>
    private static double RoundChord(double length, LengthStyle rule)
    {
        double step = rule.IsInInches ? 0.0254 : length > 0.1 ? 0.01 : 0.001;
        return length > 4 * step ? Math.Floor(length / step) * step : length;
    }
}
