using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using UnitsNet;

namespace BendMath.Tests.Properties;

/// <summary>Relations between the loaded and the released bar.</summary>
public sealed class ReleaseProperties
{
    [Property(MaxTest = 200)]
    public Property An_elastic_bar_springs_straight() => Prop.ForAll(
        Sold.AnyBend.ToArbitrary(), Sold.Part.Select(part => 0.01 + 0.989 * part).ToArbitrary(), Sold.Releases.ToArbitrary(),
        (bend, share, release) =>
        {
            BendAnalysis analysis = bend.Analysis();
            LoadedBend loaded = analysis.LoadedAt(analysis.YieldCurvature * share);
            ReleasedBend released = loaded.Release(release);
            Assert.True(loaded.IsElastic);
            Assert.True(released.IsStraight);
            Assert.Equal(0, released.CurvatureKept);
            Assert.Contains(released.Advisories, advisory => advisory.Code == "springs-straight");
            InvalidOperationException thrown = Assert.Throws<InvalidOperationException>(() => released.Ring);
            Assert.StartsWith("The bar springs back straight and leaves no ring: ", thrown.Message, StringComparison.Ordinal);
            Near.Absolute(0, released.ResidualStressAt(Length.Zero, Length.Zero).Pascals, 1e-9 * analysis.Law.YieldStress.Pascals,
                "residual stress");
        });

    /// <summary>Release and its inverse undo each other, whichever line of the bar is measured.</summary>
    [Property(MaxTest = 400)]
    public Property The_inverse_finds_the_loaded_radius_again() => Prop.ForAll(
        Sold.Bends(Sold.Bars, Sold.AnyMetal, margin: 1.05).ToArbitrary(), Sold.Releases.ToArbitrary(), Lines.ToArbitrary(),
        (bend, release, line) =>
        {
            LoadedBend loaded = bend.Loaded();
            BendRadius wanted = Measured(loaded.Release(release).Ring, line);
            LoadedBend found = loaded.Analysis.LoadedFor(wanted, release);
            Near.Relative(loaded.InsideRadius.Meters, found.InsideRadius.Meters, 1e-10 * Excess(loaded, release), "loaded inside radius");
            Near.Relative(
                wanted.Value.Meters, Measured(found.Release(release).Ring, line).Value.Meters, 1e-10 * Excess(loaded, release),
                    "finished radius");
        });

    [Property(MaxTest = 300)]
    public Property A_bar_finishes_wider_than_it_was_bent() =>
        Prop.ForAll(Sold.AnyBend.ToArbitrary(), Sold.Releases.ToArbitrary(), (bend, release) =>
    {
        LoadedBend loaded = bend.Loaded();
        ReleasedBend released = loaded.Release(release);
        Assert.True(released.Ring.InsideRadius > loaded.InsideRadius);
        Assert.InRange(released.CurvatureKept, 0, 1);
    });

    /// <summary>At the same loaded radius a higher yield springs back more, slope beyond yield kept.</summary>
    [Property(MaxTest = 300)]
    public Property More_yield_springs_back_more() => Prop.ForAll(
        Sold.Bends(Sold.Bars, Sold.AnyMetal, margin: 2).ToArbitrary(), Sold.Part.Select(part => 1.01 + 0.3 * part).ToArbitrary(),
        Sold.Releases.ToArbitrary(), (bend, factor, release) =>
        {
            FinishedRing ring = bend.Loaded().Release(release).Ring;
            FinishedRing stronger =
                (bend with { Metal = bend.Metal with { Yield = bend.Metal.Yield * factor } }).Loaded().Release(release).Ring;
            Assert.True(stronger.InsideRadius > ring.InsideRadius, $"{ring} became {stronger}");
        });

    /// <summary>Held flat, e_f(y) = κ(y − y_n) − Δκ(y − ȳ) vanishes at n_f = y_n − (Δκ/κ_f)(ȳ − y_n).</summary>
    [Property(MaxTest = 300)]
    public Property Held_flat_the_fiber_that_keeps_its_length_moves_away_from_the_centroid() =>
        Prop.ForAll(Sold.AnyBend.ToArbitrary(), bend =>
    {
        LoadedBend loaded = bend.Loaded();
        FinishedRing ring = loaded.Release(Release.HeldFlat).Ring;
        double axis = loaded.NeutralAxisFromInside.Meters;
        double kept = ring.Curvature.InverseMeters;
        double lost = loaded.Curvature.InverseMeters - kept;
        double expected = axis - lost / kept * (loaded.Analysis.Section.Properties.CentroidFromInside.Meters - axis);
        Near.Absolute(expected, ring.LengthPreservingFiberFromInside.Meters, 1e-10 * ring.InsideRadius.Meters, "length-preserving fiber");
    });

    private static Gen<RadiusReference> Lines { get; } =
        Gen.Elements(RadiusReference.InsideFace, RadiusReference.Centroid, RadiusReference.OutsideFace);

    /// <summary>1 up to a finished radius of 30 loaded radii; beyond that the relative change of R_f per relative change of R_i.</summary>
    private static double Excess(LoadedBend loaded, Release release)
    {
        double finished = loaded.Release(release).Ring.InsideRadius.Meters;
        double radius = loaded.InsideRadius.Meters;
        if (finished <= 30 * radius)
        {
            return 1;
        }

        ReleasedBend tighter = loaded.Analysis.LoadedTo(BendRadius.Inside(Length.FromMeters(radius * (1 - 1e-6)))).Release(release);
        return Math.Max(1, (1 - tighter.Ring.InsideRadius.Meters / finished) / 1e-6);
    }

    private static BendRadius Measured(FinishedRing ring, RadiusReference line) => line switch
    {
        RadiusReference.InsideFace => BendRadius.Inside(ring.InsideRadius),
        RadiusReference.Centroid => BendRadius.Centroid(ring.CentroidRadius),
        _ => BendRadius.Outside(ring.OutsideRadius),
    };
}
