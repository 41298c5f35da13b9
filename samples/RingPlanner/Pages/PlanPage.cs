using System.Globalization;
using BendMath;
using BendMath.Evidence;
using BendMath.Json;
using RingPlanner.Papers;

namespace RingPlanner.Pages;

/// <summary>A plan as text, in the order of the work. What the sizes rest on comes before any size; a caution stands at its step.</summary>
internal sealed partial class PlanPage
{
    private readonly Paper _paper;

    private readonly RingPlan _plan;

    private readonly RingJobEntry _entry;

    private readonly Units _units;

    private PlanPage(Paper paper, RingPlan plan, RingJobEntry entry, Units units)
    {
        _paper = paper;
        _plan = plan;
        _entry = entry;
        _units = units;
    }

    public static void Print(Paper paper, RingPlan plan, RingJobEntry entry, Units units) =>
        new PlanPage(paper, plan, entry, units).Print();

    private void Print()
    {
        Job();
        Basis();
        DieStep();
        if (_plan.Ring is not { } ring)
        {
            return;
        }

        DistortionStep(ring);
        CutStep(ring);
        BendStep(ring);
        CheckStep(ring);
    }

    private void Job()
    {
        RingJob job = _plan.Job;
        BarMaterial material = job.Analysis.Material;
        _paper.Title(job.Name);
        if (_entry.Note is { } note)
        {
            _paper.Fact("Note", note);
        }

        if (_units.Rounding is { } rounding)
        {
            _paper.Fact("Inches", rounding);
        }

        _paper.Fact("Bar", _units.Sentence(job.Analysis.Section.ToString()));
        string yield = material.YieldRange is { } range
            ? $"{_units.Stress(material.Law.YieldStress)}, may be {_units.Stress(range.Low)} to {_units.Stress(range.High)}"
            : _units.Stress(material.Law.YieldStress);
        _paper.Fact("Material", $"{material.Name}, yield {yield}");
        _paper.Fact("Law", material.Law.ToString());
        if (material.UnloadingShare.DecimalFractions < 1)
        {
            _paper.Fact("On release",
                string.Format(CultureInfo.InvariantCulture, "{0:0.##} % of the elastic modulus, so it springs back more",
                    material.UnloadingShare.Percent));
        }

        string radius = job.Wanted.Arc.IsFullRing ? string.Empty : $" (radius {_units.Size(job.Wanted.Radius.Value)})";
        string quantity = job.Wanted.Quantity > 1 ? FormattableString.Invariant($"{job.Wanted.Quantity} × ") : string.Empty;
        _paper.Fact("Wanted",
            $"{quantity}{job.Wanted.Arc}, {WantedSize(job.Wanted.Radius)}{radius}, give or take {_units.Size(job.Wanted.Tolerance)}{(job.Wanted.IsToleranceGiven ? string.Empty : " (assumed)")}");
    }

    private string WantedSize(BendRadius wanted) => wanted.Reference switch
    {
        RadiusReference.InsideFace => $"inside diameter {_units.Size(2 * wanted.Value)}",
        RadiusReference.Centroid => $"diameter between centroids {_units.Size(2 * wanted.Value)}",
        _ => $"outside diameter {_units.Size(2 * wanted.Value)}",
    };

    private void Basis()
    {
        _paper.Heading("What the sizes rest on");
        _paper.Fact("Model", _plan.Model.Name);
        _paper.Fact("It assumes", _units.Sentence(_plan.Model.Assumption));
        _paper.Fact("Measured rings", _plan.Model.Evidence.Count == 0
            ? "none: the model is unproved on this bender"
            : string.Join("; ", _plan.Model.Evidence.Select(Ring)));
        foreach (Advisory advisory in _plan.Advisories)
        {
            _paper.Fact(advisory.IsMinor ? "note" : "WARNING",
                string.Format(CultureInfo.InvariantCulture, "{0} [{1}; {2}]", _units.Sentence(advisory.Message), advisory.Code,
                    advisory.Source));
        }
    }

    private string Ring(MeasuredRing ring) =>
        $"{_units.Sentence(ring.Analysis.Section.ToString())} on die {ring.Die.Name}, {WantedSize(ring.Measured)}, measured {(ring.Release == Release.Free ? "free, as it came off" : "held flat")}";

    private void Cautions(IReadOnlyList<string> cautions)
    {
        foreach (string caution in cautions)
        {
            _paper.Marked("CAUTION", caution);
        }
    }
}
