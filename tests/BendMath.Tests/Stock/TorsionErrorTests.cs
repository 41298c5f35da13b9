using BendMath.Sections.Features;
using UnitsNet;

namespace BendMath.Tests.Stock;

/// <summary>
/// The error each approximate formula states, against <see cref="PrandtlGrid"/> on outlines described here anew, in millimeters; not a
/// published source.
/// </summary>
public sealed class TorsionErrorTests
{
    [Fact]
    public void The_grid_itself_reproduces_the_square()
    {
        double square = PrandtlGrid.TorsionConstant((y, z) => y > 0 && y < 1 && z > 0 && z < 1, 1, 1, 1.0 / 24, 1);
        Assert.Equal(0.140577, square, 0.00001);
    }

    [Fact]
    public void Hexagon_is_within_its_stated_error()
    {
        const double Flats = 12;
        double corner = Flats / Math.Sqrt(3);
        bool Contains(double y, double z) =>
            Math.Abs(y - (Flats / 2)) is var dy && Math.Abs(z - corner) is var dz && dy < Flats / 2
                && (dz * Math.Sqrt(3) / 2) + (dy / 2) < Flats / 2;
        Hold(new HexagonBar(Length.FromMillimeters(Flats)).TorsionConstant!,
            PrandtlGrid.TorsionConstant(Contains, Flats, 2 * corner, Flats / 40, 0.9 * Flats));
    }

    /// <summary>Legs of 12 and of 4 thicknesses; root radius to twice, toe radius to the whole thickness.</summary>
    [Theory]
    [InlineData(60, 5, 0, 0)]
    [InlineData(60, 5, 6, 2.5)]
    [InlineData(30, 3, 5, 2.5)]
    [InlineData(32, 8, 0, 0)]
    [InlineData(32, 8, 16, 4)]
    [InlineData(32, 8, 8, 8)]
    public void Angle_is_within_its_stated_errors(double leg, double thickness, double root, double toe)
    {
        bool Leg(double along, double across) =>
            along < leg - toe || across < thickness - toe || Hypotenuse(along - (leg - toe), across - (thickness - toe)) < toe;
        bool Contains(double y, double z) => y > 0 && z > 0 && y < leg && z < leg
            && ((z < thickness && Leg(y, z)) || (y < thickness && Leg(z, y))
                || (y < thickness + root && z < thickness + root && Hypotenuse(thickness + root - y, thickness + root - z) > root));
        EqualAngle angle =
            new(Length.FromMillimeters(leg), Length.FromMillimeters(thickness),
                AngleFillets.Of(Length.FromMillimeters(root), Length.FromMillimeters(toe)));
        double found = PrandtlGrid.TorsionConstant(Contains, leg, leg, thickness / 8, thickness);
        Assert.Equal(2, angle.TorsionConstants.Count);
        Assert.All(angle.TorsionConstants, constant => Hold(constant, found));
    }

    /// <summary>The ends of the range: web 0.4 and 1.2, root radius 0 and 1.5, toe radius 0 and 0.5 of the flange thickness.</summary>
    [Theory]
    [InlineData(60, 45, 6, 8, 8, 4)]
    [InlineData(60, 29, 4, 10, 15, 5)]
    [InlineData(60, 29, 4, 10, 0, 0)]
    [InlineData(60, 37, 12, 10, 15, 0)]
    [InlineData(100, 40, 10, 10, 10, 0)]
    public void Channel_is_within_its_stated_error(double depth, double flange, double web, double thickness, double root, double toe)
    {
        bool Contains(double y, double z)
        {
            double near = Math.Min(z, depth - z);
            return y > 0 && near > 0 && y < flange
                && (y < web
                    || (near < thickness
                        && (y < flange - toe || near < thickness - toe || Hypotenuse(y - (flange - toe), near - (thickness - toe)) < toe))
                    || (y < web + root && near < thickness + root && Hypotenuse(web + root - y, thickness + root - near) > root));
        }

        Channel channel = new(
            Length.FromMillimeters(depth), Length.FromMillimeters(flange), Length.FromMillimeters(web), Length.FromMillimeters(thickness),
                FlangeFillets.Of(Length.FromMillimeters(root), Length.FromMillimeters(toe), Length.Zero));
        Hold(channel.TorsionConstant!,
            PrandtlGrid.TorsionConstant(Contains, flange, depth, Math.Min(web, thickness) / 6, 1.3 * Math.Max(web, thickness)));
    }

    /// <summary>The ends of the range, as for the channel; the stem ends square or round.</summary>
    [Theory]
    [InlineData(50, 60, 6, 7, 7, 3.5, 1.75)]
    [InlineData(35, 54, 4, 10, 15, 5, 1)]
    [InlineData(35, 62, 12, 10, 15, 0, 0)]
    [InlineData(60, 54, 4, 10, 0, 0, 0)]
    [InlineData(40, 40, 5, 5, 5, 2.5, 2.5)]
    public void Tee_is_within_its_stated_error(double depth, double flange, double stem, double thickness, double root, double toe,
        double outer)
    {
        bool Contains(double y, double z)
        {
            double off = Math.Abs(z - (flange / 2));
            return y > 0 && y < depth && off < flange / 2
                && ((y < thickness
                    && (off < (flange / 2) - toe || y < thickness - toe
                        || Hypotenuse(off - ((flange / 2) - toe), y - (thickness - toe)) < toe))
                    || (off < stem / 2
                        && (y < depth - outer || off < (stem / 2) - outer
                            || Hypotenuse(y - (depth - outer), off - ((stem / 2) - outer)) < outer))
                    || (y < thickness + root && off < (stem / 2) + root
                        && Hypotenuse(thickness + root - y, (stem / 2) + root - off) > root));
        }

        Tee tee = new(
            Length.FromMillimeters(depth), Length.FromMillimeters(flange), Length.FromMillimeters(stem), Length.FromMillimeters(thickness),
                FlangeFillets.Of(Length.FromMillimeters(root), Length.FromMillimeters(toe), Length.FromMillimeters(outer)));
        Hold(tee.TorsionConstant!,
            PrandtlGrid.TorsionConstant(Contains, depth, flange, Math.Min(stem, thickness) / 6, 1.3 * Math.Max(stem, thickness)));
    }

    [Fact]
    public void A_shape_outside_the_range_of_its_formula_has_no_constant()
    {
        AngleFillets wide = AngleFillets.Of(Length.FromMillimeters(7), Length.Zero);
        Assert.Null(new EqualAngle(Length.FromMillimeters(50), Length.FromMillimeters(3), wide).TorsionConstant);
        Assert.Null(new EqualAngle(Length.FromMillimeters(19), Length.FromMillimeters(5), AngleFillets.Sharp).TorsionConstant);
        Assert.Null(new FlatBar(Length.FromMillimeters(30), Length.FromMillimeters(8), Length.FromMillimeters(2)).TorsionConstant);
        Assert.Null(new SquareBar(Length.FromMillimeters(20), Length.FromMillimeters(1)).TorsionConstant);
        Assert.Null(new SquareTube(Length.FromMillimeters(20), Length.FromMillimeters(5), CornerRadii.Sharp).TorsionConstant);
        Assert.Null(Channel(web: 3, outer: 0).TorsionConstant);
        Assert.Null(Channel(web: 8, outer: 2).TorsionConstant);
        Assert.NotNull(Channel(web: 8, outer: 0).TorsionConstant);
        Assert.Null(
            new Tee(Length.FromMillimeters(40), Length.FromMillimeters(40), Length.FromMillimeters(10), Length.FromMillimeters(5),
                FlangeFillets.Sharp).TorsionConstant);
        Assert.Null(new RoundBar(Length.FromMillimeters(10)).WarpingConstant);
    }

    private static Channel Channel(double web, double outer) => new(
        Length.FromMillimeters(100), Length.FromMillimeters(50), Length.FromMillimeters(web), Length.FromMillimeters(10),
            FlangeFillets.Of(Length.Zero, Length.Zero, Length.FromMillimeters(outer)));

    private static double Hypotenuse(double a, double b) => Math.Sqrt((a * a) + (b * b));

    private static void Hold(TorsionConstant constant, double found)
    {
        double error = (constant.Value.MillimetersToTheFourth / found) - 1;
        double stated = constant.Formula.LargestError!.Value.DecimalFractions;
        Assert.True(Math.Abs(error) <= stated, FormattableString.Invariant($"{constant}: off by {error:P2} from {found}"));
    }
}
