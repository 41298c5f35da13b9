using System.Globalization;
using BendMath.Guards;
using BendMath.Sections.Features;
using UnitsNet;

namespace BendMath;

/// <summary>
/// A bar as it is bought: shape and dimensions. Each shape offers its orientations as members. Two bars are equal when they are of one
/// shape and all their dimensions are the same to a picometer; a square tube and a rectangular tube of even sides are of two shapes, and
/// <see cref="IsSameBar"/> tells that they are the same bar. Immutable and thread-safe.
/// </summary>
public abstract class BarStock : IEquatable<BarStock>
{
    private protected BarStock()
    {
    }

    /// <summary>The shape in words, such as <c>angle</c>; of a drawn bar, what it is called.</summary>
    public abstract string Shape { get; }

    /// <summary>
    /// Shape and dimensions in millimeters, such as <c>angle 30 × 30 × 3 mm</c>. It says nothing of fillets and corners of tubes: bars of
    /// one name may differ.
    /// </summary>
    public abstract string Name { get; }

    /// <summary>The name with all that tells bars of one name apart: fillets and corners, of a drawn bar its extent and area.</summary>
    public virtual string Description => Name;

    /// <summary>Every way the shape can lie in the bender, in a fixed order.</summary>
    public abstract IReadOnlyList<OrientedSection> Orientations { get; }

    /// <summary>Area of the section.</summary>
    public Area Area => Orientations[0].Properties.Area;

    /// <summary>Torsion constant J by the formula this library prefers, or null for a shape that has no formula with a source.</summary>
    public TorsionConstant? TorsionConstant => TorsionConstants.Count > 0 ? TorsionConstants[0] : null;

    /// <summary>
    /// Torsion constants by every formula known for the shape, the preferred one first; empty where there is none. Tables of other houses
    /// use the later ones.
    /// </summary>
    public virtual IReadOnlyList<TorsionConstant> TorsionConstants => [];

    /// <summary>Warping constant of an angle, channel or tee; null for other shapes.</summary>
    public WarpingMomentOfInertia? WarpingConstant =>
        Warping is { } warping ? WarpingMomentOfInertia.FromMetersToTheSixth(warping.Value) : null;

    /// <summary>Formula, source and error of the warping constant, or null.</summary>
    public SectionFormula? WarpingFormula => Warping?.Formula;

    private protected virtual (double Value, SectionFormula Formula)? Warping => null;

    /// <summary>The thickness <see cref="WithThickness"/> changes, or null.</summary>
    internal virtual double? MainThickness => null;

    /// <summary>All that makes the bar what it is, in a value that can be compared: dimensions in whole picometers.</summary>
    private protected abstract object Identity { get; }

    /// <summary>Whether two bars are equal, or both null.</summary>
    /// <param name="left">A bar.</param>
    /// <param name="right">Another bar.</param>
    public static bool operator ==(BarStock? left, BarStock? right) => left is null ? right is null : left.Equals(right);

    /// <summary>Whether two bars differ, or one of them is null.</summary>
    /// <param name="left">A bar.</param>
    /// <param name="right">Another bar.</param>
    public static bool operator !=(BarStock? left, BarStock? right) => !(left == right);

    /// <summary>The bar as it lies in a given way, or null where it cannot lie so.</summary>
    /// <param name="orientation">The way to lie.</param>
    /// <exception cref="ArgumentNullException">The orientation is null.</exception>
    public virtual OrientedSection? Lying(Orientation orientation)
    {
        Guard.NotNull(orientation, nameof(orientation));
        return Orientations.FirstOrDefault(section => section.Orientation == orientation);
    }

    /// <summary>
    /// Whether another bar is the same piece of metal, whatever its name and shape and however it lies: laid middle on middle and turned by
    /// right angles or end for end, each outline comes within the tolerance of the other. It groups what is cut from one bar. Two drawings
    /// of one outline at another angle than a right one are not looked through.
    /// </summary>
    /// <param name="other">The bar to compare with.</param>
    /// <param name="tolerance">How far outlines may lie apart; zero for none but rounding, a billionth of the size.</param>
    /// <exception cref="ArgumentNullException">The bar is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is negative or not finite.</exception>
    public bool IsSameBar(BarStock other, Length tolerance)
    {
        Guard.NotNull(other, nameof(other));
        double apart = Guard.NonNegative(tolerance, nameof(tolerance));
        return Equals(other)
            || Orientations.Any(
                way =>
                    other.Orientations.Any(
                        lying => way.IsWithin(lying, apart, Turning.None) || way.IsWithin(lying, apart, Turning.EndForEnd)));
    }

    /// <summary>Mass of one meter of bar.</summary>
    /// <param name="density">Density of the material, greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The density is not positive and finite.</exception>
    public LinearDensity MassPerLength(Density density) => Orientations[0].Properties.MassPerLength(density);

    /// <summary>Equal when the shape and all dimensions are, to a picometer.</summary>
    /// <param name="other">Another bar.</param>
    public bool Equals(BarStock? other) => other is not null && GetType() == other.GetType() && Identity.Equals(other.Identity);

    /// <inheritdoc/>
    public sealed override bool Equals(object? obj) => Equals(obj as BarStock);

    /// <inheritdoc/>
    public sealed override int GetHashCode() => Identity.GetHashCode();

    /// <summary>Shape and dimensions.</summary>
    public sealed override string ToString() => Name;

    /// <summary>
    /// The bar with another thickness, wall or, if solid and equally thick both ways, size, its outside dimensions and fillets kept as far
    /// as they fit; null for shapes with more than one thickness or none, and where the shape allows no such bar.
    /// </summary>
    internal virtual BarStock? WithThickness(double meters) => null;

    /// <summary>Whether another bar is of the same shape, of whatever size; two drawn bars are when they are the same.</summary>
    internal virtual bool IsOfShape(BarStock other) => GetType() == other.GetType();

    private protected static string RoundedText(double radius) =>
        radius > 0 ? Invariant($", corner radius {radius * 1e3:0.###} mm") : string.Empty;

    private protected string Millimeters(params double[] meters) => Shape + " " + string.Join(
        " × ", meters.Select(m => (m * 1e3).ToString("0.###", CultureInfo.InvariantCulture))) + " mm";
}
