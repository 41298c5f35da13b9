using System.Globalization;

namespace RingPlanner;

/// <summary>How the plans are printed.</summary>
internal enum Form
{
    Text,
    Markdown,
    Html,
    Json,
}

/// <summary>What the user asked for.</summary>
internal sealed record CommandLine(string? File, Form Form, bool Details, bool Workings, int? Fraction, bool Help, bool Example)
{
    public static string Options => "--details, --workings, --fractions N, --markdown, --html, --json, --example and --help";

    /// <summary>Null, or what is wrong with the arguments.</summary>
    public static string? Read(IReadOnlyList<string> arguments, out CommandLine command)
    {
        command = new(null, Form.Text, false, false, null, false, false);
        for (int i = 0; i < arguments.Count; i++)
        {
            string argument = arguments[i];
            switch (argument)
            {
                case "--details":
                    command = command with { Details = true };
                    break;
                case "--workings":
                    command = command with { Workings = true };
                    break;
                case "--fractions":
                    string finest = ++i < arguments.Count ? arguments[i] : "nothing";
                    if (!int.TryParse(finest, NumberStyles.None, CultureInfo.InvariantCulture, out int fraction)
                        || fraction is not (8 or 16 or 32 or 64))
                    {
                        return $"--fractions is followed by 8, 16, 32 or 64, the finest fraction of an inch, but by \"{finest}\" here.";
                    }

                    command = command with { Fraction = fraction };
                    break;
                case "--markdown" or "--html" or "--json":
                    if (command.Form != Form.Text)
                    {
                        return $"One form at a time: --{Name(command.Form)} and {argument} are given.";
                    }

                    command =
                        command with { Form = argument == "--markdown" ? Form.Markdown : argument == "--html" ? Form.Html : Form.Json };
                    break;
                case "--help" or "-h":
                    command = command with { Help = true };
                    break;
                case "--example":
                    command = command with { Example = true };
                    break;
                default:
                    if (argument.StartsWith('-'))
                    {
                        return $"There is no option \"{argument}\"; the options are {Options}.";
                    }

                    if (command.File is not null)
                    {
                        return $"One file at a time: \"{command.File}\" and \"{argument}\" are given.";
                    }

                    command = command with { File = argument };
                    break;
            }
        }

        return null;
    }

    private static string Name(Form form) => form switch { Form.Markdown => "markdown", Form.Html => "html", _ => "json" };
}
