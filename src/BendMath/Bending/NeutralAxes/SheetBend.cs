using System.Globalization;
using BendMath.Evidence;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Bending.NeutralAxes;

/// <summary>
/// A bend of sheet or flat bar the easy way in the words of drawing programs: K-factor, bend allowance and bend deduction, all of them
/// consequences of one fiber that keeps its length. Immutable and thread-safe.
/// </summary>
public sealed record SheetBend
{
    private const double RuleOfRadius = 1.57;

    private readonly double _thickness;

    private readonly double _inside;

    private readonly double _turn;

    private readonly double _fiber;

    private SheetBend(double thickness, double inside, double turn, double fiber, Source source)
    {
        _thickness = thickness;
        _inside = inside;
        _turn = turn;
        _fiber = fiber;
        Source = source;
    }

    /// <summary>Thickness of the sheet.</summary>
    public Length Thickness => Length.FromMeters(_thickness);

    /// <summary>Radius of the inside face.</summary>
    public Length InsideRadius => Length.FromMeters(_inside);

    /// <summary>
    /// Angle the sheet is bent through: 90° for a right angle, 180° for a hem. The opening angle between the legs is 180° less this.
    /// </summary>
    public Angle BendAngle => Angle.FromRadians(_turn);

    /// <summary>Distance of the fiber that keeps its length from the inside face.</summary>
    public Length FiberFromInside => Length.FromMeters(_fiber);

    /// <summary>What the fiber rests on.</summary>
    public Source Source { get; }

    /// <summary>
    /// K-factor as a share of the thickness: 0.5 is the middle fiber. The convention of American practice and of most drawing programs.
    /// </summary>
    /// <remarks>
    /// Equation: K = n/t.
    /// Range: any fiber n.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public double ThicknessFactor => _fiber / _thickness;

    /// <summary>
    /// The factor k as a share of half the thickness: 1 is the middle fiber. The convention of DIN 6935; twice
    /// <see cref="ThicknessFactor"/>.
    /// </summary>
    /// <remarks>
    /// Equation: k = 2n/t.
    /// Range: any fiber n.
    /// Source: <see cref="Sources.Din6935"/>
    /// </remarks>
    public double HalfThicknessFactor => 2 * _fiber / _thickness;

    /// <summary>Length of the fiber between the ends of the bend.</summary>
    /// <remarks>
    /// Equation: BA = α·(r + n).
    /// Range: any angle.
    /// Source: <see cref="Sources.Groover"/>
    /// </remarks>
    public Length BendAllowance => Length.FromMeters(Allowance);

    /// <summary>Length to take off the sum of both legs, each measured from its end to the corner where the outside faces meet.</summary>
    /// <exception cref="InvalidOperationException">The bend is 180° or more: the outside faces do not meet.</exception>
    /// <remarks>
    /// Equation: BD = 2·(r + t)·tan(α/2) − BA.
    /// Range: α &lt; 180°.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public Length BendDeduction => _turn < Math.PI * (1 - 1e-12)
        ? Length.FromMeters(2 * (_inside + _thickness) * Math.Tan(_turn / 2) - Allowance)
        : throw new InvalidOperationException("The outside faces of a bend of 180° or more do not meet; use the bend allowance.");

    /// <summary>
    /// The compensation v of DIN 6935, to be added to the sum of the outside lengths of both legs. Up to an opening angle of 90° a leg is
    /// measured to the tangent of the bend parallel to the other leg's end, from there on to the corner of the outside faces.
    /// </summary>
    /// <exception cref="InvalidOperationException">The bend is more than 180°.</exception>
    /// <remarks>
    /// Equation: v = α·(r + k·s/2) − 2·(r + s) for an opening angle β = 180° − α up to 90°; − 2·(r + s)·tan(α/2) in place of the last term
    /// up to 165°; v = 0 above.
    /// Range: 0 &lt; α ≤ 180°; from memory of the standard.
    /// Source: <see cref="Sources.Din6935"/>
    /// </remarks>
    public Length Compensation => Length.FromMeters(
        _turn > Math.PI * (1 + 1e-12)
        ? throw new InvalidOperationException("The compensation is defined for bends up to 180°; use the bend allowance.")
        : _turn < Math.PI / 12 * (1 - 1e-12) ? 0
        : Allowance - 2 * (_inside + _thickness) * Math.Min(1, Math.Tan(Math.Min(_turn, Math.PI / 2) / 2)));

    private double Allowance => _turn * (_inside + _fiber);

    /// <summary>
    /// A bend whose fiber is known, for example from <see cref="NeutralAxisAnswer.FiberFromInside"/> or from a measured bend.
    /// </summary>
    /// <param name="thickness">Thickness t, greater than zero.</param>
    /// <param name="insideRadius">Inside radius r, zero or more.</param>
    /// <param name="bendAngle">Angle the sheet is bent through, greater than zero and not greater than 360°.</param>
    /// <param name="fiber">Distance of the fiber that keeps its length from the inside face; greater than −r.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static SheetBend Of(Length thickness, Length insideRadius, Angle bendAngle, Length fiber)
    {
        double n = Guard.Finite(fiber, nameof(fiber));
        double r = Guard.NonNegative(insideRadius, nameof(insideRadius));
        return r + n > 0
            ? new(Guard.Positive(thickness, nameof(thickness)), r, Turn(bendAngle), n, Sources.Definition)
            : throw Guard.Fault(nameof(fiber), fiber,
                $"must lie outside the center of the bend, {Guard.MillimetersText(-r)} from the inside face");
    }

    /// <summary>A bend by the handbook's rules for right-angle bends.</summary>
    /// <param name="thickness">Thickness T, greater than zero.</param>
    /// <param name="insideRadius">Inside radius R, zero or more.</param>
    /// <param name="bendAngle">Angle the sheet is bent through, greater than zero and not greater than 360°.</param>
    /// <param name="metal">Metal and temper of the sheet.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <remarks>
    /// Equation: L = c·T + 1.57·R at 90°, c = 0.55, 0.64 or 0.71; hence K = c/1.57 = 0.350, 0.408 or 0.452, since 1.57 is π/2 rounded.
    /// Range: bends of 90°; other angles in proportion. No range of R/T was read.
    /// Source: <see cref="Sources.MachinerysHandbookSheetBends"/>
    /// </remarks>
    public static SheetBend ByMetal(Length thickness, Length insideRadius, Angle bendAngle, SheetMetal metal)
    {
        double t = Guard.Positive(thickness, nameof(thickness));
        double share = Guard.Defined(metal, nameof(metal)) switch
        {
            SheetMetal.SoftBrass or SheetMetal.SoftCopper => 0.55,
            SheetMetal.HalfHardBrass or SheetMetal.HalfHardCopper or SheetMetal.SoftSteel or SheetMetal.Aluminum => 0.64,
            _ => 0.71,
        };
        return new(t, Guard.NonNegative(insideRadius, nameof(insideRadius)), Turn(bendAngle), share / RuleOfRadius * t,
            Sources.MachinerysHandbookSheetBends);
    }

    /// <summary>A bend by the formula of DIN 6935.</summary>
    /// <param name="thickness">Thickness s, greater than zero.</param>
    /// <param name="insideRadius">Inside radius r; more than 0.0502 of the thickness, where the formula falls to zero.</param>
    /// <param name="bendAngle">Angle the sheet is bent through, greater than zero and not greater than 360°.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <remarks>
    /// Equation: n = k·s/2, k as in <see cref="StandardFactor"/>.
    /// Range: as <see cref="StandardFactor"/>.
    /// Source: <see cref="Sources.Din6935"/>
    /// </remarks>
    public static SheetBend ByStandard(Length thickness, Length insideRadius, Angle bendAngle)
    {
        double factor = StandardFactor(thickness, insideRadius);
        double t = Guard.Positive(thickness, nameof(thickness));
        return new(t, Guard.Positive(insideRadius, nameof(insideRadius)), Turn(bendAngle), factor * t / 2, Sources.Din6935);
    }

    /// <summary>The factor k of DIN 6935 by its formula; it multiplies half the thickness.</summary>
    /// <param name="thickness">Thickness s, greater than zero.</param>
    /// <param name="insideRadius">Inside radius r; more than 0.0502 of the thickness, where the formula falls to zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <remarks>
    /// Equation: k = 0.65 + 0.5·lg(r/s) up to r/s = 5, then 1.
    /// Range: from memory of the standard, whose stepped table begins at r/s = 0.65; below, the formula is continued.
    /// Source: <see cref="Sources.Din6935"/>
    /// </remarks>
    public static double StandardFactor(Length thickness, Length insideRadius) =>
        SheetFactor.OfFormula(StandardRatio(thickness, insideRadius, SheetFactor.VanishingRatio));

    /// <summary>The factor k of DIN 6935 by its stepped table; it multiplies half the thickness.</summary>
    /// <param name="thickness">Thickness s, greater than zero.</param>
    /// <param name="insideRadius">Inside radius r, at least 0.65 of the thickness.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <remarks>
    /// Equation: k = 0.6 for r/s from 0.65 to 1, 0.7 to 1.5, 0.8 to 2.4, 0.9 to 3.8, 1 above.
    /// Range: r/s ≥ 0.65; from memory of the standard.
    /// Source: <see cref="Sources.Din6935"/>
    /// </remarks>
    public static double SteppedStandardFactor(Length thickness, Length insideRadius) =>
        SheetFactor.OfSteps(StandardRatio(thickness, insideRadius, SheetFactor.LeastRatio * (1 - 1e-12)));

    /// <summary>Thickness, radius, angle, K-factor, allowance.</summary>
    public override string ToString() =>
        Invariant(
            $"{_thickness * 1e3:0.###} mm sheet, inside radius {_inside * 1e3:0.###} mm, bent {_turn * 180 / Math.PI:0.##}°: "
                + $"K {ThicknessFactor:0.###}, allowance {Allowance * 1e3:0.###} mm");

    private static double Turn(Angle bendAngle)
    {
        double turn = Guard.Positive(bendAngle, nameof(bendAngle));
        return turn <= 2 * Math.PI * (1 + 1e-12) ? turn : throw Guard.Fault(nameof(bendAngle), bendAngle, "must not be greater than 360°");
    }

    private static double StandardRatio(Length thickness, Length insideRadius, double least)
    {
        double t = Guard.Positive(thickness, nameof(thickness));
        double ratio = Guard.Positive(insideRadius, nameof(insideRadius)) / t;
        return ratio >= least
            ? ratio
            : throw Guard.Fault(nameof(insideRadius), insideRadius,
                $"must not be smaller than {Guard.MillimetersText(least * t)}, {least.ToString("0.####", CultureInfo.InvariantCulture)} "
                    + $"of the thickness");
    }
}
