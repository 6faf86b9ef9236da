using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>One code of each discipline, and one answer to each question that decides and is not answered.</summary>
internal sealed record FallWorld(IReadOnlyDictionary<string, CodeRange> Codes, IReadOnlyDictionary<ReadingKind,
    Choice> Answers, IReadOnlyDictionary<ReadingKind, string> Given)
{
    public IEnumerable<string> Families => Codes.Where(code => code.Key != "access").Select(code => code.Value.Family);

    /// <param name="apart">A question that is not tried.</param>
    public static IEnumerable<FallWorld> All(IReadOnlyList<Rule> rules, IReadOnlyList<PartState> known, string apart)
    {
        var conditions = rules.SelectMany(rule => rule.Conditions()).ToList();
        var possible = known.Select(part => part.Surroundings).OfType<Surroundings>().First().Codes;
        var disciplines = conditions.OfType<Condition.CodeIs>().Select(test => test.Discipline).Distinct().ToList();
        var asked = conditions.OfType<Condition.Is>().Select(test => test.Path)
            .Where(path => path.Reading.Name != apart).DistinctBy(path => path.Reading).ToList();
        var given = asked.Select(path => (path.Reading, Choice: Said(path, known))).Where(one => one.Choice is not null)
            .ToDictionary(one => one.Reading, one => one.Choice!);
        var open = asked.Select(path => path.Reading).Where(reading => !given.ContainsKey(reading)).ToList();
        return
            from codes in Product(disciplines, discipline => possible.TryGetValue(discipline, out var codes) ? codes.Tried : [])
            from answers in Product(open, reading => reading.Choices)
            select new FallWorld(codes, answers, given);
    }

    public string? AnswerTo(ReadingKind reading) => Given.GetValueOrDefault(reading) ?? Answers.GetValueOrDefault(reading)?.Key;

    private static string? Said(Model.Path path, IReadOnlyList<PartState> known) =>
        (known.FirstOrDefault(part => part.Kind == path.Kind)?.Facts.GetValueOrDefault(path.Reading.Name)?.OnPaper as Known.OneOf)?.Choice;

    private static IEnumerable<Dictionary<TKey, TValue>> Product<TKey,
        TValue>(IReadOnlyList<TKey> keys, Func<TKey, IReadOnlyList<TValue>> values)
        where TKey : notnull
    {
        IEnumerable<Dictionary<TKey, TValue>> all = [[]];
        return keys.Where(key => values(key).Count > 0)
            .Aggregate(all,
            (so, key) =>
            so.SelectMany(one => values(key).Select(value => new Dictionary<TKey, TValue>(one) { [key] = value })));
    }
}
