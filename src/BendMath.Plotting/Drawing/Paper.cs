using ScottPlot;

namespace BendMath.Plotting.Drawing;

/// <summary>What all figures share: white paper, black words in one font, sizes that grow with the figure.</summary>
internal static class Paper
{
    public const double UsualWidth = 640;

    public const double UsualHeight = 480;

    /// <summary>Pixels of a figure per pixel of one of the usual size.</summary>
    public static double Magnification(int width, int height) => Math.Min(width / UsualWidth, height / UsualHeight);

    public static (double PerMeter, string Symbol) Unit(bool inInches) => inInches ? (1 / 0.0254, "in") : (1e3, "mm");

    public static void Style(LabelStyle label, double size)
    {
        label.FontName = Sketch.FontName;
        label.FontSize = (float)size;
        label.Bold = false;
        label.ForeColor = Colors.Black;
    }

    /// <summary>Title, names of the axes and their lines; long titles are printed smaller.</summary>
    public static void Frame(Plot plot, string title, string bottom, string left, double k)
    {
        double size = Math.Min(15, 1.6 * (UsualWidth - 20) / Math.Max(1, title.Length));
        plot.Axes.Title.Label.Text = title;
        Style(plot.Axes.Title.Label, size * k);
        plot.Axes.Title.Label.Bold = true;
        plot.Axes.Bottom.Label.Text = bottom;
        plot.Axes.Left.Label.Text = left;
        Style(plot.Axes.Bottom.Label, 12 * k);
        Style(plot.Axes.Left.Label, 12 * k);
        foreach (IAxis axis in new IAxis[] { plot.Axes.Bottom, plot.Axes.Left })
        {
            Style(axis.TickLabelStyle, 12 * k);
            axis.MajorTickStyle.Length = (float)(4 * k);
            axis.MajorTickStyle.Width = (float)k;
            axis.FrameLineStyle.Width = (float)k;
        }

        plot.Axes.Right.IsVisible = false;
        plot.Axes.Top.IsVisible = false;
        plot.HideGrid();
        plot.FigureBackground.Color = Colors.White;
        plot.DataBackground.Color = Colors.White;
    }
}
