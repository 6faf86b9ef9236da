using System.Globalization;
using WetCheck.Cli.Commands;
using WetCheck.Cli.Files;
using WetCheck.Cli.Text;
using WetCheck.Intake;
using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck.Cli.Asking;

/// <summary>Asks, keeps, and says what changed.</summary>
internal sealed class Asker(KeptWalk kept, RuleBook book, IReadOnlyList<Problem> problems, LogFile log, string? by, Terminal terminal)
{
    private readonly Phrases _phrases = new(book, "en");

    public static Asker Of(JobFile file, RuleBook book, string? by, Terminal terminal)
    {
        var (job, problems) = Held.WithLog(file, book, terminal);
        return new Asker(new KeptWalk(job, new ReadyBook(book)), book, problems, LogFile.Of(file, terminal), by, terminal);
    }

    /// <summary>All that is owed, until the answers end. What is skipped is not asked again.</summary>
    public ExitCode All()
    {
        var asked = new HashSet<(string, string)>();
        var walk = kept.Walk(problems);
        while (Question.Owed(walk).FirstOrDefault(question => asked.Add((question.Line.Path, question.Line.Before))) is { } next && Ask(next, walk))
        {
            walk = kept.Walk(problems);
        }

        return End(left: asked.Count == 0);
    }

    public ExitCode Number(string asked, string? answer)
    {
        var walk = kept.Walk(problems);
        var entry = Numbered.Find(walk, asked) ?? throw new Halt(ExitCode.TypedWrong, Numbered.NotFound(walk, asked));
        var questions = Question.Behind(walk, entry);
        if (questions.Count == 0)
        {
            throw new Halt(ExitCode.TypedWrong, $"Nothing is asked for {entry.Number}: its result is {_phrases["result." + Keys.Of(entry.Result)].ToLowerInvariant()}.");
        }

        if (string.IsNullOrWhiteSpace(answer))
        {
            _ = questions.All(question => Ask(question, kept.Walk(problems)));
            return End(left: false);
        }

        if (questions.Count > 1)
        {
            throw new Halt(ExitCode.TypedWrong, $"{entry.Number} asks {questions.Count} things: {string.Join(", ", questions.Select(question => question.Line.Answer(question.Line.Path)))}."
                + $"\n    wetcheck look JOB {entry.Number}   asks them one by one.");
        }

        return Keep(questions[0], answer, walk) ? End(left: false) : ExitCode.TypedWrong;
    }

    /// <returns>False: there are no more answers.</returns>
    private bool Ask(Question question, Walk walk)
    {
        for (var times = 0; times < 2; times++)
        {
            foreach (var line in LookQuestion.Of(walk, question.Look, _phrases))
            {
                terminal.Out.WriteLine(line);
            }

            if (question.Look.Parts is [{ Index: not null }])
            {
                terminal.Out.WriteLine($"         Write all that are on the line {question.Line.Path}, or none.");
            }

            if (terminal.In.ReadLine() is not { } typed)
            {
                return false;
            }

            if (typed.Trim().Length == 0 || Keep(question, typed.Trim(), walk))
            {
                break;
            }
        }

        return true;
    }

    /// <returns>False: it can't be read, which was told, and nothing was kept.</returns>
    private bool Keep(Question question, string typed, Walk before)
    {
        var now = terminal.Clock.GetLocalNow().ToString("yyyy-MM-dd'T'HH:mm:ss.fffzzz", CultureInfo.InvariantCulture);
        var answer = new LoggedAnswer(new At("answer", 1, 1), now, question.Line.Path, question.Line.Answer(typed), by, null, question.Replaces);
        var (read, told) = JobLog.Add(kept.Job, book.Vocabulary, answer);
        ProblemText.Write(told, terminal.Err);
        if (read is null)
        {
            return false;
        }

        answer = log.Keep(answer);
        kept.Change(JobLog.Add(kept.Job, book.Vocabulary, answer).Job!);
        foreach (var line in KeptText.Of(before, kept.Walk(problems), _phrases))
        {
            terminal.Out.WriteLine(line);
        }

        return true;
    }

    private ExitCode End(bool left)
    {
        var walk = kept.Walk(problems);
        if (left)
        {
            terminal.Out.WriteLine(_phrases.Count("kept.left", walk.Looks.Count));
        }

        return ExitCodes.Weightiest(ExitCodes.Of(problems), ExitCodes.Of(walk.Verdict));
    }
}
