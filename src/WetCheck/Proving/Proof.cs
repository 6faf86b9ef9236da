using WetCheck.Engine;
using WetCheck.Geometry;
using WetCheck.Intake;
using WetCheck.Model;

namespace WetCheck;

/// <summary>A case of a rule, held against the rule.</summary>
/// <param name="Misses">Where the rule said something else, a line each; none: the case holds.</param>
public sealed record Proof(RuleCase Case, IReadOnlyList<string> Misses)
{
    public bool Holds => Misses.Count == 0;

    public static Proof Of(RuleCase one, ReadyBook book)
    {
        if (book.Book.Rule(one.Rule) is not { } rule)
        {
            return new Proof(one, [$"there is no rule {one.Rule}"]);
        }

        var (job, unread) = Read(one, book.Book.Vocabulary);
        if (job is null || unread.Count > 0)
        {
            return new Proof(one, unread);
        }

        var session = book.Alone(rule).Compiled.Open(Derive.From(job, book.Book.Vocabulary));
        return Of(one, rule, job, book.Book.Vocabulary, session.Findings, session.Conclusions);
    }

    /// <summary>The job of a case, and what can't be read of it.</summary>
    public static (Job? Job, IReadOnlyList<string> Unread) Read(RuleCase one, Vocabulary vocabulary)
    {
        var (job, problems) = JobReader.Read(one.At.File, one.Job, vocabulary);
        return (job, [.. problems.Where(problem => problem.Effect != Effect.Asked).Select(problem => $"the job can't be read: {problem.Typed.Trim()}: {problem.Say}")]);
    }

    /// <summary>A case whose rule has been held against its job.</summary>
    public static Proof Of(RuleCase one, Rule rule, Job job, Vocabulary vocabulary, IReadOnlyList<Finding> findings, IReadOnlyList<Conclusion> conclusions)
    {
        var answers = RuleAnswers.Of(rule, job, vocabulary, findings, conclusions);
        return new Proof(one, [.. Results(one, answers), .. Asks(one, answers)]);
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
