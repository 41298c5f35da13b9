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

    /// <summary>What the shop calls it.</summary>
    public string Name { get; }

    /// <summary>The radius stamped on it.</summary>
    public Length StampedRadius => Length.FromMeters(Stamp);

    /// <summary>The face of the bar the stamp means.</summary>
    public StampedFace Face { get; }

    internal double Stamp { get; }

    /// <summary>Radius of the bar's inside face when the bar lies on the die.</summary>
    /// <param name="section">The bar in its orientation.</param>
    /// <exception cref="ArgumentNullException">The section is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The stamp is too small for the bar: no inside radius is left.</exception>
    public Length InsideFaceRadiusFor(OrientedSection section) => Length.FromMeters(InsideFace(Guard.NotNull(section, nameof(section)), Face));

    /// <summary>Name, stamp and face.</summary>
    public override string ToString() => string.Format(CultureInfo.InvariantCulture, "{0} ({1:0.##} mm to the {2})", Name, Stamp * 1e3, Face);

    internal bool Takes(OrientedSection section, StampedFace? face = null) => Stamp > (face ?? Face).Offset(section);

    internal double InsideFace(OrientedSection section, StampedFace face)
    {
        double offset = face.Offset(section);
        return Stamp > offset
            ? Stamp - offset
            : throw Guard.Fault("stampedRadius", StampedRadius, $"of die {Name} must be greater than the offset of its face from the inside of the bar, {Guard.MillimetersText(offset)}");
    }
}
