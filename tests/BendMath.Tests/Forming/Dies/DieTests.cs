using UnitsNet;

namespace BendMath.Tests.Forming.Dies;

public sealed class DieTests
{
    [Fact]
    public void The_stamped_face_decides_the_inside_face_radius()
    {
        Assert.Equal(200, Inside(ReferenceFace.InsideOfBar), 1e-9);
        Assert.Equal(170, Inside(ReferenceFace.OutsideOfBar), 1e-9);
        Assert.Equal(197, Inside(ReferenceFace.OffsetBy(Length.FromMillimeters(3))), 1e-9);
    }

    [Fact]
    public void A_die_too_small_for_the_bar_says_so()
    {
        Die die = Workshop.Die("small", 25, ReferenceFace.OutsideOfBar);
        Assert.Contains("small", Assert.Throws<ArgumentOutOfRangeException>(() => die.InsideFaceRadiusFor(Workshop.Rim)).Message,
            StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => new WrapBending().Form(Workshop.RimSteel, die));
    }

    [Fact]
    public void A_die_needs_a_name_a_face_and_a_radius()
    {
        Assert.Throws<ArgumentException>("name", () => Workshop.Die(" ", 200));
        Assert.Throws<ArgumentOutOfRangeException>("stampedRadius", () => Workshop.Die("A", 0));
        Assert.Throws<ArgumentNullException>("face", () => new Die("A", Length.FromMillimeters(200), null!));
        Assert.Throws<ArgumentOutOfRangeException>("offset", () => ReferenceFace.OffsetBy(Length.FromMillimeters(-1)));
    }

    [Fact]
    public void Equal_dies_are_equal() => Assert.Equal(Workshop.Die("A", 200), Workshop.Die("A", 200));

    [Fact]
    public void A_rack_sorts_its_dies_and_finds_them_by_name()
    {
        Assert.Equal(["A", "B", "C", "D"], Workshop.Rack.Select(die => die.Name));
        Assert.Equal(4, Workshop.Rack.Count);
        Assert.Same(Workshop.Rack[2], Workshop.Rack.Find("C"));
        Assert.Null(Workshop.Rack.Find("c"));
        Assert.Throws<ArgumentOutOfRangeException>("index", () => Workshop.Rack[4]);
    }

    [Fact]
    public void A_rack_holds_at_least_one_die_and_no_name_twice()
    {
        Assert.Throws<ArgumentException>("dies", () => new DieRack([]));
        Assert.Contains("\"A\" occurs 2 times",
            Assert.Throws<ArgumentException>("dies", () => new DieRack([Workshop.Die("A", 200), Workshop.Die("A", 250)])).Message,
                StringComparison.Ordinal);
    }

    private static double Inside(ReferenceFace face) => Workshop.Die("A", 200, face).InsideFaceRadiusFor(Workshop.Rim).Millimeters;
}
