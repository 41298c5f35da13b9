using BendMath.Bending;
using BendMath.Evidence;
using BendMath.Numerics;

namespace BendMath.Forming.ThreePoint;

/// <summary>One setting of a three-point bender: what closes on the bar, and the bar under it.</summary>
internal static class ThreePointPinch
{
    /// <summary>The bar at a stroke, or why not.</summary>
    /// <param name="model">The model that asks.</param>
    /// <param name="setup">Half-span, nose and stiffness.</param>
    /// <param name="analysis">Section and material.</param>
    /// <param name="die">The die, or null.</param>
    /// <param name="setStroke">The stroke as set; what the bender gives comes off it.</param>
    /// <param name="evidence">What is doubtful about the model.</param>
    /// <param name="doubts">What is doubtful about the tool.</param>
    public static FormingTrial At(
        FormingModel model, ThreePointSetup setup, BendAnalysis analysis, Die? die, double setStroke, IEnumerable<Advisory> evidence,
        IEnumerable<Advisory> doubts)
    {
        ThreePointEquilibrium equilibrium = new(analysis, setup);
        double stroke = setStroke;
        (BentState Peak, double Shift)? found;
        if (setup.K is { } stiffness)
        {
            (BentState Peak, double Shift, double Stroke)? closed = equilibrium.AtSetStroke(setStroke, stiffness);
            found = closed is { } c ? (c.Peak, c.Shift) : null;
            stroke = closed?.Stroke ?? (setup.Nose > 0 ? setStroke - equilibrium.WrapForce() / stiffness : setStroke);
        }
        else
        {
            found = equilibrium.At(setup.NominalOf(setStroke));
        }

        double nominal = setup.NominalOf(stroke);
        bool wraps = found is null;
        if (wraps && setup.Nose == 0)
        {
            return FormingTrial.Refused("the stroke would fold the bar flat over the edge of the nose");
        }

        LoadedBend loaded = found is { } f ? new(analysis, f.Peak) : analysis.LoadedToInside(setup.Nose);
        ThreePointContact contact = new(setup.A, stroke, nominal, found?.Shift ?? 0, loaded.Moment, wraps, give: setStroke - stroke);
        IEnumerable<Advisory> validity =
            doubts.Concat(setup.Advisories(analysis.Section, stroke)).Concat(ThreePointSetup.GiveAdvisories(stroke, setStroke));
        return new FormedBend(model, die, loaded, contact, evidence, wraps ? validity.Append(ThreePointSetup.WrapsNose) : validity);
    }
}
