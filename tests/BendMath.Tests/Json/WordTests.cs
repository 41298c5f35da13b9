using BendMath.Csv;
using BendMath.Json;
using BendMath.Json.Words;
using BendMath.Materials.Unloading;

namespace BendMath.Tests.Json;

/// <summary>Every shape and law of the library has words in files, or is refused by name; none is dropped on the way.</summary>
public class WordTests
{
    /// <summary>Drawn outlines and pulled curves are lists of points; a metal with memory has a change that may be negative.</summary>
    private static readonly Type[] WithoutWords = [typeof(CustomBar), typeof(MeasuredCurve), typeof(KinematicHardening)];

    [Theory]
    [InlineData(typeof(BarStock))]
    [InlineData(typeof(StressStrainLaw))]
    public void Every_kind_has_words(Type of)
    {
        Type[] worded = [.. ShapeWords.All.Select(words => words.Shape), .. LawWords.All.Select(words => words.Law)];
        Assert.All(KindsOf(of), kind => Assert.True(worded.Contains(kind) != WithoutWords.Contains(kind), kind.Name));
    }

    [Fact]
    public void Rings_of_every_shape_and_law_are_among_those_that_come_back()
    {
        Assert.Subset(RingSets.Every.Select(ring => ring.Analysis.Section.Stock.GetType()).ToHashSet(),
            ShapeWords.All.Select(words => words.Shape).ToHashSet());
        Assert.Subset(RingSets.Every.Select(ring => ring.Analysis.Material.Law.GetType()).ToHashSet(),
            LawWords.All.Select(words => words.Law).ToHashSet());
        Assert.Equal(RingSets.Every.Select(RingSets.Told),
            MeasuredRingFile.Read(MeasuredRingFile.Write(RingSets.Every)).Rings.Select(RingSets.Told));
        Assert.Equal(RingSets.Every.Select(RingSets.Told),
            MeasuredRingCsv.Read(MeasuredRingCsv.Write(RingSets.Every)).Rings.Select(RingSets.Told));
    }

    [Fact]
    public void A_law_is_told_by_a_word_of_its_own() =>
        Assert.All(LawWords.All, (words, i) => Assert.DoesNotContain(LawWords.All.Take(i), other => words.Numbers.Contains(other.Mark)));

    private static IEnumerable<Type> KindsOf(Type of) =>
        of.Assembly.GetExportedTypes().Where(type => !type.IsAbstract && of.IsAssignableFrom(type));
}
