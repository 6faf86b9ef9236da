using WetCheck.Asking;
using WetCheck.Cli;
using WetCheck.Cli.Commands;
using WetCheck.Cli.Files;
using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck.Tests.Cli.Scripted;

/// <summary>
/// Answers what <c>look</c> asks, and holds each question against file and log read anew: it is one that is owed, it
/// can be seen at this stop, it
/// was not answered before, and the session that is kept open says what a fresh walk says.
/// </summary>
internal sealed class Setter(Desk desk, string job, AnswerBook book, bool isStrict = true) : ITalk
{
    /// <summary>
    /// At one question of so many the file and the log are read anew, between them the walk kept open is taken at its
    /// word.
    /// </summary>
    private static readonly int ReadEach = Depth.Of(daily: 6, deep: 1, night: 1);

    /// <summary>Whole lists are compared at one question of so many.</summary>
    private static readonly int CompareEach = Depth.Of(daily: 12, deep: 8, night: 1);

    private readonly List<string> _said = [];
    private readonly HashSet<string> _answered = [];
    private int _heard;
    private Looking? _looking;

    /// <summary>Questions of the last session, in order.</summary>
    public List<string> Asked { get; } = [];

    public bool IsHand => false;

    public DateTimeOffset Now => desk.Clock.GetLocalNow();

    public Walk Fresh() => Open().Room.Walk;

    public void Look()
    {
        Asked.Clear();
        var opened = Open();
        _looking = new Looking(opened.Room, opened.Log, this, null, "en");
        _looking.All();
    }

    public void Say(string line) => _said.Add(line);

    public void Warn(string text) => throw new InvalidOperationException(text);

    public string? Hear()
    {
        var fresh = _heard % ReadEach == 0 ? Fresh() : _looking!.Walk;
        if (_heard++ % CompareEach == 0)
        {
            JsonList.Of(_looking!.Walk, "en", "").Should().Be(JsonList.Of(fresh, "en", ""), "the session kept open is a fresh walk");
        }

        var said = string.Join('\n', _said).TrimEnd();
        _said.Clear();
        var question =
            Question.Owed(fresh)
            .FirstOrDefault(one => said.EndsWith(string.Join('\n', Prompt(fresh, one)), StringComparison.Ordinal));
        question.Should().NotBeNull("only what is owed is asked: " + said);
        Seen(fresh.Job, question!);
        Asked.Add($"{question!.Line.Path} {question.Line.Before}".TrimEnd());
        var answer = book.To(question, fresh.Job);
        // Without an answer it is passed by: asked while what would silence it was not known yet.
        if (answer is not null)
        {
            (_answered.Add($"{question.Line.Path}|{question.Line.Before}|{answer}") || !isStrict).Should().BeTrue($"asked again: {said}");
        }

        return answer ?? "";
    }

    private static IReadOnlyList<string> Prompt(Walk walk, Question question) =>
        LookQuestion.Of(walk, question.Look, new Phrases(TheBook.Book, "en"), question.Line.Path);

    private static void Seen(Job job, Question question)
    {
        if (question.Look is { Reading: { } reading, Parts: [var part] })
        {
            job.SightOf(reading.LayerOf(part.Place)).Should().Be(Sight.ToBeSeen, $"{part} {reading.Name}");
        }
    }

    private Opened Open()
    {
        using var messages = new StringWriter();
        var terminal = new Terminal(messages, messages, desk.Folder, desk.Clock);
        var opened = Opened.Read(JobFile.Find(job, "look", terminal), TheBook.Open, terminal);
        messages.ToString().Should().BeEmpty();
        return opened;
    }
}
