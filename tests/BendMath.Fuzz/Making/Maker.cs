using System.Collections;
using System.Reflection;

namespace BendMath.Fuzz.Making;

/// <summary>Makes values of any public type by calling its doors with drawn arguments.</summary>
internal sealed class Maker
{
    private const int MostNested = 12;

    private readonly Rules _rules;

    public Maker(Tape tape, Rules rules)
    {
        Tape = tape;
        _rules = rules;
        Scene = new Scene(this);
    }

    public Tape Tape { get; }

    public Scene Scene { get; }

    public T Value<T>() => (T)Make(typeof(T), null).Value!;

    public Made Make(Type type, Frame? around) =>
        _rules.ForType(type) is { } rule ? rule(around ?? new Frame(this, null, null)) : MakeAnew(type, around);

    /// <summary>Makes one by its doors, though a rule would take one that is there.</summary>
    public Made MakeAnew(Type type, Frame? around)
    {
        if (around?.Depth > MostNested)
        {
            throw new OutOfReach($"{type.Name} is nested more than {MostNested} calls deep");
        }

        if (type.IsEnum)
        {
            return Made.Of(Tape.Of(Enum.GetValues(type).Cast<object>().ToArray()));
        }

        if (type.IsAbstract && Doors.KindsOf(type) is { Count: > 0 } kinds)
        {
            return MakeAnew(Tape.Of(kinds), around);
        }

        IReadOnlyList<MemberInfo> doors = Doors.Of(type);
        return doors.Count == 0 ? throw new OutOfReach($"no public member makes a {type.Name}") : Through(Tape.Of(doors), type, around);
    }

    /// <summary>Calls a door with drawn arguments, on a drawn object where it needs one.</summary>
    public Made Through(MemberInfo door, Type wanted, Frame? around)
    {
        Made? on = Doors.IsStatic(door) ? null : Make(door.DeclaringType!, new Frame(this, around, door));
        if (on is { Value: null })
        {
            throw new OutOfReach($"there is no {door.DeclaringType!.Name} here");
        }

        if (on is not null && door is PropertyInfo list && wanted != list.PropertyType
            && typeof(IEnumerable).IsAssignableFrom(list.PropertyType))
        {
            return (list.GetValue(on.Value) as ICollection)?.Count is int count and > 0 ? Made.ItemOf(on, list, Tape.Index(count))
                : throw new OutOfReach($"{list.DeclaringType!.Name}.{list.Name} is empty");
        }

        Made made = Call(door, on, around);
        return wanted.IsInstanceOfType(made.Value) || !typeof(IEnumerable).IsAssignableFrom(Doors.TypeOf(door) ?? wanted) ? made
            : throw new OutOfReach($"{door.Name} hands out a list");
    }

    public Made Call(MemberInfo door, Made? on, Frame? around)
    {
        ParameterInfo[] parameters = Doors.ParametersOf(door);
        Frame frame = new(this, around, door);
        List<(ParameterInfo? Parameter, Made Value)> named = [];
        object?[] values = new object?[parameters.Length];
        foreach (ParameterInfo parameter in parameters.Where(parameter => !parameter.IsOut))
        {
            if (parameter.IsOptional && !_rules.Requires(parameter) && !Tape.Chance(0.5))
            {
                values[parameter.Position] = parameter.DefaultValue;
                continue;
            }

            Made value = Argument(parameter, frame);
            frame.Add(parameter.Name!, value);
            named.Add((parameter, value));
            values[parameter.Position] = value.Value;
        }

        return Invoke(door, on, values, [.. named]);
    }

    /// <summary>Calls a door with the arguments given.</summary>
    public Made CallWith(MemberInfo door, params Made[] arguments)
    {
        (ParameterInfo?, Made)[] named =
            [.. Doors.ParametersOf(door).Zip(arguments, (parameter, made) => ((ParameterInfo?)parameter, made))];
        return Invoke(door, null, [.. arguments.Select(argument => argument.Value)], named);
    }

    /// <summary>Draws an argument for a parameter.</summary>
    public Made Argument(ParameterInfo parameter, Frame frame)
    {
        Type type = Nullable.GetUnderlyingType(parameter.ParameterType) ?? parameter.ParameterType;
        return _rules.For(parameter) is { } rule ? rule(frame)
            : type.IsGenericType && type.GetGenericTypeDefinition() is var list
                && (list == typeof(IEnumerable<>) || list == typeof(IReadOnlyList<>)) ? List(type.GetGenericArguments()[0], frame)
            : Make(type, frame);
    }

    private Made List(Type element, Frame frame)
    {
        int count = 1 + Tape.Index(4);
        return Made.ListOf(element, [.. Enumerable.Range(0, count).Select(_ => Make(element, frame))]);
    }

    private Made Invoke(MemberInfo door, Made? on, object?[] values, (ParameterInfo?, Made)[] named)
    {
        Tape.Trying = () => Made.From(null, door, on, named).ToCode("answer");
        try
        {
            object? value = door switch
            {
                ConstructorInfo constructor => constructor.Invoke(BindingFlags.DoNotWrapExceptions, null, values, null),
                MethodInfo method => method.Invoke(on?.Value, BindingFlags.DoNotWrapExceptions, null, values, null),
                PropertyInfo property => property.GetValue(on?.Value, BindingFlags.DoNotWrapExceptions, null, null, null),
                _ => throw new NotSupportedException($"{door} is no door."),
            };
            return value is null && Doors.TypeOf(door) != typeof(void)
                ? throw new OutOfReach($"{door.DeclaringType!.Name}.{door.Name} answers with null") : Made.From(value, door, on, named);
        }
        catch (Exception thrown) when (thrown is not OutOfReach)
        {
            throw Judge.MayThrow(door, thrown) ? new Refused(door, thrown) : new Broken(Made.From(null, door, on, named), thrown);
        }
    }
}
