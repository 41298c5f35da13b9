using UnitsNet;

namespace BendMath.Planning;

/// <summary>Forces and the hold-down.</summary>
internal sealed class EffortWorkings(PlannedRing ring, WorkingUnits units)
{
    public IEnumerable<Working> All()
    {
        FormedBend formed = ring.Outcome.Formed!;
        WorkingTerm moment = units.Of("M_b", "bending moment", ring.Effort.BendingMoment);
        if (formed.Contact is { } contact)
        {
            WorkingTerm[] forces =
            [
                new("F_1", "force of the support on the incoming side", units.In(contact.IncomingSupportForce), units.Force),
                new("F_2", "force of the support on the outgoing side", units.In(contact.OutgoingSupportForce), units.Force),
            ];
            yield return new("force of the nose", "F_n", "F_1 + F_2", forces, units.In(contact.NoseForce), units.Force, Sources.FormingModels);
        }

        foreach (Working working in Pull(formed.Contact, moment))
        {
            yield return working;
        }

        if (ring.Effort.HoldDownMoment.NewtonMeters > 0)
        {
            WorkingTerm held = units.Of("M_h", "size of the hold-down moment", ring.Effort.HoldDownMoment);
            WorkingTerm curvature = units.Of("κ", "loaded curvature", formed.Loaded.Curvature);
            yield return new(
                "couple of the hold-down along the bar", "m_h", "κ·M_h", [curvature, held], units.In(ring.Effort.HoldDownCouplePerLength), $"{units.Moment} per {units.Length}", Sources.Mechanics);
        }
    }

    private IEnumerable<Working> Pull(ThreePointContact? contact, WorkingTerm moment)
    {
        BendEffort effort = ring.Effort;
        if (effort.HandForce is not { } hand)
        {
            yield break;
        }

        WorkingTerm advantage = new("G", "mechanical advantage", effort.Drive.Advantage ?? 1, string.Empty);
        yield return contact is not null
            ? new("pull of the hand", "F", "F_n/G", [new("F_n", "force of the nose", units.In(contact.NoseForce), units.Force), advantage], units.In(hand), units.Force, Sources.Definition)
            : new("pull at the lever", "F", "M_b/(l·G)", [moment, units.Of("l", "length of the lever", effort.Drive.LeverLength!.Value), advantage], units.In(hand), units.Force, Sources.Definition);
    }
}
