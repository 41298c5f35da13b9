using BendMath.Evidence;

namespace BendMath.Layout.BentBars;

/// <summary>What is doubtful about the layout of a bar with several bends.</summary>
internal static class BentBarDoubts
{
    /// <summary>A dish below this is flat for any shop.</summary>
    private const double Flat = 0.1;

    public static IEnumerable<Advisory> Of(BentBar bar, double grip)
    {
        foreach (BendMark bend in bar.Bends)
        {
            double least = Math.Min(bend.StraightBefore.Meters, bend.StraightAfter.Meters);
            if (least < grip * (1 - 1e-12))
            {
                yield return new("short-straight",
                    Invariant(
                        $"Bend {bend.Number} (step {bend.Step}) has {least * 1e3:0.#} mm of straight bar {(bend.StraightBefore <= bend.StraightAfter ? "before" : "behind")} it, but the bender needs {grip * 1e3:0.#} mm: bend it in another order, leave a longer straight or a longer end."), Sources.FormingModels);
            }

            if (!bend.IsStartFree && !bend.IsEndFree)
            {
                yield return new("boxed-in",
                    Invariant(
                        $"Bend {bend.Number} (step {bend.Step}) is made between two bends: check that the bar can be laid into the bender "
                            + $"and that both bent ends clear it."), Sources.CommonPractice);
            }
        }

        BarPart[] bends = [.. bar.Parts.Where(part => part.IsBend)];
        if (bends.Max(part => Math.Abs(part.Ring!.DishAngle.Degrees)) is > Flat and var dish)
        {
            yield return new("leaves-the-plane",
                Invariant(
                    $"A bend leans by {dish:0.#}° when it is let go: the finished shape is not flat. Places and envelope are those of the "
                        + $"shape seen along the axis of its bends; press it flat or check them on a trial piece."), Sources.Mechanics);
        }

        if (bends.Any(part => part.IsLeft != bends[0].IsLeft))
        {
            yield return new("turned-over",
                "The bar bends to both sides: turn it over in the bender between them, and mark which face is which.",
                    Sources.CommonPractice, isMinor: true);
        }

        if (Winds(bends))
        {
            yield return new("over-itself",
                "The bar turns more than once around to one side: it comes to lie over itself unless the rings differ, so it must be "
                    + "drawn sideways while it is bent.", Sources.Definition);
        }
    }

    private static bool Winds(BarPart[] bends)
    {
        double turn = 0;
        double low = 0;
        double high = 0;
        foreach (BarPart bend in bends)
        {
            turn += (bend.IsLeft ? 1 : -1) * bend.Arc!.Radians;
            low = Math.Min(low, turn);
            high = Math.Max(high, turn);
        }

        return high - low > 2 * Math.PI * (1 + 1e-9);
    }
}
