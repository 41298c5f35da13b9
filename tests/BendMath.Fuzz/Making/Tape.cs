namespace BendMath.Fuzz.Making;

/// <summary>
/// The numbers from 0 to 1 that everything random is drawn from, kept as they are drawn, so that an input can be made again, and made
/// simpler by putting smaller numbers in their place. Wherever a number decides, a smaller one decides for the plainer thing; past the end
/// of a given tape all are 0.
/// </summary>
internal sealed class Tape
{
    private readonly IReadOnlyList<double>? _given;

    private readonly List<double> _drawn = [];

    private ulong _state;

    /// <summary>A tape of its own for every number of every seed.</summary>
    public Tape(ulong seed, ulong number) => _state = Mixed(Mixed(seed) + number);

    /// <summary>A tape played again.</summary>
    public Tape(IReadOnlyList<double> given) => _given = given;

    public IReadOnlyList<double> Drawn => _drawn;

    /// <summary>Writes down what is being tried with what was drawn, for when it never comes back.</summary>
    public Func<string>? Trying { get; set; }

    public double Next()
    {
        double number = _given is null ? Random() : _drawn.Count < _given.Count ? _given[_drawn.Count] : 0;
        _drawn.Add(number);
        return number;
    }

    public double Between(double low, double high) => low + (high - low) * Next();

    /// <summary>As likely between 1 and 10 as between 10 and 100.</summary>
    public double Log(double low, double high) => low * Math.Pow(high / low, Next());

    public int Index(int count) => Math.Min((int)(Next() * count), count - 1);

    public T Of<T>(IReadOnlyList<T> choices) => choices[Index(choices.Count)];

    public bool Chance(double share) => Next() > 1 - share;

    /// <summary>A step of SplitMix64 (Steele, Lea and Flood 2014, constants from memory).</summary>
    private double Random()
    {
        _state += 0x9E3779B97F4A7C15;
        return (Mixed(_state) >> 11) * (1.0 / (1UL << 53));
    }

    private static ulong Mixed(ulong z)
    {
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }
}
