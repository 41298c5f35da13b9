using System.Globalization;
using BendMath.Forming;
using BendMath.Numerics;
using UnitsNet;

namespace BendMath.Learning;

/// <summary>Finds the stroke or the feed that leaves the wanted ring. A curvature ratio is taken off the wanted ring first and put on the formed bar last.</summary>
internal sealed class ChangeSearch
{
    /// <summary>Finest feed that is offered, over the half-span.</summary>
    private const double FinestFeed = 0.02;

    private readonly Die _die;

    private readonly DieChoice _choice;

    private readonly BendAnalysis _analysis;

    private readonly FormingModel _plain;

    private readonly List<CurvatureRatioCorrection> _corrections = [];

    private readonly BendRadius? _target;

    private readonly Release _release;

    public ChangeSearch(Die die, DieChoice choice, BendAnalysis analysis)
    {
        _die = die;
        _choice = choice;
        _analysis = analysis;
        _plain = choice.Model;
        _target = choice.Wanted;
        _release = choice.Release;
        while (_plain is CurvatureRatioCorrection correction)
        {
            _corrections.Add(correction);
            _target = _target is null ? null : correction.Uncorrected(analysis, _target, _release);
            _release = correction.Release;
            _plain = correction.Basis;
        }

        _plain = _plain switch
        {
            IncrementalThreePointBending pinching => pinching.With(die),
            BumpBending bumping => bumping.With(die),
            _ => _plain,
        };
    }

    public IReadOnlyList<ShopChange> Changes()
    {
        FormingTrial trial = _plain.Try(_analysis, _die);
        Length? now = trial.Formed?.Contact?.SetStroke;
        return _plain switch
        {
            IncrementalThreePointBending pinching => [Stroke(Pinched(pinching), now)],
            BumpBending bumping => [Stroke(Bumped(bumping), now), Feed(bumping, now)],
            _ => [AnotherDie()],
        };
    }

    private string WantedText => string.Format(
        CultureInfo.InvariantCulture,
        "the wanted ring, {0:0.0} mm {1} diameter",
        2 * _choice.Wanted.Value.Millimeters,
        _choice.Wanted.Reference switch { RadiusReference.InsideFace => "inside", RadiusReference.Centroid => "centroid", _ => "outside" });

    private (Length Stroke, FormedBend Formed)? Pinched(IncrementalThreePointBending model) =>
        _target is not null && model.Setup.Refusal(_analysis.Section) is null && model.StrokeFor(_analysis, _target, _release) is { } stroke && Corrected(model.FormAtStroke(_analysis, stroke)) is { } formed
            ? (stroke, formed)
            : null;

    private (Length Stroke, FormedBend Formed)? Bumped(BumpBending model)
    {
        if (_target is null || model.Setup.Refusal(_analysis.Section) is not null)
        {
            return null;
        }

        // The ring tightens as the stroke grows, up to the half-span or the circle of the nose.
        double a = model.Setup.A;
        double nose = new BumpEquilibrium(_analysis, model.Setup).NoseCurvature;
        double high = (1 - 1e-9) * (nose * a < 1 ? model.Setup.StrokeOf(nose) : a);
        double low = 1e-4 * high;
        double Residual(double stroke) => OffBy(model.FormAtStroke(_analysis, Length.FromMeters(stroke)));
        if (!(Residual(low) > 0 && Residual(high) < 0))
        {
            return null;
        }

        Length found = Length.FromMeters(Bracketed.Root(Residual, low, high));
        return Corrected(model.FormAtStroke(_analysis, found)) is { } formed ? (found, formed) : null;
    }

    private ShopChange Stroke((Length Stroke, FormedBend Formed)? found, Length? now)
    {
        if (found is not { } hit)
        {
            return new(ChangeKind.Stroke, $"No stroke leaves {WantedText}: the bar would have to be bent tighter than the nose allows, or the supports cannot close so far.");
        }

        double change = now is { } before ? hit.Stroke.Millimeters - before.Millimeters : 0;
        return new(
            ChangeKind.Stroke,
            now is null
                ? string.Format(CultureInfo.InvariantCulture, "Close {0:0.00} mm past the line tangent to the nose: that leaves {1}.", hit.Stroke.Millimeters, WantedText)
                : string.Format(
                    CultureInfo.InvariantCulture,
                    "At the setting of die {0}, close {1:0.00} mm instead of {2:0.00} mm, {3:0.00} mm {4}: that leaves {5}.",
                    _die.Name,
                    hit.Stroke.Millimeters,
                    now.Value.Millimeters,
                    Math.Abs(change),
                    change >= 0 ? "more" : "less",
                    WantedText),
            hit.Formed,
            stroke: hit.Stroke);
    }

    private ShopChange Feed(BumpBending model, Length? stroke)
    {
        double a = model.Setup.A;
        string kept = stroke is { } closed ? string.Format(CultureInfo.InvariantCulture, "the stroke of {0:0.00} mm", closed.Millimeters) : "its stroke";
        ShopChange none = new(ChangeKind.Feed, string.Format(
            CultureInfo.InvariantCulture, "With {0}, no feed from {1:0.0} to {2:0.0} mm leaves {3}.", kept, FinestFeed * a * 1e3, a * 1e3, WantedText));
        if (_target is null || stroke is not { } at)
        {
            return none;
        }

        double Residual(double feed) => OffBy(new BumpBending(model.Setup, Length.FromMeters(feed)).FormAtStroke(_analysis, at));

        // The ring need not widen evenly with the feed: of the crossings between feeds in steps of a fifth, the one nearest to the feed in use.
        double[] feeds = [.. Enumerable.Range(0, 22).Select(i => a * Math.Pow(FinestFeed, 1 - i / 21.0))];
        double[] off = [.. feeds.Select(Residual)];
        int[] crossings = [.. Enumerable.Range(0, feeds.Length - 1).Where(i => off[i] * off[i + 1] < 0).OrderBy(i => Math.Abs(Math.Log(feeds[i] / model.Feed.Meters)))];
        if (crossings.Length == 0)
        {
            return none;
        }

        Length found = Length.FromMeters(Bracketed.Root(Residual, feeds[crossings[0]], feeds[crossings[0] + 1]));
        return Corrected(new BumpBending(model.Setup, found).FormAtStroke(_analysis, at)) is not { } formed ? none : new(
            ChangeKind.Feed,
            string.Format(
                CultureInfo.InvariantCulture,
                "With {0}, feed {1:0.0} mm from bump to bump instead of {2:0.0} mm: that leaves {3}{4}.",
                kept,
                found.Millimeters,
                model.Feed.Millimeters,
                WantedText,
                found > model.Feed && formed.Contact is { } contact
                    ? string.Format(CultureInfo.InvariantCulture, ", but with coarser facets, which rise {0:0.0} mm", contact.FacetRise.Millimeters)
                    : string.Empty),
            formed,
            feed: found);
    }

    private ShopChange AnotherDie()
    {
        DieOutcome here = _choice.Outcomes.FirstOrDefault(outcome => outcome.Die == _die) ?? new(_die, _choice.Model.Try(_analysis, _die), _choice.Release, _choice.Wanted);
        if (here.Difference is not { } off)
        {
            return new(ChangeKind.Die, $"Die {_die.Name} leaves no ring: {here.Refusal}.");
        }

        bool tooWide = off > Length.Zero;
        DieOutcome? other = tooWide ? _choice.NextTighter : _choice.NextWider;
        string neighbor = other is null
            ? $"there is no die in the rack that leaves a {(tooWide ? "tighter" : "wider")} one"
            : string.Format(
                CultureInfo.InvariantCulture,
                "bend over die {0}, which leaves a ring {1:0.0} mm {2} in diameter",
                other.Die.Name,
                2 * Math.Abs(other.Difference!.Value.Millimeters),
                tooWide ? "tighter than wanted" : "wider than wanted");
        string make = _choice.IdealStampedRadius is { } ideal
            ? string.Format(CultureInfo.InvariantCulture, "; a die for it would be stamped {0:0.0} mm", ideal.Millimeters)
            : string.Empty;
        return new(
            ChangeKind.Die,
            string.Format(
                CultureInfo.InvariantCulture,
                _plain is PairBending
                    ? "Die {0}, closed with its mate until it is solid, leaves a ring {1:0.0} mm {2} in diameter than wanted, and but for shims or another mate nothing at the bender makes it {3}: {4}{5}."
                    : "A bar that lies on die {0} leaves a ring {1:0.0} mm {2} in diameter than wanted, and nothing at the bender makes it {3}: {4}{5}.",
                _die.Name,
                2 * Math.Abs(off.Millimeters),
                tooWide ? "wider" : "tighter",
                tooWide ? "tighter" : "wider",
                neighbor,
                make),
            other: other?.Die);
    }

    /// <summary>Inside radius over the target, less 1; a straight bar counts as far too wide.</summary>
    private double OffBy(FormedBend formed) => formed.IsStraightWhen(_release)
        ? 1
        : Math.Min(1, formed.RingWhen(_release).RadiusTo(_target!.Reference).Meters / _target.Radius - 1);

    private FormedBend? Corrected(FormedBend formed)
    {
        FormedBend? bar = formed;
        foreach (CurvatureRatioCorrection correction in Enumerable.Reverse(_corrections))
        {
            bar = bar is null ? null : correction.Correct(bar);
        }

        return bar;
    }
}
