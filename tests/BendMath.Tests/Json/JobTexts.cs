using BendMath.Json;

namespace BendMath.Tests.Json;

/// <summary>Job files to read and to spoil. Invented data.</summary>
internal static class JobTexts
{
    public const string Sound = """
        {
          "name": "planter rim",
          "note": "invented data",
          "stock": { "shape": "equal angle", "leg": "30 mm", "thickness": "3 mm", "root radius": "5 mm", "toe radius": "2.5 mm" },
          "orientation": "flange out",
          "material": { "name": "mild steel", "elastic modulus": "200 GPa", "yield": "280 MPa", "yield range": ["235 MPa", "355 MPa"], "density": "7850 kg/m3", "elongation": "23 %" },
          "wanted": { "inside diameter": "500 mm" },
          "arc": "90 deg",
          "forming": { "model": "wrap" },
          "bender": { "half-span": "100 mm", "nose radius": "20 mm" },
          "dies": [
            { "name": "A", "stamped radius": "240 mm", "stamp means": "inside of the bar" },
            { "name": "B", "stamped radius": "280 mm", "stamp means": { "offset": "3 mm" } }
          ],
          "ends": { "start": "60 mm", "end": "50 mm", "trim": "4 mm" },
          "kerf": "2 mm",
          "bar length": "6 m",
          "lever length": "900 mm",
          "measured rings": [
            { "die": "A", "inside diameter": "490 mm", "state": "free" }
          ],
          "correction": "curvature ratio"
        }
        """;

    /// <summary>The sound file with one text replaced; the text must stand in it.</summary>
    public static string With(string old, string replacement)
    {
        Assert.Contains(old, Sound, StringComparison.Ordinal);
        return Sound.Replace(old, replacement, StringComparison.Ordinal);
    }

    public static RingPlan Plan(string text)
    {
        RingJobFile reading = RingJobFile.Read(text);
        Assert.Empty(reading.Faults);
        return RingPlan.For(Assert.Single(reading.Jobs).Job);
    }
}
