using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>
/// Lines that every job of a file of cases has, unless it says otherwise: <c>given: { method: liner under mortar, units: inches }</c>.
/// The whole job is one text, in which each line stands where it stands in the file.
/// </summary>
internal static class GivenJob
{
    /// <param name="given">In braces, before the job; null: the job is whole.</param>
    public static string Text(SourceText source, MapNode? given, MapNode job, ProblemList problems)
    {
        if (given is null)
        {
            return Excerpt.Of(source, job);
        }

        if (!IsBraced(source, given) || !IsBraced(source, job) || given.EndAt.Line >= job.At.Line)
        {
            problems.Add(IsBraced(source, given) ? job.At : given.At, Messages.BracesWanted());
            return "";
        }

        var lines = Excerpt.Of(source, given).Split('\n').Select(line => line.ToCharArray()).ToList();
        var isLastKept = false;
        for (var at = 0; at < given.Entries.Count; at++)
        {
            var key = given.Entries[at].Key;
            isLastKept = !job.Entries.Any(own => Names.Same(own.Key.Text, key.Text));
            if (!isLastKept)
            {
                Blank(lines, key.At, at + 1 < given.Entries.Count ? given.Entries[at + 1].Key.At : given.EndAt);
            }
        }

        // One pair of braces about both: what is given goes on where the job begins.
        lines[given.EndAt.Line - 1][given.EndAt.Column - 1] = isLastKept ? ',' : ' ';
        var jobs = Excerpt.Of(source, job).Split('\n').Select(line => line.ToCharArray()).ToList();
        jobs[job.At.Line - 1][job.At.Column - 1] = ' ';
        return string.Join('\n', lines.Take(given.EndAt.Line).Concat(jobs.Skip(given.EndAt.Line)).Select(line => new string(line)));
    }

    private static bool IsBraced(SourceText source, MapNode map) => source.Line(map.At.Line).ElementAtOrDefault(map.At.Column - 1) == '{';

    private static void Blank(List<char[]> lines, At from, At to)
    {
        for (var line = from.Line; line <= to.Line; line++)
        {
            var start = line == from.Line ? from.Column - 1 : 0;
            var end = line == to.Line ? to.Column - 1 : lines[line - 1].Length;
            lines[line - 1].AsSpan(start, Math.Max(0, Math.Min(end, lines[line - 1].Length) - start)).Fill(' ');
        }
    }
}
