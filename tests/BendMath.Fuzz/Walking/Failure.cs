using System.Diagnostics;
using System.Text.RegularExpressions;

namespace BendMath.Fuzz.Walking;

/// <summary>Something the library may not do, and how to see it again.</summary>
/// <param name="Text">What happened.</param>
/// <param name="Place">Where in the library; failures of one place and kind are one finding.</param>
/// <param name="Repro">C# or JSON text that shows it.</param>
internal sealed partial record Failure(string Text, string Place, string Repro)
{
    private const int Frames = 3;

    private const int Letters = 160;

    /// <summary>The text without its numbers.</summary>
    public string Finding => WithoutNumbers(Text);

    public static string WithoutNumbers(string text) => Numbers().Replace(text.Length > Letters ? text[..Letters] : text, "#");

    public static Failure Of(Exception thrown, string during, string repro) =>
        new($"{during} throws {thrown.GetType().Name}: {thrown.Message}", PlaceOf(thrown), repro);

    private static string PlaceOf(Exception thrown) => string.Join(" < ", new StackTrace(thrown, true).GetFrames()
        .Where(
            frame =>
                frame.GetMethod()?.DeclaringType?.Assembly.GetName().Name is "BendMath" or "BendMath.Json" or "BendMath.Csv"
                    or "BendMath.Plotting")
        .Where(frame => frame.GetMethod()!.DeclaringType!.Name != "Guard")
        .Take(Frames)
        .Select(
            frame =>
                $"{frame.GetMethod()!.DeclaringType!.Name}.{frame.GetMethod()!.Name}{(frame.GetFileLineNumber() is > 0 and int line ? $":{line}" : string.Empty)}"));

    [GeneratedRegex(@"-?\d+([.,]\d+)*(E[+-]?\d+)?|∞|NaN")]
    private static partial Regex Numbers();
}
