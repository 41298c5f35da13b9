using BendMath.Fuzz.Making;
using BendMath.Fuzz.Walking;

namespace BendMath.Fuzz.Stages;

internal enum End
{
    /// <summary>The input was built and everything asked of it came.</summary>
    Sound,

    /// <summary>A door refused what was drawn, as its documentation says.</summary>
    Refused,

    /// <summary>There was no way to what was drawn.</summary>
    OutOfReach,

    /// <summary>The library did what it may not do.</summary>
    Failed,
}

/// <param name="End">How it ended.</param>
/// <param name="What">The door that refused or could not be reached.</param>
/// <param name="Failure">The failure, when it is one.</param>
internal sealed record Outcome(End End, string What, Failure? Failure)
{
    public static Outcome Sound { get; } = new(End.Sound, string.Empty, null);

    public static Outcome Of(Failure? failure) => failure is null ? Sound : new(End.Failed, string.Empty, failure);
}

/// <summary>A way to draw an input and to try it.</summary>
internal abstract class Stage(string name, double share)
{
    /// <summary>The word for it on the command line.</summary>
    public string Name => name;

    /// <summary>Its share of the time.</summary>
    public double Share => share;

    /// <summary>Draws an input from the tape, tries it and counts its kinds.</summary>
    public Outcome Run(Tape tape, Ledger ledger)
    {
        try
        {
            return Try(tape, ledger);
        }
        catch (Refused refused)
        {
            return new(End.Refused, $"{refused.Door.DeclaringType!.Name}.{refused.Door.Name}: {Failure.WithoutNumbers(refused.Message)}",
                null);
        }
        catch (OutOfReach unreachable)
        {
            return new(End.OutOfReach, unreachable.Message, null);
        }
        catch (Exception thrown) when (thrown is not Broken)
        {
            return Outcome.Of(Walking.Failure.Of(thrown, "drawing the input", "(what was asked of the library while the input was drawn)"));
        }
        catch (Broken broken)
        {
            return Outcome.Of(
                Walking.Failure.Of(broken.InnerException!, $"{broken.Call.Door!.DeclaringType!.Name}.{broken.Call.Door.Name}",
                    broken.Call.ToCode("answer")));
        }
    }

    /// <summary>The kinds that must be built at least once, by group.</summary>
    public virtual IEnumerable<(string Group, string Kind)> Expected => [];

    protected abstract Outcome Try(Tape tape, Ledger ledger);
}
