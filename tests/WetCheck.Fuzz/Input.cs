using WetCheck.Intake;
using WetCheck.Model;

namespace WetCheck.Fuzz;

/// <summary>
/// One input, made from a number alone, and the reader it is given to. Whatever the text, a reader gives a result or
/// located messages.
/// </summary>
internal static class Input
{
    /// <summary>A whole rule book is dear to read: one input of so many.</summary>
    private const int BookEach = 1_000;

    /// <exception cref="Exception">A reader let one escape: that is what is looked for.</exception>
    public static void Read(int seed)
    {
        var chance = new Random(seed);
        if (chance.Next(BookEach) == 0)
        {
            Book(chance);
            return;
        }

        switch (chance.Next(8))
        {
            case 0:
                Told(JobReader.Read("fuzz.job.yaml", Mutation.Of(Part(Pick(Seeds.Jobs, chance), chance), chance),
                    Seeds.Book.Vocabulary).Problems);
                break;
            case 1:
                var (answers, problems) = LogReader.Read("fuzz.log.jsonl", Mutation.Of(Pick(Seeds.Logs, chance), chance));
                Told(problems);
                Told(JobLog.Apply(Seeds.Job, Seeds.Book.Vocabulary, answers).Problems);
                break;
            case 2:
                Told(LevelFile.Apply(Seeds.Job, Seeds.Book.Vocabulary, "fuzz.levels.csv",
                    Mutation.Of(Pick(Seeds.Levels, chance), chance)).Problems);
                break;
            case 3:
                Told(LocalBook.Of(Seeds.Book, "fuzz.job.yaml", "method: liner under mortar\nlocal: fuzz.yaml\n",
                    _ => Mutation.Of(Pick(Seeds.Locals, chance), chance)).Problems);
                break;
            case 4:
                Told(JobChange.Apply(Seeds.Job, Seeds.Book.Vocabulary,
                    $"{Pick(Seeds.Paths, chance)}: {Mutation.Of(Pick(Seeds.Answers, chance), chance)}")
                    .Problem is { } problem ? [problem] : []);
                break;
            case 5:
                var answer =
                    new LoggedAnswer(new At("answer", 1, 1), "2026-11-25T16:05:00Z", Pick(Seeds.Paths, chance),
                    Mutation.Of(Pick(Seeds.Answers, chance), chance));
                _ = answer.ToJson();
                Told(JobLog.Add(Seeds.Job, Seeds.Book.Vocabulary, answer).Problems);
                break;
            default:
                Tape(Mutation.Of(Pick(Seeds.Answers, chance), chance), chance);
                break;
        }
    }

    private static void Book(Random chance)
    {
        var at = chance.Next(Seeds.BookFiles.Count);
        Told(RuleBookReader.Read([.. Seeds.BookFiles.Select((file, i) => i == at
            ? (file.Path, Mutation.Of(file.Text, chance)) : file)]).Problems);
    }

    private static void Tape(string text, Random chance)
    {
        var lone = chance.Next(3) switch { 0 => Unit.Inch, 1 => Unit.Millimetre, _ => null };
        var measures = Enum.GetValues<Measure>();
        _ = Notation.ReadAmount(text, measures[chance.Next(measures.Length)], lone);
        _ = Notation.ReadFall(text, lone);
        _ = Notation.ReadSize(text, lone);
        _ = Notation.ReadPoint(text, lone);
        _ = Notation.ReadOutline(text, lone);
        _ = Notation.ReadLevels(text, lone);
    }

    /// <summary>A few lines of a job are enough, and cheaper than all.</summary>
    private static string Part(string text, Random chance)
    {
        var lines = text.Split('\n');
        var from = chance.Next(lines.Length);
        return string.Join('\n', lines.Take(8).Concat(lines.Skip(from).Take(chance.Next(1, 15))));
    }

    private static string Pick(string[] from, Random chance) => from[chance.Next(from.Length)];

    /// <summary>Each message has its place and something to say.</summary>
    private static void Told(IReadOnlyList<Problem> problems)
    {
        if (problems.FirstOrDefault(problem => problem.Say.Length == 0 || problem.At.Line < 1 || problem.At.Column < 1) is { } lost)
        {
            throw new InvalidOperationException($"A message without its place: {lost}");
        }
    }
}
