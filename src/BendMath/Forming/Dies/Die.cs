using BendMath.Evidence;
using BendMath.Forming.Pairs;
using BendMath.Guards;
using UnitsNet;

namespace BendMath;

/// <summary>A fixed-radius die: the radius stamped on it and the face of the bar that stamp means. Immutable and thread-safe.</summary>
public sealed record Die
{
    /// <summary>Makes a die.</summary>
    /// <param name="name">What the shop calls it; not empty.</param>
    /// <param name="stampedRadius">The radius stamped on it, greater than zero.</param>
    /// <param name="face">The face of the bar the stamp means.</param>
    /// <param name="faceLength">Length of the arc of its face a bar can lie on, greater than zero; null when not known or all
    /// around.</param>
    /// <param name="noseRadius">Radius of the part a bar is pinched over when the die is the nose of a three-point bender, zero for an
    /// edge; null when the bender has its own nose.</param>
    /// <param name="mate">The face that closes on the bar from outside; null for a die without one.</param>
    /// <exception cref="ArgumentNullException">Name or face is null.</exception>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A radius or length is outside its range.</exception>
    public Die(string name, Length stampedRadius, ReferenceFace face, Length? faceLength = null, Length? noseRadius = null,
        MatingDie? mate = null)
    {
        FaceLength = faceLength is { } arc ? Length.FromMeters(Guard.Positive(arc, nameof(faceLength))) : null;
        NoseRadius = noseRadius is { } nose ? Length.FromMeters(Guard.NonNegative(nose, nameof(noseRadius))) : null;
        Mate = mate;
        Name = Guard.Line(name, nameof(name));
        Stamp = Guard.Positive(stampedRadius, nameof(stampedRadius));
        Face = Guard.NotNull(face, nameof(face));
    }

    private Die(string name, ReferenceFace face, double stamp)
    {
        IsTrial = true;
        Name = name;
        Stamp = stamp;
        Face = face;
    }

    /// <summary>What the shop calls it.</summary>
    public string Name { get; }

    /// <summary>The radius stamped on it.</summary>
    public Length StampedRadius => Length.FromMeters(Stamp);

    /// <summary>The face of the bar the stamp means.</summary>
    public ReferenceFace Face { get; }

    /// <summary>Length of the arc of its face a bar can lie on, or null when not known.</summary>
    public Length? FaceLength { get; }

    /// <summary>Radius of the part a bar is pinched over, or null when the bender has its own nose.</summary>
    public Length? NoseRadius { get; }

    /// <summary>The face that closes on the bar from outside, or null.</summary>
    public MatingDie? Mate { get; }

    internal double Stamp { get; }

    /// <summary>A die nobody has, of any stamp.</summary>
    internal bool IsTrial { get; }

    /// <summary>Radius of the bar's inside face when the bar lies on the die and the stamp means what the die says.</summary>
    /// <param name="section">The bar in its orientation.</param>
    /// <exception cref="ArgumentNullException">The section is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The stamp is too small for the bar: no inside radius is left.</exception>
    public Length InsideFaceRadiusFor(OrientedSection section)
    {
        double inside = InsideFace(Guard.NotNull(section, nameof(section)), Face);
        return inside > 0
            ? Length.FromMeters(inside)
            : throw Guard.OutOfRange(nameof(section), $"must leave an inside radius on die {this}",
                $"its {Face} lies {Guard.Text(Face.OffsetFor(section))} outside the inside face");
    }

    /// <summary>
    /// The farthest from the end of its face the bar may be pushed and still be wrapped: beyond, more of it is bent beside the die than on
    /// it, and the contacts decide the ring, not the face.
    /// </summary>
    /// <param name="loaded">The bar as it would lie on the face.</param>
    /// <returns>The distance, or null when the length of the face is not known or the bar stays elastic, so that no bar is bent beside the
    /// die.</returns>
    /// <remarks>
    /// Equation: L = s/(1 − M_y/M): the moment falls evenly from M where the bar leaves the face to nothing where it is pushed, so it
    /// exceeds M_y along L·(1 − M_y/M), which is to be no longer than the face, s.
    /// Range: a push square to the bar; that it take no more than the length of the face is a setting.
    /// Source: <see cref="Sources.Dies"/>
    /// </remarks>
    /// <exception cref="ArgumentNullException">The state is null.</exception>
    public Length? LongestReach(LoadedBend loaded)
    {
        double share = Guard.NotNull(loaded, nameof(loaded)).Analysis.YieldMoment.NewtonMeters / loaded.Moment;
        return FaceLength is { } face && share < 1 ? Length.FromMeters(face.Meters / (1 - share)) : null;
    }

    /// <summary>Name, stamp and face.</summary>
    public override string ToString() => Invariant($"{Name} ({Stamp * 1e3:0.##} mm to the {Face})");

    /// <summary>A die that is only tried, of any stamp.</summary>
    internal static Die Trial(double stamp, ReferenceFace face) => new("trial", face, stamp);

    /// <summary>Inside-face radius, zero or less when the stamp leaves none.</summary>
    internal double InsideFace(OrientedSection section, ReferenceFace face) => Stamp - face.Offset(section);
}
