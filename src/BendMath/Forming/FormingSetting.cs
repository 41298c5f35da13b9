using BendMath.Guards;
using BendMath.Numerics;
using UnitsNet;

namespace BendMath;

/// <summary>
/// Something a person can set at a bender, for one bar on one die: what it is, between which ends it can be set, where it stands, and the
/// bar it leaves. Immutable and thread-safe.
/// </summary>
public abstract class FormingSetting
{
    private protected FormingSetting(bool isStroke, double least, double most, double? current)
    {
        IsStroke = isStroke;
        LeastMeters = least;
        MostMeters = most;
        CurrentMeters = current;
    }

    /// <summary>
    /// Whether it is the stroke, how far the bender closes past the line tangent to the nose; otherwise it is the feed, the distance from
    /// bump to bump.
    /// </summary>
    public bool IsStroke { get; }

    /// <summary>The least it can be set to.</summary>
    public Length Least => Length.FromMeters(LeastMeters);

    /// <summary>The most it can be set to.</summary>
    public Length Most => Length.FromMeters(MostMeters);

    /// <summary>What it is set to where the die is closed as its stamp says; null where the die implies nothing.</summary>
    public Length? Current => CurrentMeters is { } meters ? Length.FromMeters(meters) : null;

    internal double LeastMeters { get; }

    internal double MostMeters { get; }

    internal double? CurrentMeters { get; }

    /// <summary>
    /// Places between which the ring may cross the wanted one more than once; one interval where it tightens or widens all the way.
    /// </summary>
    private protected virtual int Intervals => 1;

    /// <summary>The bar formed with a value of the setting, or null when nothing can be formed so.</summary>
    /// <param name="value">From <see cref="Least"/> to <see cref="Most"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside its range.</exception>
    public FormedBend? FormedAt(Length value)
    {
        double meters = Guard.Positive(value, nameof(value));
        return meters >= LeastMeters && meters <= MostMeters
            ? Form(meters)
            : throw Guard.Fault(nameof(value), value,
                $"must be from {Guard.MillimetersText(LeastMeters)} to {Guard.MillimetersText(MostMeters)}");
    }

    /// <summary>Kind and ends.</summary>
    public override string ToString() =>
        $"{(IsStroke ? "stroke" : "feed")} from {Guard.MillimetersText(LeastMeters)} "
            + $"to {Guard.MillimetersText(MostMeters)}";

    /// <summary>The bar formed with a value, or null.</summary>
    internal abstract FormedBend? Form(double value);

    /// <summary>The same for a search.</summary>
    private protected virtual FormedBend? Sketch(double value) => Form(value);

    /// <summary>What to do for the wanted ring.</summary>
    /// <param name="value">The value that leaves it.</param>
    /// <param name="formed">The bar formed so.</param>
    /// <param name="wanted">The wanted ring in words.</param>
    internal abstract string Advise(Length value, FormedBend formed, string wanted);

    /// <summary>That no value leaves the wanted ring.</summary>
    internal abstract string NoneLeaves(string wanted);

    /// <summary>The value that leaves a ring, of several the one nearest to where it stands; null when there is none.</summary>
    internal virtual (double Value, FormedBend Formed)? Find(BendRadius wanted, Release release)
    {
        // Radius over the wanted one, less 1; a straight bar counts as far too wide, one that cannot be formed as too tight.
        double OffBy(double value) => Sketch(value) is not { } formed ? -1
            : formed.IsStraightWhen(release) ? 1
            : Math.Min(1, formed.RingWhen(release).RadiusTo(wanted.Reference).Meters / wanted.Radius - 1);

        double ratio = MostMeters / LeastMeters;
        double[] places = [.. Enumerable.Range(0, Intervals + 1).Select(i => LeastMeters * Math.Pow(ratio, (double)i / Intervals))];
        double[] off = [.. places.Select(OffBy)];
        int[] crossings = [.. Enumerable.Range(0, Intervals)
            .Where(i => off[i] * off[i + 1] < 0)
            .OrderBy(i => CurrentMeters is { } current ? Math.Abs(Math.Log(places[i] / current)) : 0)];
        if (crossings.Length == 0)
        {
            return null;
        }

        double found = Bracketed.Root(OffBy, places[crossings[0]], places[crossings[0] + 1]);
        return Form(found) is { } hit ? (found, hit) : null;
    }
}
