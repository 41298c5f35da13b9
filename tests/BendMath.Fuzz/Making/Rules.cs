using System.Reflection;

namespace BendMath.Fuzz.Making;

/// <summary>
/// What to draw for a parameter whose type alone does not say what is valid: by <c>Type.parameter</c> of a constructor,
/// <c>Type.Member.parameter</c>, or the name of the parameter alone, always together with its type; or by the type alone. The closest rule
/// counts; those of a fault lie over the usual ones.
/// </summary>
internal sealed class Rules(Rules? under = null)
{
    private readonly Dictionary<(string Name, Type Type), Func<Frame, Made>> _rules = [];

    private readonly HashSet<string> _required = new(StringComparer.Ordinal);

    /// <param name="names">Names of parameters with blanks between them; none for every parameter of the type.</param>
    /// <param name="draw">Draws a value.</param>
    public void Set<T>(string names, Func<Frame, T> draw) => SetMade<T>(names, frame => Made.Of(draw(frame)));

    /// <inheritdoc cref="Set"/>
    public void SetMade<T>(string names, Func<Frame, Made> draw)
    {
        foreach (string name in names.Split(' '))
        {
            _rules[(name, typeof(T))] = draw;
        }
    }

    public Func<Frame, Made>? For(ParameterInfo parameter)
    {
        Type type = Nullable.GetUnderlyingType(parameter.ParameterType) ?? parameter.ParameterType;
        string owner = parameter.Member.DeclaringType!.Name;
        string member = parameter.Member is ConstructorInfo ? owner : $"{owner}.{parameter.Member.Name}";
        return Find($"{member}.{parameter.Name}", type) ?? Find(parameter.Name!, type) ?? Find(string.Empty, type);
    }

    /// <summary>Makes a caller name these parameters, though they have a default.</summary>
    public void Require(params string[] names) => _required.UnionWith(names);

    public bool Requires(ParameterInfo parameter) => _required.Contains(parameter.Name!) || under?.Requires(parameter) == true;

    public Func<Frame, Made>? ForType(Type type) => Find(string.Empty, type);

    private Func<Frame, Made>? Find(string name, Type type) => _rules.GetValueOrDefault((name, type)) ?? under?.Find(name, type);
}
