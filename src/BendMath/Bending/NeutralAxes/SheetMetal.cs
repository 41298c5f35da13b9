namespace BendMath.Bending.NeutralAxes;

/// <summary>A sheet or strip by metal and temper, as the handbook's rules for right-angle bends name them.</summary>
public enum SheetMetal
{
    /// <summary>Soft brass: 0.55 of the thickness.</summary>
    SoftBrass,

    /// <summary>Soft copper: 0.55 of the thickness.</summary>
    SoftCopper,

    /// <summary>Half-hard brass: 0.64 of the thickness.</summary>
    HalfHardBrass,

    /// <summary>Half-hard copper: 0.64 of the thickness.</summary>
    HalfHardCopper,

    /// <summary>Soft steel: 0.64 of the thickness.</summary>
    SoftSteel,

    /// <summary>Aluminum: 0.64 of the thickness.</summary>
    Aluminum,

    /// <summary>Bronze: 0.71 of the thickness.</summary>
    Bronze,

    /// <summary>Hard copper: 0.71 of the thickness.</summary>
    HardCopper,

    /// <summary>Cold-rolled steel: 0.71 of the thickness.</summary>
    ColdRolledSteel,

    /// <summary>Spring steel: 0.71 of the thickness.</summary>
    SpringSteel,
}
