namespace BendMath.Sections.Features;

/// <summary>
/// The formulas for a torsion constant. A shape has it by one or two of them; <see cref="BarStock.TorsionConstantBy"/> chooses.
/// </summary>
public enum TorsionFormulaKind
{
    /// <summary>Exact, of a round bar or tube.</summary>
    Circle,

    /// <summary>The exact series of a solid rectangle with sharp corners.</summary>
    Rectangle,

    /// <summary>The factor of a solid hexagon.</summary>
    Hexagon,

    /// <summary>A square or rectangular tube with the walls' own torsion, as in the European tables.</summary>
    Box,

    /// <summary>A square or rectangular tube as a thin-walled box, as in the American tables.</summary>
    ThinWalledBox,

    /// <summary>An angle with the corner term of El Darwish and Johnston.</summary>
    Angle,

    /// <summary>An angle with the smaller corner term the European tables are computed with; about 2 % higher.</summary>
    AngleOfTables,

    /// <summary>A channel by El Darwish and Johnston.</summary>
    Channel,

    /// <summary>A tee by El Darwish and Johnston.</summary>
    Tee,

    /// <summary>As given for a drawn bar.</summary>
    Given,
}
