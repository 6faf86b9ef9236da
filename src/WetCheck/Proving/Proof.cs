using WetCheck.Engine;
using WetCheck.Flow;
using WetCheck.Model;

namespace WetCheck.Proving;

/// <summary>A case of a rule, held against the rule.</summary>
/// <param name="Misses">Where the rule said something else, a line each; none: the case holds.</param>
internal sealed record Proof(RuleCase Case, IReadOnlyList<string> Misses)
{
    public bool Holds => Misses.Count == 0;

    public static Proof Of(RuleCase one, ReadyBook book)
    {
        return book.Book.Rule(one.Rule) is { } rule
            ? Of(ReadCase.Read(one, book.Book.Vocabulary), rule, book.Book.Vocabulary, book.Alone(rule).Compiled)
            : new Proof(one, [$"there is no rule {one.Rule}"]);
    }

    internal static Proof Of(ReadCase one, Rule rule, Vocabulary vocabulary, CompiledBook compiled)
    {
        if (one.Job is null || one.Unread.Count > 0)
        {
            return new Proof(one.Case, one.Unread);
        }

        var session = compiled.Open(one.States);
        return Of(one, rule, vocabulary, session.Findings, session.Conclusions);
    }

    /// <summary>A case whose rule has been held against its job.</summary>
    internal static Proof Of(
        ReadCase one, Rule rule, Vocabulary vocabulary, IReadOnlyList<Finding> findings, IReadOnlyList<Conclusion> conclusions)
    {
        var answers = RuleAnswers.Of(rule, one.Job!, vocabulary, findings, conclusions);
        return new Proof(one.Case, [.. Results(one.Case, answers), .. Asks(one.Case, answers)]);
    }

    private static IEnumerable<string> Results(RuleCase one, IReadOnlyList<RuleAnswer> answers)
    {
        foreach (var (key, expected) in one.Expect)
        {
            if (CaseKey.Find(key, answers) is not { } answer)
            {
                yield return $"{key}: there is no such part; there is {string.Join(", ", answers.Select(a => CaseKey.Of(a.Part)))}";
            }
            else if (answer.Says != expected)
            {
                yield return $"{key}: {expected} was expected, the rule says {answer.Says}";
            }
        }
    }

    private static IEnumerable<string> Asks(RuleCase one, IReadOnlyList<RuleAnswer> answers)
    {
        var asked = answers.SelectMany(answer => answer.Hangs).Select(CaseKey.Of).Distinct().ToList();
        return one.Asks.Where(ask => !asked.Contains(ask))
            .Select(ask => $"{ask} is not asked; {(asked.Count == 0 ? "nothing is" : string.Join(", ", asked) + " is")}");
    }
}
