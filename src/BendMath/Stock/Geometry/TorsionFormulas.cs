using BendMath.Evidence;
using BendMath.Sections.Features;

namespace BendMath.Stock.Geometry;

/// <summary>
/// Torsion constants, each with the formula it comes from. Meters. Errors in percent were found against finite-difference solutions of
/// Saint-Venant's problem (docs, concepts/stock).
/// </summary>
internal static class TorsionFormulas
{
    private const string AgainstSolution = "finite-difference solutions of Saint-Venant's problem, see the documentation page on stock";

    /// <summary>Keeps a bound that is met but for rounding inside.</summary>
    private const double Rounded = 1 - 1e-12;

    /// <summary>Σ 1/n⁵ over odd n, (31/32)·ζ(5).</summary>
    private const double OddFifths = 1.00452376279513961613;

    private static readonly SectionFormula CircleFormula = new("circle", "J = π·(D⁴ − d⁴)/32", Sources.TimoshenkoGoodier10, 0, "exact");

    private static readonly SectionFormula RectangleFormula = new(
        "rectangle", "J = (a·b³/3)·[1 − (192/π⁵)·(b/a)·Σ tanh(n·π·a/(2b))/n⁵], n = 1, 3, 5 …, a ≥ b", Sources.TimoshenkoGoodier10, 0,
            "exact series");

    private static readonly SectionFormula HexagonFormula =
        new("hexagon", "J = 0.133·A·s², s across flats", Sources.TimoshenkoStrength2, 0.002, AgainstSolution);

    private static readonly SectionFormula BoxFormula = new(
        "box with the walls' own torsion",
        "J = t³·h/3 + 2·K·A_h, K = 2·A_h·t/h, h = 2·(H + B − 2t) − 2·R_c·(4 − π), A_h = (H − t)·(B − t) − R_c²·(4 − π), R_c = (R + r)/2",
        Sources.En10219,
        null,
        "the formula of EN 10219-2 and EN 10210-2, which give no error");

    private static readonly SectionFormula ThinBoxFormula = new(
        "thin-walled box", "J = 4·A_h²·t/h, A_h and h as of the box", Sources.AiscShapes, null,
            "the formula of the AISC tables; leaves out t³·h/3");

    private static readonly SectionFormula ChannelFormula = new(
        "El Darwish and Johnston, channel",
        "J = 2·b·t³/3 + (d − 2t)·w³/3 + 2·α·D⁴ − 0.42·t⁴, α = −0.0908 + 0.2621·w/t + 0.1231·r/t − 0.0752·w·r/t² − 0.0945·(w/t)², D = "
            + "2·[3r + w + t − √(2·(2r + w)·(2r + t))]",
        Sources.ElDarwishJohnston1965,
        0.03,
        AgainstSolution);

    private static readonly SectionFormula TeeFormula = new(
        "El Darwish and Johnston, tee",
        "J = b·t³/3 + (d − t)·w³/3 + α·D⁴ − 0.21·t⁴ − 0.105·w⁴, α = −0.042 + 0.2204·w/t + 0.1355·r/t − 0.0865·w·r/t² − 0.0725·(w/t)², D = "
            + "[(t + r)² + w·(r + w/4)]/(2r + t)",
        Sources.ElDarwishJohnston1965,
        0.04,
        AgainstSolution);

    public static TorsionConstant Circle(double outside, double inside) =>
        new(Math.PI * (outside * outside + inside * inside) * (outside - inside) * (outside + inside) / 32, CircleFormula);

    /// <summary>
    /// The sum of the series is that of 1/n⁵ less that of (1 − tanh)/n⁵ = 2/((e^(nπa/b) + 1)·n⁵), of which a few terms suffice.
    /// </summary>
    public static TorsionConstant Rectangle(double a, double b)
    {
        double missing = 0;
        for (int n = 1; n < 30; n += 2)
        {
            missing += 2 / ((Math.Exp(n * Math.PI * a / b) + 1) * Math.Pow(n, 5));
        }

        return new(a * b * b * b / 3 * (1 - 192 / Math.Pow(Math.PI, 5) * b / a * (OddFifths - missing)), RectangleFormula);
    }

    public static TorsionConstant Hexagon(double acrossFlats) =>
        new(0.133 * Math.Sqrt(3) / 2 * Math.Pow(acrossFlats, 4), HexagonFormula);

    /// <summary>Absent for walls above a fifth of the width, beyond the tables whose formulas these are.</summary>
    public static IReadOnlyList<TorsionConstant> Box(double height, double width, double wall, CornerRadii corners)
    {
        if (wall > width / 5 / Rounded)
        {
            return [];
        }

        double middle = (corners.OutsideMeters + corners.InsideMeters) / 2;
        double around = 2 * (height + width - 2 * wall) - 2 * middle * (4 - Math.PI);
        double enclosed = (height - wall) * (width - wall) - middle * middle * (4 - Math.PI);
        double thin = 4 * enclosed * enclosed * wall / around;
        return [new(wall * wall * wall * around / 3 + thin, BoxFormula),
            new(thin, ThinBoxFormula)];
    }

    /// <summary>Absent outside the range the error was looked at: legs of four thicknesses, root radius of two.</summary>
    public static IReadOnlyList<TorsionConstant> Angle(double longer, double shorter, double t, AngleFillets fillets)
    {
        double r = fillets.RootMeters;
        if (shorter < 4 * t * Rounded || r > 2 * t / Rounded)
        {
            return [];
        }

        bool slightToes = fillets.ToeMeters <= t / 2 / Rounded;
        double strips = (longer + shorter - t) * t * t * t / 3;
        double alpha = 0.0768 + 0.0479 * r / t;
        double circle = 2 * (3 * r + 2 * t - Math.Sqrt(2) * (2 * r + t));
        double corner = alpha * Math.Pow(circle, 4);
        double t4 = t * t * t * t;
        return
        [
            new(strips + corner - 0.315 * t4, Formula(0.315, slightToes ? 0.015 : 0.07)),
            new(strips + corner - 0.21 * t4, Formula(0.21, slightToes ? 0.051 : 0.12)),
        ];

        static SectionFormula Formula(double c, double error) => new(
            Invariant($"El Darwish and Johnston, c = {c}"),
            Invariant($"J = (a + b − t)·t³/3 + α·D⁴ − {c}·t⁴, α = 0.0768 + 0.0479·r/t, D = 2·[3r + 2t − √2·(2r + t)]"),
            c > 0.3 ? Sources.ElDarwishJohnston1965 : Sources.BlueBookAngles,
            error,
            AgainstSolution);
    }

    /// <summary>Absent outside the range the error was looked at.</summary>
    public static IReadOnlyList<TorsionConstant> Channel(ChannelProfile channel)
    {
        double t = channel.Thickness;
        double w = channel.Web;
        double r = channel.Fillets.RootMeters;
        if (!InRange(w, t, channel.Fillets, channel.Flange - w) || channel.Fillets.OuterMeters > 0)
        {
            return [];
        }

        double alpha = -0.0908 + 0.2621 * w / t + 0.1231 * r / t - 0.0752 * w * r / (t * t) - 0.0945 * w * w / (t * t);
        double circle = 2 * (3 * r + w + t - Math.Sqrt(2 * (2 * r + w) * (2 * r + t)));
        double strips = 2 * channel.Flange * Math.Pow(t, 3) / 3 + (channel.Depth - 2 * t) * Math.Pow(w, 3) / 3;
        return [new(strips + 2 * alpha * Math.Pow(circle, 4) - 0.42 * Math.Pow(t, 4), ChannelFormula)];
    }

    /// <summary>Absent outside the range the error was looked at.</summary>
    public static IReadOnlyList<TorsionConstant> Tee(TeeProfile tee)
    {
        double t = tee.Thickness;
        double w = tee.Stem;
        double r = tee.Fillets.RootMeters;
        if (!InRange(w, t, tee.Fillets, (tee.Flange - w) / 2) || tee.Depth < 3 * t * Rounded)
        {
            return [];
        }

        double alpha = -0.042 + 0.2204 * w / t + 0.1355 * r / t - 0.0865 * w * r / (t * t) - 0.0725 * w * w / (t * t);
        double circle = ((t + r) * (t + r) + w * (r + w / 4)) / (2 * r + t);
        double strips = tee.Flange * Math.Pow(t, 3) / 3 + (tee.Depth - t) * Math.Pow(w, 3) / 3;
        return [
            new(strips + alpha * Math.Pow(circle, 4) - 0.21 * Math.Pow(t, 4) - 0.105 * Math.Pow(w, 4), TeeFormula)];
    }

    private static bool InRange(double web, double flange, FlangeFillets fillets, double free) =>
        web >= 0.4 * flange * Rounded && web <= 1.2 * flange / Rounded && fillets.RootMeters <= 1.5 * flange / Rounded
        && fillets.ToeMeters <= flange / 2 / Rounded && free >= 2.5 * flange * Rounded;
}
