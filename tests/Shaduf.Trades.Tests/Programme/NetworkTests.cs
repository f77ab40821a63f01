using CsCheck;
using Shaduf.Programme;

namespace Shaduf.Trades.Tests.Programme;

public sealed class NetworkTests
{
    internal static readonly DateTime Start = new(2026, 3, 2);

    internal static WorkCalendar Site { get; } =
        new(
            Enum.GetValues<DayOfWeek>().Except([DayOfWeek.Sunday]),
            TimeSpan.FromHours(7),
            TimeSpan.FromHours(8),
            [new(2026, 3, 6), new(2026, 3, 20)]
        );

    // Links run from earlier to later activities, so that no ring can be; kinds, lags and calendars are any.
    internal static Gen<Network> Any { get; } =
        Gen.Select(
                Gen.Select(Gen.Int[0, 40], Gen.Int[0, 2], Gen.Int[0, 3]).Array[2, 30],
                Gen.Select(Gen.Int[0, 29], Gen.Int[0, 29], Gen.Enum<LinkKind>(), Gen.Int[-12, 72]).Array[0, 60]
            )
            .Select(
                (activities, links) =>
                    Network.Of(
                        [
                            .. activities.Select(
                                (each, i) =>
                                    new Activity(
                                        $"{i}",
                                        $"activity {i}",
                                        TimeSpan.FromHours(each.Item1),
                                        each.Item2 == 0 ? WorkCalendar.Always : Site
                                    )
                                    {
                                        Crew = new Dictionary<string, int> { ["hands"] = each.Item3 },
                                    }
                            ),
                        ],
                        [
                            .. links
                                .Select(each =>
                                    (From: Math.Min(each.Item1, each.Item2), To: Math.Max(each.Item1, each.Item2), each)
                                )
                                .Where(each => each.From < each.To && each.To < activities.Length)
                                .Select(each => new Link(
                                    $"{each.From}",
                                    $"{each.To}",
                                    each.each.Item3,
                                    TimeSpan.FromHours(each.each.Item4)
                                )),
                        ]
                    )
            );

    [Fact]
    public void Every_lag_is_kept_and_nothing_begins_before_the_start() =>
        Any.Sample(network =>
        {
            var path = CriticalPath.Of(network, Start, Site);
            AssertKept(network, [.. path.Timings.Select(each => new Placed(each.EarlyStart, each.EarlyFinish))]);
        });

    [Fact]
    public void Nothing_can_begin_earlier() =>
        Any.Sample(network =>
        {
            var path = CriticalPath.Of(network, Start, Site);
            var placed = path.Timings.Select(each => new Placed(each.EarlyStart, each.EarlyFinish)).ToArray();
            foreach (
                var timing in path.Timings.Where(each => each.EarlyStart > Start && each.Activity.Work > TimeSpan.Zero)
            )
            {
                // A minute earlier it would lie before working hours, or break a link.
                var earlier = timing.EarlyStart.AddMinutes(-1);
                var at = network.Activities.ToList().IndexOf(timing.Activity);
                var finish = timing.Activity.Calendar.Add(earlier, timing.Activity.Work);
                var breaks = network.Links.Any(link =>
                    link.To == timing.Activity.Key
                    && Bound(network, placed, link) is var bound
                    && (link.IsToFinish ? bound > finish : bound > earlier)
                );
                Assert.True(breaks || timing.Activity.Calendar.Next(earlier) != earlier, $"{at}");
            }
        });

    [Fact]
    public void What_begins_as_late_as_it_may_ends_the_whole_in_time() =>
        Any.Sample(network =>
        {
            var path = CriticalPath.Of(network, Start, Site);
            Assert.All(path.Timings, each => Assert.True(each.LateStart >= each.EarlyStart, each.ToString()));
            Assert.All(path.Timings, each => Assert.True(each.LateFinish >= each.EarlyFinish, each.ToString()));
            Assert.All(path.Timings, each => Assert.True(each.LateFinish <= path.Finish, each.ToString()));
            Assert.All(path.Timings, each => Assert.InRange(each.FreeFloat, TimeSpan.Zero, each.TotalFloat));
            Assert.NotEmpty(path.Critical);
        });

    [Fact]
    public void A_ring_is_told_by_the_names_of_its_activities()
    {
        var thrown = Assert.Throws<ProgrammeException>(() =>
            Network.Of(
                [Of("a"), Of("b"), Of("c"), Of("d")],
                [new("a", "b"), new("b", "c"), new("c", "b"), new("c", "d")]
            )
        );
        Assert.Equal("activities wait for each other in a ring: 'the b' before 'the c' before 'the b'", thrown.Message);
    }

    [Fact]
    public void What_cannot_be_is_refused_by_name()
    {
        Assert.Contains("'x'", Refused(() => Network.Of([Of("a")], [new("a", "x")])), StringComparison.Ordinal);
        Assert.Contains("'a'", Refused(() => Network.Of([Of("a"), Of("a")], [])), StringComparison.Ordinal);
        Assert.Contains(
            "'the a'",
            Refused(() => Network.Of([Of("a") with { Work = TimeSpan.FromHours(-1) }], [])),
            StringComparison.Ordinal
        );
        Assert.NotEmpty(Refused(() => Network.Of([], [])));
        Assert.NotEmpty(Refused(() => Network.Of([Of("a")], [new("a", "a")])));
    }

    // Hillier and Lieberman, Reliable Construction Co.: the path A-B-C-E-F-J-L-N.
    [Fact]
    public void The_critical_path_is_that_of_the_textbook()
    {
        string[] tasks = ["A2", "B4", "C10", "D6", "E4", "F5", "G7", "H9", "I7", "J8", "K4", "L5", "M2", "N6"];
        string[] links =
        [
            "AB",
            "BC",
            "CD",
            "CE",
            "EF",
            "DG",
            "EH",
            "GH",
            "CI",
            "FJ",
            "IJ",
            "JK",
            "JL",
            "HM",
            "KN",
            "LN",
        ];
        var network = Network.Of(
            [
                .. tasks.Select(task => new Activity(
                    task[..1],
                    task,
                    TimeSpan.FromDays(int.Parse(task[1..], null)),
                    WorkCalendar.Always
                )),
            ],
            [.. links.Select(link => new Link(link[..1], link[1..]))]
        );
        var critical = CriticalPath.Of(network, Start, WorkCalendar.Always).Critical.Select(each => each.Activity.Key);
        Assert.Equal("ABCEFJLN", string.Concat(critical));
    }

    // Pour on a Saturday: the week of curing ends on a Saturday evening, and nobody works before Monday.
    [Fact]
    public void Curing_that_ends_on_a_day_of_rest_stays_on_the_critical_path()
    {
        var network = Network.Of(
            [
                Of("pour") with
                {
                    Work = TimeSpan.FromHours(8),
                },
                new("cure", "cure", TimeSpan.FromDays(7), WorkCalendar.Always),
                Of("erect") with
                {
                    Work = TimeSpan.FromHours(8),
                },
            ],
            [new("pour", "cure"), new("cure", "erect")]
        );
        var path = CriticalPath.Of(network, new(2026, 4, 11), Site);
        Assert.Equal(new DateTime(2026, 4, 20, 15, 0, 0), path.Finish);
        Assert.Equal(3, path.Critical.Count);
    }

    internal static Activity Of(string key) => new(key, $"the {key}", TimeSpan.FromHours(4), Site);

    internal static void AssertKept(Network network, Placed[] placed)
    {
        Assert.All(placed, place => Assert.True(place.Start >= Start));
        foreach (var link in network.Links)
        {
            var to = placed[At(network, link.To)];
            Assert.True((link.IsToFinish ? to.Finish : to.Start) >= Bound(network, placed, link), link.ToString());
        }

        for (var i = 0; i < placed.Length; i++)
        {
            var activity = network.Activities[i];
            Assert.True(activity.Calendar.Between(placed[i].Start, placed[i].Finish) >= activity.Work);
        }
    }

    private static DateTime Bound(Network network, Placed[] placed, Link link) =>
        (link.IsFromStart ? placed[At(network, link.From)].Start : placed[At(network, link.From)].Finish) + link.Lag;

    private static int At(Network network, string key) =>
        network.Activities.ToList().FindIndex(each => each.Key == key);

    private static string Refused(Action act) => Assert.Throws<ProgrammeException>(act).Message;
}
