using BendMath.Numerics;
using UnitsNet;

namespace BendMath;

/// <summary>What a forming model says of one bar on one die: the loaded state under the tool and the ring that comes off. Immutable and thread-safe.</summary>
public sealed class FormedBend
{
    private readonly double _ratio;

    internal FormedBend(FormingModel model, Die? die, LoadedBend loaded, double ratio, ThreePointContact? contact, IReadOnlyList<Advisory> advisories)
    {
        Model = model;
        Die = die;
        Loaded = loaded;
        _ratio = ratio;
        Contact = contact;
        Advisories = [.. loaded.Advisories, .. advisories];
    }

    /// <summary>The model that said so.</summary>
    public FormingModel Model { get; }

    /// <summary>The die, or null where the model was asked for a stroke.</summary>
    public Die? Die { get; }

    /// <summary>The most tightly bent section under the tool.</summary>
    public LoadedBend Loaded { get; }

    /// <summary>Contacts and forces of three-point bending, or null for wrap bending.</summary>
    public ThreePointContact? Contact { get; }

    /// <summary>Measured curvature over the model's, when a measured ring corrects it; 1 otherwise.</summary>
    public double CurvatureRatio => _ratio;

    /// <summary>What is doubtful about this prediction.</summary>
    public IReadOnlyList<Advisory> Advisories { get; }

    /// <summary>Whether the bar springs back straight.</summary>
    /// <param name="release">How it is let go.</param>
    /// <exception cref="ArgumentOutOfRangeException">The release is not a defined value.</exception>
    public bool IsStraightWhen(Release release) => Loaded.Release(release).IsStraight;

    /// <summary>The finished ring.</summary>
    /// <param name="release">How it is let go.</param>
    /// <exception cref="ArgumentOutOfRangeException">The release is not a defined value.</exception>
    /// <exception cref="InvalidOperationException">The bar springs back straight.</exception>
    public FinishedRing RingWhen(Release release)
    {
        FinishedRing ring = Loaded.Release(release).Ring;
        return _ratio == 1 ? ring : ring.WithCurvature(ring.TotalCurvature * _ratio);
    }

    /// <summary>Model, die and loaded state.</summary>
    public override string ToString() => $"{Model.Name}{(Die is null ? string.Empty : " on " + Die.Name)}: {Loaded}";

    internal FormedBend Corrected(FormingModel model, double ratio, IReadOnlyList<Advisory> advisories) =>
        new(model, Die, Loaded, _ratio * ratio, Contact, advisories);
}
