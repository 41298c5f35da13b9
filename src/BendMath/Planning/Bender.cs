using BendMath.Forming.Effort;
using BendMath.Guards;

namespace BendMath;

/// <summary>The bender: the dies at hand, how it forms and what drives it. Immutable and thread-safe.</summary>
public sealed class Bender
{
    /// <summary>Describes a bender.</summary>
    /// <param name="rack">The dies at hand.</param>
    /// <param name="model">How it forms.</param>
    /// <param name="drive">How the hand drives it; null when nobody says.</param>
    /// <exception cref="ArgumentNullException">An argument without a default is null.</exception>
    public Bender(DieRack rack, FormingModel model, HandDrive? drive = null)
    {
        Rack = Guard.NotNull(rack, nameof(rack));
        Model = Guard.NotNull(model, nameof(model));
        Drive = drive ?? new HandDrive();
    }

    /// <summary>The dies at hand.</summary>
    public DieRack Rack { get; }

    /// <summary>How it forms.</summary>
    public FormingModel Model { get; }

    /// <summary>How the hand drives it, as far as known.</summary>
    public HandDrive Drive { get; }

    /// <summary>The same bender with some of it changed; what is left out stays.</summary>
    /// <param name="rack">Other dies, or null.</param>
    /// <param name="model">Another model, or null.</param>
    /// <param name="drive">Another drive, or null.</param>
    public Bender With(DieRack? rack = null, FormingModel? model = null, HandDrive? drive = null) =>
        new(rack ?? Rack, model ?? Model, drive ?? Drive);

    /// <summary>Model, dies and drive.</summary>
    public override string ToString() => $"{Model.Name}, {Rack}, {Drive}";
}
