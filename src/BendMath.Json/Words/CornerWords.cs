using BendMath.Json.Parts;
using UnitsNet;

namespace BendMath.Json.Words;

/// <summary>The words of a file for the corners of a shape: their radii, or one word for all of them. They are never assumed.</summary>
/// <typeparam name="TCorners">What holds the radii.</typeparam>
internal sealed class CornerWords<TCorners>
    where TCorners : class
{
    private readonly string _what;

    private readonly (string Word, Func<Length, TCorners> Make)[] _named;

    private readonly (NumberWord<TCorners> Number, string Example)[] _radii;

    private readonly Func<Length[], TCorners> _make;

    /// <param name="what">The shape in a sentence, such as "An angle".</param>
    /// <param name="parameter">The parameter of the shape whose fault is told at the last radius; null for none.</param>
    /// <param name="named">Words for corners that follow from the thickness.</param>
    /// <param name="make">Makes them of the radii, in their order.</param>
    /// <param name="radii">Word, parameter, example and getter of each radius.</param>
    public CornerWords(
        string what,
        string? parameter,
        (string Word, Func<Length, TCorners> Make)[] named,
        Func<Length[], TCorners> make,
        params (string Word, string Parameter, string Example, Func<TCorners, Length> Of)[] radii)
    {
        _what = what;
        Parameter = parameter;
        _named = named;
        _make = make;
        _radii =
            [.. radii.Select(radius => (NumberWord<TCorners>.Length(radius.Word, radius.Parameter, radius.Example, radius.Of), radius.Example))];
    }

    public string? Parameter { get; }

    public IEnumerable<string> Words => _radii.Select(radius => radius.Number.Word);

    /// <summary>The word of the file for each parameter.</summary>
    public IEnumerable<(string Parameter, string Word)> Parameters(JobObject stock) =>
    [
        .. Parameter is null ? Array.Empty<(string, string)>()
            : [(Parameter, stock.Has("corners") ? "corners" : _radii[_radii.Length - 1].Number.Word)],
        .. _radii.Select(radius => (radius.Number.Parameter, radius.Number.Word)),
    ];

    public IEnumerable<WrittenNumber> Write(TCorners corners) => _radii.Select(radius => radius.Number.Write(corners));

    /// <summary>The corners for a thickness, or null after a fault.</summary>
    public Func<Length, TCorners>? Read(JobObject stock)
    {
        string[] words = [.. _named.Select(name => name.Word)];
        string? named = stock.OptionalWord("corners", words);
        bool hasCorners = stock.Has("corners");
        string[] radii = [.. Words];
        bool hasRadius = radii.Any(stock.Has);
        Length?[] lengths =
            hasRadius || !hasCorners ? [.. _radii.Select(radius => stock.OptionalLength(radius.Number.Word, radius.Example, zero: true))]
                : [];
        if (hasCorners && hasRadius)
        {
            stock.Fault("corners", $"\"corners\" must be left out where {Listing.Listed(radii, "or")} is given.");
        }
        else if (!hasCorners && !radii.All(stock.Has))
        {
            string both = radii.Length == 2 ? "both " : string.Empty;
            string none = words.Length == 1 ? $"{Listing.Listed(words, "or")} for none" : Listing.Listed(words, "or");
            stock.Fault(null, $"{_what} needs {both}{Listing.Listed(radii, "and")}, or \"corners\": {none}.");
        }

        if (!stock.Sound)
        {
            return null;
        }

        return named is not null ? _named.First(name => name.Word == named).Make
            : stock.Build(() => _make([.. lengths.Select(length => length!.Value)]), [.. Parameters(stock)]) is { } given ? _ => given
            : null;
    }
}
