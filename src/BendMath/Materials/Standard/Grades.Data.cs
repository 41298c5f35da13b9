using BendMath.Evidence;
using UnitsNet;

namespace BendMath.Materials.Standard;

public static partial class Grades
{
    private static Grade[] Rows()
    {
        HardeningPair stainless304 = Pair("stainless 304, annealed", 1275, 0.45, Sources.KalpakjianSchmid);
        HardeningPair aluminum6061 = Pair("aluminum 6061-T6", 410, 0.05, Sources.KalpakjianSchmid);
        HardeningPair copper = Pair("copper, annealed", 315, 0.54, Sources.KalpakjianSchmid);
        HardeningPair strongerCopper = Pair("copper, annealed", 530, 0.44, Sources.CallisterHardening);
        HardeningPair brass = Pair("brass 70-30, annealed", 895, 0.49, Sources.KalpakjianSchmid);
        HardeningPair lowCarbonSteel = Pair("low-carbon steel, annealed", 530, 0.26, Sources.KalpakjianSchmid);
        HardeningPair steel1018 = Pair("steel 1018, annealed", 620, 0.25, Sources.ShigleyA22);
        HardeningPair steel1020 = Pair("steel 1020, annealed", 745, 0.2, Sources.KalpakjianSchmid);
        return
        [
            Row("A36", "hot rolled plate, bar, shape", "ASTM A36/A36M", 200, 0.3, 7850, 250, null, 400, 550, 23, "2 in (20 in 8 in)",
                GradeValueKind.StandardMinimum, null, "No textbook K and n for A36 as rolled is known to the library.", Sources.AstmA36,
                    Sources.AiscElastic, lowCarbonSteel),
            Row("A572 Grade 50", "hot rolled", "ASTM A572/A572M", 200, 0.3, 7850, 345, null, 450, null, 21, "2 in (18 in 8 in)",
                GradeValueKind.StandardMinimum, null, null, Sources.AstmA572, Sources.AiscElastic),
            Row("A500 Grade B", "cold formed welded tube, round", "ASTM A500/A500M", 200, 0.3, 7850, 290, null, 400, null, 23, "2 in",
                GradeValueKind.StandardMinimum, null,
                    "For round tube of a later edition, from about 2018, the yield of shaped tube holds: check the edition in force (from "
                        + "memory). The elongation holds for walls of 0.180 in and more; thinner ones may have less.", Sources.AstmA500,
                            Sources.AiscElastic),
            Row("A500 Grade B", "cold formed welded tube, shaped (square, rectangular)", "ASTM A500/A500M", 200, 0.3, 7850, 315, null, 400,
                null, 23, "2 in", GradeValueKind.StandardMinimum, null,
                    "The elongation holds for walls of 0.180 in and more; thinner ones may have less.", Sources.AstmA500,
                        Sources.AiscElastic),
            Row("A500 Grade C", "cold formed welded tube, round", "ASTM A500/A500M", 200, 0.3, 7850, 315, null, 425, null, 21, "2 in",
                GradeValueKind.StandardMinimum, null,
                    "For round tube of a later edition, from about 2018, the yield of shaped tube holds: check the edition in force (from "
                        + "memory). The elongation holds for walls of 0.120 in and more; thinner ones by agreement.", Sources.AstmA500,
                            Sources.AiscElastic),
            Row("A500 Grade C", "cold formed welded tube, shaped (square, rectangular)", "ASTM A500/A500M", 200, 0.3, 7850, 345, null, 425,
                null, 21, "2 in", GradeValueKind.StandardMinimum, null,
                    "The elongation holds for walls of 0.120 in and more; thinner ones by agreement.", Sources.AstmA500,
                        Sources.AiscElastic),
            Row("A53 Grade B", "pipe, type E or S", "ASTM A53/A53M", 200, 0.3, 7850, 240, null, 415, null, null, null,
                GradeValueKind.StandardMinimum, null, null, Sources.AstmA53, Sources.AiscElastic),
            Row("A513 1020", "type 1a as-welded tube (hot rolled strip)", "ASTM A513/A513M", 200, 0.3, 7850, 262, null, 359, null, 12,
                "2 in", GradeValueKind.StandardMinimum, null, "Holds only where the order invokes the tensile table.", Sources.AstmA513,
                    Sources.AiscElastic),
            Row("A513 1026", "type 1a as-welded tube (hot rolled strip)", "ASTM A513/A513M", 200, 0.3, 7850, 310, null, 427, null, 12,
                "2 in", GradeValueKind.StandardMinimum, null, "Holds only where the order invokes the tensile table.",
                    Sources.AstmA513FromMemory, Sources.AiscElastic),
            Row("A513 1020", "type 5 DOM, stress relieved", "ASTM A513/A513M", 200, 0.3, 7850, 379, null, 448, null, 10, "2 in",
                GradeValueKind.StandardMinimum, null, "Holds only where the order invokes the tensile table.", Sources.AstmA513,
                    Sources.AiscElastic),
            Row("A513 1026", "type 5 DOM, stress relieved", "ASTM A513/A513M", 200, 0.3, 7850, 448, null, 517, null, 10, "2 in",
                GradeValueKind.StandardMinimum, null, "Holds only where the order invokes the tensile table.", Sources.AstmA513,
                    Sources.AiscElastic),
            Row("A513 1020", "type 5 DOM, as drawn", "ASTM A513/A513M", 200, 0.3, 7850, 414, null, 483, null, 5, "2 in",
                GradeValueKind.StandardMinimum, null,
                    "Holds only where the order invokes the tensile table. Stock lists often show 10 % elongation.",
                        Sources.AstmA513FromMemory, Sources.AiscElastic),
            Row("A513 1026", "type 5 DOM, as drawn", "ASTM A513/A513M", 200, 0.3, 7850, 483, null, 552, null, 5, "2 in",
                GradeValueKind.StandardMinimum, null,
                    "Holds only where the order invokes the tensile table. Stock lists quote 75/85 ksi and 15 % as typical.",
                        Sources.AstmA513FromMemory, Sources.AiscElastic),
            Row("1018", "cold drawn bar (ASTM A108)", "ASTM A108 (no tensile minimum); SAE J1397", 200, 0.3, 7850, 370, null, 440, null, 15,
                "2 in", GradeValueKind.EstimatedMinimum, "about 20-30 mm round",
                    "Mill values are usually higher: 70/85 ksi is often quoted.", Sources.SaeJ1397, Sources.AiscElastic),
            Row("1018", "hot rolled bar", "SAE J1397", 200, 0.3, 7850, 220, null, 400, null, 25, "2 in", GradeValueKind.EstimatedMinimum,
                null, null, Sources.SaeJ1397, Sources.AiscElastic, steel1018),
            Row("1020", "hot rolled bar", "SAE J1397", 200, 0.3, 7850, 205, null, 380, null, 25, "2 in", GradeValueKind.EstimatedMinimum,
                null, null, Sources.SaeJ1397, Sources.AiscElastic, steel1020),
            Row("S235JR", "hot rolled, longitudinal", "EN 10025-2:2004/2019 Table 7", 210, 0.3, 7850, 235, null, 360, 510, 26,
                "5.65 sqrt(S0)", GradeValueKind.StandardMinimum, "t <= 16 mm",
                    "The ultimate strength holds from 3 to 100 mm; the elongation, from memory, from 3 to 40 mm.", Sources.En10025,
                        Sources.En1993Elastic, lowCarbonSteel),
            Row("S235JR", "hot rolled, longitudinal", "EN 10025-2:2004/2019 Table 7", 210, 0.3, 7850, 225, null, 360, 510, 26,
                "5.65 sqrt(S0)", GradeValueKind.StandardMinimum, "16 < t <= 40 mm",
                    "The ultimate strength holds from 3 to 100 mm; the elongation, from memory, from 3 to 40 mm.", Sources.En10025,
                        Sources.En1993Elastic, lowCarbonSteel),
            Row("S275JR", "hot rolled, longitudinal", "EN 10025-2:2004/2019 Table 7", 210, 0.3, 7850, 275, null, 410, 560, 23,
                "5.65 sqrt(S0)", GradeValueKind.StandardMinimum, "t <= 16 mm",
                    "The ultimate strength holds from 3 to 100 mm; the elongation, from memory, from 3 to 40 mm.", Sources.En10025,
                        Sources.En1993Elastic),
            Row("S275JR", "hot rolled, longitudinal", "EN 10025-2:2004/2019 Table 7", 210, 0.3, 7850, 265, null, 410, 560, 23,
                "5.65 sqrt(S0)", GradeValueKind.StandardMinimum, "16 < t <= 40 mm",
                    "The ultimate strength holds from 3 to 100 mm; the elongation, from memory, from 3 to 40 mm.", Sources.En10025,
                        Sources.En1993Elastic),
            Row("S355J2", "hot rolled, longitudinal", "EN 10025-2:2004/2019 Table 7", 210, 0.3, 7850, 355, null, 470, 630, 22,
                "5.65 sqrt(S0)", GradeValueKind.StandardMinimum, "t <= 16 mm",
                    "The ultimate strength holds from 3 to 100 mm; the elongation, from memory, from 3 to 40 mm.", Sources.En10025,
                        Sources.En1993Elastic),
            Row("S355J2", "hot rolled, longitudinal", "EN 10025-2:2004/2019 Table 7", 210, 0.3, 7850, 345, null, 470, 630, 22,
                "5.65 sqrt(S0)", GradeValueKind.StandardMinimum, "16 < t <= 40 mm",
                    "The ultimate strength holds from 3 to 100 mm; the elongation, from memory, from 3 to 40 mm.", Sources.En10025,
                        Sources.En1993Elastic),
            Row("304", "annealed", "ASTM A240/A276/A312", 193, 0.3, 8000, 205, null, 515, null, 40, "2 in (A312 pipe 35)",
                GradeValueKind.StandardMinimum, null, null, Sources.AstmA240, Sources.CallisterElastic, stainless304),
            Row("304L", "annealed", "ASTM A240/A276/A312", 193, 0.3, 8000, 170, null, 485, null, 40, "2 in (A312 pipe 35)",
                GradeValueKind.StandardMinimum, null, "The pair of annealed 304 is the nearest one in print.", Sources.AstmA240,
                    Sources.CallisterElastic, stainless304),
            Row("316L", "annealed", "ASTM A240/A276/A312", 193, 0.3, 8000, 170, null, 485, null, 40, "2 in (A312 pipe 35)",
                GradeValueKind.StandardMinimum, null, "No K and n of 316L in the tables used here.", Sources.AstmA240,
                    Sources.CallisterElastic),
            Row("304", "cold finished bar, condition A", "ASTM A276", 193, 0.3, 8000, 310, null, 620, null, 30, "2 in or 4D",
                GradeValueKind.StandardMinimum, "<= 1/2 in", null, Sources.AstmA276, Sources.CallisterElastic),
            Row("6061-T6", "extruded", "ASTM B221", 69, 0.33, 2700, 240, null, 260, null, 8, "2 in or 4D", GradeValueKind.StandardMinimum,
                "t <= 0.249 in", null, Sources.AstmB221, Sources.CallisterElastic, aluminum6061),
            Row("6061-T6", "extruded", "ASTM B221", 69, 0.33, 2700, 240, null, 260, null, 10, "2 in or 4D", GradeValueKind.StandardMinimum,
                "t >= 0.250 in", null, Sources.AstmB221, Sources.CallisterElastic, aluminum6061),
            Row("6061-T6", "typical of T6 and T651", "no standard, handbook value", 69, 0.33, 2700, 276, null, 310, null, 17,
                "2 in, 1/2 in round", GradeValueKind.Typical, null, null, Sources.CallisterMetals, Sources.CallisterElastic, aluminum6061),
            Row("6063-T5", "extruded", "ASTM B221", 69, 0.33, 2700, 110, null, 150, null, 8, "2 in or 4D", GradeValueKind.StandardMinimum,
                "t <= 0.500 in", null, Sources.AstmB221, Sources.CallisterElastic),
            Row("6063-T52", "extruded", "ASTM B221", 69, 0.33, 2700, 110, 170, 150, 205, 8, "2 in or 4D", GradeValueKind.StandardMinimum,
                "t <= 1.000 in", "A temper with an upper strength limit, the usual one ordered for cold forming.", Sources.AstmB221,
                    Sources.CallisterElastic),
            Row("6063-T4", "extruded", "ASTM B221", 69, 0.33, 2700, 70, null, 130, null, 14, "2 in or 4D", GradeValueKind.StandardMinimum,
                "t <= 0.500 in", null, Sources.AstmB221, Sources.CallisterElastic),
            Row("C11000", "copper, hot rolled or annealed (soft)", "ASTM B187/B152", 115, 0.34, 8890, 69, null, 220, null, 45, "2 in",
                GradeValueKind.Typical, null, null, Sources.CallisterMetals, Sources.CallisterElastic, copper, strongerCopper),
            Row("C11000", "copper, cold worked H04 (hard)", "ASTM B187/B152", 115, 0.34, 8890, 310, null, 345, null, 12, "2 in",
                GradeValueKind.Typical, null, null, Sources.CallisterMetals, Sources.CallisterElastic),
            Row("C36000", "free-cutting brass, O60 soft anneal rod", "ASTM B16/B16M", 97, 0.34, 8500, 140, null, 330, null, 15, "4D",
                GradeValueKind.StandardMinimum, "<= 1 in",
                    "Yield at 0.5 % extension under load. The capacity for cold working is rated poor.", Sources.AstmB16,
                        Sources.BrassRodData),
            Row("C36000", "free-cutting brass, H02 half hard rod", "ASTM B16/B16M", 97, 0.34, 8500, 170, null, 380, null, 10, "4D",
                GradeValueKind.StandardMinimum, "1/2 to 1 in",
                    "Yield at 0.5 % extension under load. The capacity for cold working is rated poor.", Sources.AstmB16,
                        Sources.BrassRodData),
            Row("C26000", "cartridge brass, annealed", "ASTM B36/B135", 110, 0.35, 8530, 75, 150, 300, 365, 54, "2 in",
                GradeValueKind.Typical, null, null, Sources.CallisterMetalsFromMemory, Sources.CallisterElastic, brass),
            Row("C26000", "cartridge brass, cold worked H04", "ASTM B36/B135", 110, 0.35, 8530, 435, null, 525, null, 8, "2 in",
                GradeValueKind.Typical, null, null, Sources.CallisterMetalsFromMemory, Sources.CallisterElastic),
            Row("Titanium Grade 2", "annealed", "ASTM B265/B348/B338", 103, 0.34, 4510, 275, 450, 345, null, 20, "2 in",
                GradeValueKind.StandardMinimum, null,
                    "The highest yield holds for sheet and tube. Poisson's ratio is quoted from 0.34 to 0.37.", Sources.AstmB265,
                        Sources.CallisterElastic),
        ];
    }

    private static HardeningPair Pair(string description, double strengthMegapascals, double exponent, Source source) =>
        new(description, Pressure.FromMegapascals(strengthMegapascals), exponent, source);

    /// <summary>E in GPa, density in kg/m³, strengths in MPa, elongation in percent.</summary>
    private static Grade Row(
        string name,
        string condition,
        string standard,
        double modulus,
        double poissonsRatio,
        double density,
        double yield,
        double? highYield,
        double? ultimate,
        double? highUltimate,
        double? elongation,
        string? gauge,
        GradeValueKind kind,
        string? sizes,
        string? note,
        Source source,
        Source elasticSource,
        params HardeningPair[] pairs) => new(
            name, condition, standard,
            new(Pressure.FromGigapascals(modulus), poissonsRatio, Density.FromKilogramsPerCubicMeter(density), elasticSource),
            new(Pressure.FromMegapascals(yield), kind, Stress(highYield), Stress(ultimate), Stress(highUltimate),
                elongation is { } percent ? Ratio.FromPercent(percent) : null, gauge, source),
            sizes,
            pairs,
            note);

    private static Pressure? Stress(double? megapascals) => megapascals is { } value ? Pressure.FromMegapascals(value) : null;
}
