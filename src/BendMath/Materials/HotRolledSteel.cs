using BendMath.Evidence;
using BendMath.Guards;
using BendMath.Materials;
using BendMath.Numerics;
using BendMath.Numerics.Geometry;
using BendMath.Numerics.Integrals;
using UnitsNet;

namespace BendMath;

/// <summary>
/// Hot-rolled steel from its yield and ultimate strength alone: a plateau at the yield stress up to 1.5 to 3 % of strain, then hardening.
/// Below the end of the plateau it is perfectly plastic;
/// <see cref="LoadedBend.LawFor"/> says on which side of it a bend lies.
/// </summary>
/// <remarks>
/// Equation: f = E·ε, f_y up to ε_sh, then f_y + (f_u − f_y)·[0.4x + 2x/(1 + 400x⁵)^(1/5)] with x = (ε − ε_sh)/(ε_u − ε_sh); ε_u = 0.6(1
/// − f_y/f_u) ≥ 0.06, ε_sh = 0.1·f_y/f_u − 0.055 within 0.015 … 0.03; as true stress σ(e) = f(exp(e) − 1)·exp(e).
/// Range: hot-rolled steel with yield strengths of 235 to 460 MPa, up to ε_u; constant engineering stress beyond.
/// Source: <see cref="Sources.YunGardner2017"/>
/// </remarks>
public sealed record HotRolledSteel : StressStrainLaw
{
    /// <summary>
    /// ε of the corner of the four lines, as a share of the way from ε_sh to ε_u, and the share of the hardening reached there.
    /// </summary>
    private const double CornerStrain = 0.25;

    private const double CornerStress = 0.625;

    private readonly HotRolledCurve _curve;

    private readonly MeasuredSegments? _lines;

    private readonly TabulatedLaw? _table;

    private readonly double _plateau;

    private readonly double _ultimate;

    /// <summary>Stress in the bar over stress in the tensile test: one, or 2/√3 in plane strain.</summary>
    private readonly double _factor;

    private readonly double _tensileModulus;

    private readonly double _yieldStrain;

    private readonly double[] _kinks;

    /// <summary>Makes the law, as true stress.</summary>
    /// <param name="elasticModulus">Young's modulus E, greater than zero.</param>
    /// <param name="plateauStress">Stress f_y of the plateau, the lower yield of a tensile test: greater than zero.</param>
    /// <param name="ultimateStrength">Ultimate strength f_u, greater than the plateau.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or the yield strain reaches the end of the
    /// plateau.</exception>
    public HotRolledSteel(Pressure elasticModulus, Pressure plateauStress, Pressure ultimateStrength)
        : this(elasticModulus, plateauStress, ultimateStrength, HotRolledForm.TrueStress)
    {
    }

    internal HotRolledSteel(Pressure elasticModulus, Pressure plateauStress, Pressure ultimateStrength, HotRolledForm form)
        : this(
            Guard.Positive(elasticModulus, nameof(elasticModulus)),
            Guard.Positive(elasticModulus, nameof(elasticModulus)),
            Guard.Positive(plateauStress, nameof(plateauStress)),
            Guard.Positive(ultimateStrength, nameof(ultimateStrength)),
            form,
            1)
    {
    }

    private HotRolledSteel(double modulus, double tensileModulus, double plateau, double ultimate, HotRolledForm form, double factor)
        : base(modulus)
    {
        if (ultimate <= plateau)
        {
            throw Guard.Fault("ultimateStrength", Pressure.FromPascals(ultimate),
                $"must be greater than the stress of the plateau, {Guard.Text(Pressure.FromPascals(plateau))}");
        }

        _plateau = plateau;
        _ultimate = ultimate;
        _factor = factor;
        _tensileModulus = tensileModulus;
        Form = form;
        _curve = new(tensileModulus, plateau, ultimate, form == HotRolledForm.TrueStress);
        if (_curve.YieldStrain >= _curve.Own(_curve.PlateauEnd))
        {
            throw Guard.Fault("plateauStress", Pressure.FromPascals(plateau),
                $"must be reached before the plateau ends, at a strain of {Guard.Text(PlateauEnd)} with a modulus "
                    + $"of {LawRules.Gigapascals(tensileModulus)}");
        }

        _yieldStrain = InBar(_curve.YieldStrain);
        if (form == HotRolledForm.FourLines)
        {
            _lines = Lines();
            _kinks = Lines().Strains;
        }
        else
        {
            _table = new(new PlasticTable(AtStrain, [.. _curve.Knots().Select(InBar)]));
            _kinks = [_yieldStrain, InBar(_curve.Own(_curve.PlateauEnd)), InBar(_curve.Own(_curve.UltimateStrain))];
        }
    }

    /// <summary>
    /// Stress at which the law leaves the elastic line: that of the plateau; as true stress, greater by the yield strain.
    /// </summary>
    public override Pressure YieldStress => Pressure.FromPascals(E * _yieldStrain);

    /// <summary>Engineering stress f_y of the plateau.</summary>
    public Pressure PlateauStress => Pressure.FromPascals(_plateau);

    /// <summary>Ultimate strength f_u.</summary>
    public Pressure UltimateStrength => Pressure.FromPascals(_ultimate);

    internal HotRolledForm Form { get; }

    /// <summary>Engineering strain ε_sh at which the plateau ends and hardening begins; a heat may have a longer one.</summary>
    /// <remarks>
    /// Equation: ε_sh = 0.1·f_y/f_u − 0.055, not below 0.015 and not above 0.03.
    /// Range: hot-rolled steel with yield strengths of 235 to 460 MPa; at f_y/f_u of 0.70 or less, its floor.
    /// Source: <see cref="Sources.YunGardner2017"/>
    /// </remarks>
    public Ratio PlateauEnd => Ratio.FromDecimalFractions(_curve.PlateauEnd);

    /// <summary>Engineering strain ε_u at the ultimate strength; beyond it the law is an assumption.</summary>
    /// <remarks>
    /// Equation: ε_u = 0.6(1 − f_y/f_u), not below 0.06.
    /// Range: hot-rolled steel with yield strengths of 235 to 460 MPa.
    /// Source: <see cref="Sources.YunGardner2017"/>
    /// </remarks>
    public Ratio UltimateStrain => Ratio.FromDecimalFractions(_curve.UltimateStrain);

    internal override double YieldStrain => _yieldStrain;

    internal override double DataStrain => InBar(_curve.Own(_curve.UltimateStrain));

    internal override IReadOnlyList<double> Kinks => _kinks;

    internal override LawShape Shape => new PointsShape(_kinks);

    internal override double ReferenceStrain => 1;

    internal override bool IsScaledByYield => false;

    internal override bool IsSmooth => _lines is null;

    /// <summary>
    /// The curve as it is printed, of engineering values. The constructor takes it as true stress, which is what tension and compression
    /// share, and is the one to bend with.
    /// </summary>
    /// <inheritdoc cref="HotRolledSteel(Pressure, Pressure, Pressure)"/>
    public static HotRolledSteel AsPrinted(Pressure elasticModulus, Pressure plateauStress, Pressure ultimateStrength) =>
        new(elasticModulus, plateauStress, ultimateStrength, HotRolledForm.PrintedCurve);

    /// <summary>The four straight lines as they are printed, of engineering values: integrated exactly and fastest.</summary>
    /// <inheritdoc cref="HotRolledSteel(Pressure, Pressure, Pressure)"/>
    public static HotRolledSteel AsFourLines(Pressure elasticModulus, Pressure plateauStress, Pressure ultimateStrength) =>
        new(elasticModulus, plateauStress, ultimateStrength, HotRolledForm.FourLines);

    /// <summary>
    /// The law that leaves the elastic line at another stress, with the same ultimate strength; the strains follow from both.
    /// </summary>
    /// <param name="yieldStress">The new yield stress, less than the ultimate strength.</param>
    /// <exception cref="ArgumentOutOfRangeException">The yield stress is not positive and finite, or not below the ultimate
    /// strength.</exception>
    public override StressStrainLaw WithYield(Pressure yieldStress)
    {
        double yield = LawRules.YieldBelowModulus(yieldStress, E) / _factor;
        double plateau = Form == HotRolledForm.TrueStress ? yield * Math.Exp(-yield / _tensileModulus) : yield;
        return plateau < _ultimate
            ? new HotRolledSteel(E, _tensileModulus, plateau, _ultimate, Form, _factor)
            : throw Guard.Fault(nameof(yieldStress), yieldStress,
                $"must be smaller than the ultimate strength, {Guard.Text(UltimateStrength)}");
    }

    /// <summary>Whether modulus, strengths and form are the same.</summary>
    /// <param name="other">The law to compare with.</param>
    public bool Equals(HotRolledSteel? other) => other is not null && Numbers.Equals(other.Numbers);

    /// <inheritdoc/>
    public override int GetHashCode() => Numbers.GetHashCode();

    /// <summary>Kind of law and its numbers.</summary>
    public override string ToString()
    {
        string form = Form switch
        {
            HotRolledForm.TrueStress => "true stress",
            HotRolledForm.PrintedCurve => "as printed",
            _ => "four lines",
        };
        return Invariant(
            $"hot-rolled steel, plateau {_plateau / 1e6:0.#} MPa to {100 * _curve.PlateauEnd:0.##} %, ultimate {_ultimate / 1e6:0.#} "
                + $"MPa, {form}, E {E / 1e9:0.#} GPa");
    }

    internal override bool Allows(Pressure yieldStress) => yieldStress.Pascals < _factor * _ultimate;

    internal override IEnumerable<Advisory> DoubtsAt(double strain, StressStrainLaw acting)
    {
        if (strain > acting.DataStrain)
        {
            yield return new("beyond-ultimate-strain", Invariant(
                $"The largest strain is {100 * strain:0.##} %, beyond the {100 * acting.DataStrain:0.##} % at which this steel reaches "
                    + $"its ")
                + "ultimate strength; from there the engineering stress is held constant, which is an assumption.", Sources.YunGardner2017);
        }
    }

    internal override double PlasticStrain(double strain) =>
        strain <= _yieldStrain ? 0 : _lines?.PlasticStrain(strain) ?? AtStrain(strain).Plastic;

    internal override double PlasticRate(double strain) => strain < _yieldStrain ? 0 : _lines?.PlasticRate(strain) ?? AtStrain(strain).Rate;

    internal override StressStrainLaw InPlaneStrain(double poissonsRatio) =>
        new HotRolledSteel(Stiffened(E, poissonsRatio).Pascals, E, _plateau, _ultimate, Form, PlaneStrainFactor);

    internal override PlasticSums Integrate(BandProfile profile, double curvature, double neutralAxis) => _lines is { } lines
        ? RampIntegrator.Integrate(profile, lines.Ramps, curvature, neutralAxis)
        : PlasticIntegrator.Integrate(profile, _table!.Value, curvature, neutralAxis);

    internal override double PlasticWork(BandProfile profile, double curvature, double neutralAxis) => _lines is { } lines
        ? RampIntegrator.Work(profile, lines.Ramps, curvature, neutralAxis)
        : PlasticIntegrator.Work(profile, _table!.Value, curvature, neutralAxis);

    internal override PlasticMoments MomentsOf(BandProfile profile, double curvature, double neutralAxis) => _lines is { } lines
        ? RampIntegrator.MomentsOf(profile, lines.Ramps, curvature, neutralAxis)
        : base.MomentsOf(profile, curvature, neutralAxis);

    internal override AxialSums AxialSumsOf(BandProfile profile, double neutralRadius, double neutralAxis) => _lines is { } lines
        ? RampIntegrator.AxialSumsOf(profile, lines.Ramps, neutralRadius, neutralAxis)
        : base.AxialSumsOf(profile, neutralRadius, neutralAxis);

    private (double, double, double, double, HotRolledForm, double) Numbers => (E, _tensileModulus, _plateau, _ultimate, Form, _factor);

    /// <summary>
    /// The strain in the bar at which the tensile test has a strain not below yield: plastic strain over the factor, stress times it.
    /// </summary>
    private double InBar(double tensile)
    {
        if (_factor == 1)
        {
            return tensile;
        }

        double stress = tensile <= _curve.YieldStrain ? _tensileModulus * tensile : _curve.At(tensile).Stress;
        return (tensile - stress / _tensileModulus) / _factor + _factor * stress / E;
    }

    /// <summary>
    /// In the tensile test itself, or through the strain of the test, which Newton's method finds: both strains rise together, nearly in
    /// proportion.
    /// </summary>
    private (double Plastic, double Rate) AtStrain(double strain)
    {
        double tensile = Math.Max(_curve.YieldStrain, strain);
        (double stress, double slope) = _curve.At(tensile);
        if (_factor == 1)
        {
            return (strain - stress / E, 1 - slope / E);
        }

        double shape = _factor / E - 1 / (_factor * _tensileModulus);
        double rate = 1;
        for (int i = 0; i < 60; i++)
        {
            rate = 1 / _factor + shape * slope;
            double step = (tensile / _factor + shape * stress - strain) / rate;
            tensile = Math.Max(_curve.YieldStrain, tensile - step);
            (stress, slope) = _curve.At(tensile);
            if (Math.Abs(step) <= 1e-15 * tensile)
            {
                break;
            }
        }

        return (strain - _factor * stress / E, 1 - _factor * slope / (E * rate));
    }

    private MeasuredSegments Lines()
    {
        double corner = _curve.PlateauEnd + CornerStrain * (_curve.UltimateStrain - _curve.PlateauEnd);
        double[] strains = [_curve.YieldStrain, _curve.PlateauEnd, corner, _curve.UltimateStrain];
        double[] stresses = [_plateau, _plateau, _plateau + CornerStress * (_ultimate - _plateau), _ultimate];
        double[] plastic = [.. strains.Select((strain, i) => i == 0 ? 0 : (strain - stresses[i] / _tensileModulus) / _factor)];
        return new([.. plastic.Select((strain, i) => strain + _factor * stresses[i] / E)], plastic);
    }
}
