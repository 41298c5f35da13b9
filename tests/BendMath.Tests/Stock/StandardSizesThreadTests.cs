using System.Reflection;
using System.Runtime.Loader;
using BendMath.Stock.Standard;

namespace BendMath.Tests.Stock;

/// <summary>The first look-up of all, made by many threads at once, on a copy of the library that no other test has touched.</summary>
public sealed class StandardSizesThreadTests
{
    private const int Threads = 16;

    [Fact]
    public void Many_first_lookups_at_once_find_one_list_and_one_stock()
    {
        AssemblyLoadContext fresh = new("fresh copy", isCollectible: true);
        Type sizes = fresh.LoadFromAssemblyPath(typeof(StandardSizes).Assembly.Location).GetType(typeof(StandardSizes).FullName!)!;
        Assert.NotSame(typeof(StandardSizes), sizes);
        MethodInfo find = sizes.GetMethod(nameof(StandardSizes.Find), [typeof(string)])!;
        object?[] found = new object?[Threads];
        object?[] stock = new object?[Threads];
        using Barrier start = new(Threads);
        Thread[] threads = [.. Enumerable.Range(0, Threads).Select(i => new Thread(() =>
        {
            start.SignalAndWait();
            found[i] = find.Invoke(null, [i % 2 == 0 ? "L2X2X1/8" : "2 x 2 x 1/8 angle"]);
            stock[i] = found[i]!.GetType().GetProperty(nameof(StandardSize.Stock))!.GetValue(found[i]);
        }))];
        Array.ForEach(threads, thread => thread.Start());
        Array.ForEach(threads, thread => thread.Join());
        Assert.NotNull(found[0]);
        Assert.All(found, size => Assert.Same(found[0], size));
        Assert.All(stock, bar => Assert.Same(stock[0], bar));
        fresh.Unload();
    }
}
