using BendMath.Evidence;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Forming.ThreePoint;

/// <summary>The fixed geometry of a bender that pinches the bar between a nose and two supports. Immutable and thread-safe.</summary>
public sealed record ThreePointSetup
{
    /// <summary>Stroke over half-span up to which the error of the small-slope models is known.</summary>
    private const double KnownShare = 0.3;

    /// <summary>Give over set stroke from which on the give matters as much as the stroke itself. A setting.</summary>
    private const double MuchGive = 0.25;

    /// <summary>Makes a setup.</summary>
    /// <param name="halfSpan">Distance a from the nose to each support along the bar, greater than zero.</param>
    /// <param name="noseRadius">Radius of the nose the inside of the bar touches; zero for an edge.</param>
    /// <param name="stiffness">Nose force over how far nose and supports part under it, k = F/g, greater than zero; null for a bender taken
    /// as rigid. Play and bedding in are no stiffness, so measure from a small load to a large one.</param>
    /// <exception cref="ArgumentOutOfRangeException">The half-span or the stiffness is not positive or the nose radius is negative, or one
    /// is not finite.</exception>
    public ThreePointSetup(Length halfSpan, Length noseRadius, ForcePerLength? stiffness = null)
    {
        K = stiffness is { } k ? Guard.Positive(k, nameof(stiffness)) : null;
        A = Guard.Positive(halfSpan, nameof(halfSpan));
        Nose = Guard.NonNegative(noseRadius, nameof(noseRadius));
    }

    /// <summary>Distance a from the nose to each support.</summary>
    public Length HalfSpan => Length.FromMeters(A);

    /// <summary>Radius of the nose; zero for an edge.</summary>
    public Length NoseRadius => Length.FromMeters(Nose);

    /// <summary>Nose force per length the bender gives, or null for a rigid one.</summary>
    public ForcePerLength? Stiffness => K is { } k ? ForcePerLength.FromNewtonsPerMeter(k) : null;

    internal double A { get; }

    internal double Nose { get; }

    internal double? K { get; }

    /// <summary>Half-span and nose radius.</summary>
    public override string ToString() =>
        Invariant(
            $"half-span {A * 1e3:0.##} mm, nose radius {Nose * 1e3:0.##} mm{(K is { } k ? Invariant($", {k * 1e-6:0.##} kN per millimeter "
                + $"of give") : string.Empty)}");

    internal static Advisory WrapsNose { get; } =
        new("wraps-nose", "The bar lies down on the nose: the ring follows the nose radius, and more stroke does not tighten it.",
            Sources.FormingModels);

    /// <summary>Curvature of the circle through the three contacts, 2δ/(a² + δ²).</summary>
    internal double NominalOf(double stroke) => 2 * stroke / (A * A + stroke * stroke);

    /// <summary>δ with 2δ/(a² + δ²) = κ: the smaller root, without cancellation.</summary>
    internal double StrokeOf(double nominal) => nominal * A * A / (1 + Math.Sqrt((1 - nominal * A) * (1 + nominal * A)));

    /// <summary>The setup with a die in it: a die that has a nose of its own brings it along.</summary>
    internal ThreePointSetup With(Die die) => die.NoseRadius is { } nose ? new(HalfSpan, nose, Stiffness) : this;

    /// <summary>Where the bender gives so much that its give decides the ring.</summary>
    internal static IEnumerable<Advisory> GiveAdvisories(double stroke, double setStroke)
    {
        if (setStroke - stroke > MuchGive * setStroke)
        {
            yield return new("bender-gives",
                Invariant(
                    $"{100 * (1 - stroke / setStroke):0} % of the stroke goes into the give of the bender: the ring follows the stiffness "
                        + $"as much as the stroke, so measure the stiffness well, or stiffen the bender."), Sources.FormingModels);
        }
    }

    /// <summary>Why the bender cannot take the bar, or null.</summary>
    internal string? Refusal(OrientedSection section) => A > section.Height
        ? null
        : $"the half-span of the bender must be greater than the depth of the bar, {Guard.MillimetersText(section.Height)}";

    /// <summary>Where small slopes and a slender bar stop being true.</summary>
    internal IEnumerable<Advisory> Advisories(OrientedSection section, double stroke)
    {
        if (stroke > 0.2 * A)
        {
            yield return new("large-stroke",
                stroke > KnownShare * A
                    ? Invariant(
                        $"The stroke is {stroke / A:0.##} of the half-span. How far the small-slope model is off beyond {KnownShare:0.#} "
                            + $"is not known: do not rely on this size.")
                                : Invariant(
                                    $"The stroke is {stroke / A:0.##} of the half-span: the small-slope model is off by 1 % at 0.2 and 2 "
                                        + $"% at {KnownShare:0.#}."), Sources.FormingModels);
        }

        if (A < 4 * section.Height)
        {
            yield return new("short-span",
                Invariant(
                    $"The half-span is {A / section.Height:0.#} depths of the bar; below 4, shear and indentation under the nose, which "
                        + $"the model leaves out, matter."), Sources.FormingModels);
        }
    }
}
