using System.Reflection;
using UnitsNet;

namespace BendMath.Fuzz.Making;

/// <summary>A call whose arguments are being drawn: those drawn before, and the call they are for.</summary>
internal sealed class Frame(Maker maker, Frame? outer, MemberInfo? door)
{
    private readonly Dictionary<string, Made> _arguments = new(StringComparer.Ordinal);

    public Maker Maker => maker;

    public Tape Tape => maker.Tape;

    public Scene Scene => maker.Scene;

    public MemberInfo? Door => door;

    public int Depth { get; } = outer is null ? 0 : outer.Depth + 1;

    public void Add(string name, Made value) => _arguments[name] = value;

    /// <summary>Whether the arguments are for a type, or for something it is made of.</summary>
    public bool IsWithin(string type) => door?.DeclaringType?.Name == type || outer?.IsWithin(type) == true;

    /// <summary>The argument of this call or the nearest around it that has the name and type, or null.</summary>
    public Made? Find<T>(string name) => _arguments.TryGetValue(name, out Made? found) && found.Value is T ? found : outer?.Find<T>(name);

    public T Value<T>(string name, T otherwise) => Find<T>(name) is { Value: T value } ? value : otherwise;

    /// <summary>The first of the named lengths there is, in meters; without any, a size of a bar.</summary>
    public double Meters(params string[] names)
    {
        foreach (string name in names)
        {
            if (Find<Length>(name) is { Value: Length length })
            {
                return length.Meters;
            }
        }

        return Scene.Size();
    }

    /// <summary>A length with the digits of the scene, never longer than the one given.</summary>
    public Length Length(double meters) => UnitsNet.Length.FromMillimeters(Scene.Cut(meters * 1e3));

    /// <summary>A length that may be zero: a little of it is, and what is below the smallest length.</summary>
    public Length Share(double meters, double most = 1)
    {
        double length = Tape.Chance(0.7) ? meters * Tape.Between(0, most) : 0;
        return length < Scene.Least ? UnitsNet.Length.Zero : Length(length);
    }
}
