using BendMath.Bending;
using BendMath.Numerics;

namespace BendMath;

/// <summary>
/// One section and law over many radii, for plots, sliders and optimizers: spans of plain SI numbers in and out, nothing allocated.
/// Immutable and thread-safe.
/// </summary>
internal static class BendSweep
{
    /// <summary>Finished inside radius for each loaded inside radius, in metres; positive infinity where the bar springs back straight.</summary>
    /// <param name="analysis">Section and material.</param>
    /// <param name="loadedInsideRadii">Loaded inside radii in metres, each from 1 µm to 1000 km.</param>
    /// <param name="release">How the bar is let go.</param>
    /// <param name="finishedInsideRadii">Receives one radius in metres for each loaded one; at least as long.</param>
    /// <exception cref="ArgumentNullException">The analysis is null.</exception>
    /// <exception cref="ArgumentException">The receiving span is shorter than the other.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A radius is outside its range, or the release is not a defined value.</exception>
    /// <remarks>
    /// Equation: R_f(0, z̄) = (1 + e_f(0))/κ_t for each R_i.
    /// Range: as for a single bend; neighboring radii start from each other's neutral axis.
    /// Source: <see cref="Sources.Mechanics"/>
    /// </remarks>
    public static void FinishedRadii(BendAnalysis analysis, ReadOnlySpan<double> loadedInsideRadii, Release release, Span<double> finishedInsideRadii)
    {
        Guard.NotNull(analysis, nameof(analysis));
        Guard.Defined(release, nameof(release));
        if (finishedInsideRadii.Length < loadedInsideRadii.Length)
        {
            throw new ArgumentException(
                $"finishedInsideRadii must hold at least {loadedInsideRadii.Length} values, but holds {finishedInsideRadii.Length}.", nameof(finishedInsideRadii));
        }

        BandProfile profile = analysis.Section.Profile;
        double axis = -1;
        for (int i = 0; i < loadedInsideRadii.Length; i++)
        {
            double radius = loadedInsideRadii[i];
            if (!(radius >= 1e-6 && radius <= 1e6))
            {
                throw new ArgumentOutOfRangeException(nameof(loadedInsideRadii), FormattableString.Invariant(
                    $"loadedInsideRadii must hold radii from 1E-06 m to 1000000 m, but value {i} is {radius} m."));
            }

            BentState state = HeldFlat.AtRadius(profile, analysis.Law, radius, axis);
            axis = state.NeutralAxis;
            finishedInsideRadii[i] = state.FinishedInside(profile.Moments, release == Release.Free);
        }
    }
}
