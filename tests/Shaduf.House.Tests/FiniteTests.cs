using System.Collections;
using System.Globalization;
using System.Reflection;
using CsCheck;
using Microsoft.CodeAnalysis;

namespace Shaduf.House.Tests;

/// <summary>
/// Kernels whose parameters are all numbers with a stated range: inside it they give finite numbers or refuse as
/// documented; NaN and what lies outside they refuse.
/// </summary>
public sealed class FiniteTests
{
    private const int Samples = 300;

    // The ends of a range are where a division by zero hides.
    private static readonly Gen<double> s_share = Gen.Frequency(
        (1, Gen.Const(0.0)),
        (1, Gen.Const(1.0)),
        (6, Gen.Double[0, 1])
    );

    [Fact]
    public void Kernels_are_finite_inside_their_range_and_refuse_what_is_outside() =>
        Rule.Holds(
            "finite",
            House.TradeProjects.SelectMany(project => Unsound(project.Assembly, Assembly.Load(project.AssemblyName)))
        );

    internal static IEnumerable<Offence> Unsound(IAssemblySymbol trade, Assembly loaded) =>
        from kernel in Kernels.Of(trade)
        where kernel.Parameters.Length > 0 && kernel.Parameters.All(parameter => parameter.Type.IsNumber())
        let ranges = kernel.Parameters.Select(parameter => DocumentedRange.Read(parameter.Says())).ToArray()
        where ranges.All(range => range is not null) // KernelDocTests asks for a range that is missing
        from problem in Problems(new Runner(kernel, loaded), ranges!)
        select new Offence(kernel.Subject(), problem);

    private static IEnumerable<string> Problems(Runner kernel, DocumentedRange[] ranges)
    {
        double[]? accepted = null;
        string? trouble = null;
        try
        {
            s_share
                .Array[ranges.Length]
                .Sample(
                    shares =>
                    {
                        var values = kernel.Values(shares, ranges);
                        var answer = kernel.Ask(values);
                        accepted = answer == Runner.Finite ? values : accepted;
                        return answer is Runner.Finite or Runner.Refused;
                    },
                    iter: Samples,
                    threads: 1,
                    print: shares => kernel.Describe(kernel.Values(shares, ranges))
                );
        }
        catch (CsCheckException failure)
        {
            trouble = failure.Message.ReplaceLineEndings(" ");
        }

        return trouble is not null ? [trouble]
            : accepted is null
                ? ["refuses every value of its stated ranges: correct the ranges in the docs or the guards."]
            : kernel.Unguarded(accepted, ranges);
    }

    /// <summary>A kernel that can be called with numbers.</summary>
    private sealed class Runner(IMethodSymbol symbol, Assembly loaded)
    {
        public const string Finite = "";
        public const string Refused = "refuses";

        private readonly MethodInfo _method = loaded
            .GetType(symbol.ContainingType.ToDisplayString(), throwOnError: true)!
            .GetMethod(
                symbol.Name,
                [.. symbol.Parameters.Select(parameter => parameter.Type.IsDouble() ? typeof(double) : typeof(int))]
            )!;

        private readonly HashSet<string> _refusals =
        [
            .. symbol
                .Docs()
                .Elements("exception")
                .Select(element => element.Attribute("cref")!.Value.Split('.', ':')[^1]),
        ];

        public double[] Values(double[] shares, DocumentedRange[] ranges) =>
            [
                .. shares.Select(
                    (share, i) =>
                        IsDouble(i)
                            ? ranges[i].At(share)
                            : Math.Round(Math.Clamp(ranges[i].At(share), int.MinValue, int.MaxValue))
                ),
            ];

        /// <summary>Finite, Refused (by an exception that the docs state), or what is wrong with the answer.</summary>
        public string Ask(double[] values)
        {
            try
            {
                var result = _method.Invoke(
                    null,
                    [.. values.Select((value, i) => IsDouble(i) ? value : (object)(int)value)]
                );
                return Numbers(result).All(double.IsFinite) ? Finite : $"gives {result}";
            }
            catch (TargetInvocationException thrown)
            {
                return IsStated(thrown.InnerException!.GetType())
                    ? Refused
                    : $"throws {thrown.InnerException.GetType().Name}, which its docs do not state: {thrown.InnerException.Message}";
            }
        }

        /// <summary>Values that no guard refuses although they are NaN or outside the stated range.</summary>
        public IEnumerable<string> Unguarded(double[] accepted, DocumentedRange[] ranges) =>
            from i in Enumerable.Range(0, accepted.Length)
            from outside in IsDouble(i) ? ranges[i].Outside().Append(double.NaN) : ranges[i].OutsideCounts()
            let values = accepted.Select((value, j) => j == i ? outside : value).ToArray()
            where Ask(values) != Refused
            select $"does not refuse {Describe(values)}: guard {symbol.Parameters[i].Name} with Within.Require, "
                + "over the range that its docs state.";

        public string Describe(double[] values) =>
            string.Join(
                ", ",
                values.Select(
                    (value, i) =>
                        string.Create(CultureInfo.InvariantCulture, $"{symbol.Parameters[i].Name} = {value:R}")
                )
            ) + (Ask(values) is { Length: > 0 } answer ? $" ({answer})" : "");

        private bool IsDouble(int parameter) => symbol.Parameters[parameter].Type.IsDouble();

        private bool IsStated(Type? type) =>
            type is not null && (_refusals.Contains(type.Name) || IsStated(type.BaseType));
    }

    /// <summary>The doubles in a result: itself, its elements, and the properties of our own records.</summary>
    private static IEnumerable<double> Numbers(object? result) =>
        result switch
        {
            double number => [number],
            string or null => [],
            IEnumerable many => many.Cast<object?>().SelectMany(Numbers),
            _ when result.GetType().Namespace?.StartsWith("Shaduf", StringComparison.Ordinal) == true => result
                .GetType()
                .GetProperties(BindingFlags.Public | BindingFlags.Instance)
                .Where(property => property.GetIndexParameters().Length == 0)
                .SelectMany(property => Numbers(property.GetValue(result))),
            System.Runtime.CompilerServices.ITuple tuple => Enumerable
                .Range(0, tuple.Length)
                .SelectMany(i => Numbers(tuple[i])),
            _ => [],
        };
}
