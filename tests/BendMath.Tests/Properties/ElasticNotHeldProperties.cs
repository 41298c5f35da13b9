using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;

namespace BendMath.Tests.Properties;

public sealed class ElasticNotHeldProperties
{
    /// <summary>
    /// Any angle of the tables, elastic and not held: κ_r/κ = −I_br/I_r, and it springs straight (unsymmetric bending: Boresi and Schmidt,
    /// Advanced Mechanics of Materials, ch. 7, from memory).
    /// </summary>
    [Property(MaxTest = 100)]
    public Property An_elastic_angle_leans_by_its_product_of_inertia() => Prop.ForAll(
        Sold.Angles.ToArbitrary(), Sold.PerfectlyPlastic.ToArbitrary(),
        Sold.Part.Select(part => Sold.Between(2000, 50_000, part)).ToArbitrary(), (bar, metal, depths) =>
        {
            BendAnalysis analysis = new Bend(bar, metal, depths).Analysis();
            LoadedBend loaded = analysis.LoadedUnheldTo(BendRadius.Inside(depths * analysis.Section.Depth));
            SectionProperties section = analysis.Section.Properties;
            Assert.True(loaded.IsElastic);
            Near.Relative(-section.ProductOfInertia / section.SecondMomentAboutRadialAxis, loaded.OutOfPlaneCurvature / loaded.Curvature,
                1e-9, "lean");
            Near.Absolute(0, loaded.HoldDownMoment / loaded.BendingMoment, 1e-9, "hold-down moment");
            Assert.True(loaded.Release(Release.Free).IsStraight);
        });
}
