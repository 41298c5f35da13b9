using System.Globalization;
using UnitsNet;

namespace BendMath.Forming.ThreePoint;

/// <summary>How far a pinching bender closes past the line tangent to the nose.</summary>
internal abstract class StrokeSetting : FormingSetting
{
    private readonly string _die;

    private protected StrokeSetting(Die die, double least, double most, double? current)
        : base(SettingKind.Stroke, least, most, current) => _die = die.Name;

    internal sealed override string Advise(Length value, FormedBend formed, string wanted) => CurrentMeters is not { } now
        ? string.Format(CultureInfo.InvariantCulture, "Close {0:0.00} mm past the line tangent to the nose: that leaves {1}.", value.Millimeters, wanted)
        : string.Format(
            CultureInfo.InvariantCulture,
            "At the setting of die {0}, close {1:0.00} mm instead of {2:0.00} mm, {3:0.00} mm {4}: that leaves {5}.",
            _die,
            value.Millimeters,
            now * 1e3,
            Math.Abs(value.Millimeters - now * 1e3),
            value.Meters >= now ? "more" : "less",
            wanted);

    internal sealed override string NoneLeaves(string wanted) =>
        $"No stroke leaves {wanted}: the bar would have to be bent tighter than the nose allows, or the supports cannot close so far.";
}
