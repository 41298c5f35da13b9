using BendMath.Distortion;
using BendMath.Forming.ThreePoint;
using BendMath.Learning;
using BendMath.Tests.Forming;
using UnitsNet;

namespace BendMath.Tests.Learning;

/// <summary>What explains a ring that is not the radius of the die.</summary>
public sealed class ExplanationTests
{
    [Fact]
    public void Each_explanation_of_the_nine_inch_circle_reproduces_it()
    {
        Assert.Equal([HypothesisKind.ReferenceFace, HypothesisKind.Stroke, HypothesisKind.CurvatureRatio],
            SmallAngle.Correction.Hypotheses.Select(e => e.Kind));
        Assert.All(SmallAngle.Correction.Hypotheses, explanation =>
        {
            Assert.True(explanation.Fits, explanation.Sentence);
            FormedBend formed = explanation.Model!.Form(SmallAngle.Hardening, SmallAngle.FiveInches);
            Assert.Equal(9, formed.RingWhen(Release.Free).InsideDiameter.Inches, 1e-6);
            Assert.DoesNotContain(formed.Advisories, advisory => advisory.Code is "extrapolated" or "no-measured-ring");
        });
    }

    /// <summary>
    /// The number each explanation implies, found again by bending forward only: halving the radius of the face, and the stroke, until the
    /// ring is the measured one.
    /// </summary>
    [Fact]
    public void Each_explanation_states_the_number_it_implies()
    {
        double loaded =
            Halve(50, 127,
                radius =>
                    SmallAngle.Hardening.LoadedTo(BendRadius.Inside(Length.FromMillimeters(radius)))
                        .Release(Release.Free).Ring.InsideDiameter.Inches - 9);
        Assert.Contains(FormattableString.Invariant($"{127 - loaded:0.##} mm outside the inside"),
            SmallAngle.Correction.Find(HypothesisKind.ReferenceFace)!.Sentence, StringComparison.Ordinal);
        IncrementalThreePointBending pinching = new(SmallAngle.Setup);
        double stroke =
            Halve(2, 30,
                closed =>
                    9 - pinching.FormAtStroke(SmallAngle.Hardening, Length.FromMillimeters(closed)).RingWhen(Release.Free).InsideDiameter.Inches);
        Assert.Contains(FormattableString.Invariant($"a stroke of {stroke:0.##} mm"),
            SmallAngle.Correction.Find(HypothesisKind.Stroke)!.Sentence, StringComparison.Ordinal);
        CurvatureRatioCorrection ratio =
            Assert.IsType<CurvatureRatioCorrection>(SmallAngle.Correction.Find(HypothesisKind.CurvatureRatio)!.Model);
        FinishedRing modeled = SmallAngle.Hardening.LoadedTo(BendRadius.Inside(Length.FromInches(5))).Release(Release.Free).Ring;
        double fiber = modeled.LengthPreservingFiberFromInside.Inches;
        Assert.Equal((modeled.InsideRadius.Inches + fiber) / (4.5 + fiber), ratio.Ratio, 1e-9);
    }

    /// <summary>
    /// One measured ring is one ring: whatever explains it, the bar under the tool was bent equally tight, and the distortion checks say
    /// the same.
    /// </summary>
    [Fact]
    public void All_explanations_of_a_ring_give_one_loaded_state()
    {
        FormedBend[] formed =
            [.. SmallAngle.Correction.Hypotheses.Select(explanation => explanation.Model!.Form(SmallAngle.Hardening, SmallAngle.FiveInches))];
        Assert.All(formed, one => Assert.Equal(formed[0].Loaded.InsideRadius.Millimeters, one.Loaded.InsideRadius.Millimeters, 1e-6));
        Assert.All(formed,
            one =>
                Assert.Equal(DistortionReport.Of(formed[0].Loaded).Findings[0].Demand, DistortionReport.Of(one.Loaded).Findings[0].Demand,
                    1e-9));
        Assert.All(formed, one => Assert.Equal(formed[0].Loaded.BendingMoment.NewtonMeters, one.Loaded.BendingMoment.NewtonMeters, 1e-6));
    }

    /// <summary>The explanations agree on the die that was measured and part on the next: only a second ring can tell.</summary>
    [Fact]
    public void Explanations_part_on_a_six_inch_die_and_say_that_nobody_measured_there()
    {
        Die six = SmallAngle.DieOf(6, ReferenceFace.InsideOfBar);
        double[] predicted = [.. SmallAngle.Correction.Hypotheses.Select(explanation =>
        {
            FormedBend formed = explanation.Model!.Form(SmallAngle.Hardening, six);
            Assert.Contains(formed.Advisories, advisory => advisory.Code == "extrapolated");
            return formed.RingWhen(Release.Free).InsideDiameter.Inches;
        })];
        Assert.All(predicted, diameter => Assert.InRange(diameter, 10, 12));
        Assert.All(predicted, one => Assert.Single(predicted, other => Math.Abs(other - one) < 0.01));
    }

    /// <summary>
    /// What each explanation of the 9 in circle implies, in numbers: a face near the outside of the bar, about two thirds of the stroke the
    /// die's radius asks for (pinching over an edge bends tighter than the three contacts), or an eighth more curvature. A 10 in die tells
    /// them apart to a rule's 1/32 in; dies of 5 and 5.05 in do not.
    /// </summary>
    [Fact]
    public void A_ten_inch_die_tells_the_explanations_of_the_nine_inch_circle_apart()
    {
        WrapBending face = Assert.IsType<WrapBending>(SmallAngle.Correction.Find(HypothesisKind.ReferenceFace)!.Model);
        Assert.InRange(face.FaceOf(SmallAngle.FiveInches).OffsetFor(SmallAngle.Bar.FlangeOut).Inches, 0.5, 0.75);
        Assert.InRange(Assert.IsType<IncrementalThreePointBending>(SmallAngle.Correction.Find(HypothesisKind.Stroke)!.Model).ClosingShare,
            0.6, 0.75);
        Assert.InRange(Assert.IsType<CurvatureRatioCorrection>(SmallAngle.Correction.Find(HypothesisKind.CurvatureRatio)!.Model).Ratio, 1.1,
            1.2);
        Length rule = Length.FromInches(1.0 / 32);
        TrialRing second =
            TrialRing.ToTellApart(SmallAngle.Correction,
                new DieRack(
                    [SmallAngle.FiveInches, SmallAngle.DieOf(6, ReferenceFace.InsideOfBar),
                        SmallAngle.DieOf(10, ReferenceFace.InsideOfBar)]), rule);
        Assert.Equal("10 in", second.Best!.Die.Name);
        Assert.True(second.Best.SmallestSeparation > 2 * rule);
        Assert.Null(
            TrialRing.ToTellApart(SmallAngle.Correction,
            new DieRack([SmallAngle.FiveInches, SmallAngle.DieOf(5.05, ReferenceFace.InsideOfBar)]),
                rule).Best);
        RingFit fit = RingFit.Of([SmallAngle.Correction.Ring], SmallAngle.Hardening, new WrapBending());
        Assert.Contains("One ring shows no scatter", fit.Sentences[3], StringComparison.Ordinal);
        Assert.Equal(9, fit.Forecast(SmallAngle.FiveInches, Release.Free).Ring!.InsideDiameter.Inches, 1e-6);
    }

    /// <summary>A ring wider than the stamp is no matter of the stamped face.</summary>
    [Fact]
    public void A_wide_ring_is_not_explained_by_the_stamped_face()
    {
        MeasuredRing ring =
            new(SmallAngle.FiveInches, SmallAngle.Hardening, BendRadius.InsideDiameter(Length.FromInches(13)), Release.Free);
        Hypothesis? explanation = RingDiagnosis.Of(ring, new WrapBending()).Find(HypothesisKind.ReferenceFace);
        Assert.False(explanation!.Fits);
        Assert.Null(explanation.Model);
        Assert.Null(RingDiagnosis.Of(ring, new WrapBending()).Find(HypothesisKind.Stroke));
    }

    /// <summary>The root of a rising function.</summary>
    private static double Halve(double low, double high, Func<double, double> rising)
    {
        Assert.True(rising(low) < 0 && rising(high) > 0);
        for (int i = 0; i < 60; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = rising(middle) < 0 ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }
}
