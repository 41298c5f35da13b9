
namespace BendMath.Learning;

/// <summary>
/// What to change at the bender for the wanted ring: each thing the model lets a person set, or another die where there is none.
/// </summary>
internal static class ChangeSearch
{
    public static IReadOnlyList<ShopChange> Changes(Die die, DieChoice choice)
    {
        IReadOnlyList<FormingSetting> settings = choice.Model.SettingsOn(choice.Analysis, die);
        return settings.Count == 0 ? [AnotherDie(die, choice)] : [.. settings.Select(setting => Change(setting, choice))];
    }

    private static ShopChange Change(FormingSetting setting, DieChoice choice)
    {
        string wanted = Invariant(
            $"the wanted ring, {2 * choice.Wanted.Value.Millimeters:0.0} mm {(choice.Wanted.Reference switch { RadiusReference.InsideFace => "inside", RadiusReference.Centroid => "centroid", _ => "outside" })} diameter");
        return setting.Find(choice.Wanted, choice.Release) is { } hit && UnitsNet.Length.FromMeters(hit.Value) is var value
            ? new(setting.Advise(value, hit.Formed, wanted), setting, value, hit.Formed)
            : new(setting.NoneLeaves(wanted), setting);
    }

    private static ShopChange AnotherDie(Die die, DieChoice choice)
    {
        DiePrediction here =
            choice.Predictions.FirstOrDefault(one => one.Die == die)
                ?? DiePrediction.Of(choice.Model, choice.Analysis, die, choice.Release, choice.Wanted);
        if (here.Difference is not { } off)
        {
            return new($"Die {die.Name} leaves no ring: {here.Refusal}.");
        }

        bool tooWide = off > UnitsNet.Length.Zero;
        DiePrediction? other = tooWide ? choice.NextTighter : choice.NextWider;
        string neighbor = other is null
            ? $"there is no die in the rack that leaves a {(tooWide ? "tighter" : "wider")} one"
            : Invariant(
                $"bend over die {other.Die.Name}, which leaves a ring {2 * Math.Abs(other.Difference!.Value.Millimeters):0.0} mm {(tooWide ? "tighter than wanted" : "wider than wanted")} in diameter");
        string make = choice.IdealStampedRadius is { } ideal
            ? Invariant($"; a die for it would be stamped {ideal.Millimeters:0.0} mm")
            : string.Empty;
        (string bar, string except) = choice.Model.FixedTool(die);
        string sentence = Invariant(
            $"{bar} leaves a ring {2 * Math.Abs(off.Millimeters):0.0} mm {(tooWide ? "wider" : "tighter")} in diameter than wanted, and {except}nothing at the bender makes it {(tooWide ? "tighter" : "wider")}: {neighbor}{make}.");
        return new(sentence, other: other?.Die);
    }
}
