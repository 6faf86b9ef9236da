using WetCheck.Intake;
using WetCheck.Model;

namespace WetCheck.Asking;

/// <summary>An answer on its way into the log and into the room.</summary>
internal static class KeptAnswer
{
    /// <summary>Puts an answer into the log. What it changes is worked out by <see cref="Count"/>.</summary>
    /// <returns>The answer with its place in the log, and the whole text where another program had written meanwhile.</returns>
    public static (LoggedAnswer Answer, string? News) Write(LoggedAnswer answer, Room room, IAnswerLog log)
    {
        var file = room.Texts.Log;
        var (text, isNews) = log.Keep($"{answer.Path}: {answer.Read}", before =>
        {
            answer = Unlike(answer, Within(before, answer, file));
            return answer.ToJson();
        });
        var line = answer.ToJson();
        var at = new At(file, text.Count(one => one == '\n'), line.IndexOf("\"read\":\"", StringComparison.Ordinal) + 9);
        return (LogClock.After(room.Last, answer with { At = at, Line = line }), isNews ? text : null);
    }

    /// <summary>Takes an answer that was written, and what others wrote before it.</summary>
    public static LogNews? Count(LoggedAnswer answer, string? news, Room room)
    {
        if (news is not null)
        {
            return room.Take(news, answer);
        }

        room.Count(answer);
        return null;
    }

    private static HashSet<string> Within(string before, LoggedAnswer answer, string file)
    {
        if (before.Count(one => one == '\n') >= Limits.LogAnswers)
        {
            throw new RefusedException(
                RefusedAs.Unwritable,
                $"{file} holds {Limits.LogAnswers} answers, and takes no more. Write what counts into the job file and move the log away."
                    + $"\nNot kept:  {answer.Path}: {answer.Read}");
        }

        return before.Split('\n').ToHashSet(StringComparer.Ordinal);
    }

    /// <summary>
    /// Of two lines that are the same the second would be taken for a copy: where the clock stands still it is moved on
    /// by a moment.
    /// </summary>
    private static LoggedAnswer Unlike(LoggedAnswer answer, HashSet<string> lines)
    {
        while (lines.Contains(answer.ToJson()))
        {
            answer = answer with { Time = Stamp.Of(Stamp.Read(answer.Time).AddMilliseconds(1)) };
        }

        return answer;
    }
}
