using UnitsNet;

namespace BendMath.Learning;

/// <summary>
/// A setting of the model that is corrected: the correction is taken off the wanted ring first and put on the formed bar last.
/// </summary>
internal sealed class CorrectedSetting(FormingSetting basis, CurvatureRatioCorrection correction, BendAnalysis analysis)
    : FormingSetting(basis.IsStroke, basis.LeastMeters, basis.MostMeters, basis.CurrentMeters)
{
    internal override FormedBend? Form(double value) => basis.Form(value) is { } formed ? correction.Correct(formed) : null;

    internal override (double Value, FormedBend Formed)? Find(BendRadius wanted, Release release) =>
        correction.Uncorrected(analysis, wanted, release) is { } target && basis.Find(target, correction.Release) is { } hit
            && correction.Correct(hit.Formed) is { } formed
            ? (hit.Value, formed)
            : null;

    internal override string Advise(Length value, FormedBend formed, string wanted) => basis.Advise(value, formed, wanted);

    internal override string NoneLeaves(string wanted) => basis.NoneLeaves(wanted);
}
