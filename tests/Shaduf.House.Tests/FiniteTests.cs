using System.Reflection;
using CsCheck;
using Microsoft.CodeAnalysis;

namespace Shaduf.House.Tests;

/// <summary>
/// Kernels whose parameters are numbers with a stated range (and choices: enums and flags): inside it they give finite
/// numbers or refuse as documented; NaN and what lies outside they refuse.
/// </summary>
public sealed class FiniteTests(ITestOutputHelper output)
{
    private const int Samples = 300;

    // The ends of a range are where a division by zero hides.
    private static readonly Gen<double> s_share = Gen.Frequency(
        (1, Gen.Const(0.0)),
        (1, Gen.Const(1.0)),
        (6, Gen.Double[0, 1])
    );

    [Fact]
    public void Kernels_are_finite_inside_their_range_and_refuse_what_is_outside()
    {
        foreach (var project in House.TradeProjects)
        {
            var (sampled, all) = (Sampled(project.Assembly).Count(), Kernels.Of(project.Assembly).Count());
            output.WriteLine($"{project.Name}: {sampled} of {all} kernels sampled");
        }

        Rule.Holds(
            "finite",
            House.TradeProjects.SelectMany(project => Unsound(project.Assembly, Assembly.Load(project.AssemblyName)))
        );
    }

    internal static IEnumerable<Offence> Unsound(IAssemblySymbol trade, Assembly loaded) =>
        from kernel in Sampled(trade)
        from problem in Problems(new NumericKernel(kernel, loaded))
        select new Offence(kernel.Subject(), problem);

    // KernelDocTests asks for a range that is missing.
    private static IEnumerable<IMethodSymbol> Sampled(IAssemblySymbol trade) =>
        Kernels
            .Of(trade)
            .Where(kernel => kernel.Parameters.Any(parameter => parameter.Type.IsNumber()))
            .Where(kernel => kernel.Parameters.All(parameter => NumericKernel.RangeOf(parameter) is not null));

    private static IEnumerable<string> Problems(NumericKernel kernel)
    {
        double[]? accepted = null;
        try
        {
            s_share
                .Array[kernel.Length]
                .Sample(
                    shares =>
                    {
                        var values = kernel.Values(shares);
                        var answer = kernel.Ask(values);
                        accepted = answer == NumericKernel.Finite ? values : accepted;
                        return answer is NumericKernel.Finite or NumericKernel.Refused;
                    },
                    iter: Samples,
                    threads: 1,
                    print: shares => kernel.Describe(kernel.Values(shares))
                );
        }
        catch (CsCheckException failure)
        {
            return [failure.Message.ReplaceLineEndings(" ")];
        }

        return accepted is null
            ? ["refuses every value of its stated ranges: correct the ranges in the docs or the guards."]
            : kernel.Unguarded(accepted);
    }
}
