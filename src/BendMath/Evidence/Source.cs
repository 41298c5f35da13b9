namespace BendMath.Evidence;

/// <summary>How far a cited value can be relied upon.</summary>
public enum SourceKind
{
    /// <summary>A standard, handbook, textbook or paper whose text was read.</summary>
    Published,

    /// <summary>A published work cited from memory: check the page before relying on it.</summary>
    FromMemory,

    /// <summary>Common practice of the trade; no source can be named.</summary>
    CommonPractice,

    /// <summary>Derived in the documentation of this library and checked numerically there.</summary>
    Derived,

    /// <summary>
    /// A value chosen for this library where no source gives one: change it where it can be changed, and do not quote it.
    /// </summary>
    Setting,

    /// <summary>A value the caller gave, not checked by this library.</summary>
    Given,
}

/// <summary>What a number or a formula rests on. Immutable and thread-safe.</summary>
public sealed record Source
{
    internal Source(string id, string citation, SourceKind kind)
    {
        Id = id;
        Citation = citation;
        Kind = kind;
    }

    /// <summary>Short stable identifier, unique within <see cref="Sources.All"/>.</summary>
    public string Id { get; }

    /// <summary>Author, title, edition and place within the work.</summary>
    public string Citation { get; }

    /// <summary>Whether the work was read, is cited from memory, is common practice or was derived here.</summary>
    public SourceKind Kind { get; }

    /// <summary>The citation, followed by its kind where it was not read in print.</summary>
    public override string ToString() => Kind switch
    {
        SourceKind.FromMemory => Citation + " (from memory)",
        SourceKind.CommonPractice => "Common practice, no source",
        SourceKind.Setting => "A setting, not a finding",
        SourceKind.Derived => Citation + " (derived)",
        _ => Citation,
    };
}
