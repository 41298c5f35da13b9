using BendMath.Sections.Outlines;
using BendMath.Tests.Sections;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using UnitsNet;

namespace BendMath.Tests.Properties;

/// <summary>
/// Relations between the figures of random outlines of lines and arcs: moved, turned, scaled, mirrored, cut in two, drilled.
/// </summary>
public sealed class OutlineRelations
{
    private const double Rounding = 1e-11;

    [Property(MaxTest = 100)]
    public Property Moving_the_drawing_changes_nothing() => Prop.ForAll(Star.Any.ToArbitrary(), Star.Angles.ToArbitrary(), (star, by) =>
    {
        Figures here = new(Of(star.Loop()));
        Figures there = new(Of(star.Loop(point => (point.X + 3 * by, point.Y - 2 * by))));
        here.Near(there);
    });

    [Property(MaxTest = 100)]
    public Property Turning_follows_Mohr_and_keeps_its_invariants() =>
        Prop.ForAll(Star.Any.ToArbitrary(), Star.Angles.ToArbitrary(), (star, turn) =>
    {
        CustomBar bar = Drawn.Bar(star.Loop());
        Figures flat = new(bar.AsDrawn.Properties);
        Figures turned = new(bar.TurnedBy(Angle.FromDegrees(turn)).Properties);
        double c = Math.Cos(turn * Math.PI / 180);
        double s = Math.Sin(turn * Math.PI / 180);
        double scale = flat.Second + flat.Radial;
        Near.Relative(flat.Area, turned.Area, Rounding, "area");
        Near.Relative(flat.Perimeter, turned.Perimeter, Rounding, "perimeter");
        Near.Absolute(c * c * flat.Second + s * s * flat.Radial + 2 * s * c * flat.Product, turned.Second, Rounding * scale,
            "bending axis");
        Near.Absolute(s * s * flat.Second + c * c * flat.Radial - 2 * s * c * flat.Product, turned.Radial, Rounding * scale, "radial axis");
        Near.Absolute((c * c - s * s) * flat.Product + s * c * (flat.Radial - flat.Second), turned.Product, Rounding * scale, "product");
        Near.Absolute(scale, turned.Major + turned.Minor, Rounding * scale, "sum");
        Near.Absolute(flat.Major, turned.Major, Rounding * scale, "major");
        Near.Absolute(flat.Second * flat.Radial - flat.Product * flat.Product, turned.Major * turned.Minor, Rounding * scale * scale,
            "determinant");
        if (flat.Major > 1.001 * flat.Minor)
        {
            Near.Relative(flat.MajorModulus, turned.MajorModulus, 1e-8, "principal modulus");
            Near.Relative(flat.MinorModulus, turned.MinorModulus, 1e-8, "principal modulus");
        }
    });

    [Property(MaxTest = 100)]
    public Property A_quarter_turn_exchanges_the_axes() => Prop.ForAll(Star.Any.ToArbitrary(), star =>
    {
        CustomBar bar = Drawn.Bar(star.Loop());
        Figures flat = new(bar.AsDrawn.Properties);
        Figures upright = new(bar.Orientations[1].Properties);
        Near.Relative(flat.Second, upright.Radial, Rounding, "second moment");
        Near.Relative(flat.Plastic, upright.PlasticRadial, Rounding, "plastic modulus");
        Near.Relative(flat.PlasticRadial, upright.Plastic, Rounding, "plastic modulus about the radial axis");
        Near.Relative(flat.EqualArea, upright.Width - upright.EqualAreaAxial, 1e-10, "equal-area axis");
        Near.Relative(flat.EqualAreaAxial, upright.EqualArea, 1e-10, "equal-area axis along the ring");
    });

    [Property(MaxTest = 100)]
    public Property Scaling_scales_each_figure_by_its_power() =>
        Prop.ForAll(Star.Any.ToArbitrary(), Sold.Part.ToArbitrary(), (star, part) =>
    {
        double by = Sold.Between(0.05, 40, part);
        Figures one = new(Of(star.Loop()));
        Figures many = new(Of(star.Loop(point => (by * point.X, by * point.Y))));
        one.Scaled(by).Near(many);
    });

    [Property(MaxTest = 100)]
    public Property A_mirror_turns_the_product_round_and_nothing_else() => Prop.ForAll(Star.Any.ToArbitrary(), star =>
    {
        CustomBar image = Drawn.Bar(star.Loop(mirrored: true));
        Figures there = new(image.AsDrawn.Properties);
        Figures here = new(Of(star.Loop()));
        Assert.Equal("reversed-winding", Assert.Single(image.Advisories).Code);
        Near.Absolute(-here.Product, there.Product, Rounding * here.Second, "product");
        Near.Relative(here.Width - here.CentroidAxial, there.CentroidAxial, Rounding, "centroid");
        (here with { Product = 0, CentroidAxial = 1, EqualAreaAxial = 1 }).Near(
            there with { Product = 0, CentroidAxial = 1, EqualAreaAxial = 1 });
    });

    [Property(MaxTest = 100)]
    public Property Two_parts_add_up() => Prop.ForAll(Star.Any.ToArbitrary(), Gen.Choose(2, 3).ToArbitrary(), (star, to) =>
    {
        SectionProperties[] parts = [Of(star.Part(0, to)), Of(star.Part(to, star.Corners.Length))];
        double[] low = [Low(star.Part(0, to)), Low(star.Part(to, star.Corners.Length))];
        Figures whole = new(Of(star.Loop()));
        double bottom = Low(star.Loop());
        Figures[] figures = [.. parts.Select(part => new Figures(part))];
        double[] levels = [.. figures.Select((figure, i) => figure.Centroid + low[i] - bottom)];
        Near.Relative(whole.Area, figures.Sum(figure => figure.Area), Rounding, "area");
        Near.Relative(whole.Area * whole.Centroid, figures.Select((figure, i) => figure.Area * levels[i]).Sum(), Rounding, "first moment");
        Near.Relative(
            whole.Second, figures.Select((figure, i) => figure.Second + figure.Area * Math.Pow(levels[i] - whole.Centroid, 2)).Sum(),
                Rounding, "second moment");
    });

    [Property(MaxTest = 100)]
    public Property Holes_are_taken_off() => Prop.ForAll(Star.Any.ToArbitrary(), Sold.Part.ToArbitrary(), (star, part) =>
    {
        (double x, double y, double radius) = (4 * part, -3 * part, 1 + 3 * part);
        OutlineLoop hole = part > 0.5 ? Drawn.Circle(x, y, radius) : Drawn.Rectangle(x - radius, y - radius, 2 * radius, radius);
        Figures whole = new(Of(star.Loop()));
        Figures taken = new(Of(hole));
        Figures left = new(Of(star.Loop(), hole));
        double at = taken.Centroid + Low(hole) - Low(star.Loop());
        Near.Relative(whole.Area - taken.Area, left.Area, Rounding, "area");
        Near.Relative(whole.Area * whole.Centroid - taken.Area * at, left.Area * left.Centroid, Rounding, "first moment");
        Near.Relative(
            whole.Second + whole.Area * Math.Pow(whole.Centroid - left.Centroid, 2) - taken.Second
                - taken.Area * Math.Pow(at - left.Centroid, 2), left.Second, Rounding, "second moment");
        Near.Relative(whole.Perimeter + taken.Perimeter, left.Perimeter, Rounding, "perimeter");
    });

    [Property(MaxTest = 200)]
    public Property Plastic_exceeds_elastic_and_axes_lie_inside() =>
        Prop.ForAll(Star.Any.ToArbitrary(), Star.Angles.ToArbitrary(), (star, turn) =>
    {
        OrientedSection section = Drawn.Bar(star.Loop(), Drawn.Circle(2, 3, 4)).TurnedBy(Angle.FromDegrees(turn));
        SectionProperties p = section.Properties;
        Assert.True(p.ShapeFactor > 1);
        Assert.True(p.PlasticModulus.CubicMeters > Math.Min(p.ElasticModulusInside.CubicMeters, p.ElasticModulusOutside.CubicMeters));
        Assert.True(
            p.PlasticModulusAboutRadialAxis.CubicMeters
                > Math.Min(p.ElasticModulusAboutRadialAxisNear.CubicMeters, p.ElasticModulusAboutRadialAxisFar.CubicMeters));
        Assert.InRange(p.EqualAreaAxisFromInside.Meters, 0.01 * p.Depth.Meters, 0.99 * p.Depth.Meters);
        Assert.InRange(p.EqualAreaAxisAxial.Meters, 0.01 * p.Width.Meters, 0.99 * p.Width.Meters);
        Assert.InRange(p.PrincipalSecondMomentMajor.MetersToTheFourth, p.SecondMomentAboutBendingAxis.MetersToTheFourth * (1 - Rounding),
            double.MaxValue);
    });

    private static SectionProperties Of(params OutlineLoop[] loops) => Drawn.Bar(loops).AsDrawn.Properties;

    private static double Low(OutlineLoop loop) => new Outline([loop]).Edges[0].Min(edge => edge.Bounds().LowY);

    /// <summary>In meters and their powers.</summary>
    private sealed record Figures(
        double Area, double Depth, double Width, double Centroid, double CentroidAxial, double Second, double Radial, double Product,
        double Major, double Minor,
        double EqualArea, double EqualAreaAxial, double Plastic, double PlasticRadial, double Perimeter, double MajorModulus,
        double MinorModulus)
    {
        public Figures(SectionProperties p)
            : this(
                p.Area.SquareMeters, p.Depth.Meters, p.Width.Meters, p.CentroidFromInside.Meters, p.CentroidAxial.Meters,
                p.SecondMomentAboutBendingAxis.MetersToTheFourth, p.SecondMomentAboutRadialAxis.MetersToTheFourth,
                p.ProductOfInertia.MetersToTheFourth,
                p.PrincipalSecondMomentMajor.MetersToTheFourth, p.PrincipalSecondMomentMinor.MetersToTheFourth,
                p.EqualAreaAxisFromInside.Meters, p.EqualAreaAxisAxial.Meters, p.PlasticModulus.CubicMeters,
                p.PlasticModulusAboutRadialAxis.CubicMeters,
                p.Perimeter.Meters, p.PrincipalElasticModulusMajor.CubicMeters, p.PrincipalElasticModulusMinor.CubicMeters)
        {
        }

        public Figures Scaled(double by)
        {
            (double two, double three, double four) = (by * by, Math.Pow(by, 3), Math.Pow(by, 4));
            return new(
                Area * two, Depth * by, Width * by, Centroid * by, CentroidAxial * by, Second * four, Radial * four, Product * four,
                Major * four, Minor * four,
                EqualArea * by, EqualAreaAxial * by, Plastic * three, PlasticRadial * three, Perimeter * by, MajorModulus * three,
                    MinorModulus * three);
        }

        public void Near(Figures other)
        {
            Tests.Near.Relative(Area, other.Area, Rounding, "area");
            Tests.Near.Relative(Depth, other.Depth, Rounding, "depth");
            Tests.Near.Relative(Width, other.Width, Rounding, "width");
            Tests.Near.Relative(Centroid, other.Centroid, Rounding, "centroid");
            Tests.Near.Relative(CentroidAxial, other.CentroidAxial, Rounding, "axial centroid");
            Tests.Near.Relative(Second, other.Second, Rounding, "second moment");
            Tests.Near.Relative(Radial, other.Radial, Rounding, "second moment about the radial axis");
            Tests.Near.Absolute(Product, other.Product, Rounding * Second, "product");
            Tests.Near.Relative(EqualArea, other.EqualArea, 1e-10, "equal-area axis");
            Tests.Near.Relative(EqualAreaAxial, other.EqualAreaAxial, 1e-10, "axial equal-area axis");
            Tests.Near.Relative(Plastic, other.Plastic, Rounding, "plastic modulus");
            Tests.Near.Relative(PlasticRadial, other.PlasticRadial, Rounding, "plastic modulus about the radial axis");
            Tests.Near.Relative(Perimeter, other.Perimeter, Rounding, "perimeter");
        }
    }
}
