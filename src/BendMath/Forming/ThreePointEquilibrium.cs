using BendMath.Bending;
using BendMath.Numerics;

namespace BendMath.Forming;

/// <summary>
/// Incremental three-point bending in the steady state. With D = a²/(2R_n) − d, and on each side the mean inclination coefficients
/// B₁ = κ₀/2 − ∫₀^κ₀ M² dκ/(2M₀²) (incoming, loaded for the first time) and B₂ = κ_p/2 + M₀/(3·E·I_b) (outgoing, permanent plus elastic),
/// the two conditions that the bar touches both supports are (a − x)²·q₁ = D and (a + x)²·q₂ = D with q = 1/(2R_n) − B.
/// A bar that unloads with a share η of its stiffness keeps κ_p = κ₀ − M₀/(η·E·I_b), none when that is negative, and its elastic part at the nose is κ₀ − κ_p; B₂ = κ_p/2 + (κ₀ − κ_p)/3 still rises with κ₀.
/// Adding the roots removes the contact shift x and leaves one equation for the peak curvature κ₀: √D·(1/√q₁ + 1/√q₂) = 2a.
/// </summary>
internal sealed class ThreePointEquilibrium(BendAnalysis analysis, ThreePointSetup setup)
{
    private readonly AreaMoments _moments = analysis.Moments;

    private readonly double _modulus = analysis.Law.E;

    /// <summary>Peak state and contact shift at a nominal curvature (circle through the three contacts); null state when the bar wraps the nose.</summary>
    public (BentState Peak, double Shift)? At(double nominal)
    {
        double noseCurvature = NoseCurvature();
        if (nominal >= noseCurvature)
        {
            return null;
        }

        // Zero curvature under the nose cannot reach the supports; at the curvature of the nose the bar reaches them or wraps. Most peaks are near the nominal curvature, so the bracket grows from there:
        // moments of tight bends that nobody makes are never asked for.
        double low = 0;
        double high = Math.Min(noseCurvature, 1.5 * nominal);
        while (Reach(high, nominal) < 0)
        {
            if (high >= noseCurvature)
            {
                return null;
            }

            low = high;
            high = Math.Min(noseCurvature, 2 * high);
        }

        double peak = Bracketed.Root(k => Reach(k, nominal), low, high);
        BentState state = analysis.StateAt(peak, "stroke");
        (double q1, double q2, double nose) = Openings(state);
        double d2 = (nose - nominal) / 2;
        return (state, setup.A * (1 - Math.Sqrt(d2 / q1)));
    }

    /// <summary>The nominal curvature that gives a peak state: the equation solved for D, closed form.</summary>
    public double NominalFor(BentState peak)
    {
        (double q1, double q2, double nose) = Openings(peak);
        double root = 2 / (1 / Math.Sqrt(q1) + 1 / Math.Sqrt(q2));
        return nose - 2 * root * root;
    }

    /// <summary>Force of the nose, M₀/(a − x) + M₀/(a + x), of a peak state under the circle that gives it.</summary>
    public double NoseForce(BentState peak, double nominal)
    {
        (double q1, _, double nose) = Openings(peak);
        return Force(peak, setup.A * (1 - Math.Sqrt((nose - nominal) / 2 / q1)));
    }

    /// <summary>
    /// Force of the nose when the circle through the contacts has a curvature; that which starts the wrap where the bar lies on the nose, null where it would fold over an edge. Next to nothing the bar is elastic: κ₀ =
    /// (3/2)·κ_nom solves the equation.
    /// </summary>
    public double? NoseForceAt(double nominal)
    {
        if (nominal < 1e-6 * analysis.FirstYield)
        {
            return 3 * _modulus * _moments.SecondY * nominal / setup.A;
        }

        return At(nominal) is { } found ? Force(found.Peak, found.Shift)
            : setup.Nose > 0 ? Force(analysis.StateAtRadius(setup.Nose), 0)
            : null;
    }

    private double Force(in BentState peak, double shift) =>
        peak.BendingMoment(_moments, _modulus) * (1 / (setup.A - shift) + 1 / (setup.A + shift));

    /// <summary>1/R_n of a bar that takes the curvature of the nose itself, κ₀ = 1/(r_nose + y_n).</summary>
    private double NoseCurvature() => setup.Nose > 0
        ? analysis.StateAtRadius(setup.Nose).Curvature
        : TightestCurvature();

    /// <summary>Over an edge the inside fiber cannot shorten to nothing: stop just before.</summary>
    private double TightestCurvature() =>
        analysis.StateAtRadius(1e-6 * analysis.Section.Height).Curvature;

    private double Reach(double peak, double nominal)
    {
        if (peak <= 0)
        {
            return -1;
        }

        (double q1, double q2, double nose) = Openings(analysis.StateAt(peak, "stroke"));
        double d2 = (nose - nominal) / 2;
        return d2 <= 0 ? 1 : q1 <= 0 || q2 <= 0 ? 1e6 : Math.Sqrt(d2 / q1) + Math.Sqrt(d2 / q2) - 2;
    }

    private (double Incoming, double Outgoing, double Nose) Openings(BentState peak)
    {
        double nose = 1 / (setup.Nose + peak.NeutralAxis);
        double moment = peak.BendingMoment(_moments, _modulus);
        double permanent = peak.Left(_moments, free: false, analysis.Unloading).InPlane;
        double b1 = peak.Curvature / 2 - analysis.MomentSquared.UpTo(peak.Curvature) / (2 * moment * moment);
        double elastic = analysis.Unloading == 1 ? moment / (3 * _modulus * _moments.SecondY) : (peak.Curvature - permanent) / 3;
        double b2 = permanent / 2 + elastic;
        return (nose / 2 - b1, nose / 2 - b2, nose);
    }
}
