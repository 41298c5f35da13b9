using BendMath.Guards;
using BendMath.Json.Parts;
using BendMath.Json.Words;
using BendMath.Measurement;
using UnitsNet;

namespace BendMath.Json.Reading;

/// <summary>Reads one measured ring, of a job or of a file of its own.</summary>
internal static class MeasuredRingReader
{
    /// <param name="ring">The object.</param>
    /// <param name="dies">The dies of the file.</param>
    /// <param name="section">The bar where the ring names none, or null.</param>
    /// <param name="material">The material where the ring names none, or null.</param>
    /// <param name="mayOmit">Whether bar and material may be left out, because they stand above or are a fault already.</param>
    public static MeasuredRing? Read(JobObject ring, DieShelf dies, OrientedSection? section, BarMaterial? material,
        (bool Stock, bool Material) mayOmit)
    {
        string? name = ring.Text("die", "\"A\"");
        Die? die = dies.Find(name);
        if (name is not null && !dies.Knows(name))
        {
            string known = dies.Names.Count == 0 ? "there is none" : $"they are {Listing.Names(dies.Names)}";
            ring.Fault("die", $"\"die\" must name one of the dies of the file ({known}), but is \"{Quoted.Short(name)}\".");
        }

        RingReading? reading = ReadingReader.Read(ring);
        string? state = ring.Word("state", "free", "held flat");
        MarkedLength? marked = Marked(ring);
        string? note = ring.OptionalText("note", "\"a note\"");
        if (ring.Has("stock") || ring.Has("orientation") || !mayOmit.Stock)
        {
            section = StockReader.Read(ring);
        }
        else
        {
            ring.Find("stock");
            ring.Find("orientation");
        }

        if (ring.Find("material") is not null || !mayOmit.Material)
        {
            material = MaterialReader.Read(ring);
        }

        bool isPlane = ring.OptionalWord("stress state", "uniaxial", "plane strain") == "plane strain";
        MeasuredRing? made =
            die is not null && reading is not null && state is not null && section is not null && material is not null && ring.Sound
            ? ring.Build(
                () => new MeasuredRing(
                    die,
                    BendAnalysis.Of(section, material, isPlane ? StressState.PlaneStrain : StressState.Uniaxial),
                    reading,
                    state == "free" ? Release.Free : Release.HeldFlat,
                    marked,
                    note),
                ("reading", ReadingReader.WordIn(ring)))
            : null;
        ring.Close();
        return made;
    }

    private static MarkedLength? Marked(JobObject ring)
    {
        if (ring.OptionalObject("marked length") is not { } marked)
        {
            return null;
        }

        Length? before = marked.Length("before", "1650 mm");
        double? turn = marked.Angle(marked.Require("turn", "\"turn\": \"360 deg\""), "turn", "360 deg");
        MarkedLength? made =
            before is { } length && turn is { } angle ? marked.Build(() => new MarkedLength(length, Angle.FromRadians(angle))) : null;
        marked.Close();
        return made;
    }
}
