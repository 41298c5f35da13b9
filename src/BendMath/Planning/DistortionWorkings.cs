using BendMath.Distortion;

namespace BendMath.Planning;

/// <summary>The demands of the distortion checks. A demand without a closed form has the sentence of its check in place of an equation.</summary>
internal sealed class DistortionWorkings(PlannedRing ring, WorkingUnits units)
{
    public IEnumerable<Working> All() => ring.Distortion.Findings.Select(Of);

    private Working Of(DistortionFinding finding) => finding.Equation is { } equation
        ? new($"{finding.Check}, what the bend asks", equation.Symbol, equation.Equation, [.. equation.Terms.Select(Term)], finding.Demand, string.Empty, finding.Source)
        : new(finding.Check, "d_" + new string([.. finding.Check.Where(char.IsLetterOrDigit)]), finding.Sentence, [], finding.Demand, string.Empty, finding.Source, isSearched: true);

    private WorkingTerm Term(DemandTerm term) => term.Length is { } length
        ? units.Of(term.Symbol, term.Meaning, length)
        : new(term.Symbol, term.Meaning, term.Number, term.Unit);
}
