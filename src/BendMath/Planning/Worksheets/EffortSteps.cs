using BendMath.Evidence;
using BendMath.Forming.Effort;
using BendMath.Forming.ThreePoint;
using UnitsNet;

namespace BendMath.Planning.Worksheets;

/// <summary>Forces and the hold-down.</summary>
internal sealed class EffortSteps(PlannedRing ring, StepUnits units)
{
    public IEnumerable<WorkedStep> All()
    {
        FormedBend formed = ring.Prediction.Formed!;
        WorkedTerm moment = units.Of("M_b", "bending moment", ring.Effort.BendingMoment);
        if (formed.Contact is { } contact)
        {
            WorkedTerm[] forces =
            [
                new("F_1", "force of the support on the incoming side", units.In(contact.IncomingSupportForce), units.Force),
                new("F_2", "force of the support on the outgoing side", units.In(contact.OutgoingSupportForce), units.Force),
            ];
            WorkedTerm peak = units.Of("M_0", "moment under the nose", contact.PeakMoment);
            WorkedTerm shift = units.Of("x", "shift of the contact toward the incoming side", contact.ContactShift);
            WorkedTerm span = units.Of("a", "half-span", contact.HalfSpan);
            yield return new(forces[0].Meaning, "F_1", "M_0/(a - x)", [peak, span, shift], forces[0].Value, units.Force,
                Sources.FormingModels);
            yield return new(forces[1].Meaning, "F_2", "M_0/(a + x)", [peak, span, shift], forces[1].Value, units.Force,
                Sources.FormingModels);
            yield return new("force of the nose", "F_n", "F_1 + F_2", forces, units.In(contact.NoseForce), units.Force,
                Sources.FormingModels);
        }

        foreach (WorkedStep working in Pull(formed.Contact, moment))
        {
            yield return working;
        }

        foreach (WorkedStep working in Work(moment))
        {
            yield return working;
        }

        if (ring.Effort.HoldDownMoment.NewtonMeters != 0)
        {
            WorkedTerm held = units.Of("M_r", "hold-down moment", ring.Effort.HoldDownMoment);
            WorkedTerm curvature = units.Of("κ", "loaded curvature", formed.Loaded.Curvature);
            yield return new(
                "couple of the hold-down along the bar", "m_h", "κ·M_r", [curvature, held], units.In(ring.Effort.HoldDownCouplePerLength),
                    $"{units.Moment} per {units.Length}", Sources.Mechanics);
        }
    }

    private IEnumerable<WorkedStep> Work(WorkedTerm moment)
    {
        string perLength = $"{units.Energy} per {units.Length}";
        LoadedBend loaded = ring.Prediction.Formed!.Loaded;
        WorkedTerm work = new("w", "work to bend a unit of length", units.In(ring.Effort.WorkPerLength), perLength);
        WorkedTerm length = units.Of("L_0", "length of straight bar that becomes the arc", ring.Layout.DevelopedLength);
        yield return new(work.Meaning, work.Symbol, "∫M_b dκ from straight to this state",
            [units.Of("κ", "loaded curvature", loaded.Curvature)], work.Value, work.Unit, Sources.Dies, isSearched: true);
        yield return new("work to bend the arc", "W", "w·L_0", [work, length], units.In(ring.Work), units.Energy, Sources.Dies);

        ReciprocalLength inPlane = ring.Free.Curvature * Math.Cos(ring.Free.DishAngle.Radians);
        WorkedTerm spring = units.Of("Δκ", "curvature lost on release", loaded.Curvature - inPlane);
        WorkedTerm aside =
            units.Of("Δκ_r", "curvature lost about the radial axis", ring.Free.Curvature * -Math.Sin(ring.Free.DishAngle.Radians));
        WorkedTerm held = units.Of("M_r", "hold-down moment", loaded.HoldDownMoment);
        bool dished = ring.Effort.HoldDownMoment.NewtonMeters != 0;
        yield return new(
            "what springs back of a unit of length",
            "u",
            dished ? "(M_b·Δκ + M_r·Δκ_r)/2" : "M_b·Δκ/2",
            dished ? [moment, spring, held, aside] : [moment, spring],
            units.In(ring.Effort.StoredEnergyPerLength),
            perLength,
            Sources.Dies);
    }

    private IEnumerable<WorkedStep> Pull(ThreePointContact? contact, WorkedTerm moment)
    {
        BendEffort effort = ring.Effort;
        if (effort.HandForce is not { } hand)
        {
            yield break;
        }

        WorkedTerm advantage = new("G", "mechanical advantage", effort.Drive.Advantage ?? 1, string.Empty);
        yield return contact is not null
            ? new("pull of the hand", "F", "F_n/G", [new("F_n", "force of the nose", units.In(contact.NoseForce), units.Force), advantage],
                units.In(hand), units.Force, Sources.Definition)
            : new("pull at the lever", "F", "M_b/(l·G)",
                [moment, units.Of("l", "length of the lever", effort.Drive.LeverLength!.Value), advantage], units.In(hand), units.Force,
                    Sources.Definition);
        if (contact is null && effort.Drive.PullLimit is { } limit && effort.LeverLengthAtLimit is { } lever)
        {
            WorkedTerm most = new("F_l", "limit of the pull", units.In(limit), units.Force);
            yield return new("lever at which the pull is at its limit", "l_l", "M_b/(F_l·G)", [moment, most, advantage], units.In(lever),
                units.Length, Sources.Definition);
        }
    }
}
