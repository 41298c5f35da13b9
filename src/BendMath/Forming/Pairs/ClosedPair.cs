using System.Globalization;
using BendMath.Evidence;
using BendMath.Forming.ThreePoint;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Forming.Pairs;

/// <summary>
/// A die and its mating face, closed on a bar as far as they go: where they touch it, the circle through the contacts and the stroke that
/// is. Exact circles, no small slopes. Immutable and thread-safe.
/// </summary>
public sealed class ClosedPair
{
    /// <summary>Difference of radii below which a pair matches: rounding.</summary>
    private const double Rounding = 1e-9;

    private readonly double _inside;

    private readonly double _stack;

    private readonly double _sine;

    private readonly double _cosine;

    private readonly double _middle;

    private readonly double _ends;

    private ClosedPair(Die die, OrientedSection section, double block, double stack, double sine)
    {
        MatingDie mate = die.Mate!;
        Die = die;
        Section = section;
        _stack = stack;
        double outside = block + stack;
        double off = mate.R - outside;
        Touch = Math.Abs(off) <= Rounding * outside ? PairTouch.Everywhere : off > 0 ? PairTouch.Middle : PairTouch.Ends;
        _inside = Touch == PairTouch.Middle ? mate.R - stack : block;
        _sine = sine;
        _cosine = Math.Sqrt((1 - sine) * (1 + sine));

        // From the center of the die: the middle of a support when the pair is closed, and the rest of the mate.
        double reach = _inside + stack + mate.Support;
        double center = reach * _cosine - _inside;
        _middle = Touch == PairTouch.Ends ? Math.Max(0, center - mate.Support + mate.Deep - stack) : 0;
        double lifted = stack - mate.Deep + mate.Support + block;
        _ends = Touch == PairTouch.Middle ? Math.Max(0, Math.Sqrt(mate.Span * mate.Span + lifted * lifted) - mate.Support - outside) : 0;
    }

    /// <summary>The die, with its mate.</summary>
    public Die Die { get; }

    /// <summary>The bar between them.</summary>
    public OrientedSection Section { get; }

    /// <summary>Whether the mate touches a bar on the die all along: it has <see cref="MatchingRadius"/>.</summary>
    public bool Matches => Touch == PairTouch.Everywhere;

    /// <summary>
    /// Whether the bar lies down on the die: the mate is as tight as the die and the stack on it, or tighter. Otherwise it is pinched
    /// between three contacts.
    /// </summary>
    public bool LiesOnDie => Touch != PairTouch.Middle;

    /// <summary>Thickness between die and mate: depth of the bar in the plane of the ring, and shims.</summary>
    public Length StackThickness => Length.FromMeters(_stack);

    /// <summary>Radius of a mate that would touch a bar on this die all along: that of the die and the stack.</summary>
    /// <remarks>
    /// Equation: R_m = R_die + t.
    /// Range: any bar the die takes.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public Length MatchingRadius => Length.FromMeters(Die.InsideFace(Section, Die.Face) + _stack);

    /// <summary>Gap between mate and stack at the middle, where the mate touches at its ends; zero otherwise.</summary>
    /// <remarks>
    /// Equation: (R + t + r)·cos φ − R − r + s − t with sin φ = a/(R + t + r); R die, t stack, r supports, s rise.
    /// Range: the bar lies on the die.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public Length GapAtMiddle => Length.FromMeters(_middle);

    /// <summary>
    /// Gap at each end between the mate and a bar that would lie on the die, where the mate stops at the middle; zero otherwise.
    /// </summary>
    /// <remarks>
    /// Equation: √(a² + (R + t − s + r)²) − r − (R + t).
    /// Range: square to the face of the die; it tells how far the mate is from wrapping the bar.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public Length GapAtEnds => Length.FromMeters(_ends);

    /// <summary>Inside radius of the circle through the three contacts, on the inside of the bar.</summary>
    public Length InsideRadius => Length.FromMeters(_inside);

    /// <summary>Distance of the contacts from the middle, carried square through the stack to the inside of the bar.</summary>
    /// <remarks>
    /// Equation: R_i·sin φ, with sin φ = a/(R_i + t + r).
    /// Range: the circle through the contacts.
    /// Source: <see cref="Sources.Dies"/>
    /// </remarks>
    public Length ContactHalfSpan => Length.FromMeters(_inside * _sine);

    /// <summary>Stroke past the line tangent to the die, on the inside of the bar.</summary>
    /// <remarks>
    /// Equation: R_i·(1 − cos φ).
    /// Range: the circle through the contacts.
    /// Source: <see cref="Sources.Dies"/>
    /// </remarks>
    public Length Stroke => Length.FromMeters(StrokeMeters);

    /// <summary>The same as a three-point bender: this half-span, the die for a nose.</summary>
    public ThreePointSetup Setup => new(ContactHalfSpan, Die.InsideFaceRadiusFor(Section));

    internal PairTouch Touch { get; }

    internal double StrokeMeters => _inside * _sine * _sine / (1 + _cosine);

    internal double HalfSpanMeters => _inside * _sine;

    internal double Inside => _inside;

    /// <summary>Closes a pair on a bar.</summary>
    /// <param name="die">A die with a mate.</param>
    /// <param name="section">The bar in its orientation.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The die has no mate.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The pair does not take the bar.</exception>
    public static ClosedPair Of(Die die, OrientedSection section)
    {
        if (Guard.NotNull(die, nameof(die)).Mate is null)
        {
            throw Guard.Refused(nameof(die), "must have a mate", $"{die} has none");
        }

        return Try(die, Guard.NotNull(section, nameof(section)), out string? refusal)
            ?? throw Guard.OutOfRange(nameof(section), "must suit the pair", $"is {section}: {refusal}");
    }

    /// <summary>Where it touches and the circle through the contacts.</summary>
    public override string ToString() => string.Format(
        CultureInfo.InvariantCulture,
        Touch switch
        {
            PairTouch.Everywhere => "touches all along, inside radius {0:0.##} mm",
            PairTouch.Middle =>
                "stops at the middle, {1:0.##} mm before its ends reach a bar on the die; circle through the contacts {0:0.##} mm inside",
            _ => "touches at its ends first, {2:0.##} mm of gap at the middle, inside radius {0:0.##} mm",
        },
        _inside * 1e3,
        _ends * 1e3,
        _middle * 1e3);

    internal static ClosedPair? Try(Die die, OrientedSection section, out string? refusal)
    {
        MatingDie mate = die.Mate!;
        double block = die.InsideFace(section, die.Face);
        double stack = section.Height + mate.Shim;
        double around = Math.Max(mate.R, block + stack) + mate.Support;
        double sine = Math.Min(1, mate.Span / around);
        refusal = block < Guard.LeastMeters ? "the stamp leaves no inside radius for this bar"
            : mate.R <= stack
                ? $"the mate, {Guard.MillimetersText(mate.R)} in radius, leaves no room for the stack of {Guard.MillimetersText(stack)}"
            : mate.Span >= around ? $"the die slips between the supports of its mate, {Guard.MillimetersText(2 * mate.Span)} apart"
            : (around - mate.Support - stack) * sine < Guard.LeastMeters ? "its contacts lie on one place of the bar"
            : null;
        return refusal is null ? new(die, section, block, stack, sine) : null;
    }
}
