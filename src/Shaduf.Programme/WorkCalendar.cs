namespace Shaduf.Programme;

/// <summary>When people work. Instants are local clock times without a zone.</summary>
public sealed class WorkCalendar
{
    // A break longer than this is no calendar of a site.
    private const int LongestBreakDays = 800;
    private readonly HashSet<DayOfWeek> weekdays;
    private readonly HashSet<DateOnly> off;
    private readonly TimeSpan dayStart;

    /// <summary>A calendar of working days that are all alike.</summary>
    /// <param name="weekdays">Days of the week on which people work, at least one.</param>
    /// <param name="dayStart">When work begins [h after midnight], 0 to 24 h.</param>
    /// <param name="dayWork">Work of a day, without a break; start and work together no longer than 24 h [h].</param>
    /// <param name="off">Dates without work: feasts, days lost to rain.</param>
    /// <exception cref="ProgrammeException">No day of the week is worked, or a day does not fit into 24 hours.</exception>
    public WorkCalendar(
        IEnumerable<DayOfWeek> weekdays,
        TimeSpan dayStart,
        TimeSpan dayWork,
        IEnumerable<DateOnly>? off = null
    )
    {
        (this.weekdays, this.dayStart, DayWork) = ([.. weekdays], dayStart, dayWork);
        this.off = [.. off ?? []];
        if (this.weekdays.Count == 0)
        {
            throw new ProgrammeException("the calendar has no working day; at least one day of the week is accepted");
        }

        if (dayStart < TimeSpan.Zero || dayWork <= TimeSpan.Zero || dayStart + dayWork > TimeSpan.FromDays(1))
        {
            throw new ProgrammeException("the working day does not fit into 24 hours");
        }
    }

    /// <summary>Every hour of every day: concrete sets and paint dries on Sundays, too.</summary>
    public static WorkCalendar Always { get; } = new(Enum.GetValues<DayOfWeek>(), TimeSpan.Zero, TimeSpan.FromDays(1));

    /// <summary>Work of a day [h].</summary>
    public TimeSpan DayWork { get; }

    /// <summary>The same calendar with more dates without work.</summary>
    /// <param name="dates">The dates.</param>
    /// <returns>The calendar.</returns>
    public WorkCalendar Without(IEnumerable<DateOnly> dates) => new(weekdays, dayStart, DayWork, off.Concat(dates));

    /// <summary>Whether people work on a day.</summary>
    /// <param name="day">The day.</param>
    /// <returns>Whether they do.</returns>
    public bool IsWorked(DateOnly day) => weekdays.Contains(day.DayOfWeek) && !off.Contains(day);

    /// <summary>The first instant, no earlier than a given one, at which work can begin.</summary>
    /// <param name="at">The instant.</param>
    /// <returns>The instant.</returns>
    /// <exception cref="ProgrammeException">Nobody works for more than two years.</exception>
    public DateTime Next(DateTime at)
    {
        var day = DateOnly.FromDateTime(at);
        for (var i = 0; i < LongestBreakDays; i++, day = day.AddDays(1))
        {
            if (IsWorked(day) && at < Begin(day) + DayWork)
            {
                return at > Begin(day) ? at : Begin(day);
            }
        }

        throw NoDay(at);
    }

    /// <summary>The last instant, no later than a given one, at which work can end.</summary>
    /// <param name="at">The instant.</param>
    /// <returns>The instant.</returns>
    /// <exception cref="ProgrammeException">Nobody works for more than two years.</exception>
    public DateTime Last(DateTime at)
    {
        var day = DateOnly.FromDateTime(at);
        for (var i = 0; i < LongestBreakDays; i++, day = day.AddDays(-1))
        {
            if (IsWorked(day) && at > Begin(day))
            {
                var end = Begin(day) + DayWork;
                return at < end ? at : end;
            }
        }

        throw NoDay(at);
    }

    /// <summary>When work that begins at an instant, or as soon after it as people work, ends.</summary>
    /// <param name="at">The instant.</param>
    /// <param name="work">Work, at least none [h].</param>
    /// <returns>Its end; the instant itself when there is no work.</returns>
    /// <exception cref="ProgrammeException">Nobody works for more than two years.</exception>
    public DateTime Add(DateTime at, TimeSpan work)
    {
        while (work > TimeSpan.Zero)
        {
            at = Next(at);
            var left = Begin(DateOnly.FromDateTime(at)) + DayWork - at;
            var done = work < left ? work : left;
            (at, work) = (at + done, work - done);
        }

        return at;
    }

    /// <summary>The latest instant at which work must begin to end at an instant.</summary>
    /// <param name="at">When it ends.</param>
    /// <param name="work">Work, at least none [h].</param>
    /// <returns>Its beginning; the instant itself when there is no work.</returns>
    /// <exception cref="ProgrammeException">Nobody works for more than two years.</exception>
    public DateTime Subtract(DateTime at, TimeSpan work)
    {
        while (work > TimeSpan.Zero)
        {
            at = Last(at);
            var back = at - Begin(DayOf(at));
            var done = work < back ? work : back;
            (at, work) = (at - done, work - done);
        }

        return at;
    }

    /// <summary>Work between two instants.</summary>
    /// <param name="from">The first.</param>
    /// <param name="to">The second; before the first there is none.</param>
    /// <returns>Work [h].</returns>
    public TimeSpan Between(DateTime from, DateTime to)
    {
        var sum = TimeSpan.Zero;
        for (var day = DateOnly.FromDateTime(from); day <= DateOnly.FromDateTime(to); day = day.AddDays(1))
        {
            if (IsWorked(day))
            {
                var (begin, end) = (Begin(day), Begin(day) + DayWork);
                var span = (to < end ? to : end) - (from > begin ? from : begin);
                sum += span > TimeSpan.Zero ? span : TimeSpan.Zero;
            }
        }

        return sum;
    }

    private DateTime Begin(DateOnly day) => day.ToDateTime(TimeOnly.MinValue) + dayStart;

    // Work that ends at midnight belongs to the day before.
    private DateOnly DayOf(DateTime end) =>
        DateOnly.FromDateTime(end) is var day && end > Begin(day) ? day : day.AddDays(-1);

    private static ProgrammeException NoDay(DateTime at) =>
        new($"nobody works for more than {LongestBreakDays} days about {at:yyyy-MM-dd}");
}
