using BendMath.Guards;
using BendMath.Json.Words;

namespace BendMath.Json.Parts;

/// <summary>
/// An object of a job file. It remembers the words it was asked for, so that <see cref="Close"/> can report every other one.
/// </summary>
internal sealed partial class JobObject
{
    private const int MostLines = 12;

    private readonly JsonPart _part;

    private readonly FaultList _faults;

    private readonly string _place;

    private readonly List<string> _words = [];

    private readonly int _mark;

    private JobObject(JsonPart part, string place, FaultList faults)
    {
        _part = part;
        _place = place;
        _faults = faults;
        foreach (var twice in part.Members.GroupBy(member => member.Name, StringComparer.Ordinal).Where(group => group.Count() > 1))
        {
            string lines =
                string.Join(", ", twice.Take(MostLines).Select(member => Invariant($"{member.Line}")))
                    + (twice.Count() > MostLines ? " …" : string.Empty);
            faults.Add(PlaceOf(Quoted.Short(twice.Key)), twice.Last().Line,
                Invariant($"\"{Quoted.Short(twice.Key)}\" must be given once, but is given {twice.Count()} times, on lines {lines}."));
        }

        _mark = faults.Count;
    }

    /// <summary>Whether everything read so far, parts included, is without fault.</summary>
    public bool Sound => _faults.Count == _mark;

    public static JobObject? Of(JsonPart part, string place, string what, FaultList faults)
    {
        if (part.Kind == JsonKind.Object)
        {
            return new(part, place, faults);
        }

        faults.Add(place.Length == 0 ? "file" : place, part.Line, $"{what} must be an object in braces, but is {part.Described}.");
        return null;
    }

    public string PlaceOf(string name) => _place.Length == 0 ? name : $"{_place}.{name}";

    public bool Has(string name) => _part.Members.Exists(member => member.Name == name);

    /// <summary>Whether it holds a word that is not among these.</summary>
    public bool HasOtherThan(params string[] names) => _part.Members.Exists(member => !names.Contains(member.Name));

    public JsonPart? Find(string name)
    {
        if (!_words.Contains(name))
        {
            _words.Add(name);
        }

        return _part.Members.Find(member => member.Name == name).Value;
    }

    /// <summary>The part of a name, or a fault that says how to write it.</summary>
    public JsonPart? Require(string name, string example)
    {
        JsonPart? part = Find(name);
        if (part is null)
        {
            Fault(name, $"\"{name}\" is missing; write for example {example}.");
        }

        return part;
    }

    public JobObject? Object(string name, string example) =>
        Require(name, example) is { } part ? Of(part, PlaceOf(name), $"\"{name}\"", _faults) : null;

    public JobObject? OptionalObject(string name) => Find(name) is { } part ? Of(part, PlaceOf(name), $"\"{name}\"", _faults) : null;

    /// <summary>The items of a list with their places; none when it is missing or no list.</summary>
    public IEnumerable<(JsonPart Part, string Place)> Items(JsonPart? part, string name)
    {
        if (part is { Kind: not JsonKind.List })
        {
            Fault(name, $"\"{name}\" must be a list in square brackets, but is {part.Described}.");
        }

        return (part?.Items ?? []).Select((item, index) => (item, Invariant($"{PlaceOf(name)}[{index}]")));
    }

    public void Fault(string? name, string rule)
    {
        int line =
            name is not null && _part.Members.Find(member => member.Name == name) is { Value: not null } found ? found.Line : _part.Line;
        string place = name is not null ? PlaceOf(name) : _place.Length == 0 ? "file" : _place;
        _faults.Add(place, line, rule);
    }

    /// <summary>A fault of a part that may be an item of a list, which has no word of its own to stand at.</summary>
    private void FaultIn(JsonPart part, string name, string rule) =>
        _faults.Add(PlaceOf(name), Has(name) ? _part.Members.Find(member => member.Name == name).Line : part.Line, rule);

    /// <summary>Makes a value of the library; what its constructor refuses becomes a fault at the word it is about.</summary>
    /// <param name="make">Calls the constructor.</param>
    /// <param name="words">The word of the file for a parameter of another name.</param>
    public T? Build<T>(Func<T> make, params (string Parameter, string Word)[] words)
        where T : class
    {
        try
        {
            return make();
        }
        catch (ArgumentException refused) when (ArgumentFault.Of(refused) is { } fault)
        {
            string? word =
                words.Where(pair => pair.Parameter == fault.Argument).Select(pair => pair.Word).FirstOrDefault()
                    ?? (Has(fault.Argument) ? fault.Argument : null);
            Fault(word, word is null ? fault.ToString() : fault.About($"\"{word}\""));
            return null;
        }
    }

    /// <summary>Reports every word nobody asked for. Call it last.</summary>
    public void Close()
    {
        foreach ((string name, int line, _) in _part.Members.Where(member => !_words.Contains(member.Name)))
        {
            _faults.Add(PlaceOf(Quoted.Short(name)), line,
                $"\"{Quoted.Short(name)}\" is not a word of this part; its words are {Listing.Listed(_words, "and")}.");
        }
    }
}
