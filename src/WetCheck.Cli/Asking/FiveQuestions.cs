using WetCheck.Cli.Help;
using WetCheck.Intake;
using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck.Cli.Asking;

/// <summary>The questions before there is a job file, one answer a line. At the end of the input the rest is don't know: nothing waits.</summary>
internal sealed class FiveQuestions(RuleBook book, string language, Terminal terminal)
{
    public FirstQuestions Words { get; } = new(book, language);

    public string Name() => Asked(Words.Name);

    public Job All(string name)
    {
        var job = new FirstJob(name, book.Vocabulary);
        Ask(Words.Method, job.Method);
        Ask(Words.Stage(job.Job.Method), job.Stage);
        Ask(Words.Size, job.Size);
        Ask(Words.Codes, job.Codes);
        return job.Job;
    }

    /// <summary>At a keyboard what can't be read is asked once more. Lines from elsewhere stay in step: one for each question.</summary>
    private void Ask(string question, Func<string, string?> take)
    {
        var unread = take(Asked(question));
        if (unread is not null && terminal.IsHand)
        {
            terminal.Err.WriteLine(unread);
            unread = take(terminal.In.ReadLine() ?? "");
        }

        if (unread is not null)
        {
            terminal.Err.WriteLine($"{unread} {Words.DontKnow}");
        }
    }

    private string Asked(string question)
    {
        terminal.Out.WriteLine(question);
        var typed = terminal.In.ReadLine() ?? "";
        return TooLong.Is(typed) ? throw new Halt(ExitCode.TypedWrong, TooLong.Say(typed)) : typed;
    }
}
