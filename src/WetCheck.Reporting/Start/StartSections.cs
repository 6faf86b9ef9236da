using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>The questions that a job starts with, in walking order.</summary>
internal static class StartSections
{
    /// <summary>As many as there is room for, those of this stop first.</summary>
    /// <param name="room">Lines at most.</param>
    public static IReadOnlyList<StartSection> Of(Job job, RuleBook book, Phrases phrases, int room)
    {
        var questions = new StartQuestions(job, book.Vocabulary, phrases);
        var asked = AsksOf(job, book.Vocabulary, method => method.Asks).SelectMany(questions.Of)
            .Concat(AsksOf(job, book.Vocabulary, method => method.AsksAfter).SelectMany(questions.Of)
                .Select(one => one with { Rank = one.Rank + AskedLines.After }))
            .ToList();
        var shared =
            asked.Select(one => one.Long.Name).GroupBy(name => name, StringComparer.Ordinal)
            .Where(same => same.Count() > 1).Select(same => same.Key).ToHashSet(StringComparer.Ordinal);

        // With the stop unknown everything is wanted now; then many short lines are better than few long ones.
        var isTight = job.Stage is null && LengthOf(asked.Select(one => one.Long)) > room;
        var taken = new Dictionary<AskedLines, StartSection>(ReferenceEqualityComparer.Instance);
        foreach (var one in asked.OrderBy(one => one.Rank))
        {
            var ways = shared.Contains(one.Long.Name) ? [one.Long] : one.Ways(shortFirst: isTight || one.Rank > 0);
            if (ways.FirstOrDefault(way => LengthOf(taken.Values.Append(way)) <= room) is { } fits)
            {
                taken[one] = fits;
            }
        }

        return [.. asked.Where(taken.ContainsKey).Select(one => taken[one])
            .GroupBy(section => section.Name, StringComparer.Ordinal).Select(StartSection.Joined)];
    }

    /// <summary>Method unknown: what most methods ask, in the order of the vocabulary.</summary>
    private static IEnumerable<string> AsksOf(Job job, Vocabulary vocabulary, Func<Method, IReadOnlyList<string>> asks)
    {
        if (job.Method is { } method)
        {
            return asks(method);
        }

        var order = vocabulary.Kinds.Select(kind => kind.Stands.Split('.')[0]).Distinct().ToList();
        return vocabulary.Methods.SelectMany(asks).GroupBy(ask => ask, StringComparer.Ordinal)
            .Where(same => same.Count() * 2 > vocabulary.Methods.Count).Select(same => same.Key)
            .OrderBy(ask => order.IndexOf(ask.Split('.')[0]));
    }

    private static int LengthOf(IEnumerable<StartSection> sections) =>
        sections.GroupBy(section => section.Name, StringComparer.Ordinal).Sum(same => StartSection.Joined(same).Length);
}
