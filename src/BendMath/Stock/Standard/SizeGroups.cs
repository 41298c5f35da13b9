using BendMath.Evidence;

namespace BendMath.Stock.Standard;

/// <summary>Where each group of rows comes from and what its stock assumes.</summary>
internal static class SizeGroups
{
    private const string NominalWall =
        "Nominal wall, which is what lies on the rack; the tables calculate with the thinner design wall, which WithDesignWall() gives.";

    private const string SharpBars = "Nominal size with sharp corners";

    public static IReadOnlyList<SizeGroup> All { get; } =
    [
        new(SizeSystem.En10056, Sources.En10056Tables,
            "Root radius as listed; the toe radius is half the root radius, as the tables have it, but not more than the thickness, which "
                + "four thin angles would exceed.", SizeColumns.Fillet, EuropeanSizes.Angles)
        {
            Fillets = static (thickness, root) => AngleFillets.Of(root, root / 2 > thickness ? thickness : root / 2),
        },
        new(SizeSystem.En10219, Sources.HollowSectionTables,
            "Nominal wall; corner radii that EN 10219-2 takes for section properties: 2 t outside and t inside to 6 mm of wall, 2.5 t and "
                + "1.5 t to 10 mm, 3 t and 2 t above.", SizeColumns.None, EuropeanSizes.ColdFormedTubes)
        {
            Corners = CornerRadii.ColdFormed,
        },
        new(SizeSystem.En10210, Sources.HollowSectionTables,
            "Nominal wall; corner radii that EN 10210-2 takes for section properties: 1.5 t outside and t inside.", SizeColumns.None,
            EuropeanSizes.HotFinishedTubes)
        {
            Corners = CornerRadii.HotFinished,
        },
        new(SizeSystem.EnBars, Sources.En10060Rounds, "Nominal diameter.", SizeColumns.None, EuropeanSizes.Rounds),
        new(SizeSystem.EnBars, Sources.En10059Squares,
            SharpBars + "; EN 10059 allows corner radii up to 1 mm at 12 mm and 3 mm at 100 mm (from memory).", SizeColumns.None,
                EuropeanSizes.Squares),
        new(SizeSystem.EnBars, Sources.En10058Flats, SharpBars + ".", SizeColumns.None, EuropeanSizes.Flats),
        new(SizeSystem.Aisc, Sources.AiscShapes,
            "The tables print no radii. Fillets by a rule fitted to their areas, centroids and moments: root 0.8 (k − t), toe 0.3 (k − "
                + "t), with the printed distance k for design; area within 1.3 %, moments within 1.9 % of the print.", SizeColumns.Fillet,
                AmericanAngles.Structural)
        {
            Fillets = static (thickness, distance) => AngleFillets.FromDesignDistance(distance, thickness),
        },
        new(SizeSystem.Aisc, Sources.AiscShapes,
            NominalWall + " Corner radii 2 t outside and t inside, as the tables assume with their wall.", SizeColumns.DesignWall,
            AmericanTubes.HollowSections)
        {
            Corners = CornerRadii.Hss,
        },
        new(SizeSystem.Aisc, Sources.AiscShapes, NominalWall, SizeColumns.Pipe, AmericanTubes.Pipe),
        new(SizeSystem.AsmeB3610, Sources.PipeSchedule40, "Nominal wall.", SizeColumns.Pipe, AmericanTubes.Schedule40),
        new(SizeSystem.AsmeB3610, Sources.PipeSchedule80, "Nominal wall.", SizeColumns.Pipe, AmericanTubes.Schedule80),
        new(SizeSystem.AsmeB3610, Sources.PipeSchedule80FromMemory, "Nominal wall, from memory.", SizeColumns.Pipe,
            AmericanTubes.Schedule80FromMemory),
        new(SizeSystem.UsBarSizeAngles, Sources.BarSizeAngles,
            "Sizes from memory, without listed fillets: sharp corners, with which the weights that merchants print agree.",
                SizeColumns.None, AmericanAngles.BarSize),
        new(SizeSystem.UsBars, Sources.AiscBars, SharpBars + ", from memory.", SizeColumns.None, AmericanTubes.RoundsAndSquares),
        new(SizeSystem.UsBars, Sources.AiscBars, SharpBars + ", from memory.", SizeColumns.None, AmericanTubes.Flats),
    ];
}
