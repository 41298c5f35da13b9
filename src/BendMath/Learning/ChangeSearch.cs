using System.Globalization;

namespace BendMath.Learning;

/// <summary>What to change at the bender for the wanted ring: each thing the model lets a person set, or another die where there is none.</summary>
internal static class ChangeSearch
{
    public static IReadOnlyList<ShopChange> Changes(Die die, DieChoice choice, BendAnalysis analysis)
    {
        IReadOnlyList<FormingSetting> settings = choice.Model.SettingsOn(analysis, die);
        return settings.Count == 0 ? [AnotherDie(die, choice, analysis)] : [.. settings.Select(setting => Change(setting, choice))];
    }

    private static ShopChange Change(FormingSetting setting, DieChoice choice)
    {
        string wanted = string.Format(
            CultureInfo.InvariantCulture,
            "the wanted ring, {0:0.0} mm {1} diameter",
            2 * choice.Wanted.Value.Millimeters,
            choice.Wanted.Reference switch { RadiusReference.InsideFace => "inside", RadiusReference.Centroid => "centroid", _ => "outside" });
        return setting.Find(choice.Wanted, choice.Release) is { } hit && UnitsNet.Length.FromMeters(hit.Value) is var value
            ? new(setting.Advise(value, hit.Formed, wanted), setting, value, hit.Formed)
            : new(setting.NoneLeaves(wanted), setting);
    }

    private static ShopChange AnotherDie(Die die, DieChoice choice, BendAnalysis analysis)
    {
        DieOutcome here = choice.Outcomes.FirstOrDefault(outcome => outcome.Die == die) ?? new(die, choice.Model.Try(analysis, die), choice.Release, choice.Wanted);
        if (here.Difference is not { } off)
        {
            return new($"Die {die.Name} leaves no ring: {here.Refusal}.");
        }

        bool tooWide = off > UnitsNet.Length.Zero;
        DieOutcome? other = tooWide ? choice.NextTighter : choice.NextWider;
        string neighbor = other is null
            ? $"there is no die in the rack that leaves a {(tooWide ? "tighter" : "wider")} one"
            : string.Format(
                CultureInfo.InvariantCulture,
                "bend over die {0}, which leaves a ring {1:0.0} mm {2} in diameter",
                other.Die.Name,
                2 * Math.Abs(other.Difference!.Value.Millimeters),
                tooWide ? "tighter than wanted" : "wider than wanted");
        string make = choice.IdealStampedRadius is { } ideal
            ? string.Format(CultureInfo.InvariantCulture, "; a die for it would be stamped {0:0.0} mm", ideal.Millimeters)
            : string.Empty;
        (string bar, string except) = choice.Model.FixedTool(die);
        string sentence = string.Format(
            CultureInfo.InvariantCulture,
            "{0} leaves a ring {1:0.0} mm {2} in diameter than wanted, and {3}nothing at the bender makes it {4}: {5}{6}.",
            bar,
            2 * Math.Abs(off.Millimeters),
            tooWide ? "wider" : "tighter",
            except,
            tooWide ? "tighter" : "wider",
            neighbor,
            make);
        return new(sentence, other: other?.Die);
    }
}
