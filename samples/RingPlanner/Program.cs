using System.Text;

namespace RingPlanner;

internal static class Program
{
    private static int Main(string[] arguments)
    {
        Console.OutputEncoding = new UTF8Encoding(false);
        bool plain = Console.IsOutputRedirected || !string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR"));
        return Planner.Run(arguments, Console.Out, Console.Error, plain);
    }
}
