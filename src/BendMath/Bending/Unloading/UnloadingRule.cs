using BendMath.Guards;
using BendMath.Materials.Unloading;

namespace BendMath.Bending.Unloading;

/// <summary>
/// What the fibers of a bent bar do when it is let go. The elastic line is the default everywhere; the others are asked for. Immutable
/// and thread-safe.
/// </summary>
public sealed record UnloadingRule
{
    private UnloadingRule(bool hasMemory, ChordModulus? chord)
    {
        HasMemory = hasMemory;
        Chord = chord;
    }

    /// <summary>Every fiber unloads along Young's modulus, or the share of it the material states.</summary>
    public static UnloadingRule Elastic { get; } = new(false, null);

    /// <summary>Fibers that go far enough back yield early in the other direction; needs a <see cref="KinematicHardening"/> law.</summary>
    public static UnloadingRule WithMemory { get; } = new(true, null);

    /// <summary>Whether fibers may yield on the way back.</summary>
    public bool HasMemory { get; }

    /// <summary>The slope fibers unload with, or null for Young's modulus.</summary>
    public ChordModulus? Chord { get; }

    /// <summary>Every fiber unloads along a line through its loaded point whose slope falls with its plastic strain.</summary>
    /// <param name="modulus">The slope.</param>
    /// <exception cref="ArgumentNullException">The modulus is null.</exception>
    public static UnloadingRule WithChord(ChordModulus modulus) => new(false, Guard.NotNull(modulus, nameof(modulus)));

    /// <summary>
    /// Memory, and a slope that falls with the plastic strain. A measured chord holds part of the early yielding on reversal, so that
    /// both together count it twice unless the
    /// numbers of both were fitted to one test; every release by this rule is advised of that.
    /// </summary>
    /// <param name="modulus">The slope, fitted together with the law.</param>
    /// <exception cref="ArgumentNullException">The modulus is null.</exception>
    public static UnloadingRule WithMemoryAndChord(ChordModulus modulus) => new(true, Guard.NotNull(modulus, nameof(modulus)));

    /// <summary>The rule in words.</summary>
    public override string ToString() => (HasMemory, Chord) switch
    {
        (false, null) => "elastic unloading",
        (true, null) => "unloading with memory",
        (false, { } chord) => chord.ToString(),
        (true, { } chord) => $"unloading with memory, {chord}",
    };

    /// <summary>What becomes of a loaded bar; null when the rule is the elastic one.</summary>
    internal FiberRelease? Released(LoadedBend loaded, bool free, string name)
    {
        if (!HasMemory && Chord is null)
        {
            return null;
        }

        StressStrainLaw law = loaded.Analysis.Law;
        double unloading = loaded.Analysis.Unloading;
        if (loaded.IsPulled || unloading < 1)
        {
            throw Guard.Refused(
                name,
                    $"must be elastic for a bar that is {(loaded.IsPulled ? "pulled" : "of a material with a softer release of its own")}",
                        $"is {this}");
        }

        Func<double, double>? modulus = Chord is { } chord ? plastic => law.E * chord.Share(plastic) : null;
        if (!HasMemory)
        {
            return FiberRelease.WithModulus(loaded, free, modulus!);
        }

        if (law is not KinematicHardening kinematic)
        {
            throw Guard.Refused(name, "must be without memory for a law that has none", $"is {this}, and the law is {law}");
        }

        double largest = new LoadedField(loaded).LargestStrain;
        return largest <= law.DataStrain
            ? FiberRelease.WithMemory(loaded, kinematic.Metal, free, modulus)
            : throw Guard.Refused(
                name,
                Invariant($"must be without memory where the metal softens, beyond a strain of {100 * law.DataStrain:0.##} %"),
                Invariant($"is {this}, and the largest strain is {100 * largest:0.##} %"));
    }
}
