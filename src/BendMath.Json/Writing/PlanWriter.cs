using System.Text.Json;
using BendMath.Evidence;
using BendMath.Learning;
using UnitsNet;

namespace BendMath.Json.Writing;

/// <summary>Writes a plan: the job, what the sizes rest on, the dies. <c>PlanWriter.Ring.cs</c> writes the planned ring.</summary>
internal sealed partial class PlanWriter(Utf8JsonWriter json)
{
    public void Write(RingPlan plan)
    {
        json.WriteStartObject();
        Job(plan.Job);
        Model("model", plan.Model);
        Measured("usedRing", plan.UsedRing);
        Sentences("fit", plan.Fit?.Sentences ?? []);
        json.WriteStartArray("corrections");
        foreach (RingDiagnosis correction in plan.Corrections)
        {
            Correction(correction);
        }

        json.WriteEndArray();
        json.WriteStartArray("agreements");
        foreach (Hypothesis agreement in plan.Agreements)
        {
            json.WriteStartObject();
            json.WriteString("kind", CamelCase(agreement.Kind.ToString()));
            json.WriteBoolean("agrees", agreement.Fits);
            Number("largestDeviationPercent", agreement.LargestDeviation?.Percent);
            json.WriteString("sentence", agreement.Sentence);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("dies");
        foreach (DiePrediction die in plan.Choice.Predictions)
        {
            Die(plan, die);
        }

        json.WriteEndArray();
        DieToMake(plan);
        Sentences("whatToChange", [.. plan.Choice.Changes.Select(change => change.Sentence)]);
        json.WriteString("secondRing", plan.TrialToTellApart?.Sentence);
        json.WriteString("nextRing", plan.TrialToNarrow?.Sentence);
        Ring(plan.Ring);
        json.WriteStartArray("advisories");
        foreach (Advisory advisory in plan.Advisories)
        {
            json.WriteStartObject();
            json.WriteString("code", advisory.Code);
            json.WriteString("message", advisory.Message);
            json.WriteBoolean("isMinor", advisory.IsMinor);
            Source(advisory.Source);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        Cautions();
        json.WriteEndObject();
    }

    private void Cautions()
    {
        json.WriteStartObject("cautions");
        Sentences("die", SafetyNotices.Die);
        Sentences("distortion", SafetyNotices.Distortion);
        Sentences("cut", SafetyNotices.Cut);
        Sentences("bend", SafetyNotices.Bend);
        Sentences("check", SafetyNotices.Check);
        json.WriteEndObject();
    }

    private void Job(RingJob job)
    {
        BarMaterial material = job.Analysis.Material;
        json.WriteString("name", job.Name);
        json.WriteString("stock", job.Analysis.Section.Stock.Name);
        json.WriteString("orientation", job.Analysis.Section.Orientation.IsUsual ? null : job.Analysis.Section.Orientation.ToString());
        json.WriteStartObject("material");
        json.WriteString("name", material.Name);
        json.WriteString("law", material.Law.ToString());
        json.WriteNumber("elasticModulusGigapascals", material.Law.ElasticModulus.Gigapascals);
        json.WriteNumber("yieldMegapascals", material.Law.YieldStress.Megapascals);
        Number("lowestYieldMegapascals", material.YieldRange?.Low.Megapascals);
        Number("highestYieldMegapascals", material.YieldRange?.High.Megapascals);
        json.WriteNumber("densityKilogramsPerCubicMeter", material.Density.KilogramsPerCubicMeter);
        Number("elongationPercent", material.Elongation?.Percent);
        json.WriteNumber("unloadingSharePercent", material.UnloadingShare.Percent);
        json.WriteEndObject();
        Size("wanted", job.Wanted.Radius);
        json.WriteNumber("arcDegrees", job.Wanted.Arc.Turn.Degrees);
        json.WriteStartObject("ends");
        Millimeters("start", job.Cutting.Ends.Start);
        Millimeters("end", job.Cutting.Ends.End);
        Millimeters("trim", job.Cutting.Ends.Trim);
        json.WriteEndObject();
        json.WriteBoolean("tailsFromModel", job.Cutting.Ends.AreFromModel);
        json.WriteNumber("quantity", job.Wanted.Quantity);
        Millimeters("kerf", job.Cutting.Kerf);
        Millimeters("barLength", job.Cutting.BarLength);
        Millimeters("leverLength", job.Bender.Drive.LeverLength);
        Number("mechanicalAdvantage", job.Bender.Drive.Advantage);
        Number("pullLimitNewtons", job.Bender.Drive.PullLimit?.Newtons);
        Millimeters("tolerance", job.Wanted.Tolerance);
        json.WriteBoolean("isToleranceGiven", job.Wanted.IsToleranceGiven);
    }

    private void Model(string name, FormingModel? model)
    {
        if (model is null)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        json.WriteString("name", model.Name);
        json.WriteString("assumption", model.Assumption);
        json.WriteStartArray("measuredRings");
        foreach (MeasuredRing ring in model.Evidence)
        {
            json.WriteStringValue(ring.ToString());
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private void Measured(string name, MeasuredRing? ring)
    {
        if (ring is null)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        json.WriteString("die", ring.Die.Name);
        json.WriteString("bar", ring.Analysis.Section.ToString());
        json.WriteString("material", ring.Analysis.Material.Name);
        json.WriteString("state", ring.Release == Release.Free ? "free" : "held flat");
        Size("measured", ring.Measured);
        json.WriteEndObject();
    }

    private void Correction(RingDiagnosis correction)
    {
        json.WriteStartObject();
        Measured("ring", correction.Ring);
        json.WriteStartArray("explanations");
        foreach (Hypothesis explanation in correction.Hypotheses)
        {
            json.WriteStartObject();
            json.WriteString("kind", CamelCase(explanation.Kind.ToString()));
            json.WriteBoolean("fits", explanation.Fits);
            json.WriteString("sentence", explanation.Sentence);
            Model("model", explanation.Model);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private void DieToMake(RingPlan plan)
    {
        if (plan.Choice.Ideal is not { } ideal)
        {
            json.WriteNull("dieToMake");
            return;
        }

        json.WriteStartObject("dieToMake");
        Millimeters("insideFaceRadius", plan.Choice.IdealInsideFaceRadius);
        Millimeters("stampedRadius", plan.Choice.IdealStampedRadius);
        json.WriteString("stampMeans", plan.Model.FaceOf(ideal.Die!).ToString());
        Millimeters("stroke", ideal.Contact?.SetStroke);
        json.WriteEndObject();
    }

    private void Die(RingPlan plan, DiePrediction outcome)
    {
        DieChoice choice = plan.Choice;
        json.WriteStartObject();
        json.WriteString("name", outcome.Die.Name);
        Millimeters("stampedRadius", outcome.Die.StampedRadius);
        json.WriteString("stampMeans", outcome.Die.Face.ToString());
        json.WriteString("modelTakesStampToMean", plan.Model.FaceOf(outcome.Die).ToString());
        Millimeters("faceLength", outcome.Die.FaceLength);
        Millimeters("noseRadius", outcome.Die.NoseRadius);
        json.WriteString("mate", outcome.Die.Mate?.ToString());
        json.WriteString("refusal", outcome.Refusal);
        Millimeters("radiusMinusWanted", outcome.Difference);
        Number("chanceWithinTolerancePercent", outcome.Chance?.Percent);
        json.WriteString("whyNoChance", outcome.ChanceNote);
        Range("insideDiameter", outcome.Interval);
        json.WriteString("intervalIs", outcome.IntervalNote);
        json.WriteString("risk", outcome.Risk is { } risk ? CamelCase(risk.ToString()) : null);
        json.WriteBoolean("isBest", ReferenceEquals(outcome, plan.Choice.Best));
        json.WriteBoolean("isNextTighter", ReferenceEquals(outcome, choice.NextTighter));
        json.WriteBoolean("isNextWider", ReferenceEquals(outcome, choice.NextWider));
        Finished("free", outcome.Ring);
        Finished("heldFlat",
            outcome.Formed is { } formed && !formed.IsStraightWhen(Release.HeldFlat) ? formed.RingWhen(Release.HeldFlat) : null);
        json.WriteEndObject();
    }

    private void Sentences(string name, IReadOnlyList<string> sentences)
    {
        json.WriteStartArray(name);
        foreach (string sentence in sentences)
        {
            json.WriteStringValue(sentence);
        }

        json.WriteEndArray();
    }

    private void Size(string name, BendRadius size)
    {
        json.WriteStartObject(name);
        json.WriteString("line", size.Reference switch
        {
            RadiusReference.InsideFace => "inside face",
            RadiusReference.Centroid => "centroid",
            _ => "outside face",
        });
        Millimeters("radius", size.Value);
        json.WriteEndObject();
    }

    private void Source(Source source)
    {
        json.WriteString("source", source.Citation);
        json.WriteString("sourceKind", CamelCase(source.Kind.ToString()));
    }

    private void Millimeters(string name, Length? length) => Number(name + "Millimeters", length?.Millimeters);

    private void Number(string name, double? value)
    {
        if (value is { } number)
        {
            json.WriteNumber(name, number);
        }
        else
        {
            json.WriteNull(name);
        }
    }

    private static string CamelCase(string name) => char.ToLowerInvariant(name[0]) + name.Substring(1);
}
