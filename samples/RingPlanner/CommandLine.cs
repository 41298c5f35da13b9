namespace RingPlanner;

/// <summary>What the user asked for.</summary>
internal sealed record CommandLine(string? File, bool Json, bool Help, bool Example)
{
    /// <summary>Null, or what is wrong with the arguments.</summary>
    public static string? Read(IReadOnlyList<string> arguments, out CommandLine command)
    {
        command = new(null, false, false, false);
        foreach (string argument in arguments)
        {
            switch (argument)
            {
                case "--json":
                    command = command with { Json = true };
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
                        return $"There is no option \"{argument}\"; the options are --json, --example and --help.";
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
}
