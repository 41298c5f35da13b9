using BendMath.Fuzz.Making;
using BendMath.Fuzz.Sizes;
using BendMath.Fuzz.Walking;

namespace BendMath.Fuzz.Stages;

/// <summary>Jobs with a known fault: a door refuses them, or they are planned.</summary>
internal sealed class FaultStage(double share) : Stage("faults", share)
{
    public override IEnumerable<(string Group, string Kind)> Expected => KnownFault.All.Select(fault => ("fault", fault.Name));

    protected override Outcome Try(Tape tape, Ledger ledger)
    {
        KnownFault fault = tape.Of(KnownFault.All);
        Maker maker = new(tape, fault.Rules);
        maker.Scene.Models = fault.Models;
        maker.Scene.Laws = Scene.Quick;
        maker.Scene.Widened = fault.Widened * (fault.Widened is null ? 1 : tape.Log(0.9, 1.1));
        ledger.Count("fault", fault.Name);
        Made made;
        try
        {
            made = JobSizes.Make(maker);
        }
        catch (Refused refused)
        {
            ledger.Count("what becomes of a fault",
                $"{fault.Name}: {refused.Door.DeclaringType!.Name} refuses {((ArgumentException)refused.InnerException!).ParamName}");
            throw;
        }

        tape.Trying = () => made.ToCode("job");
        Failure? failure = PlanCheck.Of((RingJob)made.Value!, () => made.ToCode("job"), out _);
        ledger.Count("what becomes of a fault", $"{fault.Name}: {(failure is null ? "planned" : "FAILS")}");
        return Outcome.Of(failure);
    }
}
