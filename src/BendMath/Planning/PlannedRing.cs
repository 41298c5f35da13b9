using UnitsNet;

namespace BendMath;

/// <summary>The plan on the best die, step by step. Immutable and thread-safe.</summary>
public sealed class PlannedRing
{
    internal PlannedRing(RingJob job, FormingModel model, DieOutcome outcome)
    {
        Outcome = outcome;
        FormedBend formed = outcome.Formed!;
        Free = outcome.Ring!;
        Flattened = formed.RingWhen(Release.HeldFlat);
        Range = YieldScan.Of(model, job.Analysis, outcome.Die, Release.Free, job.Arc);
        Distortion = DistortionReport.Of(formed.Loaded);
        Layout = DevelopedLayout.For(Free, job.Analysis.Section, job.Arc, job.Ends, job.Kerf);
        HandbookLength = Handbook(job, Free);
        Bar = job.BarLength is { } bar ? Layout.PiecesFrom(bar) : null;
        BlankMass = Layout.MassOf(job.Analysis.Material.Density);
        Effort = BendEffort.Of(formed, job.LeverLength);
        Check = RingCheck.Of(Free, Length.FromMeters(RoundChord(ReachOf(Free, job.Arc))));
    }

    /// <summary>The die and what it leaves.</summary>
    public DieOutcome Outcome { get; }

    /// <summary>The ring as it comes off, free.</summary>
    public FinishedRing Free { get; }

    /// <summary>The ring when it is held or pressed flat.</summary>
    public FinishedRing Flattened { get; }

    /// <summary>The free ring over the yield range of the material.</summary>
    public YieldScan Range { get; }

    /// <summary>Distortion checks of the loaded bend.</summary>
    public DistortionReport Distortion { get; }

    /// <summary>Developed and blank length and marks, for the free ring.</summary>
    public DevelopedLayout Layout { get; }

    /// <summary>Developed length of the same ring by the handbook angle-ring rule, to set beside <see cref="Layout"/>; null unless it is a full ring of equal angle.</summary>
    public Length? HandbookLength { get; }

    /// <summary>Blanks from a bar, or null when no bar length is given.</summary>
    public BarYield? Bar { get; }

    /// <summary>Mass of one blank.</summary>
    public Mass BlankMass { get; }

    /// <summary>Moments and forces.</summary>
    public BendEffort Effort { get; }

    /// <summary>What to measure afterwards.</summary>
    public RingCheck Check { get; }

    /// <summary>Die and ring.</summary>
    public override string ToString() => Outcome.ToString();

    private static Length? Handbook(RingJob job, FinishedRing ring)
    {
        if (!job.Arc.IsFullRing || job.Analysis.Section.Features.EqualLegs is not { } radial)
        {
            return null;
        }

        bool flangeOut = radial.FreeEdge == FreeEdge.Outside;
        return AngleRingRule.BlankLength(
            flangeOut ? ring.InsideDiameter : ring.OutsideDiameter, radial.Length, radial.Thickness, flangeOut ? FlangeDirection.Out : FlangeDirection.In);
    }

    /// <summary>The inside radius, or the chord between the ends of an arc too short for it.</summary>
    private static double ReachOf(FinishedRing ring, ArcExtent arc) =>
        arc.Radians < Math.PI ? ring.Inside * Math.Min(1, 2 * Math.Sin(arc.Radians / 2)) : ring.Inside;

    /// <summary>Rounded down to 1, 2 or 5 times a power of ten, so that a rule of that length is at hand.</summary>
    private static double RoundChord(double length)
    {
        double decade = Math.Pow(10, Math.Floor(Math.Log10(length)));
        double lead = length / decade;
        return decade * (lead >= 5 ? 5 : lead >= 2 ? 2 : 1);
    }
}
