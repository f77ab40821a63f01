using CsCheck;
using Google.OrTools.Sat;
using Shaduf.Workshop;

namespace Shaduf.Trades.Tests.Workshop;

/// <summary>Least prices proved a second time, by a general solver on the full list of patterns.</summary>
public sealed class CutProofTests
{
    private static readonly Gen<CutOrder> Orders = Gen.Select(
        Gen.Select(Gen.Int[40, 300], Gen.Int[1, 6]).Array[2, 5],
        Gen.Int[0, 5],
        Gen.Select(Gen.Int[61, 120], Gen.Int[8, 40]).Array[0, 1],
        Gen.Select(Gen.Int[15, 60], Gen.Int[0, 4], Gen.Int[1, 2]).Array[0, 2],
        (parts, kerf, others, offcuts) =>
            new CutOrder(
                [.. parts.Select((part, at) => new CutPart($"P{at}", part.Item1 * 2, part.Item2))],
                [
                    new(600, 10),
                    .. others.Select(bar => new BarStock(bar.Item1 * 10, bar.Item2)),
                    .. offcuts.Select(bar => new BarStock(bar.Item1 * 10, bar.Item2, bar.Item3)),
                ],
                kerf,
                EndTrimMm: 0
            )
    );

    [Fact]
    public void Least_prices_agree_with_a_general_solver() =>
        Orders.Sample(order =>
        {
            var plan = CutPlan.Cheapest(order);
            var least = LeastPrice(order);
            Assert.True(plan.IsProven && plan.Cost == least, $"{Written(order)}: {plan.Cost}, in truth {least}");
        });

    private static string Written(CutOrder order) =>
        string.Join(" ", order.Parts.Select(part => $"{part.Count} x {part.LengthMm}"))
        + " from "
        + string.Join(" ", order.Stock.Select(bar => $"{bar.Count} x {bar.LengthMm} at {bar.Price}"))
        + $", kerf {order.KerfMm}";

    private static decimal LeastPrice(CutOrder order)
    {
        var (model, parts) = (new CpModel(), order.Parts);
        var uses = order
            .Stock.SelectMany(bar => Patterns(order, bar).Select(counts => (Bar: bar, Counts: counts)))
            .Select(each => (each.Bar, each.Counts, Var: model.NewIntVar(0, each.Bar.Count ?? 100, "")))
            .ToList();
        foreach (var (part, i) in parts.Select((part, i) => (part, i)))
        {
            model.Add(LinearExpr.Sum(uses.Select(use => use.Var * use.Counts[i])) >= part.Count);
        }

        foreach (var bar in order.Stock.Distinct().Where(bar => bar.IsOffcut))
        {
            var count = order.Stock.Where(other => other == bar).Sum(other => other.Count!.Value);
            model.Add(LinearExpr.Sum(uses.Where(use => use.Bar == bar).Select(use => use.Var)) <= count);
        }

        model.Minimize(LinearExpr.Sum(uses.Select(use => use.Var * (long)use.Bar.Price)));
        var solver = new CpSolver { StringParameters = "num_workers:1" };
        Assert.Equal(CpSolverStatus.Optimal, solver.Solve(model));
        return (decimal)Math.Round(solver.ObjectiveValue);
    }

    private static IEnumerable<int[]> Patterns(CutOrder order, BarStock bar)
    {
        var counts = new int[order.Parts.Count];
        return From(0, bar.LengthMm + order.KerfMm);

        IEnumerable<int[]> From(int kind, double roomMm)
        {
            if (kind == counts.Length)
            {
                yield return [.. counts];
                yield break;
            }

            var takesMm = order.Parts[kind].LengthMm + order.KerfMm;
            for (var count = 0; count <= order.Parts[kind].Count && count * takesMm <= roomMm; count++)
            {
                counts[kind] = count;
                foreach (var pattern in From(kind + 1, roomMm - (count * takesMm)))
                {
                    yield return pattern;
                }
            }

            counts[kind] = 0;
        }
    }
}
