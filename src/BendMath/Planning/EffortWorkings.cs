using UnitsNet;

namespace BendMath.Planning;

/// <summary>Forces and the hold-down.</summary>
internal sealed class EffortWorkings(RingJob job, PlannedRing ring, WorkingUnits units)
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

        if (ring.Effort.HandForce is { } hand && job.LeverLength is { } lever)
        {
            yield return new("pull at the lever", "F", "M_b/l", [moment, units.Of("l", "length of the lever", lever)], units.In(hand), units.Force, Sources.Definition);
        }

        if (ring.Effort.HoldDownMoment.NewtonMeters > 0)
        {
            WorkingTerm held = units.Of("M_h", "size of the hold-down moment", ring.Effort.HoldDownMoment);
            WorkingTerm curvature = units.Of("κ", "loaded curvature", formed.Loaded.Curvature);
            yield return new(
                "couple of the hold-down along the bar", "m_h", "κ·M_h", [curvature, held], units.In(ring.Effort.HoldDownCouplePerLength), $"{units.Moment} per {units.Length}", Sources.Mechanics);
        }
    }
}
