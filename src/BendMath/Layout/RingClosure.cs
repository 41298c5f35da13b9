using System.Diagnostics.CodeAnalysis;
using BendMath.Evidence;
using BendMath.Guards;
using UnitsNet;

namespace BendMath;

/// <summary>
/// How a full ring is trimmed and closed: where to cut, the gap it comes off with, and what pulling the ends to the root opening of a weld
/// does to its diameter. Weld shrinkage is not in it. Where a welded ring carries load, holds people or goods or keeps pressure, local
/// codes and a licensed engineer decide on joint, opening and welder. Immutable and thread-safe.
/// </summary>
public sealed class RingClosure
{
    private readonly double _gap;

    private readonly double _stretch;

    private RingClosure(DevelopedLayout layout, JointPreparation joint)
    {
        Layout = layout;
        Joint = joint;
        _gap = joint.IsCutTogether ? layout.Kerf.Meters : joint.OpeningMeters;
        _stretch = layout.Ring.CentroidRadius.Meters * layout.Ring.TotalCurvature;
        Advisories = [.. Doubts()];
    }

    /// <summary>The layout of the ring.</summary>
    public DevelopedLayout Layout { get; }

    /// <summary>How the ends are cut and how far apart they are welded.</summary>
    public JointPreparation Joint { get; }

    /// <summary>
    /// Gap between the ends as the ring comes off the saw, along the line of centroids: the root opening when cut one by one, one saw cut
    /// when cut together.
    /// </summary>
    public Length GapAfterCut => Length.FromMeters(_gap);

    /// <summary>Unbent bar from cut to cut.</summary>
    /// <remarks>
    /// Equation: L = L₀ − g/(1 + e_c), with g the gap after the cut and 1 + e_c = R_c·κ_t the stretch of the line of centroids.
    /// Range: a full ring of one radius to its ends.
    /// Source: <see cref="Sources.Mechanics"/>
    /// </remarks>
    public Length LengthBetweenCuts => Length.FromMeters(Layout.DevelopedLength.Meters - _gap / _stretch);

    /// <summary>Place of the first cut on the blank, from its start: the end of its waste.</summary>
    public Length FirstCutMark => Layout.ArcStartMark;

    /// <summary>Place of the second cut on the blank, from its start: the start of its waste.</summary>
    public Length SecondCutMark => Layout.ArcStartMark + LengthBetweenCuts;

    /// <summary>
    /// What the root opening saves of the blank, or the saw takes from the ring: unbent bar by which it is shorter than the theoretical
    /// one.
    /// </summary>
    public Length ShorterBy => Length.FromMeters(_gap / _stretch);

    /// <summary>
    /// Change of the diameter when the ends are pulled from the gap after the cut to the root opening: negative when the ring is pulled
    /// together.
    /// </summary>
    /// <remarks>
    /// Equation: ΔD = (g − g_cut)/π.
    /// Range: the ring stays round; a stiff one pulled together at its ends becomes pointed there instead.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public Length DiameterChange => Length.FromMeters((Joint.OpeningMeters - _gap) / Math.PI);

    /// <summary>Change of the diameter when the ends are pulled together until they touch.</summary>
    /// <remarks>
    /// Equation: ΔD = −g_cut/π.
    /// Range: as <see cref="DiameterChange"/>.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public Length DiameterChangeWhenClosed => Length.FromMeters(-_gap / Math.PI);

    /// <summary>Change of the diameter when a ring cut to its full developed length is spread to the root opening instead.</summary>
    /// <remarks>
    /// Equation: ΔD = g/π.
    /// Range: as <see cref="DiameterChange"/>.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public Length DiameterChangeAtFullLength => Length.FromMeters(Joint.OpeningMeters / Math.PI);

    /// <summary>What is doubtful, and what to mind when it is welded.</summary>
    public IReadOnlyList<Advisory> Advisories { get; }

    /// <summary>Trims and closes a ring.</summary>
    /// <param name="layout">The layout of a full ring; its trim is what overlaps.</param>
    /// <param name="joint">How its ends are cut, and their root opening, less than a tenth of the developed length.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The layout is not of a full ring, or its saw cut or the root opening is a tenth of
    /// it.</exception>
    public static RingClosure For(DevelopedLayout layout, JointPreparation joint)
    {
        double most = Guard.NotNull(layout, nameof(layout)).DevelopedLength.Meters / 10;
        double opening = Guard.NotNull(joint, nameof(joint)).OpeningMeters;
        CheckFull(layout);
        return layout.Kerf.Meters >= most
            ? throw Guard.Refused(nameof(layout), $"must have a saw cut of less than a tenth of the ring, {Guard.MillimetersText(most)}",
                $"has one of {Guard.Text(layout.Kerf)}")
            : opening >= most
                ? throw Guard.Refused(nameof(joint),
                    $"must have a root opening of less than a tenth of the ring, {Guard.MillimetersText(most)}",
                    $"has one of {Guard.MillimetersText(opening)}")
            : new(layout, joint);
    }

    /// <summary>Trims and closes a ring, unless it is too small for the saw cut or the root opening.</summary>
    /// <param name="layout">The layout of a full ring; its trim is what overlaps.</param>
    /// <param name="joint">How its ends are cut and closed.</param>
    /// <param name="closure">The closed ring, or null.</param>
    /// <returns>Whether saw cut and root opening are less than a tenth of the developed length.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The layout is not of a full ring.</exception>
    public static bool TryFor(DevelopedLayout layout, JointPreparation joint, [NotNullWhen(true)] out RingClosure? closure)
    {
        CheckFull(Guard.NotNull(layout, nameof(layout)));
        double opening = Guard.NotNull(joint, nameof(joint)).OpeningMeters;
        closure =
            Math.Max(layout.Kerf.Meters, opening) < layout.DevelopedLength.Meters / 10 ? new(layout, joint) : null;
        return closure is not null;
    }

    /// <summary>Cuts, gap and change of diameter in millimeters.</summary>
    public override string ToString() =>
        Invariant(
            $"{Joint.Words}: {LengthBetweenCuts.Millimeters:0.##} mm "
                + $"from cut to cut, gap {_gap * 1e3:0.##} mm, diameter {DiameterChange.Millimeters:+0.##;-0.##;0} mm at a root opening "
                + $"of {Joint.OpeningMeters * 1e3:0.##} mm");

    private static void CheckFull(DevelopedLayout layout)
    {
        if (!layout.Arc.IsFullRing)
        {
            throw Guard.Refused(nameof(layout), "must be of a full ring", $"is of an {layout.Arc}");
        }
    }

    private IEnumerable<Advisory> Doubts()
    {
        if (Joint.IsCutTogether && Layout.Ends.Trim < Layout.Kerf)
        {
            yield return new("no-overlap",
                Invariant(
                    $"Both ends are cut together, but only {Layout.Ends.Trim.Millimeters:0.##} mm of bent bar lies double: give the ends "
                        + $"a trim of at least the saw cut of {Layout.Kerf.Millimeters:0.##} mm, better several widths of it."),
                            Sources.Definition);
        }

        if (Joint.OpeningMeters > 0)
        {
            yield return new("welded-ring",
                "A weld draws the ends together as it cools; by how much depends on joint and welder, so weld a trial ring. Where it "
                    + "carries load, local codes and a licensed engineer decide.", Sources.CommonPractice);
        }
    }
}
