using System.Globalization;
using UnitsNet;

namespace BendMath;

/// <summary>A fixed-radius die: the radius stamped on it and the face of the bar that stamp means. Immutable and thread-safe.</summary>
public sealed record Die
{
    /// <summary>Makes a die.</summary>
    /// <param name="name">What the shop calls it; not empty.</param>
    /// <param name="stampedRadius">The radius stamped on it, greater than zero.</param>
    /// <param name="face">The face of the bar the stamp means.</param>
    /// <exception cref="ArgumentNullException">Name or face is null.</exception>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The radius is not positive and finite.</exception>
    public Die(string name, Length stampedRadius, StampedFace face)
    {
        Name = Guard.NotEmpty(name, nameof(name));
        Stamp = Guard.Positive(stampedRadius, nameof(stampedRadius));
        Face = Guard.NotNull(face, nameof(face));
    }

    private Die(string name, StampedFace face, double stamp)
    {
        Name = name;
        Stamp = stamp;
        Face = face;
    }

    /// <summary>What the shop calls it.</summary>
    public string Name { get; }

    /// <summary>The radius stamped on it.</summary>
    public Length StampedRadius => Length.FromMeters(Stamp);

    /// <summary>The face of the bar the stamp means.</summary>
    public StampedFace Face { get; }

    internal double Stamp { get; }

    /// <summary>Radius of the bar's inside face when the bar lies on the die and the stamp means what the die says.</summary>
    /// <param name="section">The bar in its orientation.</param>
    /// <exception cref="ArgumentNullException">The section is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The stamp is too small for the bar: no inside radius is left.</exception>
    public Length InsideFaceRadiusFor(OrientedSection section)
    {
        double inside = InsideFace(Guard.NotNull(section, nameof(section)), Face);
        return inside > 0
            ? Length.FromMeters(inside)
            : throw new ArgumentOutOfRangeException(nameof(section), $"section must leave an inside radius on die {this}, but its {Face} lies {Guard.Text(Face.OffsetFor(section))} outside the inside face.");
    }

    /// <summary>Name, stamp and face.</summary>
    public override string ToString() => string.Format(CultureInfo.InvariantCulture, "{0} ({1:0.##} mm to the {2})", Name, Stamp * 1e3, Face);

    /// <summary>A die that is only tried, of any stamp.</summary>
    internal static Die Trial(double stamp, StampedFace face) => new("trial", face, stamp);

    /// <summary>Inside-face radius, zero or less when the stamp leaves none.</summary>
    internal double InsideFace(OrientedSection section, StampedFace face) => Stamp - face.Offset(section);
}
