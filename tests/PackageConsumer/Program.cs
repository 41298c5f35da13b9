using BendMath;
using UnitsNet;

// A planter rim of invented size, planned with nothing but the packed library.
EqualAngle angle = new(Length.FromMillimeters(30), Length.FromMillimeters(3), AngleFillets.Of(Length.FromMillimeters(5), Length.FromMillimeters(2.5)));
LinearHardening law = new(Pressure.FromGigapascals(210), Pressure.FromMegapascals(290), Pressure.FromMegapascals(1500));
BarMaterial steel = new("mild steel", law, Density.FromKilogramsPerCubicMeter(7850));
LoadedBend loaded = BendAnalysis.Of(angle.FlangeOut, steel).LoadedTo(BendRadius.Inside(Length.FromMillimeters(240)));
FinishedRing ring = loaded.Release(Release.Free).Ring;
Console.WriteLine($"finished inside radius: {ring.InsideRadius.Millimeters:0.000} mm");
return ring.InsideRadius.Millimeters is > 240 and < 260 ? 0 : 1;
