using UnitsNet;

namespace BendMath.Forming.ThreePoint;

/// <summary>How far a pinching bender closes past the line tangent to the nose.</summary>
internal abstract class StrokeSetting : FormingSetting
{
    private readonly string _die;

    private protected StrokeSetting(Die die, double least, double most, double? current)
        : base(true, least, most, current) => _die = die.Name;

    internal sealed override string Advise(Length value, FormedBend formed, string wanted) => CurrentMeters is not { } now
        ? Invariant($"Close {value.Millimeters:0.00} mm past the line tangent to the nose: that leaves {wanted}.")
        : Invariant(
            $"At the setting of die {_die}, close {value.Millimeters:0.00} mm instead of {now * 1e3:0.00} mm, {Math.Abs(value.Millimeters - now * 1e3):0.00} mm {(value.Meters >= now ? "more" : "less")}: that leaves {wanted}.");

    internal sealed override string NoneLeaves(string wanted) =>
        $"No stroke leaves {wanted}: the bar would have to be bent tighter than the nose allows, or the supports cannot close so far.";
}
