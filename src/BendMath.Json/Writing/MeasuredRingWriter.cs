using System.Text.Json;
using BendMath.Forming.Pairs;
using BendMath.Guards;
using BendMath.Json.Reading;
using BendMath.Json.Words;
using BendMath.Measurement;
using UnitsNet;

namespace BendMath.Json.Writing;

/// <summary>Writes measured rings in the words of their file.</summary>
internal sealed class MeasuredRingWriter(Utf8JsonWriter json)
{
    public void Write(IReadOnlyList<MeasuredRing> rings)
    {
        json.WriteStartObject();
        json.WriteStartArray("dies");
        foreach (Die die in Dies(rings))
        {
            json.WriteStartObject();
            json.WriteString("name", Line(die.Name, "a die"));
            Millimeters("stamped radius", die.StampedRadius);
            Face(die.Face, rings[0].Analysis.Section);
            Optional("face length", die.FaceLength);
            Optional("nose radius", die.NoseRadius);
            Mate(die.Mate);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("rings");
        foreach (MeasuredRing ring in rings)
        {
            Ring(ring);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static List<Die> Dies(IReadOnlyList<MeasuredRing> rings)
    {
        List<Die> dies = [];
        Dictionary<string, Die> named = new(StringComparer.Ordinal);
        foreach (MeasuredRing ring in rings)
        {
            Die die = (ring ?? throw new ArgumentNullException(nameof(rings))).Die;
            if (!named.TryGetValue(die.Name, out Die? known))
            {
                named.Add(die.Name, die);
                dies.Add(die);
            }
            else if (known != die)
            {
                throw new ArgumentException(
                    $"rings must be of dies with different names, but \"{Quoted.Short(die.Name)}\" is {known} and {die}.", nameof(rings));
            }
        }

        return dies;
    }

    private static string Line(string text, string what) => text.Trim().Length == text.Length && !text.Any(char.IsControl)
        ? text
        : throw Refused(
            $"rings must have names of one line without blanks at its ends, but the name of {what} is \"{Quoted.Short(text)}\".");

    private static ArgumentException Refused(string rule, IReadOnlyList<MeasuredRing>? rings = null) => new(rule, nameof(rings));

    private void Ring(MeasuredRing ring)
    {
        json.WriteStartObject();
        json.WriteString("die", ring.Die.Name);
        Reading(ring.Reading);
        json.WriteString("state", ring.Release == Release.Free ? "free" : "held flat");
        if (ring.Marked is { } marked)
        {
            json.WriteStartObject("marked length");
            Millimeters("before", marked.Before);
            json.WriteString("turn", ExactText.Angle(marked.Turn.Radians));
            json.WriteEndObject();
        }

        Stock(ring.Analysis.Section);
        Material(ring.Analysis.Material);
        if (ring.Analysis.StressState == StressState.PlaneStrain)
        {
            json.WriteString("stress state", "plane strain");
        }

        if (ring.Note is { } note)
        {
            json.WriteString("note", note);
        }

        json.WriteEndObject();
    }

    private void Reading(RingReading reading)
    {
        RadiusReference line = reading.Radius.Reference;
        bool inside = line == RadiusReference.InsideFace;
        if (reading.Tape is { } tape)
        {
            Millimeters(inside ? ReadingReader.TapeInside : ReadingReader.TapeOutside, tape);
        }
        else if (reading.Chord is { } chord)
        {
            json.WriteStartObject(inside ? ReadingReader.ChordInside : ReadingReader.ChordOutside);
            Millimeters("chord", chord);
            Millimeters("rise", reading.Rise!.Value);
            json.WriteEndObject();
        }
        else
        {
            Millimeters((inside ? "inside" : line == RadiusReference.Centroid ? "centroid" : "outside") + " diameter",
                2 * reading.Radius.Value);
        }
    }

    private void Stock(OrientedSection section)
    {
        ShapeWords words =
            ShapeWords.Of(section.Stock) ?? throw Refused($"rings must be of bars a file has words for, but one is of {section}.");
        json.WriteStartObject("stock");
        json.WriteString("shape", words.Word);
        foreach (WrittenNumber dimension in words.Write(section.Stock))
        {
            dimension.To(json);
        }

        json.WriteEndObject();
        if (!section.Orientation.IsUsual)
        {
            json.WriteString("orientation", OrientationWords.Of(section.Orientation));
        }
    }

    private void Material(BarMaterial material)
    {
        json.WriteStartObject("material");
        json.WriteString("name", Line(material.Name, "a material"));
        Megapascals("elastic modulus", material.Law.ElasticModulus);
        LawWords words = LawWords.Of(material.Law)
            ?? throw Refused($"rings must be of materials whose law a file has words for, but one is of {material}.");
        foreach (WrittenNumber number in words.Write(material.Law))
        {
            number.To(json);
        }

        if (material.YieldRange is { } range)
        {
            json.WriteStartArray("yield range");
            json.WriteStringValue(ExactText.Megapascals(range.Low.Pascals));
            json.WriteStringValue(ExactText.Megapascals(range.High.Pascals));
            json.WriteEndArray();
        }

        json.WriteString("density", ExactText.Shifted(material.Density.KilogramsPerCubicMeter, 0) + " kg/m3");
        if (material.Elongation is { } elongation)
        {
            json.WriteString("elongation", ExactText.Percent(elongation.DecimalFractions));
        }

        if (!material.UnloadingShare.DecimalFractions.Equals(1))
        {
            json.WriteString("unloading share", ExactText.Percent(material.UnloadingShare.DecimalFractions));
        }

        if (material.PoissonsRatio is { } ratio)
        {
            json.WriteNumber("Poisson's ratio", ratio);
        }

        json.WriteEndObject();
    }

    private void Face(ReferenceFace face, OrientedSection any)
    {
        if (face == ReferenceFace.InsideOfBar || face == ReferenceFace.OutsideOfBar)
        {
            json.WriteString("stamp means", face == ReferenceFace.InsideOfBar ? "inside of the bar" : "outside of the bar");
            return;
        }

        json.WriteStartObject("stamp means");
        Millimeters("offset", face.OffsetFor(any));
        json.WriteEndObject();
    }

    private void Mate(MatingDie? mate)
    {
        if (mate is null)
        {
            return;
        }

        json.WriteStartObject("mate");
        if (mate.IsHollowFace)
        {
            Millimeters("face radius", mate.Radius);
            Millimeters("half-span", mate.HalfSpan);
        }
        else
        {
            Millimeters("rise", mate.Rise);
            Millimeters("half-span", mate.HalfSpan);
            Millimeters("support radius", mate.SupportRadius);
        }

        Optional("shims", mate.Shims > Length.Zero ? mate.Shims : null);
        json.WriteEndObject();
    }

    private void Optional(string name, Length? value)
    {
        if (value is { } given)
        {
            Millimeters(name, given);
        }
    }

    private void Millimeters(string name, Length value) => json.WriteString(name, ExactText.Millimeters(value.Meters));

    private void Megapascals(string name, Pressure value) => json.WriteString(name, ExactText.Megapascals(value.Pascals));
}
