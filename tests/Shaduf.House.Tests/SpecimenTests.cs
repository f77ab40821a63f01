using Microsoft.CodeAnalysis;

namespace Shaduf.House.Tests;

/// <summary>Every rule is seen to find what it is there to find, and to leave a good kernel alone.</summary>
public sealed class SpecimenTests
{
    private const string GoodDocs = """
        /// <summary>Head held by the mean velocity.</summary>
        /// <param name="velocityMPerS">Mean velocity [m/s], 0 to 10.</param>
        /// <returns>Head [m].</returns>
        /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
        /// <source>any textbook of hydraulics, from memory</source>

        """;

    private const string GoodKernel =
        """
            public static class VelocityHead
            {
            """
        + GoodDocs
        + """
                public static double HeadM(double velocityMPerS)
                {
                    Shaduf.Working.Within.Require(velocityMPerS, 0, 10, "m/s");
                    return velocityMPerS * velocityMPerS / (2 * 9.80665);
                }
            }
            public sealed record Reading(double HeadM, double LossFactor) { public static IReadOnlyList<int> All { get; } = []; }
            public readonly record struct Place(double XMm, double YMm);
            public sealed class TroubleException : Exception;
            public abstract record Use;
            public sealed record People : Use;
            public sealed record Stock : Use;
            """;

    // The rules that look at a trade's compiled types.
    private static readonly IReadOnlyDictionary<string, Func<Specimen, IEnumerable<Offence>>> s_rules = new Dictionary<
        string,
        Func<Specimen, IEnumerable<Offence>>
    >
    {
        ["floor"] = trade => FloorTests.TooMany(trade.Symbols).Concat(FloorTests.TradeWords(trade.Symbols)),
        ["types"] = trade => TypeTests.Loose(trade.Symbols),
        ["units"] = trade => UnitTests.Unnamed(trade.Symbols),
        ["docs"] = trade => KernelDocTests.Undocumented(trade.Symbols),
        ["finite"] = trade => FiniteTests.Unsound(trade.Symbols, trade.Loaded),
        ["files"] = trade => StemTests.Homeless(trade.Symbols, House.Home),
        ["published"] = trade => StemTests.Unpublished(trade.Symbols, House.Home),
        ["pages"] = trade => StemTests.Pageless(trade.Symbols),
    };

    [Theory]
    [InlineData("floor")]
    [InlineData("types")]
    [InlineData("units")]
    [InlineData("docs")]
    [InlineData("finite")]
    public void A_good_kernel_breaks_no_rule(string rule) => Assert.Empty(s_rules[rule](Specimen.Compile(GoodKernel)));

    [Theory]
    [InlineData("files", "VelocityHead: put it into one file of its name, VelocityHead.cs")]
    [InlineData("published", "VelocityHead: has no published row")]
    [InlineData("pages", "VelocityHead: has no method page")]
    public void A_kernel_without_its_files_is_found(string rule, string offence) => Finds(rule, GoodKernel, offence);

    [Theory]
    [InlineData("public sealed class TankPumps;", "TankPumps: carries the trade word 'tank'")]
    [InlineData("public sealed class TankPumps;", "TankPumps: carries the trade word 'pumps'")]
    public void Floor_rules_bite(string source, string offence) => Finds("floor", source, offence);

    [Fact]
    public void Floor_cap_bites() =>
        Finds("floor", string.Concat(Enumerable.Range(0, 16).Select(i => $"public enum E{i};")), "has 16 public types");

    [Theory]
    [InlineData("internal sealed class PumpHelper;", "PumpHelper: ends in Helper")]
    [InlineData("public static class Runs { private static int s_count; }", "Runs.s_count: is static and can change")]
    [InlineData(
        "public static class Runs { internal static int Count { get; set; } }",
        "Runs.<Count>k__BackingField: is static"
    )]
    [InlineData("static class Runs { static readonly List<int> s_all = []; }", "Runs.s_all: is static and can change")]
    [InlineData("public sealed class Pump { public int Stages { get; set; } }", "Pump.Stages: has a public setter")]
    [InlineData("public class Pump;", "Pump: is open to inheritance")]
    [InlineData("public record Pump;", "Pump: is open to inheritance")]
    [InlineData("public abstract record Use; public sealed record Stock : Use;", "Use: is open to inheritance")]
    [InlineData("public record struct Pump(int Stages);", "Pump: is a struct that can change")]
    [InlineData("interface ILift; sealed class Pump : ILift;", "ILift: is an interface with 1 implementation(s)")]
    public void Type_rules_bite(string source, string offence) => Finds("types", source, offence);

    [Theory]
    [InlineData("public static class A { public static int Up(double head) => 1; }", "A.Up(head): 'head' does not say")]
    [InlineData("public static class A { public static double Head() => 1; }", "A.Head: 'Head' does not say")]
    [InlineData("public static class A { public const double Gravity = 9.8; }", "A.Gravity: 'Gravity' does not say")]
    [InlineData("public sealed record A(double Head);", "A.Head: 'Head' does not say")]
    [InlineData("public sealed record A(double? Head);", "A.Head: 'Head' does not say")]
    [InlineData("public sealed record A(IReadOnlyList<double> Heads);", "A.Heads: 'Heads' does not say")]
    [InlineData("public sealed record A(double[] Heads);", "A.Heads: 'Heads' does not say")]
    [InlineData("public sealed record A((double, int) HeadM);", "A.HeadM: 'Item1' does not say")]
    [InlineData("public sealed record A { public double this[int i] => i; }", "A.this: 'this[]' does not say")]
    public void Unit_rules_bite(string source, string offence) => Finds("units", source, offence);

    [Theory]
    [InlineData("public static class Friction { public static double LossMAt(double flowM3PerS) => 1; }")]
    [InlineData("public static class FrictionFactor { public static double Colebrook(double reynoldsNumber) => 1; }")]
    [InlineData("public static class Loss { public static (double LossM, double FlowM3PerS) Of(int taps) => (1, 1); }")]
    public void Unit_rules_let_a_named_unit_pass(string source) =>
        Assert.Empty(s_rules["units"](Specimen.Compile(source)));

    [Theory]
    [InlineData("<source>any textbook of hydraulics, from memory</source>", "", "HeadM: add <source>")]
    [InlineData(
        "<exception cref=\"ArgumentOutOfRangeException\">Outside the range, or NaN.</exception>",
        "",
        "HeadM: add <exc"
    )]
    [InlineData("Head [m]", "Head", "HeadM: <returns> state the unit in brackets")]
    [InlineData("Head [m]", "Head [mm]", "HeadM: <returns> says [mm], but 'HeadM' ends in another unit")]
    [InlineData("Mean velocity [m/s]", "Mean velocity", "HeadM(velocityMPerS): state the unit in brackets")]
    [InlineData("[m/s]", "[km/h]", "HeadM(velocityMPerS): says [km/h], but")]
    [InlineData("0 to 10", "small", "HeadM(velocityMPerS): state its valid range")]
    public void Doc_rules_bite(string part, string instead, string offence) =>
        Finds("docs", GoodKernel.Replace(part, instead, StringComparison.Ordinal), offence);

    [Theory]
    [InlineData("1 / velocityMPerS", "velocityMPerS = 0 (gives ")]
    [InlineData("Math.Sqrt(velocityMPerS - 5)", "(gives NaN)")]
    [InlineData("velocityMPerS < 5 ? 1 : throw new InvalidOperationException()", "(throws InvalidOperationException")]
    [InlineData(
        "velocityMPerS > 10 ? 1 : throw new ArgumentOutOfRangeException()",
        "refuses every value of its stated ranges"
    )]
    public void Finite_rule_finds_a_bad_answer(string answer, string offence) =>
        Finds(
            "finite",
            GoodKernel.Replace("velocityMPerS * velocityMPerS / (2 * 9.80665)", answer, StringComparison.Ordinal),
            offence
        );

    [Theory]
    [InlineData("Within.Require(velocityMPerS, 0, 11", "does not refuse velocityMPerS = 10.00001")]
    [InlineData("Within.Require(velocityMPerS, -1, 10", "does not refuse velocityMPerS = -1E-06")]
    [InlineData("Within.Require(1, 0, 10", "does not refuse velocityMPerS = NaN")]
    public void Finite_rule_finds_a_missing_guard(string guard, string offence) =>
        Finds(
            "finite",
            GoodKernel.Replace("Within.Require(velocityMPerS, 0, 10", guard, StringComparison.Ordinal),
            offence
        );

    [Fact]
    public void Finite_rule_looks_into_a_result() =>
        Finds(
            "finite",
            GoodKernel
                .Replace("public static double HeadM", "public static Reading Read", StringComparison.Ordinal)
                .Replace(
                    "return velocityMPerS * velocityMPerS / (2 * 9.80665)",
                    "return new(1, 1 / velocityMPerS)",
                    StringComparison.Ordinal
                ),
            "velocityMPerS = 0 (gives Reading"
        );

    [Fact]
    public void Size_rules_bite()
    {
        var tree = Specimen.Parse(
            $"class A {{ void B(int a, int b, int c, int d, int e, int f, int g)\n{{{new string('\n', 62)}}} }}\n"
        );
        Assert.Equal(new SizeTests.Size("Specimen.cs", 64), SizeTests.FileSize(tree));
        Assert.Equal(new SizeTests.Size("Specimen.cs B", 61), Assert.Single(SizeTests.BodySizes(tree)));
        Assert.Contains("has 7 parameters", Assert.Single(SizeTests.LongParameterLists(tree)).Problem);
        var budget = new SizeTests.Budget("lines", Median: 1, P90: 5, Listed: 10, Most: 20);
        Assert.Equal(
            ["A", "B (no exception)"],
            budget.Broken([new("A", 11), new("B", 21)]).Select(size => size.Subject)
        );
        Assert.NotEmpty(budget.Middle([new("A", 2)]));
        Assert.NotEmpty(budget.Middle([new("A", 1), new("B", 1), new("C", 6)]));
        Assert.Empty(budget.Middle([new("A", 1)]));
    }

    [Fact]
    public void Reference_rules_bite()
    {
        static string Arrows(string project, params string[] references) =>
            string.Join('\n', ReferenceTests.Arrows(new(project, "", "", references)));

        Assert.Contains("Water: must not reference Sun", Arrows("Water", "Working", "Shape", "Parts", "Sun"));
        Assert.Contains("Water: must reference Parts", Arrows("Water", "Working", "Shape"));
        Assert.Contains("Working: must not reference Shape", Arrows("Working", "Shape"));
        Assert.Contains("Extras: is not in the house", Arrows("Extras"));
        Assert.Empty(Arrows("Water", "Parts"));
        Assert.Contains("Desk: must reference Store", Arrows("Desk", "Pack"));
        Assert.Empty(Arrows("Desk", "Pack", "Store"));
    }

    [Fact]
    public void Stale_build_orphan_rows_and_machine_paths_are_found()
    {
        var source = Specimen.Parse("namespace Shaduf.Water; public static class NotBuilt;");
        var built = House.Projects.Single(project => project.Name == "Working").Assembly;
        Assert.Contains("NotBuilt: is in the source", Assert.Single(SurfaceTests.Stale([source], built)).ToString());

        Assert.Contains("lies beside no source", Assert.Single(StemTests.Orphans(["Alone.published.csv"])).Problem);

        Assert.Contains(
            "a.md: line 2",
            Assert.Single(WordTests.Refused("a.md", ["", "see /wo" + "rk/notes"])).ToString()
        );
    }

    [Fact]
    public void Exceptions_need_a_reason_and_a_use()
    {
        Offence[] offences = [new("A", "is bad"), new("B", "is bad")];
        Assert.Equal(offences, Rule.Left([], offences));
        Assert.Empty(Rule.Left(["# remark", "", "A: for a reason", "B: for another"], offences));
        Assert.Contains("give its exception a reason", Assert.Single(Rule.Left(["A: good", "B"], offences)).Problem);
        Assert.Contains("remove its line", Assert.Single(Rule.Left(["A: x", "B: x", "C: x"], offences)).Problem);
    }

    private static void Finds(string rule, string source, string offence) =>
        Assert.Contains(
            s_rules[rule](Specimen.Compile(source)),
            found => found.ToString().Contains(offence, StringComparison.Ordinal)
        );
}
