using BendMath;
using BendMath.Json;
using BendMath.Stock.Standard;
using UnitsNet;

namespace PackageConsumer;

/// <summary>A planter rim of invented size, with nothing but the packed libraries.</summary>
public static class Rim
{
    private const string Job = """
        {
          "name": "planter rim",
          "stock": { "shape": "equal angle", "leg": "30 mm", "thickness": "3 mm", "root radius": "5 mm", "toe radius": "2.5 mm" },
          "orientation": "flange out",
          "material": { "name": "mild steel", "elastic modulus": "210 GPa", "yield": "290 MPa", "tangent modulus": "1.5 GPa", "density": "7850 kg/m3" },
          "wanted": { "inside diameter": "500 mm" },
          "forming": { "model": "wrap" },
          "dies": [{ "name": "A", "stamped radius": "240 mm", "stamp means": "inside of the bar" }],
          "ends": "none"
        }
        """;

    /// <summary>0 when the ring is one such a bar can leave.</summary>
    public static int Calculate()
    {
        EqualAngle angle =
            new(Length.FromMillimeters(30), Length.FromMillimeters(3),
                AngleFillets.Of(Length.FromMillimeters(5), Length.FromMillimeters(2.5)));
        LinearHardening law = new(Pressure.FromGigapascals(210), Pressure.FromMegapascals(290), Pressure.FromMegapascals(1500));
        BarMaterial steel = new("mild steel", law, Density.FromKilogramsPerCubicMeter(7850));
        LoadedBend loaded = BendAnalysis.Of(angle.FlangeOut, steel).LoadedTo(BendRadius.Inside(Length.FromMillimeters(240)));
        FinishedRing ring = loaded.Release(Release.Free).Ring;
        StandardSize size = StandardSizes.Find("HSS2X2X1/8");
        Console.WriteLine(
            FormattableString.Invariant($"finished inside radius: {ring.InsideRadius.Millimeters:0.000} mm; {size.FullName}"));
        return ring.InsideRadius.Millimeters is > 240 and < 260 ? 0 : 1;
    }

    /// <summary>0 when the same ring comes out of a job file and goes into a plan for programs.</summary>
    public static int ReadPlanAndWrite()
    {
        RingJobFile reading = RingJobFile.Read(Job);
        foreach (JsonFault fault in reading.Faults)
        {
            Console.WriteLine(fault);
        }

        if (!reading.IsSound)
        {
            return 2;
        }

        string plan = RingPlanJson.Write(RingPlan.For(reading.Jobs[0].Job));
        Console.WriteLine(FormattableString.Invariant($"plan of {plan.Length} characters"));
        bool refused = RingJobFile.Read(Job.Replace("290 MPa", "290")).Faults.Count == 1;
        return refused && plan.IndexOf("\"insideDiameterMillimeters\"", StringComparison.Ordinal) > 0 ? 0 : 3;
    }
}
