using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>
/// The log only grows, so that the order of its lines is the order of the answers. A clock that was put back, or never
/// set, changes nothing:
/// such an answer counts from the time of the one before it.
/// </summary>
public static class LogClock
{
    /// <summary>No job is older than this: the clock was not set.</summary>
    private const int FirstYear = 2000;

    /// <summary>
    /// Two who answer at once wait for each other, so that the answer given first may be kept last. That is no clock
    /// put back.
    /// </summary>
    private static readonly TimeSpan s_waiting = TimeSpan.FromSeconds(10);

    /// <summary>The answer as it counts behind the one that stands before it.</summary>
    public static LoggedAnswer After(LoggedAnswer? before, LoggedAnswer answer) =>
        before is not null && Read(before.Counts ?? before.Time) > Read(answer.Time)
            ? answer with { Counts = before.Counts ?? before.Time } : answer;

    /// <summary>
    /// The clock stands before that of the line above, or was not set. Told where it begins, not on each line that
    /// follows.
    /// </summary>
    public static bool Jumped(LoggedAnswer? before, LoggedAnswer answer) =>
        (before is not null && Read(before.Time) - Read(answer.Time) > s_waiting)
            || (IsUnset(answer.Time) && (before is null || !IsUnset(before.Time)));

    /// <summary>Of a clock that was not set: the latest time so far that the job knows.</summary>
    internal static string Counted(LoggedAnswer answer, Job job)
    {
        var time = answer.Counts ?? answer.Time;
        return !IsUnset(time) ? time : job.Parts
            .SelectMany(part => part.Readings.Values).SelectMany(readings => readings)
            .Select(reading => reading.Date).OfType<string>().Append(time).MaxBy(Read)!;
    }

    private static bool IsUnset(string time) => Read(time) is { Year: < FirstYear };

    private static DateTimeOffset? Read(string time) => Dates.Read(time);
}
