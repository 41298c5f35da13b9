using BendMath.Fuzz.Stages;
using BendMath.Fuzz.Walking;

namespace BendMath.Fuzz;

/// <summary>Failures of one kind: the first, and how many there were.</summary>
/// <param name="stage">The stage it came from.</param>
/// <param name="input">The words that ask for the input again.</param>
/// <param name="tape">What the input was drawn from.</param>
/// <param name="first">The first failure.</param>
internal sealed class Finding(Stage stage, string input, IReadOnlyList<double> tape, Failure first)
{
    public Stage Stage => stage;

    public string Input => input;

    public IReadOnlyList<double> Tape => tape;

    public Failure First => first;

    public int Times { get; set; }
}
