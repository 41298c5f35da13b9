namespace BendMath;

/// <summary>Every source the library cites, one property each. Doc comments refer to these by <c>cref</c>, so a citation that does not exist does not compile.</summary>
public static class Sources
{
    /// <summary>Common practice of the trade.</summary>
    public static Source CommonPractice { get; } = new("common-practice", "Common practice", SourceKind.CommonPractice);

    /// <summary>Elementary plane geometry and the definition of the quantity.</summary>
    public static Source Definition { get; } = new("definition", "By definition or elementary geometry", SourceKind.Derived);

    /// <summary>Elastic bending of unsymmetric sections.</summary>
    public static Source UnsymmetricBending { get; } = new("boresi-schmidt-7", "A. P. Boresi, R. J. Schmidt, Advanced Mechanics of Materials, 6th ed., ch. 7 (bending of unsymmetric sections)", SourceKind.FromMemory);

    /// <summary>Springback of an elastic, perfectly plastic rectangle.</summary>
    public static Source Gardiner1957 { get; } = new("gardiner-1957", "F. J. Gardiner, The Springback of Metals, Trans. ASME 79 (1957) 1-9", SourceKind.FromMemory);

    /// <summary>Elastic-plastic bending, elastic unloading and residual stress.</summary>
    public static Source BeerJohnston4 { get; } = new("beer-johnston-4", "F. P. Beer, E. R. Johnston, J. T. DeWolf, Mechanics of Materials, ch. 4, Examples 4.05 and 4.06, p. 260", SourceKind.Published);

    /// <summary>Lengths of angles bent to a circle.</summary>
    public static Source MachinerysHandbookAngleRings { get; } = new("machinerys-handbook-2691", "Machinery's Handbook, 31st ed. (2020), Lengths of Angles Bent to Circular Shape, p. 2691", SourceKind.Published);

    /// <summary>Power law of strain hardening.</summary>
    public static Source Hollomon1945 { get; } = new("hollomon-1945", "J. H. Hollomon, Tensile Deformation, Trans. AIME 162 (1945) 268-290", SourceKind.FromMemory);

    /// <summary>Stress–strain curve of three parameters.</summary>
    public static Source RambergOsgood1943 { get; } = new("ramberg-osgood-1943", "W. Ramberg, W. R. Osgood, Description of Stress-Strain Curves by Three Parameters, NACA TN 902 (1943)", SourceKind.FromMemory);

    /// <summary>Derivations that stand in this library's documentation (concepts/mechanics).</summary>
    public static Source Mechanics { get; } = new("bendmath-mechanics", "BendMath documentation, Mechanics of a bent bar", SourceKind.Derived);

    /// <summary>The incremental three-point bending model, derived in this library's documentation (concepts/forming).</summary>
    public static Source FormingModels { get; } = new("bendmath-forming", "BendMath documentation, Forming models", SourceKind.Derived);

    /// <summary>Elastic curved bars: neutral radius, eccentricity and stress.</summary>
    public static Source CurvedBars { get; } = new("beer-johnston-curved", "F. P. Beer, E. R. Johnston, J. T. DeWolf, Mechanics of Materials, Examples 4.10 and 4.11, Sample Problem 4.11, pp. 298-300 (curved bars, after Winkler and Bach)", SourceKind.Published);

    /// <summary>Stress factors of curved bars against straight-beam theory.</summary>
    public static Source CurvedBarFactors { get; } = new("young-budynas-9.1", "W. C. Young, R. G. Budynas, Roark's Formulas for Stress and Strain, Table 9.1", SourceKind.FromMemory);

    /// <summary>Radial stress in curved bars.</summary>
    public static Source CurvedBarRadialStress { get; } = new("boresi-schmidt-9", "A. P. Boresi, R. J. Schmidt, Advanced Mechanics of Materials, Example 9.5, p. 334 (radial stress in curved beams)", SourceKind.Published);

    /// <summary>Lengths of right-angle bends in sheet and strip.</summary>
    public static Source MachinerysHandbookSheetBends { get; } = new("machinerys-handbook-1421", "Machinery's Handbook, 31st ed. (2020), p. 1421, formulas 32 to 34", SourceKind.Published);

    /// <summary>Bend allowance of sheet metal.</summary>
    public static Source Groover { get; } = new("groover-19.2", "M. P. Groover, Fundamentals of Modern Manufacturing, Example 19.2 (Example 20.2 in older editions)", SourceKind.Published);

    /// <summary>Cold bending of flat steel products: developed length.</summary>
    public static Source Din6935 { get; } = new("din-6935", "DIN 6935, Cold bending of flat rolled steel", SourceKind.FromMemory);

    /// <summary>All sources, in the order of this file.</summary>
    public static IReadOnlyList<Source> All { get; } =
    [
        CommonPractice, Definition, UnsymmetricBending, Gardiner1957, BeerJohnston4, MachinerysHandbookAngleRings,
        Hollomon1945, RambergOsgood1943, Mechanics, FormingModels,
        CurvedBars, CurvedBarFactors, CurvedBarRadialStress, MachinerysHandbookSheetBends, Groover, Din6935,
    ];
}
