using BendMath.Guards;
using UnitsNet;

namespace BendMath.Learning;

/// <summary>What a measured ring is explained by.</summary>
public enum HypothesisKind
{
    /// <summary>The bar wraps the die, and the stamp means another face than assumed.</summary>
    ReferenceFace,

    /// <summary>The bar is pinched in small steps, with a stroke other than the die's radius implies.</summary>
    Stroke,

    /// <summary>The model is right up to a ratio of curvatures.</summary>
    CurvatureRatio,
}

/// <summary>
/// One explanation of one measured ring: the number it implies, whether that number is credible, and a model that predicts other dies from
/// it. Immutable and thread-safe.
/// </summary>
public sealed class Hypothesis
{
    internal Hypothesis(HypothesisKind kind, bool fits, string sentence, FormingModel? model)
    {
        Kind = kind;
        Fits = fits;
        Sentence = sentence;
        Model = model;
    }

    /// <summary>Which explanation.</summary>
    public HypothesisKind Kind { get; }

    /// <summary>
    /// Whether the implied number is one a bender can have: a face between the inside and a little beyond the outside of the bar, a stroke
    /// that is found and stands in a positive ratio to the one the die implies, a curvature ratio between a half and two.
    /// </summary>
    public bool Fits { get; }

    /// <summary>The implied number in a sentence.</summary>
    public string Sentence { get; }

    /// <summary>The model that reproduces the measured ring and predicts others; null when no number does.</summary>
    public FormingModel? Model { get; }

    /// <summary>What a kind of explanation is called in a sentence.</summary>
    /// <param name="kind">The kind.</param>
    /// <exception cref="ArgumentOutOfRangeException">The kind is not a defined value.</exception>
    public static string Words(HypothesisKind kind) => Guard.Defined(kind, nameof(kind)) switch
    {
        HypothesisKind.ReferenceFace => "stamped face",
        HypothesisKind.Stroke => "stroke",
        _ => "curvature ratio",
    };

    /// <summary>Kind and sentence.</summary>
    public override string ToString() => $"{Kind}: {Sentence}";
}
