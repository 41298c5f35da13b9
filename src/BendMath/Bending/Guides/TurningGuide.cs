namespace BendMath.Bending.Guides;

/// <summary>As <see cref="BarGuide.AgainstTurning"/>, in newtons.</summary>
internal sealed record TurningGuide(double Stiffness) : BarGuide
{
    /// <summary>The stiffness.</summary>
    public override string ToString() =>
        Stiffness == 0 ? "free to turn" : Invariant($"guide of {Stiffness:G4} N per radian against turning");

    internal override BentState StateAt(BendAnalysis analysis, double insideRadius) =>
        LeaningState.Turned(analysis.Section, analysis.Law, insideRadius, Stiffness);
}
