using BendMath.Evidence;
using BendMath.Sections.Features;

namespace BendMath.Stock.Geometry;

/// <summary>Shear centers, and warping constants of open shapes. Meters.</summary>
internal static class OpenShapeFormulas
{
    private const string Thin = "thin-wall theory, exact as the thickness vanishes; the source gives no error";

    private static readonly SectionFormula Symmetric =
        new("center of symmetry", "y_s = h/2, z_s = width/2", Sources.Definition, 0, "exact");

    private static readonly SectionFormula Crossing =
        new("crossing of the center lines", "where the center lines of legs, or of flange and stem, cross", Sources.DesignGuide9, null,
            Thin);

    private static readonly SectionFormula ChannelCenter = new(
        "thin-walled channel", "e = 3·b′²·t/(6·b′·t + d′·w) outward from the center line of the web, b′ = b − w/2, d′ = d − t",
            Sources.DesignGuide9, null, Thin);

    public static readonly SectionFormula AngleWarpingFormula = new(
        "angle", "C_w = (t³/36)·[(a − t/2)³ + (b − t/2)³]", Sources.DesignGuide9, null,
            Thin + "; agrees with the AISC tables within 1.4 %");

    public static readonly SectionFormula TeeWarpingFormula =
        new("tee", "C_w = b³·t³/144 + (d − t/2)³·w³/36", Sources.DesignGuide9, null, Thin);

    public static readonly SectionFormula ChannelWarpingFormula = new(
        "thin-walled channel", "C_w = (t·b′³·d′²/12)·(3·b′·t + 2·d′·w)/(6·b′·t + d′·w), b′ = b − w/2, d′ = d − t", Sources.DesignGuide9,
            null, Thin);

    public static (double Y, double Z, SectionFormula Formula) Center(double depth, double width) => (depth / 2, width / 2, Symmetric);

    public static (double Y, double Z, SectionFormula Formula) CenterLines(Corner[] crossing) => CenterLines(crossing[0].Y, crossing[0].Z);

    public static (double Y, double Z, SectionFormula Formula) CenterLines(double y, double z) => (y, z, Crossing);

    public static (double Y, double Z, SectionFormula Formula) ChannelShearCenter(Corner[] center) =>
        (center[0].Y, center[0].Z, ChannelCenter);

    /// <summary>Distance of the shear center from the back of the web, negative behind it.</summary>
    public static double ChannelShearFromBack(ChannelProfile channel)
    {
        double b = channel.Flange - channel.Web / 2;
        return channel.Web / 2
            - 3 * b * b * channel.Thickness / (6 * b * channel.Thickness + (channel.Depth - channel.Thickness) * channel.Web);
    }

    public static double AngleWarping(double longer, double shorter, double t) =>
        t * t * t / 36 * (Math.Pow(longer - t / 2, 3) + Math.Pow(shorter - t / 2, 3));

    public static double TeeWarping(TeeProfile tee) =>
        Math.Pow(tee.Flange * tee.Thickness, 3) / 144 + Math.Pow((tee.Depth - tee.Thickness / 2) * tee.Stem, 3) / 36;

    public static double ChannelWarping(ChannelProfile channel)
    {
        double t = channel.Thickness;
        double w = channel.Web;
        double b = channel.Flange - w / 2;
        double d = channel.Depth - t;
        return t * b * b * b * d * d / 12 * (3 * b * t + 2 * d * w) / (6 * b * t + d * w);
    }
}
