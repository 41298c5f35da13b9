using System.Text.RegularExpressions;
using UnitsNet;

namespace BendMath.Tests.Guards;

public sealed class ArgumentFaultTests
{
    [Fact]
    public void A_refusal_carries_its_parts()
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(
            "wall", () => new RoundTube(Length.FromMillimeters(30), Length.FromMillimeters(35)));
        ArgumentFault fault = ArgumentFault.Of(refused)!;
        Assert.Equal(("wall", "is 35 mm"), (fault.Argument, fault.Found));
        Assert.StartsWith("must be smaller than half the outside diameter, 15 mm", fault.Rule, StringComparison.Ordinal);
        Assert.Equal($"Wall {fault.Rule}, but is 35 mm.", fault.About("Wall"));
        Assert.StartsWith(fault.ToString(), refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rule_may_say_it_all()
    {
        ArgumentFault fault = ArgumentFault.Of(Assert.Throws<ArgumentException>(() => new DieRack([])))!;
        Assert.Null(fault.Found);
        Assert.Equal("dies must hold at least one die.", fault.ToString());
    }

    [Fact]
    public void Other_exceptions_carry_none()
    {
        Assert.Null(ArgumentFault.Of(new ArgumentException("width must be odd.", "width")));
        Assert.Null(ArgumentFault.Of(Assert.Throws<ArgumentNullException>(() => new DieRack(null!))));
        Assert.Throws<ArgumentNullException>("refused", () => ArgumentFault.Of(null!));
        Assert.Throws<ArgumentException>("subject",
            () => ArgumentFault.Of(Assert.Throws<ArgumentException>(() => new DieRack([])))!.About(" "));
    }

    /// <summary>A reader of files relies on the parts of a refusal; an exception made elsewhere would have none.</summary>
    [Fact]
    public void Only_the_guard_makes_refusals()
    {
        string sources = Path.Combine(Repository.Root, "src", "BendMath");
        string[] made = [.. Directory.EnumerateFiles(sources, "*.cs", SearchOption.AllDirectories)
            .Select(file => Path.GetRelativePath(sources, file).Replace('\\', '/'))
            .Where(
                file =>
                    !file.StartsWith("obj/", StringComparison.Ordinal) && !file.StartsWith("bin/", StringComparison.Ordinal)
                        && !file.StartsWith("Polyfills/", StringComparison.Ordinal))
            .Where(file => MakesRefusal(File.ReadAllText(Path.Combine(sources, file))))];
        Assert.Equal(["Guards/ArgumentFault.cs"], made);
        Assert.True(MakesRefusal("throw new ArgumentException(\"width must be odd.\", nameof(width));"));
        Assert.False(MakesRefusal("throw new ArgumentNullException(nameof(width)); /// new in ArgumentException"));
    }

    private static bool MakesRefusal(string source) =>
        Regex.IsMatch(source, @"\bnew\s+Argument(OutOfRange)?Exception\b", RegexOptions.CultureInvariant);
}
