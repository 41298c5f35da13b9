using BendMath.Guards;
using UnitsNet;

namespace BendMath.Learning;

/// <summary>One way to reach the wanted ring from the die at hand, with its number. Immutable and thread-safe.</summary>
public sealed class ShopChange
{
    internal ShopChange(string sentence, FormingSetting? setting = null, Length? value = null, FormedBend? formed = null, Die? other = null)
    {
        Sentence = sentence;
        Setting = setting;
        Value = value;
        Formed = formed;
        OtherDie = other;
    }

    /// <summary>What to set at the bender; null when nothing but another die would do.</summary>
    public FormingSetting? Setting { get; }

    /// <summary>What to set it to; null when no value leaves the wanted ring.</summary>
    public Length? Value { get; }

    /// <summary>The next die toward the wanted ring, or null.</summary>
    public Die? OtherDie { get; }

    /// <summary>The bar formed so, corrected as the model is; null when the change does not leave the wanted ring.</summary>
    public FormedBend? Formed { get; }

    /// <summary>Whether the change leaves the wanted ring.</summary>
    public bool Hits => Formed is not null;

    /// <summary>What to do, in a sentence.</summary>
    public string Sentence { get; }

    /// <summary>What to change to hit a wanted ring with the die at hand.</summary>
    /// <param name="model">How the bender forms.</param>
    /// <param name="analysis">Section and material.</param>
    /// <param name="die">The die at hand.</param>
    /// <param name="rack">All dies.</param>
    /// <param name="wanted">The wanted ring.</param>
    /// <param name="release">How the ring is let go before it is judged.</param>
    /// <returns>One change for each of <see cref="FormingModel.SettingsOn"/>: the stroke for three-point bending, stroke and feed bump by
    /// bump; where there is none, as for wrapping, another die.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The wanted radius leaves no inside radius, or the release is not a defined
    /// value.</exception>
    public static IReadOnlyList<ShopChange> For(FormingModel model, BendAnalysis analysis, Die die, DieRack rack, BendRadius wanted,
        Release release)
    {
        Guard.NotNull(model, nameof(model));
        Guard.NotNull(die, nameof(die));
        return ChangeSearch.Changes(die, DieChoice.For(rack, analysis, wanted, model, release));
    }

    /// <summary>The sentence.</summary>
    public override string ToString() => Sentence;
}
