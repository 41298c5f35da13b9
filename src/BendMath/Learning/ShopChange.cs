using UnitsNet;

namespace BendMath;

/// <summary>What can be changed at the bender.</summary>
public enum ChangeKind
{
    /// <summary>How far the bender closes.</summary>
    Stroke,

    /// <summary>The distance from bump to bump.</summary>
    Feed,

    /// <summary>The die.</summary>
    Die,
}

/// <summary>One way to reach the wanted ring from the die at hand, with its number. Immutable and thread-safe.</summary>
public sealed class ShopChange
{
    internal ShopChange(ChangeKind kind, string sentence, FormedBend? formed = null, Length? stroke = null, Length? feed = null, Die? other = null)
    {
        Kind = kind;
        Sentence = sentence;
        Formed = formed;
        Stroke = stroke;
        Feed = feed;
        OtherDie = other;
    }

    /// <summary>What to change.</summary>
    public ChangeKind Kind { get; }

    /// <summary>The stroke to close; null when the stroke is not the matter or none leaves the wanted ring.</summary>
    public Length? Stroke { get; }

    /// <summary>The feed from bump to bump; null when the feed is not the matter or none leaves the wanted ring.</summary>
    public Length? Feed { get; }

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
    /// <returns>One change for three-point bending (the stroke), two bump by bump (stroke and feed), one for wrapping (another die).</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The wanted radius leaves no inside radius, or the release is not a defined value.</exception>
    public static IReadOnlyList<ShopChange> For(FormingModel model, BendAnalysis analysis, Die die, DieRack rack, BendRadius wanted, Release release)
    {
        Guard.NotNull(model, nameof(model));
        Guard.NotNull(die, nameof(die));
        return ChangesFor(die, DieChoice.For(rack, analysis, wanted, model, release), analysis);
    }

    /// <summary>The sentence.</summary>
    public override string ToString() => Sentence;

    internal static IReadOnlyList<ShopChange> ChangesFor(Die die, DieChoice choice, BendAnalysis analysis) => new Learning.ChangeSearch(die, choice, analysis).Changes();
}
