using BendMath.Plotting.Drawing;

namespace BendMath.Plotting;

/// <summary>
/// The picture of a section as it lies in the bender, y upward from the inside face and z to the right, drawn to equal scales: the bar
/// filled, with its holes, the inside and outside face, the direction to the center of the bend, the centroid, the equal-area axis, the
/// extents and the distances between parallel faces.
/// </summary>
/// <remarks>
/// Curves are drawn as chords that stay within a ten-thousandth of the larger extent of the arc; every number comes from the exact outline.
/// </remarks>
public sealed class SectionFigure : BendFigure
{
    /// <summary>Makes the figure of a section.</summary>
    /// <param name="section">The section in its orientation.</param>
    /// <param name="unit">Unit of axes, labels and dimensions.</param>
    /// <param name="name">What the title calls the bar, such as the designation of a standard size, in one line; null for
    /// <see cref="BarStock.Name"/>, which is in millimeters. The orientation follows it.</param>
    /// <exception cref="ArgumentNullException">The section is null.</exception>
    /// <exception cref="ArgumentException">The name is empty or holds control characters.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The unit is not a defined value.</exception>
    public SectionFigure(OrientedSection section, FigureUnit unit, string? name = null)
        : base(unit, Titled(section ?? throw new ArgumentNullException(nameof(section)), name)) => Section = section;

    /// <summary>What is drawn.</summary>
    public OrientedSection Section { get; }

    private protected override ScottPlot.Plot Draw(int width, int height) => SectionDrawing.Draw(this, width, height);

    private static string Titled(OrientedSection section, string? name)
    {
        string bar = Named(name, section.Stock.Name);
        return section.Orientation.IsUsual ? bar : $"{bar}, {section.Orientation}";
    }
}
