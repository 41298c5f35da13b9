using System.Globalization;
using BendMath.Forming;

namespace BendMath;

/// <summary>The bar follows the face of the die; it springs back when let go.</summary>
/// <remarks>
/// Equation: R_i(loaded) = stamped radius − offset of the stamped face.
/// Range: a bar that really lies on a convex die; such a ring can only come out looser than the face.
/// Source: <see cref="Sources.FormingModels"/>
/// </remarks>
public sealed class WrapBending : FormingModel
{
    private readonly StampedFace? _face;

    /// <summary>The model without any measured ring.</summary>
    public WrapBending()
        : base([])
    {
    }

    internal WrapBending(StampedFace face, MeasuredRing evidence)
        : base([evidence]) => _face = face;

    /// <inheritdoc/>
    public override string Name => "wrap bending";

    /// <inheritdoc/>
    public override string Assumption => _face is null
        ? "The bar lies on the face of the die all along and springs back when let go, so the ring is looser than the face."
        : $"The bar lies on the face of the die and springs back when let go; the stamp is taken to mean a face {_face}.";

    /// <inheritdoc/>
    public override StampedFace FaceOf(Die die) => _face ?? base.FaceOf(die);

    internal override FormingTrial Try(BendAnalysis analysis, Die die)
    {
        double radius = die.InsideFace(analysis.Section, FaceOf(die));
        return radius > 0
            ? new FormedBend(this, die, analysis.LoadedToInside(radius), null, EvidenceAdvisories(analysis, die), FaceAdvisories(analysis.Section))
            : FormingTrial.Refused("the stamp leaves no inside radius for this bar");
    }

    private IEnumerable<Advisory> FaceAdvisories(OrientedSection section)
    {
        if (_face is not null && !_face.IsFaceOf(section))
        {
            string faces = string.Join(", ", StampedFace.FacesOf(section).Select(face => (face * 1e3).ToString("0.##", CultureInfo.InvariantCulture)));
            yield return new("no-such-face", string.Format(
                CultureInfo.InvariantCulture,
                "The stamp is taken to mean a face {0:0.##} mm outside the inside of the bar, where the bar has none (its faces lie at {1} mm): the offset may stand for something else, and then it does not carry over to other dies.",
                _face.Offset(section) * 1e3,
                faces), Sources.Setting);
        }
    }
}
