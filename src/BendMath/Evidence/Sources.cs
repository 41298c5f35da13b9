namespace BendMath.Evidence;

/// <summary>
/// Every source the library cites, one property each. Doc comments refer to these by <c>cref</c>, so a citation that does not exist does
/// not compile.
/// </summary>
public static class Sources
{
    /// <summary>Common practice of the trade.</summary>
    public static Source CommonPractice { get; } = new("common-practice", "Common practice", SourceKind.CommonPractice);

    /// <summary>A bound chosen for this library where no source gives one.</summary>
    public static Source Setting { get; } = new("setting", "A setting of this library, not a finding", SourceKind.Setting);

    /// <summary>A value the caller gave, which the library takes as it is.</summary>
    public static Source Given { get; } = new("given", "Given by the caller", SourceKind.Given);

    /// <summary>Elementary plane geometry and the definition of the quantity.</summary>
    public static Source Definition { get; } = new("definition", "By definition or elementary geometry", SourceKind.Derived);

    /// <summary>Elastic bending of unsymmetric sections.</summary>
    public static Source UnsymmetricBending { get; } =
        new("boresi-schmidt-7",
            "A. P. Boresi, R. J. Schmidt, Advanced Mechanics of Materials, 6th ed., ch. 7 (bending of unsymmetric sections)",
                SourceKind.FromMemory);

    /// <summary>Springback of an elastic, perfectly plastic rectangle.</summary>
    public static Source Gardiner1957 { get; } =
        new("gardiner-1957", "F. J. Gardiner, The Springback of Metals, Trans. ASME 79 (1957) 1-9", SourceKind.FromMemory);

    /// <summary>Elastic-plastic bending, elastic unloading and residual stress.</summary>
    public static Source BeerJohnston4 { get; } =
        new("beer-johnston-4", "F. P. Beer, E. R. Johnston, J. T. DeWolf, Mechanics of Materials, ch. 4, Examples 4.05 and 4.06, p. 260",
            SourceKind.Published);

    /// <summary>Lengths of angles bent to a circle.</summary>
    public static Source MachinerysHandbookAngleRings { get; } =
        new("machinerys-handbook-2691", "Machinery's Handbook, 31st ed. (2020), Lengths of Angles Bent to Circular Shape, p. 2691",
            SourceKind.Published);

    /// <summary>Power law of strain hardening.</summary>
    public static Source Hollomon1945 { get; } =
        new("hollomon-1945", "J. H. Hollomon, Tensile Deformation, Trans. AIME 162 (1945) 268-290", SourceKind.FromMemory);

    /// <summary>Stress–strain curve of three parameters.</summary>
    public static Source RambergOsgood1943 { get; } =
        new("ramberg-osgood-1943", "W. Ramberg, W. R. Osgood, Description of Stress-Strain Curves by Three Parameters, NACA TN 902 (1943)",
            SourceKind.FromMemory);

    /// <summary>Derivations that stand in this library's documentation (concepts/mechanics).</summary>
    public static Source Mechanics { get; } =
        new("bendmath-mechanics", "BendMath documentation, Mechanics of a bent bar", SourceKind.Derived);

    /// <summary>
    /// Guides with stiffness, release with memory and bumps with a blunt nose, derived in this library's documentation
    /// (concepts/mechanisms).
    /// </summary>
    public static Source Mechanisms { get; } =
        new("bendmath-mechanisms", "BendMath documentation, What the bar really does", SourceKind.Derived);

    /// <summary>Back stress that saturates.</summary>
    public static Source ArmstrongFrederick1966 { get; } =
        new("armstrong-frederick-1966",
            "P. J. Armstrong, C. O. Frederick, A Mathematical Representation of the Multiaxial Bauschinger Effect, CEGB Report RD/B/N 731 "
                + "(1966); J.-L. Chaboche, Int. J. Plasticity 5 (1989) 247-302", SourceKind.FromMemory);

    /// <summary>Stress and strain of hot-rolled steel.</summary>
    public static Source YunGardner2017 { get; } =
        new("yun-gardner-2017",
            "X. Yun, L. Gardner, Stress-strain curves for hot-rolled steels, J. Constructional Steel Research 133 (2017) 36-46",
                SourceKind.FromMemory);

    /// <summary>The incremental three-point bending model, derived in this library's documentation (concepts/forming).</summary>
    public static Source FormingModels { get; } = new("bendmath-forming", "BendMath documentation, Forming models", SourceKind.Derived);

    /// <summary>Necking of a tensile bar: uniform strain and ultimate strength.</summary>
    public static Source Considere1885 { get; } =
        new("considere-1885",
            "A. Considère, Mémoire sur l'emploi du fer et de l'acier dans les constructions, Annales des ponts et chaussées 9 (1885) "
                + "574-775", SourceKind.FromMemory);

    /// <summary>Strength of A36.</summary>
    public static Source AstmA36 { get; } = new("astm-a36", "ASTM A36/A36M, Table 3", SourceKind.Published);

    /// <summary>Expected strength of American grades.</summary>
    public static Source Aisc341 { get; } =
        new("aisc-341-ry",
            "ANSI/AISC 341, Seismic Provisions for Structural Steel Buildings, Table A3.1, expected yield R_y and tensile strength R_t",
                SourceKind.FromMemory);

    /// <summary>Expected strength of European grades.</summary>
    public static Source En1998Randomness { get; } =
        new("en-1998-1-rm", "EN 1998-1, second generation, material randomness factors of structural steels", SourceKind.FromMemory);

    /// <summary>Strength of A572.</summary>
    public static Source AstmA572 { get; } = new("astm-a572", "ASTM A572/A572M, tensile requirements", SourceKind.Published);

    /// <summary>Strength of cold-formed welded tube.</summary>
    public static Source AstmA500 { get; } = new("astm-a500", "ASTM A500/A500M, tensile requirements", SourceKind.Published);

    /// <summary>Strength of A53 pipe.</summary>
    public static Source AstmA53 { get; } = new("astm-a53", "ASTM A53/A53M, Table 2", SourceKind.Published);

    /// <summary>Strength of welded and drawn mechanical tube.</summary>
    public static Source AstmA513 { get; } =
        new("astm-a513", "ASTM A513/A513M, tensile requirements of round tubing", SourceKind.Published);

    /// <summary>The rows of A513 that were not read.</summary>
    public static Source AstmA513FromMemory { get; } =
        new("astm-a513-memory", "ASTM A513/A513M, tensile requirements of round tubing", SourceKind.FromMemory);

    /// <summary>Estimated strength of carbon steel bar.</summary>
    public static Source SaeJ1397 { get; } =
        new("sae-j1397", "SAE J1397, Estimated Mechanical Properties and Machinability of Steel Bars", SourceKind.Published);

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
    public static Source CallisterMetals { get; } =
        new("callister-b4", "W. D. Callister, D. G. Rethwisch, Fundamentals of Materials Science and Engineering, Table B.4",
            SourceKind.Published);

    /// <summary>The rows of that table that were not read.</summary>
    public static Source CallisterMetalsFromMemory { get; } =
        new("callister-b4-memory", "W. D. Callister, D. G. Rethwisch, Fundamentals of Materials Science and Engineering, Table B.4",
            SourceKind.FromMemory);

    /// <summary>Density, modulus and Poisson's ratio of metals.</summary>
    public static Source CallisterElastic { get; } =
        new("callister-b1", "W. D. Callister, D. G. Rethwisch, Fundamentals of Materials Science and Engineering, Tables B.1 to B.3",
            SourceKind.FromMemory);

    /// <summary>Strength coefficients and hardening exponents.</summary>
    public static Source CallisterHardening { get; } =
        new("callister-7-4", "W. D. Callister, D. G. Rethwisch, Fundamentals of Materials Science and Engineering, Table 7.4",
            SourceKind.Published);

    /// <summary>Strength coefficients and hardening exponents.</summary>
    public static Source KalpakjianSchmid { get; } =
        new("kalpakjian-2-3", "S. Kalpakjian, S. R. Schmid, Manufacturing Engineering and Technology, Table 2.3", SourceKind.FromMemory);

    /// <summary>Strength coefficients and hardening exponents with measured strengths.</summary>
    public static Source ShigleyA22 { get; } =
        new("shigley-a-22", "R. G. Budynas, J. K. Nisbett, Shigley's Mechanical Engineering Design, Table A-22", SourceKind.FromMemory);

    /// <summary>Modulus and density of steel in American practice.</summary>
    public static Source AiscElastic { get; } =
        new("aisc-elastic", "AISC Steel Construction Manual: E = 29 000 ksi, 490 lb/ft³", SourceKind.FromMemory);

    /// <summary>Modulus, Poisson's ratio and density of steel in European practice.</summary>
    public static Source En1993Elastic { get; } =
        new("en-1993-1-1", "EN 1993-1-1, 3.2.6, and EN 1991-1-1: E = 210 GPa, ν = 0.3, 7850 kg/m³", SourceKind.FromMemory);

    /// <summary>Modulus and density of free-cutting brass.</summary>
    public static Source BrassRodData { get; } =
        new("c36000-data", "Data sheets of rod suppliers for C36000: E = 14.0·10⁶ psi, 0.307 lb/in³", SourceKind.Published);

    /// <summary>Elastic curved bars: neutral radius, eccentricity and stress.</summary>
    public static Source CurvedBars { get; } =
        new("beer-johnston-curved",
            "F. P. Beer, E. R. Johnston, J. T. DeWolf, Mechanics of Materials, Examples 4.10 and 4.11, Sample Problem 4.11, pp. 298-300 "
                + "(curved bars, after Winkler and Bach)", SourceKind.Published);

    /// <summary>Stress factors of curved bars against straight-beam theory.</summary>
    public static Source CurvedBarFactors { get; } =
        new("young-budynas-9.1", "W. C. Young, R. G. Budynas, Roark's Formulas for Stress and Strain, Table 9.1", SourceKind.FromMemory);

    /// <summary>Radial stress in curved bars.</summary>
    public static Source CurvedBarRadialStress { get; } =
        new("boresi-schmidt-9",
            "A. P. Boresi, R. J. Schmidt, Advanced Mechanics of Materials, Example 9.5, p. 334 (radial stress in curved beams)",
                SourceKind.Published);

    /// <summary>Bending of wide strips: stiffness and strength in plane strain.</summary>
    public static Source PlaneStrainBending { get; } =
        new("marciniak-duncan-hu-6",
            "Z. Marciniak, J. L. Duncan, S. J. Hu, Mechanics of Sheet Metal Forming, ch. 6 (bending of sheet in plane strain)",
                SourceKind.FromMemory);

    /// <summary>Lengths of right-angle bends in sheet and strip.</summary>
    public static Source MachinerysHandbookSheetBends { get; } =
        new("machinerys-handbook-1421", "Machinery's Handbook, 31st ed. (2020), p. 1421, formulas 32 to 34", SourceKind.Published);

    /// <summary>Bend allowance of sheet metal.</summary>
    public static Source Groover { get; } =
        new("groover-19.2", "M. P. Groover, Fundamentals of Modern Manufacturing, Example 19.2 (Example 20.2 in older editions)",
            SourceKind.Published);

    /// <summary>Cold bending of flat steel products: developed length.</summary>
    public static Source Din6935 { get; } = new("din-6935", "DIN 6935, Cold bending of flat rolled steel", SourceKind.FromMemory);
    /// <summary>Dimensions, corner radii, properties and tolerances of cold-formed tube.</summary>
    public static Source En10219 { get; } =
        new("en-10219-2", "EN 10219-2, dimensions, tolerances and sectional properties of cold-formed hollow sections",
            SourceKind.Published);

    /// <summary>Dimensions, corner radii and properties of hot-finished tube.</summary>
    public static Source En10210 { get; } =
        new("en-10210-2", "EN 10210-2, dimensions and sectional properties of hot-finished hollow sections", SourceKind.FromMemory);

    /// <summary>Properties of American rolled shapes and hollow structural sections.</summary>
    public static Source AiscShapes { get; } =
        new("aisc-shapes-16",
            "AISC Shapes Database v16.0 (2023), companion to the Steel Construction Manual, 16th ed.; conventions recovered from the "
                + "printed values", SourceKind.Published);

    /// <summary>Torsion of prisms: circle, rectangle, closed thin walls.</summary>
    public static Source TimoshenkoGoodier10 { get; } =
        new("timoshenko-goodier-10", "S. P. Timoshenko, J. N. Goodier, Theory of Elasticity, 3rd ed., ch. 10 (torsion of straight bars)",
            SourceKind.FromMemory);

    /// <summary>Torsion of a hexagon.</summary>
    public static Source TimoshenkoStrength2 { get; } =
        new("timoshenko-strength-2", "S. P. Timoshenko, Strength of Materials, Part II, 3rd ed., ch. 6 (torsion of other solid sections)",
            SourceKind.FromMemory);

    /// <summary>Torsion constants of rolled shapes with fillets.</summary>
    public static Source ElDarwishJohnston1965 { get; } =
        new("el-darwish-johnston-1965",
            "I. A. El Darwish, B. G. Johnston, Torsion of Structural Shapes, Journal of the Structural Division, ASCE 91 (ST1), 1965, "
                + "203-227", SourceKind.FromMemory);

    /// <summary>The torsion constants printed for European angles.</summary>
    public static Source BlueBookAngles { get; } =
        new("sci-p363-angles",
            "SCI P363 / Steel for Life Blue Book, properties of EN 10056-1 angles; formula of I_T recovered from the printed values",
                SourceKind.Derived);

    /// <summary>Warping constants and shear centers of open shapes.</summary>
    public static Source DesignGuide9 { get; } =
        new("aisc-design-guide-9",
            "P. A. Seaburg, C. J. Carter, Torsional Analysis of Structural Steel Members, AISC Design Guide 9 (1997), and thin-wall "
                + "theory (Vlasov)", SourceKind.FromMemory);

    /// <summary>Tolerances of angles.</summary>
    public static Source En10056 { get; } =
        new("en-10056-2", "EN 10056-2, tolerances on shape and dimensions of angles", SourceKind.FromMemory);

    /// <summary>Tolerances of flats.</summary>
    public static Source En10058 { get; } =
        new("en-10058", "EN 10058:2018, dimensions and tolerances of hot rolled flats", SourceKind.Published);

    /// <summary>Tolerances of square bars.</summary>
    public static Source En10059 { get; } =
        new("en-10059", "EN 10059, dimensions and tolerances of hot rolled square bars", SourceKind.Published);

    /// <summary>Tolerances of round bars.</summary>
    public static Source En10060 { get; } =
        new("en-10060", "EN 10060, dimensions and tolerances of hot rolled round bars", SourceKind.FromMemory);

    /// <summary>Tolerances of American angles.</summary>
    public static Source AstmA6 { get; } = new("astm-a6", "ASTM A6/A6M, permitted variations of angles", SourceKind.FromMemory);

    /// <summary>Tolerances of American square and rectangular tube.</summary>
    public static Source AstmA500Dimensions { get; } =
        new("astm-a500-dimensions", "ASTM A500/A500M, dimensional tolerances", SourceKind.Published);

    /// <summary>Tolerances of American pipe.</summary>
    public static Source AstmA53Dimensions { get; } =
        new("astm-a53-dimensions", "ASTM A53/A53M, dimensional tolerances", SourceKind.FromMemory);

    /// <summary>Dimensions of rolled angles.</summary>
    public static Source En10056Tables { get; } =
        new("en-10056-1-tables",
            "Section tables of equal and unequal angles to EN 10056-1: SCI P363; sizes it lacks from a mill's catalog of sections and "
                + "merchant bars", SourceKind.Published);

    /// <summary>Dimensions of European hollow sections.</summary>
    public static Source HollowSectionTables { get; } =
        new("sci-p363-hollow", "SCI P363, section property tables of hollow sections to EN 10219-2:2006 and EN 10210-2:2006",
            SourceKind.Published);

    /// <summary>Diameters of European round bars.</summary>
    public static Source En10060Rounds { get; } =
        new("en-10060-rounds", "A mill's catalog of hot rolled round bars, dimensions to EN 10060", SourceKind.Published);

    /// <summary>Sides of European square bars.</summary>
    public static Source En10059Squares { get; } = new("en-10059-squares", "EN 10059:2003, Table 1", SourceKind.FromMemory);

    /// <summary>Widths and thicknesses of European flats.</summary>
    public static Source En10058Flats { get; } = new("en-10058-flats", "EN 10058:2018, Table 1", SourceKind.FromMemory);

    /// <summary>Dimensions of Schedule 40 pipe.</summary>
    public static Source PipeSchedule40 { get; } =
        new("asme-b36-10m-40",
            "ASME B36.10M, Schedule 40, as tabulated in R. L. Mott, Machine Elements in Mechanical Design, 4th ed., Table A16-6",
                SourceKind.Published);

    /// <summary>Dimensions of Schedule 80 pipe that were read.</summary>
    public static Source PipeSchedule80 { get; } =
        new("asme-b36-10m-80", "ASME B36.10M, Schedule 80, as tabulated in a pipe data chart", SourceKind.Published);

    /// <summary>Dimensions of Schedule 80 pipe that were not read.</summary>
    public static Source PipeSchedule80FromMemory { get; } =
        new("asme-b36-10m-80-memory", "ASME B36.10M, Schedule 80", SourceKind.FromMemory);

    /// <summary>Sizes of American round, square and flat bars.</summary>
    public static Source AiscBars { get; } =
        new("aisc-bars", "AISC Steel Construction Manual, weights of square, round and rectangular bars", SourceKind.FromMemory);

    /// <summary>Sizes of American angles below those of the AISC tables.</summary>
    public static Source BarSizeAngles { get; } =
        new("us-bar-size-angles", "Common stock of American bar-size angles", SourceKind.FromMemory);

    /// <summary>The fillet rule for angles of the AISC tables, fitted to their printed values.</summary>
    public static Source AiscFilletFit { get; } =
        new("bendmath-aisc-fillets", "BendMath documentation, Standard sizes", SourceKind.Derived);

    /// <summary>Lateral buckling of bars bent about their stiffer axis, straight and curved.</summary>
    public static Source TimoshenkoGere { get; } =
        new("timoshenko-gere-lateral",
            "S. P. Timoshenko, J. M. Gere, Theory of Elastic Stability, 2nd ed., lateral buckling of beams and of curved bars in pure "
                + "bending", SourceKind.FromMemory);

    /// <summary>Buckling of plates beyond yield, deformation theory.</summary>
    public static Source PlasticPlateBuckling { get; } =
        new("gerard-stowell",
            "E. Z. Stowell, A Unified Theory of Plastic Buckling of Columns and Plates, NACA Report 898 (1948); G. Gerard, Introduction "
                + "to Structural Stability Theory (1962)", SourceKind.FromMemory);

    /// <summary>Wrinkling strain of a compressed pipe wall in pipeline practice.</summary>
    public static Source PipelineWrinkling { get; } =
        new("pipeline-wrinkling",
            "Wrinkling of the free wall of a cylinder beyond yield (G. Gerard), and the rule 0.5·t/D of pipeline practice",
                SourceKind.FromMemory);

    /// <summary>Flattening of a bent elastic tube.</summary>
    public static Source Brazier1927 { get; } =
        new("brazier-1927",
            "L. G. Brazier, On the Flexure of Thin Cylindrical Shells and Other Thin Sections, Proc. R. Soc. A 116 (1927) 104-114; "
                + "ovality up to 8 % as in pipe codes (UFC/UFGS, the figures of ASME B31.1)", SourceKind.FromMemory);

    /// <summary>Ovality of bent line pipe.</summary>
    public static Source PipelineOvality { get; } =
        new("pipeline-ovality",
            "Ovality of line pipe under bending, 0.03·(1 + D/(120·t))·(2·ε·D/t)², as in standards for submarine pipelines",
                SourceKind.FromMemory);

    /// <summary>Plasticity by total strain, in more than one direction.</summary>
    public static Source Hencky1924 { get; } =
        new("hencky-1924",
            "H. Hencky, Zur Theorie plastischer Deformationen und der hierdurch im Material hervorgerufenen Nachspannungen, Z. angew. "
                + "Math. Mech. 4 (1924) 323-334", SourceKind.FromMemory);

    /// <summary>Wall thickness of a bent tube at constant volume.</summary>
    public static Source Tang2000 { get; } =
        new("tang-2000", "N. C. Tang, Plastic-deformation analysis in tube bending, Int. J. Pressure Vessels and Piping 77 (2000) 751-759",
            SourceKind.FromMemory);

    /// <summary>Pipe wall to order before bending.</summary>
    public static Source PipeBendWall { get; } =
        new("ufgs-pipe-bends", "UFC/UFGS, Table 5-4, wall thickness of pipe before bending, the figures of ASME B31.1",
            SourceKind.Published);

    /// <summary>Least bend radius of tube.</summary>
    public static Source GrooverTube { get; } =
        new("groover-tube",
            "M. P. Groover, Fundamentals of Modern Manufacturing, bending of tube stock: about 1.5 diameters with a mandrel, 3 without",
                SourceKind.Published);

    /// <summary>Distortion of rolled sections.</summary>
    public static Source ModernSteel2019 { get; } =
        new("modern-steel-2019", "Modern Steel Construction, April 2019, p. 42: no accepted tolerance for distortion of the section; 5 % is used in house", SourceKind.Published);

    /// <summary>Cold forming of plate in ship structures.</summary>
    public static Source IacsColdForming { get; } = new("iacs-csr-cold-forming", "IACS Common Structural Rules, cold forming of plate: inside radius of 10 t, 4.5 t, never below 2 t", SourceKind.Published);

    /// <summary>Strain of pressure parts that calls for heat treatment.</summary>
    public static Source AsmeFiberStrain { get; } = new("asme-viii-ucs-79", "ASME BPVC Section VIII, UCS-79: 5 % extreme fiber strain", SourceKind.FromMemory);

    /// <summary>Distortion checks derived in this library's documentation (concepts/distortion).</summary>
    public static Source DistortionChecks { get; } = new("bendmath-distortion", "BendMath documentation, Distortion", SourceKind.Derived);

    /// <summary>Dies, die pairs and effort, derived in this library's documentation (concepts/dies).</summary>
    public static Source Dies { get; } = new("bendmath-dies", "BendMath documentation, Dies, pairs and effort", SourceKind.Derived);

    /// <summary>Softer unloading of steel after plastic strain.</summary>
    public static Source UnloadingModulus { get; } = new("yoshida-2002", "F. Yoshida, T. Uemori, K. Fujiwara, Elastic-plastic behavior of steel sheets under in-plane cyclic tension-compression at large strain, Int. J. Plasticity 18 (2002) 633-659: the unloading modulus of steel sheet falls by 10 to 20 % within a few percent of strain", SourceKind.FromMemory);
    /// <summary>Cutting stock: columns, prices and bounds.</summary>
    public static Source GilmoreGomory { get; } = new("gilmore-gomory-1961", "P. C. Gilmore, R. E. Gomory, A Linear Programming Approach to the Cutting-Stock Problem, Operations Research 9 (1961) 849-859; bound of A. A. Farley, Operations Research 38 (1990) 922-923", SourceKind.FromMemory);

    /// <summary>Propagation of errors, coverage of about 95 % by two standard errors.</summary>
    public static Source Gum { get; } = new("jcgm-100", "JCGM 100:2008, Guide to the Expression of Uncertainty in Measurement", SourceKind.FromMemory);

    /// <summary>Who takes the error of a measurement against himself when a part is judged.</summary>
    public static Source Iso14253 { get; } = new("iso-14253-1", "ISO 14253-1, decision rules for verifying conformity or nonconformity with specifications", SourceKind.FromMemory);

    /// <summary>Circles through points with errors.</summary>
    public static Source CircleFitting { get; } = new("taubin-gander", "G. Taubin, IEEE Trans. PAMI 13 (1991) 1115-1138; W. Gander, G. H. Golub, R. Strebel, Least-Squares Fitting of Circles and Ellipses, BIT 34 (1994) 558-578", SourceKind.FromMemory);
    /// <summary>
    /// Least squares: prediction intervals, leverage, distance of an observation, deleted residuals and the test for an odd one.
    /// </summary>
    public static Source WeisbergRegression { get; } = new("weisberg-regression", "S. Weisberg, Applied Linear Regression, 2nd ed. (1985), simple regression; outliers and influence", SourceKind.FromMemory);

    /// <summary>What measured rings teach, derived in this library's documentation (concepts/learning).</summary>
    public static Source LearningFromRings { get; } = new("bendmath-learning", "BendMath documentation, Learning from measured rings", SourceKind.Derived);

    /// <summary>All sources, each once.</summary>
    public static IReadOnlyList<Source> All { get; } =
    [
        CommonPractice, Setting, Given, Definition, UnsymmetricBending, Gardiner1957, BeerJohnston4, MachinerysHandbookAngleRings,
        Hollomon1945, RambergOsgood1943, Mechanics, Mechanisms, ArmstrongFrederick1966, YunGardner2017, FormingModels,
        Considere1885, Aisc341, En1998Randomness, AstmA36, AstmA572, AstmA500, AstmA53, AstmA513,
        AstmA513FromMemory, SaeJ1397, En10025, AstmA240, AstmA276, AstmB221,
        AstmB16, AstmB265, CallisterMetals, CallisterMetalsFromMemory, CallisterElastic, CallisterHardening,
        KalpakjianSchmid, ShigleyA22, AiscElastic, En1993Elastic, BrassRodData,
        CurvedBars, CurvedBarFactors, CurvedBarRadialStress, PlaneStrainBending, MachinerysHandbookSheetBends, Groover, Din6935,
        En10219, En10210, AiscShapes,
        TimoshenkoGoodier10, TimoshenkoStrength2, ElDarwishJohnston1965, BlueBookAngles, DesignGuide9,
        En10056, En10058, En10059, En10060, AstmA6, AstmA500Dimensions, AstmA53Dimensions,
        En10056Tables, HollowSectionTables, En10060Rounds, En10059Squares, En10058Flats, PipeSchedule40,
        PipeSchedule80, PipeSchedule80FromMemory, AiscBars, BarSizeAngles, AiscFilletFit,
        TimoshenkoGere, PlasticPlateBuckling, PipelineWrinkling, Brazier1927, PipelineOvality, Hencky1924, Tang2000, PipeBendWall, GrooverTube,
        ModernSteel2019, IacsColdForming, AsmeFiberStrain, DistortionChecks, Dies, UnloadingModulus,
        GilmoreGomory, Gum, Iso14253, CircleFitting,
        WeisbergRegression, LearningFromRings,
    ];
}
