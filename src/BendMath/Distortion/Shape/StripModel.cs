using BendMath.Bending;
using BendMath.Numerics.Geometry;
using BendMath.Numerics.Integrals;
using BendMath.Sections;

namespace BendMath.Distortion.Shape;

/// <summary>The strips of a wall layout, ready to be solved for a bend.</summary>
internal static class StripModel
{
    private const int Elements = 10;

    /// <param name="loaded">The bend, its section keeping its shape.</param>
    /// <param name="layout">The walls of the section.</param>
    /// <param name="held">Whether ends that turn with another wall are kept from turning.</param>
    public static StripFrame Of(LoadedBend loaded, WallLayout layout, bool held)
    {
        int unknowns = 0;
        int[] corners = [-1, -1, -1];
        Strip[] strips = [.. layout.Walls.Select(wall => StripOf(wall, layout.InPairs ? 2 : 1, held, corners, ref unknowns))];
        StressStrainLaw law = loaded.Analysis.Material.Law;
        RigidPart rest = layout.IsWhole ? RigidPart.None(law) : RigidPart.Of(law, loaded.Analysis.Section.Profile, strips);
        return new(strips, unknowns, rest, LawOf(loaded), loaded.State.InsideRadius, loaded.State.NeutralAxis);
    }

    public static TwoWayLaw LawOf(LoadedBend loaded) => new(loaded.Analysis.Material.Law, loaded.Analysis.Material.PoissonsRatio ?? 0.3);

    /// <summary>
    /// The bend with the forces of the section that has given way: N = 0, M and M_r, written as the plastic moments of the undeformed
    /// section, so that release and ring follow as ever. Between two walls that mirror each other M_r vanishes.
    /// </summary>
    public static LoadedBend Bent(LoadedBend loaded, double curvature, double axis, double moment, double holdDown)
    {
        ref readonly AreaMoments m = ref loaded.Analysis.Moments;
        double modulus = loaded.Analysis.Material.Law.E;
        PlasticMoments sums = new(
            curvature * m.Area * (m.CentroidY - axis),
            curvature * m.SecondY - moment / modulus,
            curvature * m.Product - holdDown / modulus);
        return new(loaded.Analysis, new BentState(curvature, axis, sums));
    }

    private static Strip StripOf(FlatWallStrip wall, int count, bool held, int[] corners, ref int unknowns)
    {
        int[] places = new int[2 * (Elements + 1)];
        for (int node = 0; node <= Elements; node++)
        {
            (bool moves, int corner) = node == 0 ? wall.Start : node == Elements ? wall.End : WallEnd.Free;
            places[2 * node] = moves ? unknowns++ : -1;
            bool turns = corner >= 0 && (moves || !held);
            if (!turns)
            {
                places[2 * node + 1] = -1;
            }
            else if (corner == 0 || corners[corner] < 0)
            {
                places[2 * node + 1] = unknowns++;
                corners[corner] = corner == 0 ? -1 : places[2 * node + 1];
            }
            else
            {
                places[2 * node + 1] = corners[corner];
            }
        }

        return new(wall.Place, wall.Direction, wall.Width, wall.Thickness, count, places);
    }
}
