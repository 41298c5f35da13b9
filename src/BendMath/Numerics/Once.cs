namespace BendMath.Numerics;

/// <summary>Results that are computed when first asked for, without a lock.</summary>
internal static class Once
{
    /// <summary>The value that was stored first, by whichever thread.</summary>
    public static T Keep<T>(ref T? place, T value)
        where T : class => Interlocked.CompareExchange(ref place, value, null) ?? value;
}
