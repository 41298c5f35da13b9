using BendMath.Forming.Pairs;
using BendMath.Guards;
using BendMath.Json.Parts;
using BendMath.Json.Words;
using UnitsNet;

namespace BendMath.Json.Reading;

/// <summary>Reads a die: its stamp, its face and nose, and the mate that closes on it.</summary>
internal static class DieReader
{
    private static readonly string[] Faces = ["inside of the bar", "outside of the bar"];

    public static Die? Read(JobObject die, DieShelf others)
    {
        string? name = die.Text("name", "\"A\"");
        Length? radius = die.Length("stamped radius", "250 mm");
        ReferenceFace? face = Face(die);
        bool again = name is not null && !others.Reserve(name);
        if (again)
        {
            die.Fault("name", $"\"name\" must differ from die to die, but \"{Quoted.Short(name!)}\" is given before.");
        }

        Length? length = die.OptionalLength("face length", "150 mm");
        Length? nose = die.OptionalLength("nose radius", "20 mm", zero: true);
        MatingDie? mate = Mate(die);
        Die? made = name is not null && !again && radius is { } stamp && face is not null && die.Sound
            ? die.Build(() => new Die(name, stamp, face, length, nose, mate), ("stampedRadius", "stamped radius"),
                ("faceLength", "face length"), ("noseRadius", "nose radius"))
            : null;
        die.Close();
        return made;
    }

    private static ReferenceFace? Face(JobObject die)
    {
        JsonPart? part = die.Require("stamp means", "\"stamp means\": \"inside of the bar\"");
        if (part is { Kind: JsonKind.Object } && die.OptionalObject("stamp means") is { } face)
        {
            Length? offset = face.Length("offset", "3 mm", zero: true);
            face.Close();
            return offset is { } distance ? face.Build(() => ReferenceFace.OffsetBy(distance)) : null;
        }

        if (part is null || (part.Kind == JsonKind.Text && Faces.Contains(part.Text)))
        {
            return part is null ? null : part.Text == Faces[0] ? ReferenceFace.InsideOfBar : ReferenceFace.OutsideOfBar;
        }

        die.Fault("stamp means",
            $"\"stamp means\" must be {Listing.Listed(Faces, "or")}, or {{ \"offset\": \"3 mm\" }} from the inside of the bar outward, but "
                + $"is {part.Described}.");
        return null;
    }

    /// <summary>A hollow face by its radius, or supports by how far they stand out.</summary>
    private static MatingDie? Mate(JobObject die)
    {
        if (die.OptionalObject("mate") is not { } mate)
        {
            return null;
        }

        Length? radius = mate.OptionalLength("face radius", "290 mm");
        Length? rise = mate.OptionalLength("rise", "15 mm");
        if (mate.Has("face radius") == mate.Has("rise"))
        {
            mate.Fault(null,
                $"Exactly one of \"face radius\" (a hollow face) or \"rise\" (two supports) must be given, but {(mate.Has("rise") ? "both are" : "none is")}.");
        }

        Length? span = mate.Length("half-span", "120 mm");
        Length? support = mate.OptionalLength("support radius", "25 mm", zero: true);
        if (mate.Has("face radius") && !mate.Has("rise") && mate.Has("support radius"))
        {
            mate.Fault("support radius", "\"support radius\" must be left out for a hollow face, whose edges touch.");
        }
        else if (mate.Has("rise") && !mate.Has("face radius") && !mate.Has("support radius"))
        {
            mate.Fault("support radius",
                "\"support radius\" is missing; write for example \"support radius\": \"25 mm\", or \"0 mm\" for edges.");
        }

        Length? shims = mate.OptionalLength("shims", "2 mm", zero: true);
        MatingDie? made = !mate.Sound ? null : mate.Build(
            () =>
                radius is { } hollow ? MatingDie.OfFace(hollow, span!.Value, shims)
                    : MatingDie.OfSupports(span!.Value, rise!.Value, support!.Value, shims),
            ("radius", "face radius"), ("halfSpan", "half-span"), ("supportRadius", "support radius"));
        mate.Close();
        return made;
    }
}
