using BendMath.Bending.Unloading;
using BendMath.Evidence;
using BendMath.Numerics.Geometry;
using BendMath.Sections.Features;

namespace BendMath.Bending;

/// <summary>The advisories of loaded and released states.</summary>
internal static class BendAdvisories
{
    private const double Rounding = 1e-12;

    private const double TightRatio = 5;

    private const double VeryTightRatio = 3;

    private const double WideRatio = 8;

    public static IReadOnlyList<Advisory> ForLoaded(BendAnalysis analysis, BentState state)
    {
        List<Advisory> advisories = [.. Tight(analysis, state)];
        SectionFeatures features = analysis.Section.Features;
        double width = analysis.Section.Properties.Breadth / analysis.Section.Height;
        if (features.IsFlatEasyWay && width >= WideRatio && analysis.StressState == StressState.Uniaxial)
        {
            advisories.Add(
                new("wide-flat",
                    Invariant(
                        $"The flat is {width:0.#} thicknesses wide: toward the middle it cannot change its width, which makes it stiffer "
                            + $"and stronger (plane strain). Compare with the analysis in plane strain; the truth lies between."),
                                Sources.PlaneStrainBending));
        }

        double strain = Math.Max(state.Curvature * state.NeutralAxis, state.Curvature * (analysis.Section.Height - state.NeutralAxis));
        advisories.AddRange(analysis.Material.Law.DoubtsAt(strain, analysis.Law));
        return advisories.AsReadOnly();
    }

    private static IReadOnlyList<Advisory> Tight(BendAnalysis analysis, in BentState state)
    {
        double ratio = state.InsideRadius / analysis.Section.Height * (1 + Rounding);
        if (ratio >= TightRatio)
        {
            return [];
        }

        string message =
            ratio < VeryTightRatio
                ? Invariant(
                    $"The inside radius is {ratio:0.##} depths of the section, below 3: strain is taken without thinning, and the cut "
                        + $"length can be off by more than 1 %, the radius by more than 0.3 %. Do not cut from this figure without a "
                        + $"trial piece.")
                            : Invariant(
                                $"The inside radius is {ratio:0.##} depths of the section, below 5: strain is taken without thinning, and "
                                    + $"the cut length can be off by up to 1 %, the radius by up to 0.3 %. Bend a trial piece.");
        return [new("tight-radius", message, Sources.Mechanics)];
    }

    public static IReadOnlyList<Advisory> ForReleased(ReleasedBend released)
    {
        LoadedBend loaded = released.Loaded;
        List<Advisory> advisories = [.. loaded.Advisories];
        if (released.IsStraight)
        {
            advisories.Add(
                new("springs-straight",
                    Invariant(
                        $"Held at an inside radius of {loaded.State.InsideRadius * 1e3:0.#} mm the bar stays elastic or nearly so: it "
                            + $"springs back straight."), Sources.Mechanics));
        }

        if (released.Rule is { HasMemory: true, Chord: not null })
        {
            advisories.Add(
                new("reversal-counted-twice",
                    "Memory and a falling modulus are both asked for: a measured modulus holds part of the early yielding on reversal, "
                        + "which is counted twice unless the numbers of both were fitted to one test.", Sources.Mechanisms));
        }

        if (released.Rule != UnloadingRule.Elastic)
        {
            return [.. advisories];
        }

        (double residual, double flow) = WorstResidual(released);
        if (residual > flow * (1 + 1e-9))
        {
            advisories.Add(
                new("residual-beyond-flow",
                    Invariant(
                        $"The stress left in the bar reaches {residual / 1e6:0} MPa on paper, where the metal flows at {flow / 1e6:0} "
                            + $"MPa: some fibers yield again on release. It changes the radius by less than 0.1 %, or about 0.2 % where "
                            + $"the metal yields early on reversal; more below 8 depths."), Sources.Mechanics, isMinor: true));
        }

        return [.. advisories];
    }

    /// <summary>
    /// The residual stress that exceeds the local flow stress most, at the corners of the outline and where the plastic zones cut its
    /// edges.
    /// </summary>
    private static (double Residual, double Flow) WorstResidual(ReleasedBend released)
    {
        LoadedBend loaded = released.Loaded;
        StressStrainLaw law = loaded.Analysis.Law;
        double core = law.YieldStrain / loaded.State.Curvature;
        double axis = loaded.State.NeutralAxis;
        (double Residual, double Flow) worst = (0, law.YieldStress.Pascals);
        foreach (Edge edge in loaded.Analysis.Section.Loops.SelectMany(loop => loop))
        {
            Consider(edge.Y1, edge.Z1);
            foreach (double level in new[] { axis - core, axis, axis + core })
            {
                double along = (level - edge.Y1) / (edge.Y2 - edge.Y1);
                if (along > 0 && along < 1)
                {
                    Consider(level, edge.Z1 + along * (edge.Z2 - edge.Z1));
                }
            }
        }

        return worst;

        void Consider(double y, double z)
        {
            double residual = Math.Abs(released.Residual(y, z));
            double flow = Math.Max(law.YieldStress.Pascals, Math.Abs(law.Stress(loaded.Strain(y, z))));
            if (residual * worst.Flow > worst.Residual * flow)
            {
                worst = (residual, flow);
            }
        }
    }
}
