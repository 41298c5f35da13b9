using UnitsNet;

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

    internal override string? RefusalOf(BendAnalysis analysis, Die die) =>
        die.Takes(analysis.Section, _face) ? null : "the stamp leaves no inside radius for this bar";

    private protected override FormedBend Shape(BendAnalysis analysis, Die die)
    {
        double radius = die.InsideFace(analysis.Section, _face ?? die.Face);
        LoadedBend loaded = analysis.LoadedTo(BendRadius.Inside(Length.FromMeters(radius)));
        return new(this, die, loaded, 1, null, EvidenceAdvisories(analysis, die));
    }
}
