using BendMath.Numerics.Geometry;
using BendMath.Numerics.Integrals;

namespace BendMath.Bending;

/// <summary>
/// The linear strain of a loaded bar seen along its gradient: in turned coordinates e = Gradient·(η − Zero), with the section as chords
/// across it.
/// </summary>
internal sealed class LoadedField
{
    public LoadedField(LoadedBend loaded)
    {
        BentState state = loaded.State;
        ref readonly AreaMoments m = ref loaded.Analysis.Moments;
        Gradient = state.TotalCurvature;
        Cosine = state.Curvature / Gradient;
        Sine = state.OutOfPlane / Gradient;
        Zero = Cosine * state.NeutralAxis + Sine * m.CentroidZ;
        CentroidLevel = Cosine * m.CentroidY + Sine * m.CentroidZ;
        CentroidPlace = Cosine * m.CentroidZ - Sine * m.CentroidY;
        double angle = Math.Atan2(state.OutOfPlane, state.Curvature);
        Edge[][] loops = loaded.Analysis.Section.Loops;
        Profile = ChordProfile.Of(angle == 0 ? loops : [.. loops.Select(loop => loop.Select(edge => edge.Turned(angle)).ToArray())]);
        Area = m.Area;
        Reach = Math.Max(Profile.Levels[Profile.Levels.Length - 1] - CentroidLevel, CentroidLevel - Profile.Levels[0]);
        LargestStrain = Math.Max(Math.Abs(StrainAt(Profile.Levels[0])), Math.Abs(StrainAt(Profile.Levels[Profile.Levels.Length - 1])));
    }

    public ChordProfile Profile { get; }

    public double Gradient { get; }

    public double Zero { get; }

    public double Cosine { get; }

    public double Sine { get; }

    public double CentroidLevel { get; }

    public double CentroidPlace { get; }

    public double Area { get; }

    /// <summary>Largest distance of a chord from the centroid.</summary>
    public double Reach { get; }

    public double LargestStrain { get; }

    public double StrainAt(double level) => Gradient * (level - Zero);

    /// <summary>Levels of strains of either sign.</summary>
    public double[] LevelsOf(IEnumerable<double> strains) =>
        [.. strains.SelectMany(strain => new[] { Zero - strain / Gradient, Zero + strain / Gradient })];
}
