using BendMath.Evidence;
using BendMath.Guards;
using BendMath.Numerics;
using UnitsNet;

namespace BendMath.Bending.Guides;

/// <summary>
/// Stiffnesses of a guide that explain a measurement to within its error, from the softest to the stiffest. Immutable and thread-safe.
/// </summary>
public sealed record GuideRange
{
    internal GuideRange(OutOfPlaneGuide softest, OutOfPlaneGuide stiffest, IReadOnlyList<OutOfPlaneGuide> exact)
    {
        Softest = softest;
        Stiffest = stiffest;
        Exact = exact;
    }

    /// <summary>The softest guide of the range; none at all, where the range begins there.</summary>
    public OutOfPlaneGuide Softest { get; }

    /// <summary>The stiffest guide of the range; rigid, where only "at least" can be said.</summary>
    public OutOfPlaneGuide Stiffest { get; }

    /// <summary>The guides that explain the measurement as it was read; none where only its error reaches the range.</summary>
    public IReadOnlyList<OutOfPlaneGuide> Exact { get; }

    /// <summary>The range.</summary>
    public override string ToString() => Stiffest.IsRigid ? $"{Softest}, or stiffer"
        : Softest.Equals(Stiffest) ? Softest.ToString()
        : $"{Softest} to {Stiffest}";
}

/// <summary>
/// What one measured ring of an unsymmetric bar, bent to a known radius, says of the stiffness of the guide. A dish or a radius pressed
/// flat gives one value in practice; a free radius may
/// give several, or an interval, and must not be used alone. Immutable and thread-safe.
/// </summary>
/// <remarks>
/// Equation: all s = k/(k + E·I_r) in [0, 1] with |f(s) − measured| ≤ error.
/// Range: searched on 33 points and between, each crossing to rounding; a bar released elastically.
/// Source: <see cref="Sources.Mechanisms"/>
/// </remarks>
public sealed record GuideEstimate
{
    private const int Points = 32;

    private GuideEstimate(BendAnalysis analysis, IReadOnlyList<GuideRange> ranges, bool tellsNothing, string measured)
    {
        Analysis = analysis;
        Ranges = ranges;
        TellsNothing = tellsNothing;
        Measured = measured;
    }

    /// <summary>The bar.</summary>
    public BendAnalysis Analysis { get; }

    /// <summary>
    /// Every range of stiffness that explains the measurement, the softest first; empty where no guide does, or where the bar tells
    /// nothing.
    /// </summary>
    public IReadOnlyList<GuideRange> Ranges { get; }

    /// <summary>Whether the section is symmetric about the plane of the ring: it does not lean, and says nothing about the guide.</summary>
    public bool TellsNothing { get; }

    /// <summary>What was measured, in words.</summary>
    public string Measured { get; }

    /// <summary>The one stiffness that explains the measurement as read, or null where there is none or more than one.</summary>
    public OutOfPlaneGuide? Only => Ranges.SelectMany(range => range.Exact).ToArray() is { Length: 1 } exact ? exact[0] : null;

    /// <summary>From the dish of a ring released free: the measurement to prefer.</summary>
    /// <param name="analysis">The bar.</param>
    /// <param name="loaded">The radius it was bent to.</param>
    /// <param name="dish">The dish, positive when the toe of the axial leg leans outward.</param>
    /// <param name="error">What the dish may be off by, zero or more.</param>
    /// <exception cref="ArgumentNullException">The bar or the radius is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static GuideEstimate FromDish(BendAnalysis analysis, BendRadius loaded, Angle dish, Angle error)
    {
        double value = Guard.Finite(dish, nameof(dish));
        return Of(analysis, loaded, bend => bend.Release(Release.Free), ring => ring.DishAngle.Radians, value,
            Guard.NonNegative(error, nameof(error)), $"a dish of {Guard.Text(dish)}");
    }

    /// <summary>From the radius of a ring pressed flat.</summary>
    /// <param name="analysis">The bar.</param>
    /// <param name="loaded">The radius it was bent to.</param>
    /// <param name="flat">The radius while the ring is pressed flat on a table.</param>
    /// <param name="error">What that radius may be off by, zero or more.</param>
    /// <exception cref="ArgumentNullException">The bar or a radius is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static GuideEstimate FromPressedFlat(BendAnalysis analysis, BendRadius loaded, BendRadius flat, Length error) =>
        FromRadius(analysis, loaded, flat, nameof(flat), error, Release.HeldFlat, "pressed flat");

    /// <summary>
    /// From the radius of a ring released free, which is not monotone in the stiffness: read all ranges, and measure the dish too.
    /// </summary>
    /// <param name="analysis">The bar.</param>
    /// <param name="loaded">The radius it was bent to.</param>
    /// <param name="finished">The radius of the free ring.</param>
    /// <param name="error">What that radius may be off by, zero or more.</param>
    /// <exception cref="ArgumentNullException">The bar or a radius is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static GuideEstimate FromFreeRadius(BendAnalysis analysis, BendRadius loaded, BendRadius finished, Length error) =>
        FromRadius(analysis, loaded, finished, nameof(finished), error, Release.Free, "free");

    /// <summary>
    /// Whether a second measurement of the same ring agrees: some stiffness of one of the ranges of each is the same. Where none is, the
    /// radius it was bent to is not what was assumed.
    /// </summary>
    /// <param name="other">The estimate from the other measurement, each made with twice its error.</param>
    /// <exception cref="ArgumentNullException">The other estimate is null.</exception>
    public bool AgreesWith(GuideEstimate other) =>
        Guard.NotNull(other, nameof(other)).TellsNothing || TellsNothing || Ranges.Any(one => other.Ranges.Any(
        two => one.Softest.Stiffness <= two.Stiffest.Stiffness && two.Softest.Stiffness <= one.Stiffest.Stiffness));

    /// <summary>The answer in one sentence.</summary>
    public override string ToString() => TellsNothing
        ? $"{Analysis.Section} is symmetric about the plane of the ring: it tells nothing about the guide."
        : Ranges.Count == 0 ? $"No guide explains {Measured}: the radius the bar was bent to, or its yield, is not what was assumed."
        : Ranges.Count == 1 ? $"What explains {Measured}: {Ranges[0]}."
        : $"More than one guide explains {Measured}: {string.Join("; ", Ranges)}. Measure the dish.";

    private static GuideEstimate FromRadius(BendAnalysis analysis, BendRadius loaded, BendRadius radius, string name, Length error,
        Release release, string how)
    {
        OrientedSection section = Guard.NotNull(analysis, nameof(analysis)).Section;
        Guard.NotNull(radius, name).InsideOf(section, name);
        double level = radius.LevelIn(section);
        double place = analysis.Moments.CentroidZ;
        return Of(analysis, loaded, bend => bend.Release(release), ring => ring.RadiusAt(level, place), radius.Radius,
            Guard.NonNegative(error, nameof(error)), Invariant($"a radius of {1e3 * radius.Radius:0.###} mm {how}"));
    }

    private static GuideEstimate Of(
        BendAnalysis analysis, BendRadius loaded, Func<LoadedBend, ReleasedBend> release, Func<FinishedRing, double> figure,
        double measured, double error, string what)
    {
        double inside = Guard.NotNull(loaded, nameof(loaded)).InsideOf(Guard.NotNull(analysis, nameof(analysis)).Section, nameof(loaded));
        if (inside < analysis.Section.Height)
        {
            throw Guard.Fault(nameof(loaded), loaded.Value,
                $"must leave an inside radius of at least the depth of the bar, {Guard.MillimetersText(analysis.Section.Height)}");
        }

        LoadedBend flat = analysis.LoadedTo(loaded, OutOfPlaneGuide.Rigid);
        if (analysis.LoadedTo(loaded, OutOfPlaneGuide.None).IsHeldFlat)
        {
            return new(analysis, [], true, what);
        }

        if (flat.Release(Release.Free).IsStraight)
        {
            throw Guard.Fault(nameof(loaded), loaded.Value, "must bend the bar so that it takes a set");
        }

        ShareSearch search =
            new(share => figure(release(new(analysis, OutOfPlaneGuide.OfShare(share, analysis).StateAt(analysis, inside))).Ring) - measured,
                Points);
        GuideRange[] ranges = [.. search.Within(error).Select(range => new GuideRange(
            OutOfPlaneGuide.OfShare(range.Low, analysis),
            OutOfPlaneGuide.OfShare(range.High, analysis),
            Array.AsReadOnly([.. range.Roots.Select(root => OutOfPlaneGuide.OfShare(root, analysis))])))];
        return new(analysis, Array.AsReadOnly(ranges), false, what);
    }
}
