using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using MathNet.Numerics.Integration;
using UnitsNet;

namespace BendMath.Tests.Properties;

/// <summary>
/// Residual stress is in equilibrium: integrated over the rectangles a flat or a sharp angle is made of, by quadrature that shares nothing
/// with the library.
/// </summary>
public sealed class ResidualStressProperties
{
    private const double Tolerance = 1e-10;

    [Property(MaxTest = 150)]
    public Property Residual_stress_is_in_equilibrium() => Prop.ForAll(
        Sold.Bends(Gen.OneOf(Sold.Flats, Sold.SharpAngles), Sold.AnyMetal).ToArbitrary(), Sold.Releases.ToArbitrary(), (bend, release) =>
        {
            LoadedBend loaded = bend.Loaded();
            ReleasedBend released = loaded.Release(release);
            SectionProperties section = loaded.Analysis.Section.Properties;
            double y = section.CentroidFromInside.Meters;
            double z = section.CentroidAxial.Meters;
            double stress = loaded.Analysis.Law.YieldStress.Pascals;
            double force = stress * section.Area.SquareMeters;
            Near.Absolute(0, Integral(bend.Bar, released, (_, _) => 1), Tolerance * force, "axial force");
            Near.Absolute(0, Integral(bend.Bar, released, (level, _) => level - y), Tolerance * force * section.Depth.Meters,
                "bending moment");
            double remaining = release == Release.Free
                ? 0
                : loaded.HoldDownMoment.NewtonMeters
                    - loaded.BendingMoment.NewtonMeters * (section.ProductOfInertia / section.SecondMomentAboutBendingAxis);
            Near.Absolute(remaining, Integral(bend.Bar, released, (_, axial) => axial - z), Tolerance * force * section.Width.Meters,
                "moment about the radial axis");
        });

    /// <summary>The stress is linear between the depths at which the fibers yielded, so Gauss points between them are exact.</summary>
    private static double Integral(SoldBar bar, ReleasedBend released, Func<double, double, double> weight)
    {
        LoadedBend loaded = released.Loaded;
        double yield = loaded.Analysis.Law.YieldStress / loaded.Analysis.Law.ElasticModulus / loaded.Curvature.InverseMeters;
        double axis = loaded.NeutralAxisFromInside.Meters;
        double sum = 0;
        foreach ((double bottom, double top, double width) in Rectangles(bar))
        {
            double[] levels = [bottom, .. new[] { axis - yield, axis + yield }.Where(level => level > bottom && level < top), top];
            for (int i = 1; i < levels.Length; i++)
            {
                sum += GaussLegendreRule.Integrate(
                    (level, axial) =>
                        weight(level, axial) * released.ResidualStressAt(Length.FromMeters(level), Length.FromMeters(axial)).Pascals,
                    levels[i - 1], levels[i], 0, width, 4);
            }
        }

        return sum;
    }

    private static IEnumerable<(double Bottom, double Top, double Width)> Rectangles(SoldBar bar)
    {
        double size = bar.Size / 1e3;
        double thickness = bar.Thickness / 1e3;
        if (bar.Kind == "flat")
        {
            yield return bar.Lies == 0 ? (0, thickness, size) : (0, size, thickness);
            yield break;
        }

        double seam = bar.Lies == 0 ? thickness : size - thickness;
        yield return (0, seam, bar.Lies == 0 ? size : thickness);
        yield return (seam, size, bar.Lies == 0 ? thickness : size);
    }
}
