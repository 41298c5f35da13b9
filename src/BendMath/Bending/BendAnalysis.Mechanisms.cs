using BendMath.Bending.Guides;
using BendMath.Bending.Unloading;
using BendMath.Evidence;
using BendMath.Guards;
using BendMath.Numerics;
using BendMath.Numerics.Geometry;
using UnitsNet;

namespace BendMath;

/// <content>Bars along a guide that gives, and the inverse for any guide and any way of unloading.</content>
public sealed partial class BendAnalysis
{
    /// <summary>Depths of the bar in the tightest inside radius that is searched.</summary>
    private const double Tightest = 10;

    /// <summary>Strain that the loaded radius of an inverse may miss the finished one by.</summary>
    private const double Missed = 1e-9;

    /// <summary>The state of a bar bent to a radius along a guide that gives.</summary>
    /// <param name="radius">The loaded radius, at the axial position of the centroid; it must leave an inside radius of at least the
    /// depth of the bar.</param>
    /// <param name="guide">What resists bending out of the plane, or turning.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The inside radius is less than the depth of the bar.</exception>
    /// <remarks>
    /// Equation: N = 0 and M_r + k·κ_r = 0, or κ·M_r − κ_r·M_b + k_φ·φ = 0.
    /// Range: at the nip, not a whole turn: a bar whose bending leans walks along the axis of the die. One solution where R_i ≥ 2h, for
    /// angles.
    /// Source: <see cref="Sources.Mechanisms"/>
    /// </remarks>
    public LoadedBend LoadedTo(BendRadius radius, BarGuide guide)
    {
        double inside = Guard.NotNull(radius, nameof(radius)).InsideOf(Section, nameof(radius));
        Guard.NotNull(guide, nameof(guide));
        return inside >= Section.Height
            ? new(this, guide.StateAt(this, inside))
            : throw Guard.Fault(nameof(radius), radius.Value,
                $"must leave an inside radius of at least the depth of the bar, {Guard.MillimetersText(Section.Height)}");
    }

    /// <summary>The loaded state along a guide that, once released, leaves the wanted ring.</summary>
    /// <param name="finished">The wanted ring.</param>
    /// <param name="release">How the bar is let go.</param>
    /// <param name="guide">What resists bending out of the plane, or turning.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The ring is tighter than a bend to the depth of the bar leaves, or wider than any
    /// that takes a set.</exception>
    /// <remarks>
    /// Equation: find R_i with R_f(R_i; k) = R_wanted.
    /// Range: R_i not below the depth of the bar; R_f rises with R_i at a fixed guide in every case computed, without proof.
    /// Source: <see cref="Sources.Mechanisms"/>
    /// </remarks>
    public LoadedBend LoadedFor(BendRadius finished, Release release, BarGuide guide)
    {
        Guard.NotNull(guide, nameof(guide));
        return LoadedFor(finished, release, Section.Height, inside => new(this, guide.StateAt(this, inside)),
            loaded => loaded.Release(release));
    }

    /// <summary>The loaded state, held flat, that leaves the wanted ring when its fibers unload by a rule.</summary>
    /// <param name="finished">The wanted ring.</param>
    /// <param name="release">How the bar is let go.</param>
    /// <param name="rule">What its fibers do.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The rule does not suit the material.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The ring is tighter than the tightest bend leaves, or wider than any that takes a
    /// set.</exception>
    /// <remarks>
    /// Equation: find R_i with R_f(R_i) = R_wanted.
    /// Range: R_i not below a tenth of the depth of the bar, nor where a metal with memory would soften.
    /// Source: <see cref="Sources.Mechanisms"/>
    /// </remarks>
    public LoadedBend LoadedFor(BendRadius finished, Release release, UnloadingRule rule)
    {
        Guard.NotNull(rule, nameof(rule));
        double least = Section.Height / (rule.HasMemory ? Math.Min(Tightest, Law.DataStrain) : Tightest);
        return LoadedFor(finished, release, least, LoadedToInside, loaded => loaded.Release(release, rule));
    }

    /// <summary>
    /// In v = 1/(R + ȳ) the residual κ_t·R_wanted − (1 + e_f) is −1 where the bar springs back straight and positive at the tightest bend.
    /// </summary>
    private LoadedBend LoadedFor(BendRadius finished, Release release, double least, Func<double, LoadedBend> load,
        Func<LoadedBend, ReleasedBend> let)
    {
        Guard.NotNull(finished, nameof(finished)).InsideOf(Section, nameof(finished));
        Guard.Defined(release, nameof(release));
        AreaMoments m = Moments;
        double level = finished.LevelIn(Section);
        double tightest = 1 / (least + m.CentroidY);
        if (Residual(tightest) > 0)
        {
            double found = Bracketed.Root(Residual, 0, tightest);
            if (Math.Abs(Residual(found)) < Missed)
            {
                return load(1 / found - m.CentroidY);
            }
        }

        throw Guard.Fault(nameof(finished), finished.Value,
            $"must be a ring some bend of {Section} to an inside radius of at least {Guard.MillimetersText(least)} leaves");

        double Residual(double v)
        {
            if (v == 0)
            {
                return -1;
            }

            ReleasedBend released = let(load(1 / v - m.CentroidY));
            return released.IsStraight ? -1
                : Math.Min(1, released.Ring.TotalCurvature * (finished.Radius - released.Ring.RadiusAt(level, m.CentroidZ)));
        }
    }
}
