using BendMath.Numerics.Geometry;
using BendMath.Numerics.Integrals;

namespace BendMath.Bending.Guides;

/// <summary>
/// Slopes of a loaded state along a guide against curvature out of the plane, N = 0 and M_r + k·κ_r = 0, and of the ring it leaves when
/// let go elastically.
/// </summary>
internal sealed class LeaningSlopes
{
    private readonly LoadedBend _loaded;

    private readonly double _share;

    private readonly FiberSums _tangent;

    private readonly double _arm;

    /// <param name="loaded">The state.</param>
    /// <param name="stiffness">k of its guide; infinite when held flat.</param>
    public LeaningSlopes(LoadedBend loaded, double stiffness)
    {
        _loaded = loaded;
        _share = stiffness / loaded.Analysis.Law.E;
        _arm = loaded.State.InsideRadius + loaded.Analysis.Moments.CentroidY;
        LoadedField field = new(loaded);
        _tangent = new TangentStiffness(loaded.Analysis.Law, field).Sums();
    }

    /// <summary>Slopes of κ, κ_r and the plastic integrals, for a change of e at fixed curvatures and of the balance.</summary>
    /// <param name="radius">Change of R_i.</param>
    /// <param name="stiffness">Change of k/E.</param>
    /// <param name="plastic">Change of ∫e_p·g dA at fixed strains, by a number of the law.</param>
    public Change Of(double radius, double stiffness, in PlasticMoments plastic)
    {
        BentState state = _loaded.State;
        double force = radius * state.Curvature * _tangent.S - plastic.P0;
        double holdDown = radius * state.Curvature * _tangent.Sb - plastic.Pr + stiffness * state.OutOfPlane;
        double nk = _arm * _tangent.S + _tangent.Sd;
        double nr = _tangent.Sb;
        double mk = _arm * _tangent.Sb + _tangent.Sdb;
        double mr = _tangent.Sbb + _share;
        bool rigid = double.IsInfinity(_share);
        double outOfPlane = rigid ? 0 : (mk * force - nk * holdDown) / (nk * mr - nr * mk);
        double curvature = -(force + nr * outOfPlane) / nk;
        double axial = radius * state.Curvature + _arm * curvature;

        // de = axial + curvature·d + outOfPlane·b, of which E_t/E stays elastic.
        AreaMoments m = _loaded.Analysis.Moments;
        return new(
            curvature,
            outOfPlane,
            plastic.P0 + axial * (m.Area - _tangent.S) - curvature * _tangent.Sd - outOfPlane * _tangent.Sb,
            plastic.Pb - axial * _tangent.Sd + curvature * (m.SecondY - _tangent.Sdd) + outOfPlane * (m.Product - _tangent.Sdb),
            plastic.Pr - axial * _tangent.Sb + curvature * (m.Product - _tangent.Sdb) + outOfPlane * (m.SecondZ - _tangent.Sbb));
    }

    /// <summary>Changes of the loaded curvatures and of the plastic integrals.</summary>
    internal readonly struct Change(double curvature, double outOfPlane, double p0, double pb, double pr)
    {
        public double Curvature { get; } = curvature;

        public double OutOfPlane { get; } = outOfPlane;

        public double P0 { get; } = p0;

        public double Pb { get; } = pb;

        public double Pr { get; } = pr;
    }

    /// <summary>∫(E_t/E)·g·gᵀ dA; E_t is the same along a chord.</summary>
    private sealed class TangentStiffness(StressStrainLaw law, LoadedField loaded) : IChordIntegrand
    {
        private const double Accuracy = 1e-10;

        public int Size => FiberSums.Size;

        public int Kinks => 0;

        public double[] Levels { get; } = loaded.LevelsOf(law.Kinks);

        public double[] Allowed { get; } =
        [
            1, 1, 1, Accuracy * loaded.Area, Accuracy * loaded.Area * loaded.Reach, Accuracy * loaded.Area * loaded.Reach,
            .. Enumerable.Repeat(Accuracy * loaded.Area * loaded.Reach * loaded.Reach, 3),
        ];

        public FiberSums Sums()
        {
            return new FiberSums(ChordIntegrator.Integrate(loaded.Profile, this)).TurnedBack(loaded.Cosine, loaded.Sine);
        }

        public double Kink(int index, double level, double place) => 0;

        public void Add(double level, double low, double high, Span<double> sums)
        {
            double share = 1 - law.PlasticRate(Math.Abs(loaded.StrainAt(level)));
            double d = level - loaded.CentroidLevel;
            double from = low - loaded.CentroidPlace;
            double to = high - loaded.CentroidPlace;
            double width = share * (high - low);
            double first = width * (from + to) / 2;
            sums[3] += width;
            sums[4] += width * d;
            sums[5] += first;
            sums[6] += width * d * d;
            sums[7] += first * d;
            sums[8] += width * (from * from + from * to + to * to) / 3;
        }
    }
}
