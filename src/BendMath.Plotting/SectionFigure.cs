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
internal sealed class SectionFigure : BendFigure
{
    public SectionFigure(OrientedSection section, bool inInches, string? name = null)
        : base(inInches, Titled(section ?? throw new ArgumentNullException(nameof(section)), name)) => Section = section;

    public OrientedSection Section { get; }

    private protected override ScottPlot.Plot Draw(int width, int height) => SectionDrawing.Draw(this, width, height);

    private static string Titled(OrientedSection section, string? name)
    {
        string bar = Named(name, section.Stock.Name);
        return section.Orientation.IsUsual ? bar : $"{bar}, {section.Orientation}";
    }
}
