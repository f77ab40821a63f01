using Shaduf.Programme;

namespace Shaduf.Station;

/// <summary>What has happened to one activity.</summary>
/// <param name="Activity">Its key in the programme.</param>
/// <param name="Started">The day on which it was begun.</param>
/// <param name="Finished">The day on which it was finished; null while it goes on.</param>
/// <param name="DoneShare">How much of it is done.</param>
public sealed record ActivityDone(string Activity, DateOnly Started, DateOnly? Finished, double DoneShare);

/// <summary>What of the programme has happened by a day.</summary>
/// <param name="On">The day of the report.</param>
/// <param name="Done">Activities that have begun.</param>
public sealed record ProgressBrief(DateOnly On, IReadOnlyList<ActivityDone> Done)
{
    /// <summary>Reads the mapping <c>progress</c>.</summary>
    /// <param name="fields">The mapping; null when there is none.</param>
    /// <returns>The report; null when there is none.</returns>
    internal static ProgressBrief? Read(FieldMap? fields)
    {
        if (fields is null)
        {
            return null;
        }

        var on = fields.OptionalDate("on", "Day of the report; nothing that is left is done before it.");
        var keys = StationProgramme.Keys;
        var done = fields.Items("done", 0, 200, "Activities that have begun.", each => Activity(each, keys, on));
        if (fields.AreSound("on") && on is null)
        {
            fields.Complain("on", "the report has no date", "'on: 2026-05-04' is needed");
        }

        if (fields.AreSound("done") && done.Select(each => each.Activity).Distinct().Count() < done.Count)
        {
            fields.Complain("done", "an activity is told twice", "one entry an activity is accepted");
        }

        fields.Done();
        return new(on ?? default, done);
    }

    private static ActivityDone Activity(FieldMap fields, IReadOnlyList<string> keys, DateOnly? on)
    {
        var activity = keys[
            fields.OneOf("activity", [.. keys.Select((key, i) => (key, i))], "Key of the activity, as in design.json.")
        ];
        var started = fields.OptionalDate("started", "Day on which it was begun.");
        var finished = fields.OptionalDate("finished", "Day on which it was finished.");
        var share = fields.Known(
            "share",
            Measure.Share,
            0,
            1,
            "How much of it is done; left out: half, or all when finished."
        );
        if (fields.AreSound("started") && started is null)
        {
            fields.Complain("started", $"'{activity}' has no day", "'started: 2026-04-20' is needed");
        }

        if (fields.AreSound("started", "finished") && (finished < started || started > on || finished > on))
        {
            fields.Complain(
                "started",
                "begun after its end or after the report, or finished after the report",
                "days in order, none after 'on', are accepted"
            );
        }

        if (fields.AreSound("share") && finished is not null && share < 1)
        {
            fields.Complain("share", "finished, but not all done", "100 % is accepted");
        }

        fields.Done();
        return new(activity, started ?? default, finished, finished is null ? share ?? 0.5 : 1);
    }

    /// <summary>The report as the network knows it; days count from their first hour and to their last.</summary>
    /// <param name="network">The network.</param>
    /// <returns>The progress.</returns>
    internal Progress Of(Network network) =>
        new(
            network,
            On.AddDays(1).ToDateTime(TimeOnly.MinValue),
            [
                .. Done.Select(each => new ActivityProgress(
                    each.Activity,
                    each.Started.ToDateTime(TimeOnly.MinValue),
                    each.Finished?.AddDays(1).ToDateTime(TimeOnly.MinValue),
                    each.DoneShare
                )),
            ]
        );
}
