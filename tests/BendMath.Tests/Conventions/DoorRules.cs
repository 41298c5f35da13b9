using System.Globalization;
using System.Reflection;
using BendMath.Fuzz.Walking;

namespace BendMath.Tests.Conventions;

/// <summary>
/// Calls a constructor, method or indexer with one bad value at a time. It must refuse the value by the name of a parameter, with the rule
/// and the value, or throw an exception its documentation promises, or answer with finite numbers only.
/// </summary>
internal sealed class DoorRules(DocumentationFile documentation, TimeSpan patience)
{
    private readonly PublicWalk _walk =
        new((property, thrown) => thrown is InvalidOperationException && documentation.Promises(property, thrown.GetType()),
            readsTexts: false);

    public int Calls { get; private set; }

    /// <param name="method">What to call.</param>
    /// <param name="on">Objects to call it on, for a type without examples.</param>
    public IEnumerable<string> Violations(MethodBase method, params object[] on)
    {
        ParameterInfo[] parameters = method.GetParameters();
        if (method.ContainsGenericParameters)
        {
            return [$"{Describe(method)} is generic: give it examples before it can be checked"];
        }

        object?[] valid = new object?[parameters.Length];
        foreach (ParameterInfo parameter in parameters.Where(parameter => !parameter.IsOut))
        {
            if (!ExampleValues.TryFind(parameter, out valid[parameter.Position]))
            {
                return [$"{Describe(method)} has no valid example for '{parameter.Name}' of type {parameter.ParameterType.Name}"];
            }
        }

        bool hasTarget = method is { IsStatic: false, IsConstructor: false };
        IEnumerable<object?> targets =
            hasTarget ? on.Length > 0 ? on : ExampleValues.Of(method.DeclaringType!) : Enumerable.Repeat<object?>(null, 1);
        return targets.SelectMany(target => OnTarget(method, parameters, valid, target));
    }

    private IEnumerable<string> OnTarget(MethodBase method, ParameterInfo[] parameters, object?[] valid, object? target)
    {
        if (Fault(method, target, valid, mustAnswer: true) is { } fault)
        {
            yield return $"{Describe(method)} with valid arguments {fault}";
        }

        foreach (ParameterInfo parameter in parameters.Where(parameter => !parameter.IsOut))
        {
            foreach (object? bad in BadValues.Of(parameter.ParameterType))
            {
                object?[] arguments = [.. valid];
                arguments[parameter.Position] = bad;
                if (Fault(method, target, arguments, mustAnswer: false) is { } found)
                {
                    yield return $"{Describe(method)} with {parameter.Name} = {BadValues.Text(bad)} {found}";
                }
            }
        }
    }

    private string? Fault(MethodBase method, object? target, object?[] arguments, bool mustAnswer)
    {
        Calls++;
        Task<object?> call = Task.Factory.StartNew(
            () => method is ConstructorInfo constructor ? constructor.Invoke(arguments) : method.Invoke(target, arguments),
            CancellationToken.None,
            TaskCreationOptions.LongRunning,
            TaskScheduler.Default);
        try
        {
            return call.Wait(patience)
                ? Outcome(method, call.Result, arguments)
                : string.Create(CultureInfo.InvariantCulture, $"did not come back within {patience.TotalSeconds} s");
        }
        catch (AggregateException wrapped) when (wrapped.InnerException is TargetInvocationException { InnerException: { } thrown })
        {
            return Complaint(method, thrown, arguments, mustAnswer);
        }
    }

    private string? Outcome(MethodBase method, object? result, object?[] arguments)
    {
        bool tried = method.Name.StartsWith("Try", StringComparison.Ordinal) && result is false;
        IEnumerable<(string Name, object? Value)> answers =
            tried ? []
                : method.GetParameters().Where(parameter => parameter.IsOut)
                    .Select(parameter => (parameter.Name!, arguments[parameter.Position]));
        return answers.Prepend((Name: "its result", Value: result))
            .Select(answer => _walk.FaultOf(answer.Value) is { } fault ? $"returns, but {answer.Name}{fault}" : null)
            .FirstOrDefault(fault => fault is not null);
    }

    private string? Complaint(MethodBase method, Exception thrown, object?[] arguments, bool mustAnswer)
    {
        string kind = thrown.GetType().Name;
        if (thrown is not ArgumentException argument)
        {
            bool lawful = thrown is FormatException or InvalidOperationException && documentation.Promises(method, thrown.GetType());
            return lawful ? null : $"throws {kind}, which its documentation does not promise: {thrown.Message}";
        }

        ParameterInfo? blamed = method.GetParameters().FirstOrDefault(parameter => parameter.Name == argument.ParamName);
        return mustAnswer ? $"throws {kind}: {thrown.Message}"
            : blamed is null ? $"throws {kind} that blames '{argument.ParamName}', which is no parameter of it"
            : !documentation.Promises(method, thrown.GetType())
                ? $"throws {kind}, which its documentation does not promise: {thrown.Message}"
            : argument is ArgumentNullException || RefusalRules.Fault(argument, arguments[blamed.Position]) is not { } fault ? null
            : $"throws {kind} {fault}: {thrown.Message}";
    }

    private static string Describe(MethodBase method) =>
        $"{PublicApi.Name(method)}({string.Join(", ", method.GetParameters().Select(parameter => parameter.Name))})";
}
