using System.Reflection;
using BendMath.Evidence;

namespace BendMath.Tests.Evidence;

public sealed class SourcesTests
{
    /// <summary>The list is what a page of sources prints: each once, none forgotten, found by an identifier of its own.</summary>
    [Fact]
    public void The_list_of_sources_holds_each_once()
    {
        Source[] stated =
            [.. typeof(Sources).GetProperties(BindingFlags.Public | BindingFlags.Static).Where(one => one.PropertyType == typeof(Source)).Select(one => (Source)one.GetValue(null)!)];
        Assert.True(stated.Length > 50, $"only {stated.Length} sources");
        Assert.Equal(stated.Select(one => one.Id).Order(StringComparer.Ordinal),
            Sources.All.Select(one => one.Id).Order(StringComparer.Ordinal));
        Assert.Equal(Sources.All.Count, Sources.All.Select(one => one.Id).Distinct().Count());
    }
}
