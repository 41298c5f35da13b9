using BendMath.Forming.Bumps;
using BendMath.Guards;
using UnitsNet;

namespace BendMath;

/// <summary>
/// Extra length at the ends of a blank: the tails the bender leaves straight or spoiled, given or by the forming model, and what the trim
/// cuts take. Immutable and thread-safe.
/// </summary>
public sealed record EndAllowance
{
    private readonly double _trim;

    /// <summary>Makes an allowance.</summary>
    /// <param name="start">Spoiled length at the start, zero or more.</param>
    /// <param name="end">Spoiled length at the end, zero or more.</param>
    /// <param name="trim">Further length for the trim cuts and fitting, zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length is negative or not finite.</exception>
    public EndAllowance(Length start, Length end, Length trim)
    {
        StartMeters = Guard.NonNegative(start, nameof(start));
        EndMeters = Guard.NonNegative(end, nameof(end));
        _trim = Guard.NonNegative(trim, nameof(trim));
    }

    private EndAllowance(Length trim)
        : this(Length.Zero, Length.Zero, trim) => AreFromModel = true;

    /// <summary>No extra length: the theoretical blank.</summary>
    public static EndAllowance None { get; } = new(Length.Zero, Length.Zero, Length.Zero);

    /// <summary>The ends a bender leaves straight: on a pinching bender a half-span on each side, on a wrapping one none.</summary>
    /// <param name="formed">What the forming model says of the bar on the die.</param>
    /// <param name="trim">Further length for the trim cuts and fitting, zero or more: what overlaps when both ends are cut
    /// together.</param>
    /// <exception cref="ArgumentNullException">The formed bend is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The trim is negative or not finite.</exception>
    public static EndAllowance For(FormedBend formed, Length trim)
    {
        Length tail = Guard.NotNull(formed, nameof(formed)).Contact?.StraightTail ?? Length.Zero;
        return new(tail, tail, trim);
    }

    /// <summary>The ends a bumped bar has: its tails, as far as they are nearly straight.</summary>
    /// <param name="bar">The bumped bar.</param>
    /// <param name="trim">Further length for the trim cuts and fitting, zero or more.</param>
    /// <exception cref="ArgumentNullException">The bar is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The trim is negative or not finite.</exception>
    public static EndAllowance For(BumpedBar bar, Length trim) => new(
        Guard.NotNull(bar, nameof(bar)).LeadingTail, bar.TrailingTail, trim);

    /// <summary>The tails the forming model says the bender leaves straight; see <see cref="On"/>.</summary>
    /// <param name="trim">Further length for the trim cuts and fitting, zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The trim is negative or not finite.</exception>
    public static EndAllowance FromModel(Length trim) => new(trim);

    /// <summary>Whether the forming model says how long the tails are; then both count as zero until a bar is formed.</summary>
    public bool AreFromModel { get; }

    /// <summary>Spoiled length at the start.</summary>
    public Length Start => Length.FromMeters(StartMeters);

    /// <summary>Spoiled length at the end.</summary>
    public Length End => Length.FromMeters(EndMeters);

    /// <summary>Further length for the trim cuts and fitting.</summary>
    public Length Trim => Length.FromMeters(_trim);

    /// <summary>All of it.</summary>
    public Length Total => Length.FromMeters(TotalMeters);

    internal double StartMeters { get; }

    internal double EndMeters { get; }

    internal double TotalMeters => StartMeters + EndMeters + _trim;

    /// <summary>The lengths for a bar as it is formed.</summary>
    /// <param name="formed">What the forming model says of the bar on the die.</param>
    /// <exception cref="ArgumentNullException">The formed bend is null.</exception>
    public EndAllowance On(FormedBend formed)
    {
        Guard.NotNull(formed, nameof(formed));
        return AreFromModel ? For(formed, Trim) : this;
    }

    /// <summary>The lengths themselves, for a blank that is laid out.</summary>
    internal static EndAllowance Given(EndAllowance ends, string name) => Guard.NotNull(ends, name).AreFromModel
        ? throw Guard.Refused(name, "must be given lengths", "are those of a forming model")
        : ends;

    /// <summary>The three lengths in millimeters, or that the model says them.</summary>
    public override string ToString() => AreFromModel
        ? Invariant($"as the bender leaves them, {_trim * 1e3:0.##} mm trim")
        : Invariant($"{StartMeters * 1e3:0.##} mm at the start, {EndMeters * 1e3:0.##} mm at the end, {_trim * 1e3:0.##} mm trim");
}
