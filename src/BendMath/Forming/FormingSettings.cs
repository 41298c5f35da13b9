using BendMath.Forming.Bumps;
using BendMath.Forming.ThreePoint;
using UnitsNet;

namespace BendMath.Forming;

/// <summary>The stroke of incremental three-point bending; the one for a ring follows in closed form.</summary>
internal sealed class PinchStroke(IncrementalThreePointBending model, BendAnalysis analysis, Die die, double? current)
    : StrokeSetting(die, LeastShare * model.Setup.A, model.Setup.A, current)
{
    private const double LeastShare = 1e-4;

    internal override FormedBend? Form(double value) => model.PinchedAt(analysis, value).Formed;

    internal override (double Value, FormedBend Formed)? Find(BendRadius wanted, Release release) =>
        model.Setup.Refusal(analysis.Section) is null && model.StrokeFor(analysis, wanted, release) is { } stroke
            && Form(stroke.Meters) is { } formed ? (stroke.Meters, formed) : null;
}

/// <summary>The stroke of equal bumps: the ring tightens as it grows, up to the half-span or the circle of the nose.</summary>
internal sealed class BumpStroke(BumpBending model, BendAnalysis analysis, Die die, double most, double? current)
    : StrokeSetting(die, LeastShare * most, most, current)
{
    private const double LeastShare = 1e-4;

    private readonly BendAnalysis _bar = analysis.ForSearch();

    internal override FormedBend? Form(double value) => model.BumpedAt(analysis, value);

    private protected override FormedBend? Sketch(double value) => model.BumpedAt(_bar, value);
}

/// <summary>The feed from bump to bump at the stroke of the die: the ring need not widen evenly with it.</summary>
internal sealed class BumpFeed(BumpBending model, BendAnalysis analysis, double? stroke)
    : FormingSetting(false, FinestShare * model.Setup.A, model.Setup.A, model.Feed.Meters)
{
    /// <summary>Finest feed that is offered, over the half-span.</summary>
    private const double FinestShare = 0.02;

    private readonly BendAnalysis _bar = analysis.ForSearch();

    /// <summary>Steps of a fifth.</summary>
    private protected override int Intervals => 21;

    private string Kept => stroke is { } closed ? Invariant($"the stroke of {closed * 1e3:0.00} mm") : "its stroke";

    internal override FormedBend? Form(double value) => FormIn(analysis, value);

    private protected override FormedBend? Sketch(double value) => FormIn(_bar, value);

    internal override string Advise(Length value, FormedBend formed, string wanted) =>
        Invariant(
            $"With {Kept}, feed {value.Millimeters:0.0} mm from bump to bump instead of {model.Feed.Millimeters:0.0} mm: that "
                + $"leaves {wanted}{(value > model.Feed && formed.Contact is { } contact ? Invariant($", but with coarser facets, which "
                + $"rise {contact.FacetRise.Millimeters:0.0} mm") : string.Empty)}.");

    internal override string NoneLeaves(string wanted) =>
        Invariant($"With {Kept}, no feed from {LeastMeters * 1e3:0.0} to {MostMeters * 1e3:0.0} mm leaves {wanted}.");

    private FormedBend? FormIn(BendAnalysis bar, double value) => stroke is { } at ? model.WithFeed(value).BumpedAt(bar, at) : null;
}
