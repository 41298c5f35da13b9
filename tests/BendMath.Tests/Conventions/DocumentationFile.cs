using System.Reflection;
using System.Text;
using System.Xml.Linq;

namespace BendMath.Tests.Conventions;

/// <summary>The XML documentation an assembly ships with, looked up by member.</summary>
internal sealed class DocumentationFile
{
    private readonly Dictionary<string, XElement> _members;

    private DocumentationFile(Dictionary<string, XElement> members) => _members = members;

    public static DocumentationFile For(Assembly assembly)
    {
        string path = Path.Combine(AppContext.BaseDirectory, assembly.GetName().Name + ".xml");
        return new(
            XDocument.Load(path).Descendants("member").ToDictionary(member => member.Attribute("name")!.Value, StringComparer.Ordinal));
    }

    public XElement? Of(MemberInfo member) => _members.GetValueOrDefault(Id(member));

    /// <summary>Whether the documentation of a member, or of what it inherits its documentation from, names an exception type.</summary>
    public bool Promises(MemberInfo member, Type exception)
    {
        if (member is MethodInfo { IsSpecialName: true } accessor
            && accessor.DeclaringType!.GetProperties().FirstOrDefault(property => property.GetMethod == accessor) is { } indexer)
        {
            return Promises(indexer, exception);
        }

        XElement? text = Of(member);
        return Names(text, exception) || (text?.Element("inheritdoc") is { } inherits && (inherits.Attribute("cref") is { } from
            ? Names(_members.GetValueOrDefault(from.Value), exception)
            : member is MethodInfo method && method.GetBaseDefinition() is { } origin && origin != method && Promises(origin, exception)));
    }

    private static bool Names(XElement? text, Type exception)
    {
        for (Type? type = exception; type is not null && type != typeof(object); type = type.BaseType)
        {
            if (text?.Elements("exception").Any(element => element.Attribute("cref")?.Value == "T:" + type!.FullName) == true)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The identifier the compiler gives a member in the file, such as <c>M:BendMath.Source.ToString</c>.</summary>
    public static string Id(MemberInfo member) => member switch
    {
        Type type => "T:" + TypeName(type),
        FieldInfo field => $"F:{TypeName(field.DeclaringType!)}.{field.Name}",
        EventInfo happening => $"E:{TypeName(happening.DeclaringType!)}.{happening.Name}",
        PropertyInfo property => $"P:{TypeName(property.DeclaringType!)}.{property.Name}{Parameters(property.GetIndexParameters())}",
        ConstructorInfo constructor => $"M:{TypeName(constructor.DeclaringType!)}.#ctor{Parameters(constructor.GetParameters())}",
        MethodInfo method =>
            $"M:{TypeName(method.DeclaringType!)}.{method.Name}{Arity(method)}{Parameters(method.GetParameters())}{Result(method)}",
        _ => throw new NotSupportedException($"No identifier for {member}."),
    };

    private static string TypeName(Type type) => (type.FullName ?? type.Name).Replace('+', '.');

    private static string Arity(MethodInfo method) => method.IsGenericMethod ? "``" + method.GetGenericArguments().Length : string.Empty;

    private static string Result(MethodInfo method) =>
        method.Name is "op_Implicit" or "op_Explicit" ? "~" + Signature(method.ReturnType) : string.Empty;

    private static string Parameters(ParameterInfo[] parameters) =>
        parameters.Length == 0 ? string.Empty
            : "(" + string.Join(',', parameters.Select(parameter => Signature(parameter.ParameterType))) + ")";

    private static string Signature(Type type)
    {
        if (type.IsByRef)
        {
            return Signature(type.GetElementType()!) + "@";
        }

        if (type.IsArray)
        {
            return Signature(type.GetElementType()!) + "[]";
        }

        if (type.IsGenericParameter)
        {
            return (type.DeclaringMethod is null ? "`" : "``") + type.GenericParameterPosition;
        }

        if (!type.IsGenericType)
        {
            return TypeName(type);
        }

        StringBuilder name = new(TypeName(type.GetGenericTypeDefinition()));
        name.Remove(name.ToString().IndexOf('`', StringComparison.Ordinal),
            name.Length - name.ToString().IndexOf('`', StringComparison.Ordinal));
        return name.Append('{').AppendJoin(',', type.GetGenericArguments().Select(Signature)).Append('}').ToString();
    }
}
