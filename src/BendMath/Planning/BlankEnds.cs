using BendMath.Guards;
using UnitsNet;

namespace BendMath;

/// <summary>The straight ends of a blank: given lengths, or the tails the bender leaves. Immutable and thread-safe.</summary>
public sealed record BlankEnds
{
    private readonly EndAllowance _allowance;

    private BlankEnds(EndAllowance allowance, bool areFromModel)
    {
        _allowance = allowance;
        AreFromModel = areFromModel;
    }

    /// <summary>No straight ends: the theoretical blank.</summary>
    public static BlankEnds None { get; } = new(EndAllowance.None, false);

    /// <summary>Whether the forming model says how long the tails are.</summary>
    public bool AreFromModel { get; }

    /// <summary>The given lengths; null where the forming model says how long the tails are.</summary>
    public EndAllowance? Given => AreFromModel ? null : _allowance;

    /// <summary>Further length for the trim cuts and fitting.</summary>
    public Length Trim => _allowance.Trim;

    /// <summary>Ends of given lengths.</summary>
    /// <param name="allowance">The lengths.</param>
    /// <exception cref="ArgumentNullException">The lengths are null.</exception>
    public static BlankEnds Of(EndAllowance allowance) => new(Guard.NotNull(allowance, nameof(allowance)), false);

    /// <summary>The tails the forming model says the bender leaves straight.</summary>
    /// <param name="trim">Further length for the trim cuts and fitting, zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The trim is negative or not finite.</exception>
    public static BlankEnds FromModel(Length trim) =>
        new(new(Length.Zero, Length.Zero, Length.FromMeters(Guard.NonNegative(trim, nameof(trim)))), true);

    /// <summary>The lengths for a bar as it is formed.</summary>
    /// <param name="formed">What the forming model says of the bar on the die.</param>
    /// <exception cref="ArgumentNullException">The formed bend is null.</exception>
    public EndAllowance For(FormedBend formed)
    {
        Guard.NotNull(formed, nameof(formed));
        return AreFromModel ? EndAllowance.For(formed, Trim) : _allowance;
    }

    /// <summary>The lengths, or that the model says them.</summary>
    public override string ToString() =>
        AreFromModel ? Invariant($"as the bender leaves them, {Trim.Millimeters:0.##} mm trim") : _allowance.ToString();
}
