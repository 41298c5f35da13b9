using BendMath.Evidence;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Bending.NeutralAxes;

/// <summary>A way to say which fiber of a bent bar keeps its length.</summary>
public enum NeutralAxisMethod
{
    /// <summary>The centroid: an elastic bar that was straight.</summary>
    Centroid,

    /// <summary>The axis that halves the area: a fully plastic bar without hardening.</summary>
    EqualArea,

    /// <summary>The neutral axis of an elastic bar that already is curved.</summary>
    ElasticCurvedBar,

    /// <summary>The neutral axis of this material at this radius, under load.</summary>
    Loaded,

    /// <summary>The fiber that has the length of the blank in the ring that was released and held flat.</summary>
    ReleasedHeldFlat,

    /// <summary>The fiber that has the length of the blank in the ring that was released free.</summary>
    ReleasedFree,

    /// <summary>A bar without elasticity that hardens by a power law.</summary>
    RigidPowerLaw,

    /// <summary>The handbook rule for equal angles, a sixth of the leg and half the thickness from the heel.</summary>
    AngleRule,

    /// <summary>The rule of the standard for flat products, for a flat bent the easy way.</summary>
    FlatStandard,
}

/// <summary>
/// One answer to the question which fiber keeps its length, and the length of bar that follows from it. Immutable and thread-safe.
/// </summary>
public sealed record NeutralAxisAnswer
{
    private readonly double _fiber;

    private readonly double _inside;

    private readonly double _foundAt;

    internal NeutralAxisAnswer(NeutralAxisMethod method, string name, double fiber, double inside, double foundAt, Source source,
        string note)
    {
        Method = method;
        Name = name;
        _fiber = fiber;
        _inside = inside;
        _foundAt = foundAt;
        Source = source;
        Note = note;
    }

    /// <summary>Which answer this is.</summary>
    public NeutralAxisMethod Method { get; }

    /// <summary>The same in words, for a column of a report.</summary>
    public string Name { get; }

    /// <summary>Distance of the fiber from the inside face; it may lie outside the section for a released bar.</summary>
    public Length FiberFromInside => Length.FromMeters(_fiber);

    /// <summary>
    /// Inside radius for which the fiber was found: that of the finished ring for the answers after release, else the loaded one.
    /// </summary>
    public Length FoundAtInsideRadius => Length.FromMeters(_foundAt);

    /// <summary>
    /// Length of straight bar for a full ring of the loaded inside radius: the same ring for every answer, so that only the fibers differ.
    /// </summary>
    /// <remarks>
    /// Equation: L = 2π·(R_i + n), n being the distance of the fiber from the inside face.
    /// Range: a full ring, without ends to trim.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public Length BlankLength => Length.FromMeters(Blank);

    /// <summary>What the answer rests on.</summary>
    public Source Source { get; }

    /// <summary>What it assumes, in one sentence.</summary>
    public string Note { get; }

    internal double Blank => 2 * Math.PI * (_inside + _fiber);

    /// <summary>Length of straight bar for a full ring of another inside radius, with the same fiber.</summary>
    /// <param name="insideRadius">Radius of the inside face, greater than zero; the fiber must not lie beyond the center.</param>
    /// <exception cref="ArgumentOutOfRangeException">The radius is outside its range.</exception>
    /// <remarks>
    /// Equation: L = 2π·(R_i + n).
    /// Range: radii near the one the fiber was found for; with <see cref="FoundAtInsideRadius"/> of a released ring it is the exact length
    /// of its blank.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public Length BlankLengthAt(Length insideRadius)
    {
        double radius = Guard.Positive(insideRadius, nameof(insideRadius)) + _fiber;
        return radius > 0
            ? Length.FromMeters(2 * Math.PI * radius)
            : throw Guard.Fault(nameof(insideRadius), insideRadius,
                $"must be greater than the distance of the fiber inside it, {Guard.MillimetersText(-_fiber)}");
    }

    /// <summary>Name, fiber and length in millimeters.</summary>
    public override string ToString() => Invariant($"{Name}: {_fiber * 1e3:0.###} mm from the inside face, blank {Blank * 1e3:0.#} mm");
}
