using BendMath.Stock.Tolerances;
using UnitsNet;

namespace BendMath.Forming.Variation;

/// <summary>One ring of all that may come off a die, while the inputs that scatter are put in.</summary>
internal sealed class RingCase(FormingModel model, BarMaterial material, int dimensions)
{
    public FormingModel Model { get; set; } = model;

    public BarMaterial Material { get; set; } = material;

    /// <summary>Dimensions of the bar, in the order of its mill tolerance; empty when none scatters.</summary>
    public double[] Sizes { get; } = new double[dimensions];

    public double CurvatureRatio { get; set; } = 1;
}

/// <summary>One number that may differ from ring to ring, in SI units: its range, and how a ring takes a value of it.</summary>
internal abstract class ScatterInput(string name, double low, double nominal, double high, bool isMonotone)
{
    public string Name { get; } = name;

    public double Low { get; } = low;

    public double Nominal { get; } = nominal;

    public double High { get; } = high;

    /// <summary>Whether the answer is known to have its extremes at the ends.</summary>
    public bool IsMonotone { get; } = isMonotone;

    /// <summary>Whether it makes another bar.</summary>
    public virtual bool ChangesBar => false;

    /// <summary>Whether it only multiplies the curvature of the ring.</summary>
    public virtual bool ScalesRing => false;

    public abstract void PutIn(RingCase ring, double value);

    /// <summary>The value as a person would read it.</summary>
    public abstract string Text(double value);
}

/// <summary>The yield stress.</summary>
internal sealed class YieldInput(PressureRange range, BarMaterial material, bool isMonotone)
    : ScatterInput("yield", range.Low.Pascals, material.Law.YieldStress.Pascals, range.High.Pascals, isMonotone)
{
    public override void PutIn(RingCase ring, double value) => ring.Material = ring.Material.WithYield(Pressure.FromPascals(value));

    public override string Text(double value) => Invariant($"a yield of {value / 1e6:0.#} MPa");
}

/// <summary>A dimension of the bar.</summary>
internal sealed class DimensionInput(DimensionTolerance tolerance, int index)
    : ScatterInput(Words(tolerance.Dimension), tolerance.LowMeters, tolerance.NominalMeters, tolerance.HighMeters, false)
{
    public override bool ChangesBar => true;

    public override void PutIn(RingCase ring, double value) => ring.Sizes[index] = value;

    public override string Text(double value) => Invariant($"a {Name} of {value * 1e3:0.###} mm");

    private static string Words(StockDimension dimension) => dimension switch
    {
        StockDimension.LongLeg => "long leg",
        StockDimension.ShortLeg => "short leg",
        _ => dimension.ToString().ToLowerInvariant(),
    };
}

/// <summary>How far the stroke is off.</summary>
internal sealed class StrokeInput(double off) : ScatterInput("stroke", -off, 0, off, true)
{
    public override void PutIn(RingCase ring, double value) => ring.Model = ring.Model.WithExtraStroke(value)!;

    public override string Text(double value) => Invariant($"{value * 1e3:+0.###;-0.###;0} mm of stroke");
}

/// <summary>By what share the finished curvature is off.</summary>
internal sealed class RepeatabilityInput(double share) : ScatterInput("repeatability", 1 - share, 1, 1 + share, true)
{
    public override bool ScalesRing => true;

    public override void PutIn(RingCase ring, double value) => ring.CurvatureRatio = value;

    public override string Text(double value) => Invariant($"{value:0.##} times the curvature");
}
