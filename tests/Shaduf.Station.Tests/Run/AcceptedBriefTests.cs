using System.Collections.Concurrent;
using System.Text.Json.Nodes;

namespace Shaduf.Station.Tests;

/// <summary>Every brief that is accepted gives a design: findings may stop it, but nothing breaks.</summary>
public sealed class AcceptedBriefTests
{
    [Fact]
    public void Explore()
    {
        var output = TestContext.Current.TestOutputHelper!;
        var results = new ConcurrentBag<string>();
        var watch = System.Diagnostics.Stopwatch.StartNew();
        using var scratch = new Scratch();
        scratch.WriteCards();
        DesignRun.Run(scratch.Read(SmallStation.Brief().ToJsonString()));
        var one = watch.Elapsed;
        output.WriteLine($"first {one}");
        var random = new Random(
            Convert.ToInt32(
                Environment.GetEnvironmentVariable("SEED") ?? "1",
                System.Globalization.CultureInfo.InvariantCulture
            )
        );
        var fields = BriefField.All.Where(f => f.Values.Count > 0).ToList();
        var (ok, refused) = (0, 0);
        while (watch.Elapsed < TimeSpan.FromSeconds(100))
        {
            var brief = SmallStation.Brief();
            var changes = new List<string>();
            var most = random.Next(1, 12);
            for (var i = 0; i < most; i++)
            {
                var field = fields[random.Next(fields.Count)];
                var value = field.Values[random.Next(field.Values.Count)];
                field.Put(brief, value);
                changes.Add($"{field.Name}={value}");
            }

            try
            {
                var file = scratch.Read(brief.ToJsonString());
                try
                {
                    var d = DesignRun.Run(file);
                    ok++;
                    foreach (var f in d.Findings)
                    {
                        if (!double.IsFinite(f.Value ?? 0) || !double.IsFinite(f.Limit ?? 0))
                            output.WriteLine($"INFINITE {f} {string.Join("; ", changes)}");
                    }
                }
                catch (Exception e)
                {
                    output.WriteLine(
                        $"CRASH {e.GetType().Name} {e.Message.Split('\n')[0]} {e.StackTrace!.Split('\n').FirstOrDefault(l => l.Contains("Shaduf.Station."))} {string.Join("; ", changes)}"
                    );
                }
            }
            catch (BadInputException)
            {
                refused++;
            }
        }
        output.WriteLine($"ok {ok} refused {refused}");
        output.WriteLine($"all {watch.Elapsed} {BriefField.All.Sum(f => f.Values.Count)}");
    }
}
