using BendMath.Evidence;
using BendMath.Guards;
using BendMath.Numerics;
using BendMath.Sections.Features;
using UnitsNet;

namespace BendMath.Distortion.Checks;

/// <summary>
/// Buckling of the compressed free edge of a leg in the plane of the ring, as with the flange in.
/// </summary>
/// <remarks>
/// Equation: ∫E_s(e)·t²/9 dx = ∫σ·x² dx over the leg, x from the hinge at the center line of the other leg, b long; uniform strain e_cr =
/// (t/b)²/3 whatever the law.
/// Range: a long free leg, hinged along the heel, by the deformation theory of plasticity; too strict for a leg held in a slot, for which
/// no source gives a factor. Medium up to three times the strain is a setting.
/// Source: <see cref="Sources.PlasticPlateBuckling"/>
/// </remarks>
internal static class FreeEdgeCheck
{
    private const double MediumTimes = 3;

    private const string Validity =
        "A long leg hinged along the heel and free at its edge, deformation theory; no source gives a factor for a leg in a slot. Above "
            + "the strain of a free leg, up to three times it counts as medium, which is a setting.";

    public static Judgment Judge(LoadedBend loaded, DistortionSettings settings)
    {
        OrientedSection section = loaded.Analysis.Section;
        Judgment worst = default;
        foreach (Outstand leg in section.Features.Outstands.Where(leg => leg.Direction == FlangeDirection.In))
        {
            Judgment one = Judge(loaded, leg, settings);
            worst = one.Finding is null || (worst.Finding is { } found && found.Margin <= one.Finding.Margin) ? worst : one;
        }

        return worst;
    }

    private static Judgment Judge(LoadedBend loaded, Outstand leg, DistortionSettings settings)
    {
        double t = leg.Thickness.Meters;
        double length = leg.Length.Meters;
        double width = length - t / 2;

        // Only the angle on its bisector is less deep than its leg is long.
        bool slanted = loaded.Analysis.Section.Height < length * (1 - 1e-9);
        double lean = slanted ? Math.Sqrt(0.5) : 1;
        double edgeLevel = slanted ? lean * t / 2 : 0;
        double edge = -loaded.Strain(edgeLevel);
        double ratio = -loaded.Strain(edgeLevel + width * lean) / edge;

        // From a tension at the hinge of three times the compression of the edge on, ∫σ·x² dx of an elastic leg is a pull.
        if (edge <= 0 || ratio <= -3)
        {
            return default;
        }

        double critical = Critical(loaded.Analysis.Law, t / width, Math.Min(1, ratio));
        HeldRisk risk = new(Judgment.Level(edge, critical, MediumTimes * critical), settings.Support.HoldsFreeEdge);
        string sentence = Invariant(
            $"The free edge of the leg is compressed by {100 * edge:0.00} %; a free leg {length * 1e3:0.#} mm long and {t * 1e3:0.#} mm "
                + $"thick begins to ripple at about {100 * critical:0.00} %.{risk.Note("In its slot", " Legs in a close slot bear several "
                + "times that.")}");
        return new DistortionFinding(DistortionCheck.FreeEdge, "compressed free edge", edge, critical, risk.Level, sentence,
            Sources.PlasticPlateBuckling, Validity, () =>
        [
            Remedies.Radius(loaded, other => Judge(other, settings)),
            risk.Remedy("run the compressed leg in a slot that keeps it from moving sideways"),
            Remedies.Orientation(loaded, risk.Level, other => Judge(other, settings)),
        ]);
    }

    /// <summary>The first root: at small strain the leg is elastic and resists; the search ends at 100 % strain.</summary>
    public static double Critical(StressStrainLaw law, double slenderness, double hingeOverEdge)
    {
        double bend = slenderness * slenderness / 9;

        // x runs in widths from the hinge; without unit, 1 at no strain.
        double Reserve(double strain) => LinearField.Integral(
            (x, e) => law.SecantModulus(e) * (bend - e * x * x), 0, 1, hingeOverEdge * strain, strain, law.YieldStrain) / (law.E * bend);

        double high = 2 * slenderness * slenderness / 3;
        double low = 0;
        while (Reserve(high) > 0)
        {
            low = high;
            if (low >= 1)
            {
                return 1;
            }

            high = Math.Min(1, 1.25 * high);
        }

        return Bracketed.Root(Reserve, low, high);
    }
}
