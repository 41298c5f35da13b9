using System.Reflection;
using BendMath.Fuzz.Making;
using BendMath.Fuzz.Sizes;
using BendMath.Fuzz.Walking;
using BendMath.Tests.Conventions;

namespace BendMath.Fuzz.Stages;

/// <summary>
/// Every public constructor and method of every public type with drawn arguments: it answers with finite numbers and clean texts, or
/// refuses as documented.
/// </summary>
internal sealed class DoorStage(double share) : Stage("doors", share)
{
    /// <summary>Doors that draw a picture or look for a file: tests of their own call them.</summary>
    private static readonly string[] LeftOut = ["ToPlot", "ToPng", "ToSvg", "SavePng", "SaveSvg", "ReadFile"];

    private static readonly IReadOnlyList<MethodBase> All =
        [.. PublicApi.Types.SelectMany(PublicApi.Callables).Where(door => !LeftOut.Contains(door.Name) && !IsPlain(door))];

    public override IEnumerable<(string Group, string Kind)> Expected => All.Select(door => ("door", NameOf(door)));

    protected override Outcome Try(Tape tape, Ledger ledger)
    {
        MethodBase door = tape.Of(All);
        Maker maker = new(tape, AllSizes.Usual);
        maker.Scene.Laws = Scene.Quick;
        Made made = maker.Through(door, (door as MethodInfo)?.ReturnType ?? door.DeclaringType!, null);
        ledger.Count("door", NameOf(door));

        // A file is a text of many lines.
        object? answer = made.Value is string text ? text.ReplaceLineEndings(" ") : made.Value;
        return Outcome.Of(
            new PublicWalk(Judge.MayThrow).FaultOf(answer) is { } fault ? new(fault, NameOf(door), made.ToCode("answer")) : null);
    }

    private static bool IsPlain(MethodBase door) =>
        door.Name is nameof(ToString) or nameof(GetHashCode) or nameof(Equals) or "GetEnumerator";

    private static string NameOf(MethodBase door) =>
        $"{door.DeclaringType!.Name}.{door.Name}({string.Join(", ", door.GetParameters().Select(parameter => parameter.Name))})";
}
