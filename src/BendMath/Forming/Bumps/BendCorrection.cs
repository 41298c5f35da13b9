using BendMath.Evidence;
using BendMath.Forming.ThreePoint;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Forming.Bumps;

/// <summary>
/// The next correction after a measured ring: by how much more or less to bend the next bar, and what can be done with this one. A first
/// guess from one ring; measure the next ring too. Immutable and thread-safe.
/// </summary>
public sealed class BendCorrection
{
    private readonly double _stamp;

    private BendCorrection(MeasuredRing ring, BendRadius wanted, LoadedBend needed, double stamp)
    {
        Ring = ring;
        Wanted = wanted;
        Needed = needed;
        _stamp = stamp;
    }

    /// <summary>The measured ring.</summary>
    public MeasuredRing Ring { get; }

    /// <summary>The wanted ring.</summary>
    public BendRadius Wanted { get; }

    /// <summary>The loaded state that leaves the wanted ring.</summary>
    public LoadedBend Needed { get; }

    /// <summary>
    /// Loaded curvature that leaves the wanted ring over the one that left the measured ring: above 1 the next bar must be bent more.
    /// </summary>
    /// <remarks>
    /// Equation: κ_needed/κ_measured, each the loaded curvature whose release leaves that ring.
    /// Range: the same bar, metal and way of bending.
    /// Source: <see cref="Sources.Mechanics"/>
    /// </remarks>
    public double CurvatureRatio => Needed.State.Curvature / Ring.Loaded.State.Curvature;

    /// <summary>Whether the measured bar is bent too much: bending again cannot mend it.</summary>
    public bool IsBentTooMuch => CurvatureRatio < 1;

    /// <summary>Stamp of the die for the next bar: the inside face of the die changes as the loaded inside radius must.</summary>
    /// <remarks>
    /// Equation: S' = o + (S − o)·R_needed/R_measured, R the loaded inside radii, o the offset of the face the stamp means.
    /// Range: the same stock and way of bending on a die near the measured one; the ratio of die to loaded radius is taken to stay.
    /// Source: <see cref="Sources.FormingModels"/>
    /// </remarks>
    public Length StampedRadius => Length.FromMeters(_stamp);

    /// <summary>What to do, in one or two sentences.</summary>
    public string Sentence =>
        IsBentTooMuch
            ? Invariant(
                $"Bend the next bar less: {100 * Math.Abs(CurvatureRatio - 1):0.##} % less curvature under load, a stamp "
                    + $"of {_stamp * 1e3:0.##} mm instead of {Ring.Die.Stamp * 1e3:0.##} mm. This one must be opened: bend it back a "
                    + $"little at many places, measuring after each round, with the ends held, because a ring that is spread springs open.")
                        : Invariant(
                            $"Bend it more: {100 * Math.Abs(CurvatureRatio - 1):0.##} % more curvature under load, a stamp "
                                + $"of {_stamp * 1e3:0.##} mm instead of {Ring.Die.Stamp * 1e3:0.##} mm. This one can be bent again on "
                                + $"it.");

    /// <summary>The correction after a measured ring.</summary>
    /// <param name="ring">The measured ring, with its die.</param>
    /// <param name="wanted">The wanted ring, released as the measured one was.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The die of the measured ring leaves no inside radius.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The wanted ring is tighter than the tightest bend of the bar leaves, or has no inside
    /// radius.</exception>
    public static BendCorrection For(MeasuredRing ring, BendRadius wanted)
    {
        BendAnalysis analysis = Guard.NotNull(ring, nameof(ring)).Analysis;
        Guard.NotNull(wanted, nameof(wanted)).InsideOf(analysis.Section, nameof(wanted));
        LoadedBend needed = analysis.TryLoadedFor(wanted, ring.Release)
            ?? throw Guard.Fault(nameof(wanted), wanted.Value,
                $"must be a radius wider than the tightest possible bend of {analysis.Section} leaves");
        double face = ring.Die.InsideFace(analysis.Section, ring.Die.Face);
        return face > 0
            ? new(ring, wanted, needed, ring.Die.Stamp - face + face * needed.State.InsideRadius / ring.Loaded.State.InsideRadius)
            : throw Guard.Refused(nameof(ring), "must be of a die that leaves an inside radius",
                $"{ring.Die} leaves {Guard.MillimetersText(face)} for {analysis.Section}");
    }

    /// <summary>Stroke for the next bar on a bender that pinches the bar, in place of another die.</summary>
    /// <param name="setup">Half-span and nose of the bender.</param>
    /// <param name="stroke">The stroke that left the measured ring, greater than zero and at most the half-span.</param>
    /// <exception cref="ArgumentNullException">The setup is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The stroke is outside its range, or no stroke up to the half-span curves the bar that
    /// much.</exception>
    /// <remarks>
    /// Equation: κ_nom = 2δ/(a² + δ²); δ' with κ_nom' = κ_nom·κ_needed/κ_measured.
    /// Range: small corrections; the ratio of the curvature under the nose to that of the three contacts is taken to stay.
    /// Source: <see cref="Sources.FormingModels"/>
    /// </remarks>
    public Length StrokeFor(ThreePointSetup setup, Length stroke)
    {
        double a = Guard.NotNull(setup, nameof(setup)).A;
        double closed = Guard.Positive(stroke, nameof(stroke));
        if (closed > a)
        {
            throw Guard.Fault(nameof(stroke), stroke, $"must not be greater than the half-span, {Guard.MillimetersText(a)}");
        }

        double nominal = setup.NominalOf(closed) * CurvatureRatio;
        return nominal * a <= 1
            ? Length.FromMeters(setup.StrokeOf(nominal))
            : throw Guard.Fault(nameof(stroke), stroke,
                Invariant(
                    $"must leave room for {CurvatureRatio:0.##} times the curvature within a half-span of {Guard.MillimetersText(a)}"));
    }

    /// <summary>The sentence.</summary>
    public override string ToString() => Sentence;
}
