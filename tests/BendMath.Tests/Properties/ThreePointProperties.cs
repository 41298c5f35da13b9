using BendMath.Forming.ThreePoint;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using UnitsNet;

namespace BendMath.Tests.Properties;

/// <summary>Relations of incremental three-point bending.</summary>
public sealed class ThreePointProperties
{
    [Property(MaxTest = 60)]
    public Property More_stroke_makes_a_tighter_ring() =>
        Prop.ForAll(Pinches.ToArbitrary(), Sold.Releases.ToArbitrary(), (pinch, release) =>
    {
        FinishedRing ring = pinch.Form().RingWhen(release);
        FinishedRing tighter = (pinch with { Nominal = 1.02 * pinch.Nominal }).Form().RingWhen(release);
        Assert.True(tighter.InsideRadius < ring.InsideRadius, $"{ring} became {tighter}");
    });

    [Property(MaxTest = 60)]
    public Property The_stroke_for_a_ring_is_the_stroke_that_made_it() =>
        Prop.ForAll(Pinches.ToArbitrary(), Sold.Releases.ToArbitrary(), (pinch, release) =>
    {
        FormedBend formed = pinch.Form();
        Length? stroke = pinch.Model().StrokeFor(formed.Loaded.Analysis, BendRadius.Inside(formed.RingWhen(release).InsideRadius), release);
        Assert.NotNull(stroke);
        Near.Relative(formed.Contact!.Stroke.Meters, stroke.Value.Meters, 1e-9, "stroke");
    });

    [Property(MaxTest = 40)]
    public Property Scaling_all_lengths_scales_radii_and_forces() => Prop.ForAll(
        Pinches.ToArbitrary(), Sold.Part.Select(part => Sold.Between(0.02, 50, part)).ToArbitrary(), (pinch, s) =>
        {
            FormedBend one = pinch.Form();
            FormedBend scaled = pinch.Form(s);
            Near.Relative(s * one.RingWhen(Release.Free).InsideRadius.Meters, scaled.RingWhen(Release.Free).InsideRadius.Meters, 1e-10,
                "finished radius");
            Near.Relative(s * s * one.Contact!.NoseForce.Newtons, scaled.Contact!.NoseForce.Newtons, 1e-10, "nose force");
            Near.Absolute(s * one.Contact.ContactShift.Meters, scaled.Contact.ContactShift.Meters, 1e-10 * s * pinch.HalfSpan(),
                "contact shift");
        });

    /// <summary>The forces of the three contacts balance, and both supports see the same moment under the nose.</summary>
    [Property(MaxTest = 40)]
    public Property Forces_of_the_contacts_balance() => Prop.ForAll(Pinches.ToArbitrary(), pinch =>
    {
        FormedBend formed = pinch.Form();
        ThreePointContact contact = formed.Contact!;
        double a = pinch.HalfSpan();
        double moment = formed.Loaded.BendingMoment.NewtonMeters;
        Near.Relative(moment, contact.IncomingSupportForce.Newtons * (a - contact.ContactShift.Meters), 1e-12,
            "moment of the incoming support");
        Near.Relative(moment, contact.OutgoingSupportForce.Newtons * (a + contact.ContactShift.Meters), 1e-12,
            "moment of the outgoing support");
        Near.Relative(contact.NoseForce.Newtons, (contact.IncomingSupportForce + contact.OutgoingSupportForce).Newtons, 1e-12,
            "nose force");
        Assert.False(contact.WrapsNose);
    });

    /// <summary>
    /// Elastic: κ₀ = (3/2)·κ_nom, the deflection F·(2a)³/(48·E·I) of a beam on two supports, so nothing stays up to κ_nom = (2/3)·κ_y.
    /// </summary>
    [Property(MaxTest = 60)]
    public Property A_small_stroke_leaves_the_bar_straight() => Prop.ForAll(Pinches.ToArbitrary(), Sold.Part.ToArbitrary(), (pinch, part) =>
    {
        double yield = pinch.Bend.Analysis().YieldCurvature.InverseMeters;
        double share = 0.05 + 0.6 * part;
        FormedBend formed = (pinch with { Nominal = share * yield, Nose = 0 }).Form();
        Assert.True(formed.IsStraightWhen(Release.Free));
        Assert.True(formed.IsStraightWhen(Release.HeldFlat));
        Near.Relative(1.5 * share * yield, formed.Loaded.Curvature.InverseMeters, 1e-2, "curvature under the nose");
    });

    /// <summary>A nose wider than the circle through the contacts is a die the bar lies on.</summary>
    [Property(MaxTest = 60)]
    public Property A_wide_nose_is_wrapped() => Prop.ForAll(Pinches.ToArbitrary(), Sold.Releases.ToArbitrary(), (pinch, release) =>
    {
        double nose = 1 / pinch.Nominal;
        FormedBend formed = (pinch with { Nose = nose }).Form();
        BendAnalysis analysis = formed.Loaded.Analysis;
        Die die = new("nose", Length.FromMeters(nose), ReferenceFace.InsideOfBar);
        FormedBend wrapped = new WrapBending().Form(analysis, die);
        Assert.True(formed.Contact!.WrapsNose);
        Assert.Contains(formed.Advisories, advisory => advisory.Code == "wraps-nose");
        Near.Relative(wrapped.RingWhen(release).InsideRadius.Meters, formed.RingWhen(release).InsideRadius.Meters, 1e-12,
            "finished radius");
    });

    /// <summary>
    /// Rigid, perfectly plastic, edge for a nose: B₁ = 0 and B₂ = κ₀/2, so √(1 − κ₀y_n) = √(1 − κ_nom·y_n)/(2 − √(1 − κ_nom·y_n)), and for
    /// rings much wider than the bar R/R_nom = (4n + 1)/(4n + 2) at n = 0: one half. The distance from the limit falls with the elastic
    /// strain.
    /// </summary>
    [Theory]
    [InlineData(100)]
    [InlineData(1000)]
    public void A_rigid_perfectly_plastic_ring_has_half_the_radius_of_the_three_contacts(double nominalDepths)
    {
        OrientedSection section = new SquareBar(Length.FromMillimeters(10)).Section;
        IncrementalThreePointBending model = new(new ThreePointSetup(Length.FromMillimeters(100), Length.Zero));
        double nominal = 100 / nominalDepths;
        double stroke = nominal * 0.01 / (1 + Math.Sqrt(1 - nominal * nominal * 0.01));
        double root = Math.Sqrt(1 - nominal * 0.005);
        double rigid = (1 - root * root / ((2 - root) * (2 - root))) / 0.005;
        double[] distances = [.. new[] { 1e2, 1e3, 1e4, 1e5 }.Select(stiffer =>
        {
            PerfectlyPlastic law = new(Pressure.FromGigapascals(210 * stiffer), Pressure.FromMegapascals(235));
            BendAnalysis analysis = BendAnalysis.Of(section, new("invented, nearly rigid", law, Density.FromKilogramsPerCubicMeter(7850)));
            FinishedRing ring = model.FormAtStroke(analysis, Length.FromMeters(stroke)).RingWhen(Release.HeldFlat);
            return Math.Abs(ring.Curvature.InverseMeters / rigid - 1);
        })];
        for (int i = 1; i < distances.Length; i++)
        {
            Assert.InRange(distances[i] / distances[i - 1], 0, 0.2);
        }

        Assert.InRange(distances[^1], 0, 1e-4);
        Assert.InRange(nominal / rigid, 0.5 - 0.5 / nominalDepths, 0.5 + 0.5 / nominalDepths);
    }

    /// <summary>
    /// Rigid power law σ ∝ eⁿ, edge for a nose: B₁ = κ₀·n/(2n + 1) and B₂ = κ₀/2, and for rings much wider than the bar R/R_nom = (4n +
    /// 1)/(4n + 2): 9/14 at n = 0.2, 3/4 at n = 0.5. The part of the radius that is the depth of the bar falls with the depth over the
    /// radius, the elastic part with the modulus.
    /// </summary>
    [Theory]
    [InlineData(0.2, 9 / 14.0, 100)]
    [InlineData(0.5, 0.75, 12)]
    public void A_rigid_ring_of_a_power_law_has_the_radius_of_the_limit(double n, double limit, double stiffer)
    {
        double[] distances = [.. new[] { 1, 2, 3 }.Select(step =>
        {
            PowerHardening law = new(Pressure.FromGigapascals(210 * Math.Pow(stiffer, step)), Pressure.FromMegapascals(600), n);
            BendAnalysis analysis =
                BendAnalysis.Of(new SquareBar(Length.FromMillimeters(10)).Section,
                    new("invented, nearly rigid", law, Density.FromKilogramsPerCubicMeter(7850)));
            double nominal = 100 / Math.Pow(10, step + 1);
            double stroke = nominal * 0.01 / (1 + Math.Sqrt(1 - nominal * nominal * 0.01));
            FinishedRing ring = new IncrementalThreePointBending(new ThreePointSetup(Length.FromMillimeters(100), Length.Zero))
                .FormAtStroke(analysis, Length.FromMeters(stroke)).RingWhen(Release.HeldFlat);
            return Math.Abs(nominal / ring.Curvature.InverseMeters / limit - 1);
        })];
        Assert.InRange(distances[1], 0, 0.3 * distances[0]);
        Assert.InRange(distances[2], 0, 0.3 * distances[1]);
        Assert.InRange(distances[2], 0, 1e-3);
    }

    /// <summary>
    /// Half-span 4 to 12 depths, nose up to 2 depths, three contacts on a circle of at least 3 times the yield curvature and at most
    /// 0.35/a.
    /// </summary>
    private static Gen<Pinch> Pinches { get; } =
        from bar in Sold.Bars
        from metal in Sold.AnyMetal
        from span in Sold.Part
        from nose in Sold.Part
        from part in Sold.Part
        let depth = bar.Section().Depth.Meters
        let depths = Sold.Between(4, 12, span)
        let least = 3 * metal.YieldStrain / (Sold.FarFace(bar) * depth)
        select new Pinch(new Bend(bar, metal, 0), depths, nose < 0.3 ? 0 : 2 * nose * depth,
            Sold.Between(least, 0.35 / (depths * depth), part));

    /// <summary>Half-span in depths; nose radius in meters; curvature through the contacts in 1/m.</summary>
    private sealed record Pinch(Bend Bend, double Spans, double Nose, double Nominal)
    {
        public double HalfSpan(double scale = 1) => Spans * Bend.Bar.Section(scale).Depth.Meters;

        public IncrementalThreePointBending Model(double scale = 1) =>
            new(new ThreePointSetup(Length.FromMeters(HalfSpan(scale)), Length.FromMeters(Nose * scale)));

        public FormedBend Form(double scale = 1)
        {
            double a = HalfSpan(scale);
            double nominal = Nominal / scale;
            return Model(scale)
                .FormAtStroke(Bend.Analysis(scale), Length.FromMeters(nominal * a * a / (1 + Math.Sqrt(1 - nominal * nominal * a * a))));
        }
    }
}
