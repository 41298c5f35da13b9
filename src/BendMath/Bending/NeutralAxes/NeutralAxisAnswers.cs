using BendMath.Evidence;
using BendMath.Guards;
using BendMath.Sections.Features;
using UnitsNet;

namespace BendMath.Bending.NeutralAxes;

/// <summary>
/// The answers to the question which fiber of a bent bar keeps its length, side by side. For a section symmetric about its bending axis
/// they nearly agree; for an angle they differ by several percent of a small ring's length, and no published measurement decides between
/// them. A ring whose bar was measured before bending does, for that shop. Immutable and thread-safe.
/// </summary>
public sealed class NeutralAxisAnswers
{
    private NeutralAxisAnswers(LoadedBend loaded, double? exponent)
    {
        Loaded = loaded;
        Inside = loaded.State.InsideRadius;
        ReleasedBend flat = loaded.Release(Release.HeldFlat);
        ReleasedBend free = loaded.Release(Release.Free);
        Advisories = flat.IsStraight ? flat.Advisories : free.Advisories;
        List<NeutralAxisAnswer?> all =
        [
            At(NeutralAxisMethod.Centroid, "centroid", Section.Profile.Moments.CentroidY, Sources.BeerJohnston4,
                "An elastic bar that was straight; no springback, no yielding."),
            At(NeutralAxisMethod.EqualArea, "equal-area axis", Section.Properties.EqualArea, Sources.BeerJohnston4,
                "Every fiber yields and none hardens."),
            At(NeutralAxisMethod.ElasticCurvedBar, "elastic curved bar", CurvedBar.Of(Section, BendRadius.Inside(loaded.InsideRadius)).Axis,
                Sources.CurvedBars, "A bar that already has this radius and is loaded elastically; not a bar that is being formed."),
            At(NeutralAxisMethod.Loaded, "this material, loaded", loaded.State.NeutralAxis, Sources.Mechanics,
                "Fiber without strain while the bar is held."),
            After(NeutralAxisMethod.ReleasedHeldFlat, "this material, released and held flat", flat),
            After(NeutralAxisMethod.ReleasedFree, "this material, released free", free),
            PowerLaw(exponent),
            AngleRule(),
            FlatStandard(),
        ];
        Answers = [.. all.OfType<NeutralAxisAnswer>()];
        Shortest = Answers.OrderBy(answer => answer.Blank).First();
        Longest = Answers.OrderBy(answer => answer.Blank).Last();
    }

    /// <summary>The loaded state the answers belong to.</summary>
    public LoadedBend Loaded { get; }

    /// <summary>Every answer that exists for this section, material and radius, in the order of <see cref="NeutralAxisMethod"/>.</summary>
    public IReadOnlyList<NeutralAxisAnswer> Answers { get; }

    /// <summary>The answer that asks for the least bar.</summary>
    public NeutralAxisAnswer Shortest { get; }

    /// <summary>The answer that asks for the most bar.</summary>
    public NeutralAxisAnswer Longest { get; }

    /// <summary>
    /// Largest less smallest blank length of a full ring: how much the choice of the fiber matters. It does not depend on the diameter, its
    /// share of the ring does.
    /// </summary>
    public Length Spread => Length.FromMeters(Longest.Blank - Shortest.Blank);

    /// <summary>What is doubtful; a bar that springs back straight has no answers after release.</summary>
    public IReadOnlyList<Advisory> Advisories { get; }

    private OrientedSection Section => Loaded.Analysis.Section;

    private double Inside { get; }

    /// <summary>
    /// Answers for a bar bent to a radius, with the hardening exponent of its law; without one, the rigid power law is left out.
    /// </summary>
    /// <param name="analysis">Section and material.</param>
    /// <param name="loaded">The radius while loaded; it must leave a positive inside radius.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The radius leaves no inside radius.</exception>
    /// <remarks>
    /// Equation: L = 2π·(R_i + n) for the fiber n of each answer; the exponent of a Ramberg–Osgood law n_RO is 1/n_RO.
    /// Range: any section; the handbook rule exists for equal angles, the standard for flats the easy way.
    /// Source: <see cref="Sources.Mechanics"/>
    /// </remarks>
    public static NeutralAxisAnswers For(BendAnalysis analysis, BendRadius loaded) =>
        new(Load(analysis, loaded), analysis.Law.RigidExponent);

    /// <summary>Answers for a bar bent to a radius, with a hardening exponent for the rigid power law.</summary>
    /// <param name="analysis">Section and material.</param>
    /// <param name="loaded">The radius while loaded; it must leave a positive inside radius.</param>
    /// <param name="hardeningExponent">Exponent n from zero, no hardening, to one, proportional to strain.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The radius leaves no inside radius, or the exponent is outside its range.</exception>
    /// <remarks>
    /// Equation: ∫sgn(y − y_n)·|y − y_n|ⁿ dA = 0 for the rigid power law.
    /// Range: 0 ≤ n ≤ 1: the equal-area axis at one end, the centroid at the other.
    /// Source: <see cref="Sources.Mechanics"/>
    /// </remarks>
    public static NeutralAxisAnswers For(BendAnalysis analysis, BendRadius loaded, double hardeningExponent)
    {
        LoadedBend state = Load(analysis, loaded);
        double exponent = Guard.NonNegative(hardeningExponent, nameof(hardeningExponent));
        return exponent <= 1 ? new(state, exponent)
            : throw Guard.Fault(nameof(hardeningExponent), hardeningExponent, "must not be greater than 1");
    }

    /// <summary>One of the answers, or null where it does not exist for this section, material and radius.</summary>
    /// <param name="method">Which answer.</param>
    /// <exception cref="ArgumentOutOfRangeException">The method is not a defined value.</exception>
    public NeutralAxisAnswer? Find(NeutralAxisMethod method)
    {
        Guard.Defined(method, nameof(method));
        return Answers.FirstOrDefault(answer => answer.Method == method);
    }

    /// <summary>Section, radius and spread.</summary>
    public override string ToString() =>
        Invariant(
            $"{Section} at an inside radius of {Inside * 1e3:0.###} mm: {Answers.Count} answers, "
                + $"spread {(Longest.Blank - Shortest.Blank) * 1e3:0.#} mm of bar");

    private static LoadedBend Load(BendAnalysis analysis, BendRadius loaded)
    {
        BendRadius radius = Guard.NotNull(loaded, nameof(loaded));
        OrientedSection section = Guard.NotNull(analysis, nameof(analysis)).Section;
        return analysis.LoadedTo(BendRadius.Inside(Length.FromMeters(radius.InsideOf(section, nameof(loaded)))));
    }

    private NeutralAxisAnswer At(NeutralAxisMethod method, string name, double fiber, Source source, string note) =>
        new(method, name, fiber, Inside, Inside, source, note);

    private NeutralAxisAnswer? After(NeutralAxisMethod method, string name, ReleasedBend released) => released.IsStraight
        ? null
        : new(method, name, released.Ring.Fiber, Inside, released.Ring.Inside, Sources.Mechanics,
            Invariant($"Fiber with the length of the blank in the finished ring of {released.Ring.Inside * 1e3:0.#} mm inside radius."));

    private NeutralAxisAnswer? PowerLaw(double? exponent) => exponent is not { } n
        ? null
        : At(NeutralAxisMethod.RigidPowerLaw, "rigid power law", RigidPowerAxis.Of(Section.Profile, n), Sources.Mechanics,
            Invariant($"Every fiber far beyond yield, hardening exponent {n:0.###}."));

    private NeutralAxisAnswer? AngleRule()
    {
        if (Section.Features.EqualLegs is not { } leg)
        {
            return null;
        }

        double fromHeel = EqualAngle.HandbookFiber(leg.Length.Meters, leg.Thickness.Meters);
        return At(
            NeutralAxisMethod.AngleRule,
            "handbook rule for angles",
            leg.Direction == FlangeDirection.Out ? fromHeel : Section.Height - fromHeel,
            Sources.MachinerysHandbookAngleRings,
            "A sixth of the leg and half the thickness from the heel face, whatever the material and the radius.");
    }

    private NeutralAxisAnswer? FlatStandard()
    {
        double ratio = Inside / Section.Height;
        return Section.Features.IsFlatEasyWay && ratio >= SheetFactor.LeastRatio
            ? At(
                NeutralAxisMethod.FlatStandard,
                "standard for flat products",
                SheetFactor.OfFormula(ratio) * Section.Height / 2,
                Sources.Din6935,
                "The factor of the standard multiplies half the thickness; the middle fiber above five thicknesses.")
            : null;
    }
}
