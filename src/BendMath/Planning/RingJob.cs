using System.Globalization;
using UnitsNet;

namespace BendMath;

/// <summary>
/// One ring or arc to make: bar, material, wanted size, dies, how the bender forms, ends, and what was measured before. Immutable and thread-safe.
/// </summary>
public sealed class RingJob
{
    private const int MostPieces = 100_000;

    private const double LeastTolerance = 1e-6;

    /// <summary>Makes a job.</summary>
    /// <param name="name">What the shop calls it; not empty.</param>
    /// <param name="section">The bar in its orientation.</param>
    /// <param name="material">The material.</param>
    /// <param name="wanted">The wanted ring and the line it is measured to.</param>
    /// <param name="rack">The dies at hand.</param>
    /// <param name="model">How the bender forms.</param>
    /// <param name="arc">How much of the ring is wanted.</param>
    /// <param name="ends">Extra length at the ends.</param>
    /// <param name="kerf">Width of a saw cut, zero or more.</param>
    /// <param name="barLength">Length of the bars in stock; null when not known.</param>
    /// <param name="leverLength">Lever from the axis of the bend to the hand; null when not known.</param>
    /// <param name="setup">Half-span and nose of the bender, for explaining measured rings by their stroke; null when not known.</param>
    /// <param name="measuredRings">Rings made before.</param>
    /// <param name="correction">The explanation by which a measured ring corrects the model; null to leave the model as it is.</param>
    /// <param name="tolerance">Difference in diameter, or in twice the radius of an arc, that is accepted, greater than zero; null for <see cref="UsualTolerance"/> of the wanted diameter.</param>
    /// <param name="cutStyle">The rule blanks are cut by; it rounds up. Null for whole millimeters.</param>
    /// <param name="mechanicalAdvantage">What the drive of the bender multiplies, 1 or more, as <see cref="HandDrive.Advantage"/> counts it; null when not known.</param>
    /// <param name="pullLimit">The most the person at the lever can and may pull; null to leave that open.</param>
    /// <param name="scatter">What may differ from ring to ring; null for the yield range of the material alone.</param>
    /// <param name="distortion">What the distortion checks cannot know; null for <see cref="DistortionSettings.Default"/>.</param>
    /// <param name="quantity">How many of them, from 1 to 100,000.</param>
    /// <param name="tailsFromModel">Whether the blank gets the straight ends the forming model leaves in place of those of <paramref name="ends"/>, whose trim stays.</param>
    /// <param name="trimCut">How the ends of a full ring are cut; null when nobody says.</param>
    /// <param name="rootOpening">Distance between the ends of a full ring when they are welded, zero or more; null when nobody says.</param>
    /// <param name="measuringError">How well the shop measures a diameter, greater than zero; null for <see cref="UsualMeasuringError"/>.</param>
    /// <exception cref="ArgumentNullException">An argument without a default is null.</exception>
    /// <exception cref="ArgumentException">The name is empty, a correction is asked for without a measured ring, the cut style does not round up, or an arc is to be trimmed or closed like a ring.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public RingJob(
        string name,
        OrientedSection section,
        BarMaterial material,
        BendRadius wanted,
        DieRack rack,
        FormingModel model,
        ArcExtent arc,
        EndAllowance ends,
        Length kerf,
        Length? barLength = null,
        Length? leverLength = null,
        ThreePointSetup? setup = null,
        IEnumerable<MeasuredRing>? measuredRings = null,
        ExplanationKind? correction = null,
        Length? tolerance = null,
        LengthStyle? cutStyle = null,
        double? mechanicalAdvantage = null,
        Force? pullLimit = null,
        RingScatter? scatter = null,
        DistortionSettings? distortion = null,
        int quantity = 1,
        bool tailsFromModel = false,
        TrimCut? trimCut = null,
        Length? rootOpening = null,
        Length? measuringError = null)
    {
        Name = Guard.NotEmpty(name, nameof(name));
        Analysis = BendAnalysis.Of(section, material);
        Wanted = Guard.NotNull(wanted, nameof(wanted));
        wanted.InsideOf(section, nameof(wanted));
        Rack = Guard.NotNull(rack, nameof(rack));
        Model = Guard.NotNull(model, nameof(model));
        Arc = Guard.NotNull(arc, nameof(arc));
        Ends = Guard.NotNull(ends, nameof(ends));
        Kerf = Length.FromMeters(Guard.NonNegative(kerf, nameof(kerf)));
        BarLength = barLength is { } bar ? Length.FromMeters(Guard.Positive(bar, nameof(barLength))) : null;
        if (mechanicalAdvantage is { } gain && Guard.Positive(gain, nameof(mechanicalAdvantage)) < 1)
        {
            throw Guard.Fault(nameof(mechanicalAdvantage), gain, "must be 1 or more");
        }

        Drive = new HandDrive(leverLength, mechanicalAdvantage, pullLimit);
        Setup = setup;
        MeasuredRings = [.. (measuredRings ?? []).Select(ring => Guard.NotNull(ring, nameof(measuredRings)))];
        Correction = correction is { } kind ? Guard.Defined(kind, nameof(correction)) : null;
        IsToleranceGiven = tolerance is not null;
        Tolerance = Length.FromMeters(tolerance is { } accepted
            ? Guard.Positive(accepted, nameof(tolerance))
            : Math.Max(LeastTolerance, 2 * wanted.Value.Meters * UsualTolerance.DecimalFractions));
        CutStyle = cutStyle ?? LengthStyle.Millimeters(0, LengthRounding.Up);
        if (CutStyle.Rounding != LengthRounding.Up)
        {
            throw Guard.Refused(nameof(cutStyle), "must round up, so that no blank is short", $"is \"{cutStyle}\"");
        }

        if (!arc.IsFullRing && (trimCut is not null || rootOpening is not null))
        {
            throw Guard.Refused(nameof(arc), "must be a full ring where it is trimmed or closed like one", $"is an {arc}");
        }

        TailsFromModel = tailsFromModel;
        TrimCut = trimCut is { } cut ? Guard.Defined(cut, nameof(trimCut)) : null;
        RootOpening = rootOpening is { } opening ? Length.FromMeters(Guard.NonNegative(opening, nameof(rootOpening))) : null;
        MeasuringError = measuringError is { } error ? Length.FromMeters(Guard.Positive(error, nameof(measuringError))) : UsualMeasuringError;
        Scatter = scatter ?? new RingScatter(material.YieldRange);
        Distortion = distortion ?? DistortionSettings.Default;
        Quantity = quantity is >= 1 and <= MostPieces
            ? quantity
            : throw Guard.Fault(nameof(quantity), quantity, FormattableString.Invariant($"must be from 1 to {MostPieces:N0}"));

        if (correction is not null && MeasuredRings.Count == 0)
        {
            throw Guard.Refused(nameof(correction), "must come with at least one measured ring", "there are 0");
        }
    }

    /// <summary>The tolerance of a job that states none, as a share of the wanted diameter: 2 %, but at least 0.001 mm. A setting, not a finding.</summary>
    public static Ratio UsualTolerance => Ratio.FromPercent(2);

    /// <summary>How well a diameter is measured where the job says nothing: 1 mm. A setting, not a finding.</summary>
    public static Length UsualMeasuringError => Length.FromMillimeters(1);

    /// <summary>What the shop calls it.</summary>
    public string Name { get; }

    /// <summary>Section and material.</summary>
    public BendAnalysis Analysis { get; }

    /// <summary>The wanted ring.</summary>
    public BendRadius Wanted { get; }

    /// <summary>The dies at hand.</summary>
    public DieRack Rack { get; }

    /// <summary>How the bender forms, before any correction.</summary>
    public FormingModel Model { get; }

    /// <summary>How much of the ring is wanted.</summary>
    public ArcExtent Arc { get; }

    /// <summary>Extra length at the ends.</summary>
    public EndAllowance Ends { get; }

    /// <summary>Width of a saw cut.</summary>
    public Length Kerf { get; }

    /// <summary>Length of the bars in stock, or null.</summary>
    public Length? BarLength { get; }

    /// <summary>Lever from the axis of the bend to the hand, or null.</summary>
    public Length? LeverLength => Drive.LeverLength;

    /// <summary>How the hand drives the bender, as far as known.</summary>
    public HandDrive Drive { get; }

    /// <summary>Half-span and nose of the bender, or null.</summary>
    public ThreePointSetup? Setup { get; }

    /// <summary>Rings made before.</summary>
    public IReadOnlyList<MeasuredRing> MeasuredRings { get; }

    /// <summary>The explanation by which measured rings correct the model, or null; by a curvature ratio, several rings are fitted together.</summary>
    public ExplanationKind? Correction { get; }

    /// <summary>Difference in diameter, or in twice the radius of an arc, that is accepted.</summary>
    public Length Tolerance { get; }

    /// <summary>Whether the job states its tolerance; otherwise it is <see cref="UsualTolerance"/> of the wanted diameter.</summary>
    public bool IsToleranceGiven { get; }

    /// <summary>The rule blanks are cut by; it rounds up.</summary>
    public LengthStyle CutStyle { get; }

    /// <summary>What may differ from ring to ring.</summary>
    public RingScatter Scatter { get; }

    /// <summary>What the distortion checks cannot know.</summary>
    public DistortionSettings Distortion { get; }

    /// <summary>How many of them.</summary>
    public int Quantity { get; }

    /// <summary>Whether the blank gets the straight ends the forming model leaves.</summary>
    public bool TailsFromModel { get; }

    /// <summary>How the ends of a full ring are cut, or null.</summary>
    public TrimCut? TrimCut { get; }

    /// <summary>Distance between the ends of a full ring when they are welded, or null.</summary>
    public Length? RootOpening { get; }

    /// <summary>How well the shop measures a diameter.</summary>
    public Length MeasuringError { get; }

    /// <summary>Name, bar and wanted ring.</summary>
    public override string ToString() => $"{Name}: {Analysis.Section}, {Wanted}";
}
