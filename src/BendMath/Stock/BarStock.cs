using System.Globalization;
using UnitsNet;

namespace BendMath;

/// <summary>A bar as it is bought: shape and dimensions. Each shape offers its orientations as members. Immutable and thread-safe.</summary>
public abstract record BarStock
{
    private protected BarStock()
    {
    }

    /// <summary>Shape and dimensions in millimetres, such as <c>angle 30 × 30 × 3 mm</c>.</summary>
    public abstract string Name { get; }

    /// <summary>Every way the shape can lie in the bender, in a fixed order.</summary>
    public abstract IReadOnlyList<OrientedSection> Orientations { get; }

    /// <summary>Area of the section.</summary>
    public Area Area => Orientations[0].Properties.Area;

    /// <summary>Torsion constant J by the formula this library prefers, or null for a shape that has no formula with a source.</summary>
    public TorsionConstant? TorsionConstant => TorsionConstants.Count > 0 ? TorsionConstants[0] : null;

    /// <summary>Torsion constants by every formula known for the shape, the preferred one first; empty where there is none. Tables of other houses use the later ones.</summary>
    public virtual IReadOnlyList<TorsionConstant> TorsionConstants => [];

    /// <summary>Warping constant of an angle, channel or tee; null for other shapes.</summary>
    public virtual WarpingConstant? WarpingConstant => null;

    /// <summary>
    /// The bar with another thickness, wall or, if solid and equally thick both ways, size, its outside dimensions and fillets kept as far as they fit; null for
    /// shapes with more than one thickness or none, and where the shape allows no such bar.
    /// </summary>
    internal virtual BarStock? WithThickness(double meters) => null;

    /// <summary>The thickness <see cref="WithThickness"/> changes, or null.</summary>
    internal virtual double? MainThickness => null;

    /// <summary>Shape and dimensions.</summary>
    public sealed override string ToString() => Name;

    /// <summary>The bar a section is of, or null for a section that was not made from a stock shape.</summary>
    /// <param name="section">The section in its orientation.</param>
    /// <exception cref="ArgumentNullException">The section is null.</exception>
    public static BarStock? Of(OrientedSection section) => Guard.NotNull(section, nameof(section)).Stock as BarStock;

    /// <summary>Mass of one metre of bar.</summary>
    /// <param name="density">Density of the material, greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The density is not positive and finite.</exception>
    public LinearDensity MassPerLength(Density density) => Orientations[0].Properties.MassPerLength(density);

    private protected static string Millimeters(string shape, params double[] meters) => shape + " " + string.Join(
        " × ", meters.Select(m => (m * 1e3).ToString("0.###", CultureInfo.InvariantCulture))) + " mm";

    private protected static string RoundedText(double radius) =>
        radius > 0 ? string.Format(CultureInfo.InvariantCulture, ", corner radius {0:0.###} mm", radius * 1e3) : string.Empty;
}
