using System.Collections;
using System.Reflection;
using System.Runtime.CompilerServices;
using Microsoft.CodeAnalysis;

namespace Shaduf.House.Tests;

/// <summary>A kernel that can be called with numbers; a choice is called by its place.</summary>
internal sealed class NumericKernel(IMethodSymbol symbol, Assembly loaded)
{
    public const string Finite = "";
    public const string Refused = "refuses";

    private readonly MethodInfo _method = loaded
        .GetType(symbol.ContainingType.ToDisplayString(), throwOnError: true)!
        .GetMethods()
        .Single(method =>
            method.Name == symbol.Name
            && method
                .GetParameters()
                .Select(parameter => parameter.ParameterType.Name)
                .SequenceEqual(symbol.Parameters.Select(parameter => parameter.Type.MetadataName))
        );

    private readonly DocumentedRange[] _ranges = [.. symbol.Parameters.Select(parameter => RangeOf(parameter)!)];

    private readonly HashSet<string> _refusals =
    [
        .. symbol.Docs().Elements("exception").Select(element => element.Attribute("cref")!.Value.Split('.', ':')[^1]),
    ];

    public int Length => _ranges.Length;

    /// <summary>What a parameter may be; null for one that is neither a number with a stated range nor a choice.</summary>
    public static DocumentedRange? RangeOf(IParameterSymbol parameter) =>
        parameter.Type switch
        {
            var type when type.IsNumber() => DocumentedRange.Read(parameter.Says()),
            { SpecialType: SpecialType.System_Boolean } => new(0, 1, false, false),
            { TypeKind: TypeKind.Enum } type => new(
                0,
                type.GetMembers().OfType<IFieldSymbol>().Count(field => field.IsConst) - 1,
                false,
                false
            ),
            _ => null,
        };

    public double[] Values(double[] shares) =>
        [
            .. shares.Select(
                (share, i) =>
                    IsDouble(i)
                        ? _ranges[i].At(share)
                        : Math.Round(Math.Clamp(_ranges[i].At(share), int.MinValue, int.MaxValue))
            ),
        ];

    /// <summary>Finite, Refused (by an exception that the docs state), or what is wrong with the answer.</summary>
    public string Ask(double[] values)
    {
        try
        {
            var result = _method.Invoke(null, [.. values.Select(Argument)]);
            return Numbers(result).All(double.IsFinite) ? Finite : FormattableString.Invariant($"gives {result}");
        }
        catch (TargetInvocationException thrown)
        {
            var cause = thrown.InnerException!;
            return IsStated(cause.GetType())
                ? Refused
                : $"throws {cause.GetType().Name}, which its docs do not state: {cause.Message}";
        }
    }

    /// <summary>Values that no guard refuses although they are NaN or outside the stated range.</summary>
    public IEnumerable<string> Unguarded(double[] accepted) =>
        from i in Enumerable.Range(0, Length)
        from outside in Outside(i)
        let values = accepted.Select((value, j) => j == i ? outside : value).ToArray()
        where Ask(values) != Refused
        select $"does not refuse {Describe(values)}: guard {symbol.Parameters[i].Name} with Within.Require, "
            + "over the range that its docs state.";

    public string Describe(double[] values)
    {
        var given = values.Select(
            (value, i) => FormattableString.Invariant($"{symbol.Parameters[i].Name} = {Argument(value, i)}")
        );
        var answer = Ask(values);
        return string.Join(", ", given) + (answer == Finite ? "" : $" ({answer})");
    }

    private IEnumerable<double> Outside(int parameter) =>
        !symbol.Parameters[parameter].Type.IsNumber() ? []
        : IsDouble(parameter) ? _ranges[parameter].Outside().Append(double.NaN)
        : _ranges[parameter].OutsideCounts();

    private object Argument(double value, int parameter) =>
        _method.GetParameters()[parameter].ParameterType switch
        {
            { IsEnum: true } choice => Enum.GetValues(choice).GetValue((int)value)!,
            var type when type == typeof(bool) => value == 1,
            var type when type == typeof(int) => (int)value,
            _ => value,
        };

    private bool IsDouble(int parameter) => symbol.Parameters[parameter].Type.IsDouble();

    private bool IsStated(Type? type) => type is not null && (_refusals.Contains(type.Name) || IsStated(type.BaseType));

    /// <summary>The doubles in a result: itself, its elements, and the properties of our own records.</summary>
    private static IEnumerable<double> Numbers(object? result) =>
        result switch
        {
            double number => [number],
            string or null => [],
            IEnumerable many => many.Cast<object?>().SelectMany(Numbers),
            ITuple tuple => Enumerable.Range(0, tuple.Length).SelectMany(i => Numbers(tuple[i])),
            _ when IsOurs(result.GetType()) => result
                .GetType()
                .GetProperties(BindingFlags.Public | BindingFlags.Instance)
                .Where(property => property.GetIndexParameters().Length == 0)
                .SelectMany(property => Numbers(property.GetValue(result))),
            _ => [],
        };

    private static bool IsOurs(Type type) =>
        !type.IsEnum && type.Namespace?.StartsWith("Shaduf", StringComparison.Ordinal) == true;
}
