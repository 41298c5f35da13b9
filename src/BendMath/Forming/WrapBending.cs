using System.Globalization;
using BendMath.Evidence;
using BendMath.Forming;
using BendMath.Forming.ThreePoint;

namespace BendMath;

/// <summary>The bar follows the face of the die; it springs back when let go.</summary>
/// <remarks>
/// Equation: R_i(loaded) = stamped radius − offset of the stamped face.
/// Range: a bar that really lies on a convex die; such a ring can only come out looser than the face.
/// Source: <see cref="Sources.FormingModels"/>
/// </remarks>
public sealed class WrapBending : FormingModel
{
    /// <summary>Depths of the bar within which it cannot be pushed, as for the half-span of a three-point bender.</summary>
    private const double ShortestReach = 4;

    private readonly ReferenceFace? _face;

    /// <summary>The model without any measured ring.</summary>
    /// <param name="setup">Half-span and nose of the bender, by which a measured ring is explained that was pinched rather than wrapped;
    /// null when the bender has none or nobody measured them.</param>
    public WrapBending(ThreePointSetup? setup = null)
        : base([]) => Setup = setup;

    internal WrapBending(ReferenceFace face, ThreePointSetup? setup, MeasuredRing evidence)
        : base([evidence])
    {
        _face = face;
        Setup = setup;
    }

    /// <inheritdoc/>
    public override ThreePointSetup? Setup { get; }

    /// <inheritdoc/>
    public override string Name => "wrap bending";

    /// <inheritdoc/>
    public override string Assumption => _face is null
        ? "The bar lies on the face of the die all along and springs back when let go, so the ring is looser than the face."
        : $"The bar lies on the face of the die and springs back when let go; the stamp is taken to mean a face {_face}.";

    /// <inheritdoc/>
    public override ReferenceFace FaceOf(Die die) => _face ?? base.FaceOf(die);

    internal override FormingTrial Try(BendAnalysis analysis, Die die)
    {
        double radius = die.InsideFace(analysis.Section, FaceOf(die));
        return radius > 0
            ? Lie(analysis, die, analysis.FormedToInside(radius))
            : FormingTrial.Refused("the stamp leaves no inside radius for this bar");
    }

    private FormedBend Lie(BendAnalysis analysis, Die die, LoadedBend loaded) =>
        new(this, die, loaded, null, EvidenceAdvisories(analysis, die),
            FaceAdvisories(analysis.Section).Concat(ArcAdvisories(die, loaded)));

    /// <summary>
    /// A bar pushed nearer than four depths is sheared and dented rather than bent; so a face too short for that reach pinches any bar.
    /// </summary>
    private static IEnumerable<Advisory> ArcAdvisories(Die die, LoadedBend loaded)
    {
        if (die.LongestReach(loaded) is not { } reach)
        {
            yield break;
        }

        double depths = reach.Meters / loaded.Analysis.Section.Height;
        bool pinched = depths < ShortestReach;
        yield return new(pinched ? "pinched-not-wrapped" : "face-length",
            pinched
                ? Invariant(
                    $"The bar can lie on {die.FaceLength!.Value.Millimeters:0.##} mm of this die only. Wherever it is pushed, more of it "
                        + $"is bent beside the die than on it: it is pinched, not wrapped, and the ring follows the contacts. Calculate "
                        + $"it as three-point bending with this die for a nose.")
                            : Invariant(
                                $"The bar can lie on {die.FaceLength!.Value.Millimeters:0.##} mm of this die. Push it "
                                    + $"within {reach.Millimeters:0.#} mm of where it leaves the face; from farther away more of it is "
                                    + $"bent beside the die than on it, and it is pinched, not wrapped."), Sources.Dies, isMinor: !pinched);
    }

    private IEnumerable<Advisory> FaceAdvisories(OrientedSection section)
    {
        if (_face is not null && !_face.IsFaceOf(section))
        {
            string faces =
                string.Join(", ",
                    ReferenceFace.FacesOf(section).Select(face => (face * 1e3).ToString("0.##", CultureInfo.InvariantCulture)));
            yield return new("no-such-face",
                Invariant(
                    $"The stamp is taken to mean a face {_face.Offset(section) * 1e3:0.##} mm outside the inside of the bar, where the "
                        + $"bar has none (its faces lie at {faces} mm): the offset may stand for something else, and then it does not "
                        + $"carry over to other dies."), Sources.Setting);
        }
    }
}
