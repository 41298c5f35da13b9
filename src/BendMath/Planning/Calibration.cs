using BendMath.Guards;
using BendMath.Learning;
using UnitsNet;

namespace BendMath;

/// <summary>
/// Rings the shop made and measured, how they correct the forming model, and how well the shop measures. Immutable and thread-safe.
/// </summary>
public sealed class Calibration
{
    /// <summary>Takes measured rings for a calibration.</summary>
    /// <param name="rings">Rings made before.</param>
    /// <param name="correction">The explanation by which a measured ring corrects the model; null to leave the model as it is.</param>
    /// <param name="measuringError">How well the shop measures a diameter, greater than zero; null for
    /// <see cref="UsualMeasuringError"/>.</param>
    /// <exception cref="ArgumentNullException">The rings or one of them are null.</exception>
    /// <exception cref="ArgumentException">A correction is asked for without a measured ring.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The correction is not a defined value, or the error is not positive and
    /// finite.</exception>
    public Calibration(IEnumerable<MeasuredRing> rings, HypothesisKind? correction = null, Length? measuringError = null)
    {
        Rings = Array.AsReadOnly([.. Guard.NotNull(rings, nameof(rings)).Select(ring => Guard.NotNull(ring, nameof(rings)))]);
        Correction = correction is { } kind ? Guard.Defined(kind, nameof(correction)) : null;
        MeasuringError =
            measuringError is { } error ? Length.FromMeters(Guard.Positive(error, nameof(measuringError))) : UsualMeasuringError;
        if (correction is not null && Rings.Count == 0)
        {
            throw Guard.Refused(nameof(correction), "must come with at least one measured ring", "there are 0");
        }
    }

    /// <summary>No measured ring.</summary>
    public static Calibration None { get; } = new([]);

    /// <summary>How well a diameter is measured where nobody says: 1 mm. A setting, not a finding.</summary>
    public static Length UsualMeasuringError => Length.FromMillimeters(1);

    /// <summary>Rings made before.</summary>
    public IReadOnlyList<MeasuredRing> Rings { get; }

    /// <summary>
    /// The explanation by which measured rings correct the model, or null; by a curvature ratio, several rings are fitted together.
    /// </summary>
    public HypothesisKind? Correction { get; }

    /// <summary>How well the shop measures a diameter.</summary>
    public Length MeasuringError { get; }

    /// <summary>The same calibration with some of it changed, checked as a new one; what is left out stays.</summary>
    /// <param name="rings">Other rings, or null.</param>
    /// <param name="correction">Another correction, or null.</param>
    /// <param name="measuringError">Another error, or null.</param>
    /// <exception cref="ArgumentException">A ring is null, or a correction is asked for without a measured ring.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The correction is not a defined value, or the error is not positive and
    /// finite.</exception>
    public Calibration With(IEnumerable<MeasuredRing>? rings = null, HypothesisKind? correction = null, Length? measuringError = null) =>
        new(rings ?? Rings, correction ?? Correction, measuringError ?? MeasuringError);

    /// <summary>Number of rings and correction.</summary>
    public override string ToString() => Rings.Count == 0
        ? "no measured ring"
        : $"{Counted.Text(Rings.Count, "measured ring")}, {(Correction is { } kind ? $"corrected by the {Hypothesis.Words(kind)}" : "no correction")}";
}
