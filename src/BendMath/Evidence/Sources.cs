namespace BendMath;

/// <summary>Every source the library cites, one property each. Doc comments refer to these by <c>cref</c>, so a citation that does not exist does not compile.</summary>
public static class Sources
{
    /// <summary>Common practice of the trade.</summary>
    public static Source CommonPractice { get; } = new("common-practice", "Common practice", SourceKind.CommonPractice);

    /// <summary>A bound chosen for this library where no source gives one.</summary>
    public static Source Setting { get; } = new("setting", "A setting of this library, not a finding", SourceKind.Setting);

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

    /// <summary>Necking of a tensile bar: uniform strain and ultimate strength.</summary>
    public static Source Considere1885 { get; } = new("considere-1885", "A. Considère, Mémoire sur l'emploi du fer et de l'acier dans les constructions, Annales des ponts et chaussées 9 (1885) 574-775", SourceKind.FromMemory);

    /// <summary>Strength of A36.</summary>
    public static Source AstmA36 { get; } = new("astm-a36", "ASTM A36/A36M, Table 3", SourceKind.Published);

    /// <summary>Strength of A572.</summary>
    public static Source AstmA572 { get; } = new("astm-a572", "ASTM A572/A572M, tensile requirements", SourceKind.Published);

    /// <summary>Strength of cold-formed welded tube.</summary>
    public static Source AstmA500 { get; } = new("astm-a500", "ASTM A500/A500M, tensile requirements", SourceKind.Published);

    /// <summary>Strength of A53 pipe.</summary>
    public static Source AstmA53 { get; } = new("astm-a53", "ASTM A53/A53M, Table 2", SourceKind.Published);

    /// <summary>Strength of welded and drawn mechanical tube.</summary>
    public static Source AstmA513 { get; } = new("astm-a513", "ASTM A513/A513M, tensile requirements of round tubing", SourceKind.Published);

    /// <summary>The rows of A513 that were not read.</summary>
    public static Source AstmA513FromMemory { get; } = new("astm-a513-memory", "ASTM A513/A513M, tensile requirements of round tubing", SourceKind.FromMemory);

    /// <summary>Estimated strength of carbon steel bar.</summary>
    public static Source SaeJ1397 { get; } = new("sae-j1397", "SAE J1397, Estimated Mechanical Properties and Machinability of Steel Bars", SourceKind.Published);

    /// <summary>Strength of hot-rolled structural steel.</summary>
    public static Source En10025 { get; } = new("en-10025-2", "EN 10025-2:2004/2019, Table 7 (yield R_eH)", SourceKind.Published);

    /// <summary>Strength of annealed stainless steel.</summary>
    public static Source AstmA240 { get; } = new("astm-a240", "ASTM A240/A240M, Table 2; A276, condition A", SourceKind.FromMemory);

    /// <summary>Strength of stainless bar.</summary>
    public static Source AstmA276 { get; } = new("astm-a276", "ASTM A276, Table 2", SourceKind.FromMemory);

    /// <summary>Strength of aluminum extrusions.</summary>
    public static Source AstmB221 { get; } = new("astm-b221", "ASTM B221, Table 2", SourceKind.Published);

    /// <summary>Strength of free-cutting brass rod.</summary>
    public static Source AstmB16 { get; } = new("astm-b16", "ASTM B16/B16M, Table 3", SourceKind.Published);

    /// <summary>Strength of titanium sheet and plate.</summary>
    public static Source AstmB265 { get; } = new("astm-b265", "ASTM B265, Table 4", SourceKind.Published);

    /// <summary>Typical strength of metals.</summary>
    public static Source CallisterMetals { get; } = new("callister-b4", "W. D. Callister, D. G. Rethwisch, Fundamentals of Materials Science and Engineering, Table B.4", SourceKind.Published);

    /// <summary>The rows of that table that were not read.</summary>
    public static Source CallisterMetalsFromMemory { get; } = new("callister-b4-memory", "W. D. Callister, D. G. Rethwisch, Fundamentals of Materials Science and Engineering, Table B.4", SourceKind.FromMemory);

    /// <summary>Density, modulus and Poisson's ratio of metals.</summary>
    public static Source CallisterElastic { get; } = new("callister-b1", "W. D. Callister, D. G. Rethwisch, Fundamentals of Materials Science and Engineering, Tables B.1 to B.3", SourceKind.FromMemory);

    /// <summary>Strength coefficients and hardening exponents.</summary>
    public static Source CallisterHardening { get; } = new("callister-7-4", "W. D. Callister, D. G. Rethwisch, Fundamentals of Materials Science and Engineering, Table 7.4", SourceKind.Published);

    /// <summary>Strength coefficients and hardening exponents.</summary>
    public static Source KalpakjianSchmid { get; } = new("kalpakjian-2-3", "S. Kalpakjian, S. R. Schmid, Manufacturing Engineering and Technology, Table 2.3", SourceKind.FromMemory);

    /// <summary>Strength coefficients and hardening exponents with measured strengths.</summary>
    public static Source ShigleyA22 { get; } = new("shigley-a-22", "R. G. Budynas, J. K. Nisbett, Shigley's Mechanical Engineering Design, Table A-22", SourceKind.FromMemory);

    /// <summary>Modulus and density of steel in American practice.</summary>
    public static Source AiscElastic { get; } = new("aisc-elastic", "AISC Steel Construction Manual: E = 29 000 ksi, 490 lb/ft³", SourceKind.FromMemory);

    /// <summary>Modulus, Poisson's ratio and density of steel in European practice.</summary>
    public static Source En1993Elastic { get; } = new("en-1993-1-1", "EN 1993-1-1, 3.2.6, and EN 1991-1-1: E = 210 GPa, ν = 0.3, 7850 kg/m³", SourceKind.FromMemory);

    /// <summary>Modulus and density of free-cutting brass.</summary>
    public static Source BrassRodData { get; } = new("c36000-data", "Data sheets of rod suppliers for C36000: E = 14.0·10⁶ psi, 0.307 lb/in³", SourceKind.Published);

    /// <summary>Elastic curved bars: neutral radius, eccentricity and stress.</summary>
    public static Source CurvedBars { get; } = new("beer-johnston-curved", "F. P. Beer, E. R. Johnston, J. T. DeWolf, Mechanics of Materials, Examples 4.10 and 4.11, Sample Problem 4.11, pp. 298-300 (curved bars, after Winkler and Bach)", SourceKind.Published);

    /// <summary>Stress factors of curved bars against straight-beam theory.</summary>
    public static Source CurvedBarFactors { get; } = new("young-budynas-9.1", "W. C. Young, R. G. Budynas, Roark's Formulas for Stress and Strain, Table 9.1", SourceKind.FromMemory);

    /// <summary>Radial stress in curved bars.</summary>
    public static Source CurvedBarRadialStress { get; } = new("boresi-schmidt-9", "A. P. Boresi, R. J. Schmidt, Advanced Mechanics of Materials, Example 9.5, p. 334 (radial stress in curved beams)", SourceKind.Published);

    /// <summary>Bending of wide strips: stiffness and strength in plane strain.</summary>
    public static Source PlaneStrainBending { get; } = new("marciniak-duncan-hu-6", "Z. Marciniak, J. L. Duncan, S. J. Hu, Mechanics of Sheet Metal Forming, ch. 6 (bending of sheet in plane strain)", SourceKind.FromMemory);

    /// <summary>Lengths of right-angle bends in sheet and strip.</summary>
    public static Source MachinerysHandbookSheetBends { get; } = new("machinerys-handbook-1421", "Machinery's Handbook, 31st ed. (2020), p. 1421, formulas 32 to 34", SourceKind.Published);

    /// <summary>Bend allowance of sheet metal.</summary>
    public static Source Groover { get; } = new("groover-19.2", "M. P. Groover, Fundamentals of Modern Manufacturing, Example 19.2 (Example 20.2 in older editions)", SourceKind.Published);

    /// <summary>Cold bending of flat steel products: developed length.</summary>
    public static Source Din6935 { get; } = new("din-6935", "DIN 6935, Cold bending of flat rolled steel", SourceKind.FromMemory);

    /// <summary>All sources, in the order of this file.</summary>
    public static IReadOnlyList<Source> All { get; } =
    [
        CommonPractice, Setting, Definition, UnsymmetricBending, Gardiner1957, BeerJohnston4, MachinerysHandbookAngleRings,
        Hollomon1945, RambergOsgood1943, Mechanics, FormingModels,
        Considere1885, AstmA36, AstmA572, AstmA500, AstmA53, AstmA513,
        AstmA513FromMemory, SaeJ1397, En10025, AstmA240, AstmA276, AstmB221,
        AstmB16, AstmB265, CallisterMetals, CallisterMetalsFromMemory, CallisterElastic, CallisterHardening,
        KalpakjianSchmid, ShigleyA22, AiscElastic, En1993Elastic, BrassRodData,

        CurvedBars, CurvedBarFactors, CurvedBarRadialStress, MachinerysHandbookSheetBends, Groover, Din6935,
    ];
}
