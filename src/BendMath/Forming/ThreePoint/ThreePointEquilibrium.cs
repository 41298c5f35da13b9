using BendMath.Bending;
using BendMath.Bending.MomentCurves;
using BendMath.Numerics;

namespace BendMath.Forming.ThreePoint;

/// <summary>
/// Incremental three-point bending in the steady state. With D = a²/(2R_n) − d, and on each side the mean inclination coefficients
/// B₁ = κ₀/2 − ∫₀^κ₀ M² dκ/(2M₀²) (incoming, loaded for the first time) and B₂ = κ_p/2 + M₀/(3·E·I_b) (outgoing, permanent plus elastic),
/// the two conditions that the bar touches both supports are (a − x)²·q₁ = D and (a + x)²·q₂ = D with q = 1/(2R_n) − B.
/// A bar that unloads with a share η of its stiffness keeps κ_p = κ₀ − M₀/(η·E·I_b), none when that is negative, and its elastic part at
/// the nose is κ₀ − κ_p; B₂ = κ_p/2 + (κ₀ − κ_p)/3 still rises with κ₀. Adding the roots removes the contact shift x and gives the circle
/// through the contacts from the peak curvature κ₀ in closed form: 1/R_n − κ_nom = 2·[2/(1/√q₁ + 1/√q₂)]². Up to the curvature of the nose,
/// κ₀·R_n = 1, both q are positive.
/// </summary>
internal sealed class ThreePointEquilibrium(BendAnalysis analysis, ThreePointSetup setup)
{
    private readonly MomentCurve _curve = analysis.Curve;

    private readonly double _stiffness = analysis.Law.E * analysis.Moments.SecondY;

    private readonly double _unloading = analysis.Unloading;

    /// <summary>A nose over which the bar cannot be bent yet: no neutral axis lies beyond the outside face.</summary>
    private readonly double _below = 1 / (setup.Nose + analysis.Section.Height);

    /// <summary>
    /// Peak state and contact shift at a nominal curvature (circle through the three contacts); null when the bar wraps the nose.
    /// </summary>
    public (BentState Peak, double Shift)? At(double nominal)
    {
        NominalBalance balance = new(this, nominal);
        return Solve(ref balance, nominal) is { } peak ? Found(peak, nominal) : null;
    }

    /// <summary>
    /// The same where the bender gives: the stroke s with s + F(s)/k = δ. Both s and F come from the peak curvature in closed form, so it
    /// is the one unknown. Null when the bar wraps the nose, as it does where even the curvature of the nose takes less stroke: beyond, the
    /// force is that which starts the wrap, or none where the bar would fold over an edge.
    /// </summary>
    public (BentState Peak, double Shift, double Stroke)? AtSetStroke(double setStroke, double stiffness)
    {
        SetStrokeBalance balance = new(this, setup, setStroke, stiffness);
        if (Solve(ref balance, setup.NominalOf(setStroke)) is not { } peak)
        {
            return null;
        }

        double nominal = Balance(peak).Nominal;
        (BentState state, double shift) = Found(peak, nominal);
        return (state, shift, setup.StrokeOf(nominal));
    }

    /// <summary>The nominal curvature that gives a peak state: the equation solved for D, closed form.</summary>
    public double NominalFor(BentState peak) => Balance(peak.Curvature).Nominal;

    /// <summary>Force of the nose, M₀/(a − x) + M₀/(a + x), of a peak state.</summary>
    public double NoseForce(BentState peak) => Balance(peak.Curvature).Force;

    /// <summary>Force that starts the wrap of a bar around the nose.</summary>
    public double WrapForce() => 2 * analysis.StateAtRadius(setup.Nose).BendingMoment(analysis.Moments, analysis.Law.E) / setup.A;

    private (BentState Peak, double Shift) Found(double peak, double nominal)
    {
        BentState state = analysis.StateNear(_curve.At(peak));
        Openings openings = new(_curve.At(peak), _curve.Work(peak), setup.Nose, _unloading);
        return (state, setup.A * (1 - Math.Sqrt((openings.Nose - nominal) / 2 / openings.Incoming)));
    }

    /// <summary>
    /// The peak curvature at which something that rises with it vanishes; null when it is still negative at the curvature of the nose. Most
    /// peaks are near the nominal curvature, so the bracket grows from there: moments of tight bends that nobody makes are never asked for.
    /// </summary>
    private double? Solve<TBalance>(ref TBalance balance, double nominal)
        where TBalance : struct, IDifferentiable
    {
        double low = 0;
        double high = Math.Min(_below, 1.5 * nominal);
        double? nose = null;
        while (balance.At(high).Value < 0)
        {
            if (high == nose)
            {
                return null;
            }

            low = high;
            nose ??= high >= _below ? NoseCurvature() : null;
            high = Math.Min(nose ?? _below, 2 * high);
        }

        return Newton.Root(ref balance, low, high, Math.Min(1.1 * nominal, high), rises: true, 1e-15);
    }

    /// <summary>
    /// 1/R_n of a bar that takes the curvature of the nose itself, κ₀ = 1/(r_nose + y_n). Over an edge the inside fiber cannot shorten to
    /// nothing: stop just before.
    /// </summary>
    private double NoseCurvature() => analysis.StateAtRadius(setup.Nose > 0 ? setup.Nose : analysis.Section.TightestRadius).Curvature;

    private Circle Balance(double peak) => new(_curve.At(peak), _curve.Work(peak), setup, _unloading, _stiffness);

    /// <summary>q₁, q₂ and 1/R_n with their derivatives over κ₀.</summary>
    private readonly struct Openings
    {
        public Openings(in MomentPoint point, double work, double noseRadius, double unloading)
        {
            double square = point.Moment * point.Moment;
            Nose = 1 / (noseRadius + point.Axis);
            NoseSlope = -point.AxisSlope * Nose * Nose;
            double elastic = point.Moment / unloading;
            double stays = Math.Max(0, point.Curvature - elastic);
            double staysSlope = stays > 0 ? 1 - point.MomentSlope / unloading : 0;
            Incoming = (Nose - point.Curvature + work / square) / 2;
            IncomingSlope = NoseSlope / 2 - work * point.MomentSlope / (square * point.Moment);
            Outgoing = Nose / 2 - point.Curvature / 3 - stays / 6;
            OutgoingSlope = NoseSlope / 2 - 1 / 3.0 - staysSlope / 6;
        }

        public double Incoming { get; }

        public double IncomingSlope { get; }

        public double Outgoing { get; }

        public double OutgoingSlope { get; }

        public double Nose { get; }

        public double NoseSlope { get; }
    }

    /// <summary>Circle through the contacts and force of the nose that belong to a peak curvature, with their derivatives.</summary>
    private readonly struct Circle
    {
        public Circle(in MomentPoint point, double work, ThreePointSetup setup, double unloading, double stiffness)
        {
            Openings q = new(point, work, setup.Nose, unloading);
            double one = 1 / Math.Sqrt(q.Incoming);
            double other = 1 / Math.Sqrt(q.Outgoing);
            double root = 2 / (one + other);
            double rootSlope = root * root / 4 * (one * one * one * q.IncomingSlope + other * other * other * q.OutgoingSlope);
            Nominal = q.Nose - 2 * root * root;
            NominalSlope = q.NoseSlope - 4 * root * rootSlope;

            // (a − x)/a = root·one and (a + x)/a = root·other: the sum of their inverses is the sum of √q over root.
            double sides = (1 / one + 1 / other) / root;
            double sidesSlope = (one * q.IncomingSlope + other * q.OutgoingSlope) / (2 * root) - sides * rootSlope / root;
            Force = stiffness * point.Moment * sides / setup.A;
            ForceSlope = stiffness * (point.MomentSlope * sides + point.Moment * sidesSlope) / setup.A;
        }

        public double Nominal { get; }

        public double NominalSlope { get; }

        public double Force { get; }

        public double ForceSlope { get; }
    }

    private readonly struct NominalBalance(ThreePointEquilibrium owner, double nominal) : IDifferentiable
    {
        public (double Value, double Slope) At(double x)
        {
            Circle circle = owner.Balance(x);
            return (circle.Nominal / nominal - 1, circle.NominalSlope / nominal);
        }
    }

    /// <summary>
    /// With κ = 2δ/(a² + δ²), dδ/dκ = (a² + δ²)²/(2(a² − δ²)); circles tighter than the half-span have no stroke and count as too much.
    /// </summary>
    private readonly struct SetStrokeBalance(ThreePointEquilibrium owner, ThreePointSetup setup, double setStroke, double stiffness)
        : IDifferentiable
    {
        public (double Value, double Slope) At(double x)
        {
            Circle circle = owner.Balance(x);
            double half = setup.A;
            if (circle.Nominal * half >= 1)
            {
                return (1, double.NaN);
            }

            double stroke = setup.StrokeOf(circle.Nominal);
            double sum = half * half + stroke * stroke;
            double rate = sum * sum / (2 * (half - stroke) * (half + stroke));
            return (
                Math.Min(1, (stroke + circle.Force / stiffness) / setStroke - 1),
                (rate * circle.NominalSlope + circle.ForceSlope / stiffness) / setStroke);
        }
    }
}
