using BenchmarkDotNet.Attributes;
using Shaduf.Programme;

namespace Shaduf.Bench.Programme;

/// <summary>A programme of 2,000 activities in fifty stations, solved and levelled with four trades of few people.</summary>
[MemoryDiagnoser]
public class ProgrammeBench
{
    private const int Count = 2000;
    private static readonly DateTime Start = new(2026, 3, 2);
    private readonly WorkCalendar site = new(
        Enum.GetValues<DayOfWeek>().Except([DayOfWeek.Sunday]),
        TimeSpan.FromHours(7),
        TimeSpan.FromHours(8)
    );
    private readonly Dictionary<string, int> limits = new()
    {
        ["0"] = 6,
        ["1"] = 6,
        ["2"] = 6,
        ["3"] = 6,
    };
    private Network network = null!;
    private CriticalPath path = null!;

    [GlobalSetup]
    public void Prepare()
    {
        network = Network.Of(
            [
                .. Enumerable
                    .Range(0, Count)
                    .Select(i => new Activity($"{i}", $"activity {i}", TimeSpan.FromHours(4 + (i * 7 % 29)), site)
                    {
                        Crew = new Dictionary<string, int> { [$"{i % 4}"] = 1 + (i % 3) },
                    }),
            ],
            [
                .. Enumerable
                    .Range(0, Count)
                    .Where(i => i % 40 > 0)
                    .SelectMany(i =>
                        new[] { new Link($"{i - 1}", $"{i}"), new Link($"{i - 1 - (i % 40 / 2)}", $"{i}") }
                    ),
            ]
        );
        path = Solve();
    }

    [Benchmark]
    public CriticalPath Solve() => CriticalPath.Of(network, Start, site);

    [Benchmark]
    public Levelling Level() => Levelling.Of(path, limits, site);
}
