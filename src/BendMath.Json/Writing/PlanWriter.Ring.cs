using BendMath.Distortion;
using BendMath.Forming.Effort;
using BendMath.Forming.ThreePoint;
using BendMath.Forming.Variation;

namespace BendMath.Json.Writing;

internal sealed partial class PlanWriter
{
    private void Ring(PlannedRing? ring)
    {
        if (ring is null)
        {
            json.WriteNull("ring");
            return;
        }

        json.WriteStartObject("ring");
        json.WriteString("die", ring.Prediction.Die.Name);
        json.WriteBoolean("serves", ring.Serves);
        Finished("free", ring.Free);
        Finished("heldFlat", ring.Flattened);
        Bounds(ring.Range);
        Loaded(ring.Prediction.Formed!);
        Distortion(ring.Distortion);
        Layout(ring);
        Effort(ring);
        Check(ring.Check);
        json.WriteEndObject();
    }

    private void Bounds(RingBounds range)
    {
        json.WriteStartObject("bounds");
        json.WriteString("whatDiffers", range.Scatter.ToString());
        Range("insideDiameter", range.InsideDiameter);
        Range("developedLength", range.DevelopedLength);
        json.WriteStartArray("influences");
        foreach (InputContribution influence in range.Contributions)
        {
            json.WriteStartObject();
            json.WriteString("input", influence.Input);
            Range("insideDiameter", influence.InsideDiameter);
            json.WriteNumber("sharePercent", influence.Share.Percent);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteString("note", range.Note);
        json.WriteEndObject();
    }

    private void Finished(string name, FinishedRing? ring)
    {
        if (ring is null)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        Millimeters("insideDiameter", ring.InsideDiameter);
        Millimeters("outsideDiameter", ring.OutsideDiameter);
        Millimeters("insideRadius", ring.InsideRadius);
        Millimeters("insideRadiusAtHeel", ring.InsideRadiusAtHeel);
        Millimeters("centroidRadius", ring.CentroidRadius);
        Millimeters("outsideRadius", ring.OutsideRadius);
        json.WriteNumber("curvaturePerMeter", ring.Curvature.InverseMeters);
        Millimeters("lengthPreservingFiberFromInside", ring.LengthPreservingFiberFromInside);
        json.WriteNumber("dishDegrees", ring.DishAngle.Degrees);
        json.WriteEndObject();
    }

    private void Loaded(FormedBend formed)
    {
        LoadedBend loaded = formed.Loaded;
        json.WriteStartObject("loaded");
        Millimeters("insideRadius", loaded.InsideRadius);
        json.WriteNumber("curvaturePerMeter", loaded.Curvature.InverseMeters);
        Millimeters("neutralAxisFromInside", loaded.NeutralAxisFromInside);
        json.WriteNumber("outerFiberStrainPercent", loaded.OuterFiberStrain.Percent);
        json.WriteNumber("innerFiberStrainPercent", loaded.InnerFiberStrain.Percent);
        json.WriteBoolean("isElastic", loaded.IsElastic);
        json.WriteNumber("curvatureRatio", formed.CurvatureRatio);
        Contact(formed.Contact);
        json.WriteEndObject();
    }

    private void Contact(ThreePointContact? contact)
    {
        if (contact is null)
        {
            json.WriteNull("contact");
            return;
        }

        json.WriteStartObject("contact");
        Millimeters("stroke", contact.Stroke);
        Millimeters("setStroke", contact.SetStroke);
        Millimeters("give", contact.Give);
        Millimeters("threeContactRadius", contact.ThreeContactRadius);
        Millimeters("contactShift", contact.ContactShift);
        json.WriteBoolean("wrapsNose", contact.WrapsNose);
        json.WriteNumber("incomingSupportForceNewtons", contact.IncomingSupportForce.Newtons);
        json.WriteNumber("outgoingSupportForceNewtons", contact.OutgoingSupportForce.Newtons);
        json.WriteNumber("noseForceNewtons", contact.NoseForce.Newtons);
        Millimeters("straightTail", contact.StraightTail);
        json.WriteEndObject();
    }

    private void Distortion(DistortionReport report)
    {
        json.WriteStartObject("distortion");
        json.WriteString("risk", CamelCase(report.Level.ToString()));
        json.WriteStartArray("findings");
        foreach (DistortionFinding finding in report.Findings)
        {
            json.WriteStartObject();
            json.WriteString("check", finding.Check);
            json.WriteString("risk", CamelCase(finding.Level.ToString()));
            json.WriteNumber("demand", finding.Demand);
            json.WriteNumber("limit", finding.Limit);
            Number("margin", double.IsInfinity(finding.Margin) ? null : finding.Margin);
            json.WriteString("sentence", finding.Sentence);
            Source(finding.Source);
            json.WriteString("validity", finding.Validity);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("advice");
        foreach (DistortionRemedy remedy in report.Advice)
        {
            json.WriteStringValue(remedy.Sentence);
        }

        json.WriteEndArray();
        json.WriteStartArray("notChecked");
        foreach (string sentence in report.NotChecked)
        {
            json.WriteStringValue(sentence);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private void Layout(PlannedRing ring)
    {
        DevelopedLayout layout = ring.Layout;
        json.WriteStartObject("cut");
        Millimeters("developedLength", layout.DevelopedLength);
        Millimeters("blankLength", layout.BlankLength);
        Millimeters("cutLength", ring.CutLength);
        Millimeters("arcStartMark", layout.ArcStartMark);
        Millimeters("arcEndMark", layout.ArcEndMark);
        json.WriteNumber("blankMassKilograms", ring.BlankMass.Kilograms);
        Number("piecesFromBar", ring.Bar?.Pieces);
        Millimeters("offcut", ring.Bar?.Offcut);
        Closure(ring.Closure);
        json.WriteEndObject();
    }

    private void Closure(RingClosure? closure)
    {
        if (closure is null)
        {
            json.WriteNull("closing");
            return;
        }

        json.WriteStartObject("closing");
        json.WriteString("cut", closure.Joint.IsCutTogether ? "together" : "one by one");
        Millimeters("rootOpening", closure.Joint.RootOpening);
        Millimeters("gapAfterCut", closure.GapAfterCut);
        Millimeters("firstCutMark", closure.FirstCutMark);
        Millimeters("secondCutMark", closure.SecondCutMark);
        Millimeters("diameterChange", closure.DiameterChange);
        json.WriteEndObject();
    }

    private void Effort(PlannedRing ring)
    {
        BendEffort effort = ring.Effort;
        json.WriteStartObject("effort");
        json.WriteNumber("bendingMomentNewtonMeters", effort.BendingMoment.NewtonMeters);
        json.WriteNumber("holdDownMomentNewtonMeters", effort.HoldDownMoment.NewtonMeters);
        json.WriteNumber("holdDownCoupleNewtonMetersPerMeter", effort.HoldDownCouplePerLength.Newtons);
        Number("noseForceNewtons", effort.NoseForce?.Newtons);
        Number("handForceNewtons", effort.HandForce?.Newtons);
        json.WriteString("whyNoHandForce", effort.WhyNoHandForce);
        json.WriteBoolean("forcesAreTheLeast", effort.IsLeast);
        if (effort.IsWithinPullLimit is { } within)
        {
            json.WriteBoolean("isWithinPullLimit", within);
        }
        else
        {
            json.WriteNull("isWithinPullLimit");
        }

        Millimeters("leverLengthAtLimit", effort.LeverLengthAtLimit);
        Number("advantageAtLimit", effort.AdvantageAtLimit);
        json.WriteNumber("workJoules", ring.Work.Joules);
        json.WriteNumber("storedEnergyJoulesPerMeter", effort.StoredEnergyPerLength.Newtons);
        json.WriteEndObject();
    }

    private void Check(RingCheck check)
    {
        json.WriteStartObject("check");
        Millimeters("insideDiameter", check.InsideDiameter);
        Millimeters("outsideDiameter", check.OutsideDiameter);
        Millimeters("tapeAroundOutside", check.TapeAroundOutside);
        Millimeters("openingBetweenEnds", check.OpeningBetweenEnds);
        Millimeters("chord", check.Chord);
        Millimeters("rise", check.Rise);
        Millimeters("riseChangePerPercent", check.RiseChangePerPercent);
        json.WriteEndObject();
    }

    private void Range(string name, LengthRange? range)
    {
        Millimeters("lowest" + char.ToUpperInvariant(name[0]) + name.Substring(1), range?.Low);
        Millimeters("highest" + char.ToUpperInvariant(name[0]) + name.Substring(1), range?.High);
    }
}
