using BendMath.Evidence;
using UnitsNet;

namespace BendMath.Stock.Standard;

/// <summary>Which figures a row prints behind its designation.</summary>
internal enum SizeColumns
{
    /// <summary>None: the designation says everything.</summary>
    None,

    /// <summary>Root radius of an angle, or its distance k.</summary>
    Fillet,

    /// <summary>Design wall of a tube.</summary>
    DesignWall,

    /// <summary>Outside diameter and wall of a pipe, and its design wall where there is one.</summary>
    Pipe,
}

/// <summary>The figures of one size in the unit of its system.</summary>
internal sealed class SizeFigures(IReadOnlyList<double> dimensions, double filletFigure = 0, double? designWall = null)
{
    /// <summary>Dimensions of the section from the largest; the wall or thickness is the last.</summary>
    public IReadOnlyList<double> Dimensions { get; } = dimensions;

    public double FilletFigure { get; } = filletFigure;

    public double? DesignWall { get; } = designWall;
}

/// <summary>Rows that share a system, a source and the rule for what the designation does not say.</summary>
internal sealed class SizeGroup(SizeSystem system, Source source, string assumptions, SizeColumns columns, string rows)
{
    public SizeSystem System { get; } = system;

    public Source Source { get; } = source;

    public string Assumptions { get; } = assumptions;

    public SizeColumns Columns { get; } = columns;

    /// <summary>Designation and figures apart by bars; rows apart by semicolons and line ends.</summary>
    public string Rows { get; } = rows;

    /// <summary>Fillets from the thickness and the printed figure.</summary>
    public Func<Length, Length, AngleFillets> Fillets { get; init; } = static (_, _) => AngleFillets.Sharp;

    /// <summary>Corner radii from the wall.</summary>
    public Func<Length, CornerRadii> Corners { get; init; } = static _ => CornerRadii.Sharp;
}
