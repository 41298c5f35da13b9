using BendMath.Bending.MomentCurves;
using BendMath.Forming.ThreePoint;
using BendMath.Numerics;

namespace BendMath.Forming.Bumps;

/// <summary>
/// One bump over a nose that is not a point. The bar touches it off its middle, by x toward the end of the bar, with the support there at
/// a − x and the other at a + x. With R_n = r_nose + y_n(κ₀)
/// and κ₀ the curvature under load at the contact, each side closes by itself:
/// ∫[max(κ_p, κ_p(M)) + M/(E·I_b)]·(L − u)du = d ∓ x·a/R_n + x²/(2R_n), minus on the side toward the end, with L = a ∓ x and M = M₀(1 −
/// u/L).
/// At a given R_n below 1/κ_nom the M₀ of that side falls with x and that of the other rises, so there is one root; R_n follows by
/// substitution.
/// </summary>
internal sealed class BluntBump(BendAnalysis analysis, ThreePointSetup setup)
{
    private const int Substitutions = 60;

    private const double Settled = 1e-11;

    /// <summary>How well the shift is found, in half-spans.</summary>
    private const double Sharp = 1e-13;

    /// <summary>Largest shift of the contact that is searched, in half-spans.</summary>
    private const double Farthest = 0.9;

    private readonly FirstLoadingCurve _curve = analysis.FirstLoading;

    private readonly double _a = setup.A;

    public FirstLoadingCurve Curve => _curve;

    /// <summary>What one bump does.</summary>
    /// <param name="bar">The bar before it.</param>
    /// <param name="center">Place of the middle of the nose.</param>
    /// <param name="nominal">Curvature of the circle through the three contacts, κ_nom.</param>
    public Touch At(MomentEnvelope bar, double center, double nominal)
    {
        double opening = nominal * _a * _a / 2;
        double guess = _curve.LastMoment / 2;
        double shift = 0;
        double nose = setup.Nose + analysis.Moments.CentroidY;
        for (int i = 0; i < Substitutions; i++)
        {
            Contact contact = new(this, bar, center, opening, nose);
            (shift, guess) = contact.Solve(shift, guess);
            double curvature = Math.Max(bar.Permanent(center + shift), _curve.Permanent(guess)) + guess / _curve.Stiffness;
            if (guess == 0)
            {
                return new(shift, new(_a + shift, _a - shift, 0, 0), curvature, false);
            }

            double next = setup.Nose + analysis.StateAt(curvature, nameof(nominal)).NeutralAxis;
            if (Math.Abs(next - nose) <= Settled * nose)
            {
                return new(shift, new(_a + shift, _a - shift, guess, 0), curvature, curvature > 1 / next);
            }

            nose = next;
        }

        throw new InvalidOperationException(
            "The contact of a blunt nose was not found; this is a defect of BendMath, please report it with the input.");
    }

    /// <summary>
    /// Where a bump touches, the moments under it, the curvature under load at the contact, and whether the bar would lie down on the
    /// nose.
    /// </summary>
    internal readonly struct Touch(double shift, BumpMomentDiagram tent, double curvature, bool wraps)
    {
        public double Shift { get; } = shift;

        public BumpMomentDiagram Tent { get; } = tent;

        public double Curvature { get; } = curvature;

        public bool Wraps { get; } = wraps;
    }

    private readonly struct Contact(BluntBump owner, MomentEnvelope bar, double center, double opening, double nose)
    {
        /// <summary>Shift and moment from guesses of both.</summary>
        public (double Shift, double Moment) Solve(double shift, double guess)
        {
            // What the side toward the start has to spare at the moment of the other: it falls with the shift.
            double value = Spare(shift, ref guess);
            double step = (value > 0 ? 0.02 : -0.02) * owner._a;
            double near = shift;
            double far = shift;
            double beyond = value;
            double moment = guess;
            while (beyond != 0 && beyond > 0 == value > 0)
            {
                if (Math.Abs(far) == Farthest * owner._a)
                {
                    return (far, moment);
                }

                (near, value) = (far, beyond);
                far = Math.Max(-Farthest * owner._a, Math.Min(Farthest * owner._a, far + step));
                step *= 2;
                beyond = Spare(far, ref moment);
            }

            Contact self = this;
            double width = Sharp * owner._a;
            double root = near < far
                ? FalsePosition.Root(x => self.Spare(x, ref moment), near, value, far, beyond, width)
                : FalsePosition.Root(x => self.Spare(x, ref moment), far, beyond, near, value, width);
            Spare(root, ref moment);
            return (root, moment);
        }

        private double Spare(double shift, ref double moment)
        {
            moment = MomentAt(shift, moment);
            BumpMomentDiagram tent = Tent(shift, moment);
            double target = opening + shift * owner._a / nose + shift * shift / (2 * nose);
            return (bar.OpeningBefore(center + shift, tent).Sum + tent.Elastic(tent.Before) / owner._curve.Stiffness - target) / opening;
        }

        /// <summary>
        /// M₀ of the side toward the end; none where it lies clear, the largest of the table where even that does not reach.
        /// </summary>
        private double MomentAt(double shift, double guess)
        {
            double target = opening - shift * owner._a / nose + shift * shift / (2 * nose);
            AfterSide side = new(owner, bar, center + shift, shift, target);
            double most = owner._curve.LastMoment;
            return side.At(0).Value >= 0 ? 0
                : side.At(most).Value <= 0 ? most
                : Newton.Root(ref side, 0, most, guess, rises: true, 1e-14);
        }

        private BumpMomentDiagram Tent(double shift, double moment) => new(owner._a + shift, owner._a - shift, moment, 0);
    }

    private readonly struct AfterSide(BluntBump owner, MomentEnvelope bar, double contact, double shift, double target) : IDifferentiable
    {
        public (double Value, double Slope) At(double x)
        {
            BumpMomentDiagram tent = new(owner._a + shift, owner._a - shift, x, 0);
            (double sum, double slope) = bar.OpeningAfter(contact, tent);
            double elastic = tent.Elastic(tent.After) / owner._curve.Stiffness;
            double scale = Math.Abs(target) + 1e-12 * owner._a;
            return ((sum + elastic - target) / scale, x == 0 ? 0 : (slope + elastic) / (x * scale));
        }
    }
}
