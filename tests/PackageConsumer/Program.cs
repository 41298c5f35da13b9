using System.Globalization;
using BendMath;

Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{Sources.All.Count} sources"));
return Sources.All.Count > 0 ? 0 : 1;
