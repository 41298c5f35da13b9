namespace BendMath.Plotting;

/// <summary>The unit a figure counts in: axes, labels and dimensions.</summary>
public enum FigureUnit
{
    /// <summary>Millimeters, printed to 0.01.</summary>
    Millimeters,

    /// <summary>Inches, printed to 0.001.</summary>
    Inches,
}
