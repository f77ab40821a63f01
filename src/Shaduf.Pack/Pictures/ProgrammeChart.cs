using Shaduf.Programme;
using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The programme as bars by week: critical ones dark, holds and events as diamonds; below, how many people are at work.</summary>
public static class ProgrammeChart
{
    private const double RowMm = 4.4;
    private const double HeadMm = 9;
    private const double NameMm = 66;
    private const double PeopleMm = 18;

    /// <summary>Composes the picture.</summary>
    /// <param name="programme">The programme.</param>
    /// <param name="widthMm">Width of the picture [mm], at least 150.</param>
    /// <returns>The picture.</returns>
    public static Scene Of(StationProgramme programme, double widthMm)
    {
        var rows = programme.Activities;
        var bottom = HeadMm + (rows.Count * RowMm);
        var builder = new SceneBuilder(new(widthMm, bottom + PeopleMm + 8));
        var days = Math.Max(1, Math.Ceiling((programme.Finish - programme.Start).TotalDays));
        var perDay = (widthMm - NameMm - 2) / days;
        double At(DateTime instant) => NameMm + ((instant - programme.Start).TotalDays * perDay);
        Weeks(builder, programme, (perDay, bottom + PeopleMm));
        foreach (var (index, row) in rows.Index())
        {
            Row(builder, row, HeadMm + (index * RowMm), At);
        }

        People(builder, programme, (bottom + 4, widthMm), At);
        return builder.Build("programme of the works by week");
    }

    // No more names of weeks than there is room for.
    private static void Weeks(SceneBuilder builder, StationProgramme programme, (double PerDay, double BottomMm) grid)
    {
        var every = Math.Max(1, (int)Math.Ceiling(11 / (7 * grid.PerDay)));
        var days = (programme.Finish - programme.Start).TotalDays;
        for (var week = 0; week * 7 < days; week++)
        {
            var x = NameMm + (week * 7 * grid.PerDay);
            builder.Line(Layer.Grid, new(x, HeadMm - 1), new(x, grid.BottomMm));
            if (week % every == 0 && x + 10 < builder.Size.WidthMm)
            {
                builder.Text(
                    new(x + 0.6, HeadMm - 2),
                    Invariant($"{programme.Start.AddDays(week * 7):d MMM}"),
                    TextStyle.Small
                );
            }
        }
    }

    private static void Row(SceneBuilder builder, PlannedActivity row, double top, Func<DateTime, double> at)
    {
        var middle = top + (RowMm / 2);
        builder.Text(
            new(0, middle),
            row.Timing.Activity.Name,
            TextStyle.Small with
            {
                Vertical = VerticalAnchor.Middle,
                Weight = row.IsHold ? FontWeight.Bold : FontWeight.Regular,
            }
        );
        var (from, to) = (at(row.Place.Start), at(row.Place.Finish));
        if (row.IsEvent)
        {
            builder.Polygon(
                Layer.Outline,
                [new(from, middle - 1.4), new(from + 1.4, middle), new(from, middle + 1.4), new(from - 1.4, middle)],
                Palette.Ink
            );
            return;
        }

        PaperBox Box(double left, double right) => new(left, top + 0.9, Math.Max(right, left + 0.5), top + RowMm - 0.9);
        if (row.Timing.IsCritical)
        {
            builder.Rectangle(Layer.Thin, Box(from, to), Palette.Ink);
        }
        else
        {
            builder.Rectangle(Layer.Thin, Box(from, to), Palette.Steel.Tint(0.6));
        }
    }

    private static void People(
        SceneBuilder builder,
        StationProgramme programme,
        (double TopMm, double WidthMm) room,
        Func<DateTime, double> at
    )
    {
        var baseMm = room.TopMm + PeopleMm - 6;
        var perPerson = (PeopleMm - 8) / Math.Max(1, programme.PeopleCount);
        builder.Text(new(0, baseMm), Invariant($"people at work, of {programme.PeopleCount}"), TextStyle.Small);
        var steps = programme.Histogram;
        foreach (var (index, step) in steps.Index().Where(step => step.Item.Count > 0 && step.Index + 1 < steps.Count))
        {
            var (from, to) = (at(step.From), at(steps[index + 1].From));
            builder.Rectangle(
                Layer.Thin,
                new(from, baseMm - (step.Count * perPerson), to, baseMm),
                Palette.Steel.Tint(0.6)
            );
        }

        builder.Line(Layer.Thin, new(NameMm, baseMm), new(room.WidthMm - 2, baseMm));
    }
}
