using System.Globalization;

namespace BendMath.Fuzz;

/// <summary>The command line.</summary>
/// <param name="Seed">The seed of everything drawn.</param>
/// <param name="Seconds">Stop drawing after so many seconds; null to stop by count.</param>
/// <param name="Jobs">Stop after so many inputs.</param>
/// <param name="Only">Try this kind of input only, or all.</param>
/// <param name="Again">Try this one input again, and print it.</param>
internal sealed record Options(ulong Seed, double? Seconds, long Jobs, string? Only, ulong? Again)
{
    public const string Help = """
        BendMath.Fuzz tries random inputs on every public door of the library.

          --seed N      the seed; the same seed draws the same inputs (1)
          --seconds S   stop after so many seconds (60, unless --jobs is given)
          --jobs N      stop after so many inputs
          --wrap        only jobs bent by wrapping
          --models      only jobs of the other forming models
          --faults      only jobs with a known kind of contradiction or doubt
          --files       only files, sound and spoiled
          --doors       only calls of every public constructor and method
          --again N     only input N of the kind asked for, and print it

        Ends with 0 when nothing failed, with 1 when something did, and with 2 when it was asked wrongly.
        """;

    private static readonly string[] Kinds = ["wrap", "models", "faults", "files", "doors"];

    /// <summary>Null when the words cannot be read.</summary>
    public static Options? Read(IReadOnlyList<string> words)
    {
        Options options = new(1, null, long.MaxValue, null, null);
        for (int i = 0; i < words.Count; i++)
        {
            if (Kinds.Contains(words[i].TrimStart('-')) && words[i].StartsWith("--", StringComparison.Ordinal) && options.Only is null)
            {
                options = options with { Only = words[i][2..] };
                continue;
            }

            if (i + 1 == words.Count || !ulong.TryParse(words[++i], NumberStyles.None, CultureInfo.InvariantCulture, out ulong number))
            {
                return null;
            }

            switch (words[i - 1])
            {
                case "--seed":
                    options = options with { Seed = number };
                    break;
                case "--seconds":
                    options = options with { Seconds = number };
                    break;
                case "--jobs":
                    options = options with { Jobs = (long)Math.Min(number, long.MaxValue) };
                    break;
                case "--again":
                    options = options with { Again = number };
                    break;
                default:
                    return null;
            }
        }

        return options is { Again: not null, Only: null } ? null
            : options is { Seconds: null, Jobs: long.MaxValue } ? options with { Seconds = 60 }
            : options;
    }
}
