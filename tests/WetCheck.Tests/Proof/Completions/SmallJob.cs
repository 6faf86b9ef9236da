using WetCheck.Model;

namespace WetCheck.Tests.Proof;

/// <summary>A job that is known whole but for at most four things that one rule reads.</summary>
internal sealed record SmallJob(int Number, Job Whole, Job Job, IReadOnlyList<Blank> Blanks)
{
    private const int MostBlanks = 4;
    private static readonly int[] s_mostWays = [50, 50, 50, 50, 100, 100, 100, 400, 400, 5000];

    public static SmallJob Of(int number, RuleBook book)
    {
        var dice = new Dice(number);
        var rules = book.Rules.Where(rule => rule.Body is RuleBody.Require).ToList();
        var focus = rules[number % rules.Count];
        var room = new RoomDrawer(book, dice, [focus], round: number / rules.Count).Draw();
        var whole = Doubled(new Teller(book.Vocabulary, room, Telling.Everything, dice).Job()) with { Stage = null };
        var (job, blanks, ways, wanted, most) = (whole, new List<Blank>(), 1L, dice.Next(1, MostBlanks), dice.Pick(s_mostWays));
        foreach (var blank in dice.Shuffled(new Blanks(book, room, whole, dice).Of(Studied.Of(book).Reads(focus))))
        {
            // A part that may not be there takes its readings with it.
            if (blanks.Count < wanted && ways * blank.Ways.Count <= most && blank.Ways.Count > 0
                && !blanks.Exists(other => Touches(other, blank)))
            {
                (job, ways) = (blank.Take(job), ways * blank.Ways.Count);
                blanks.Add(blank);
            }
        }

        return new SmallJob(number, whole, job, blanks);
    }

    public IEnumerable<Job> Completions() =>
        Blanks.Aggregate((IEnumerable<Job>)[Job],
        (jobs, blank) => jobs.SelectMany(job => blank.Ways.Select(way => way(job))));

    private static bool Touches(Blank a, Blank b) =>
        a.Of.Split(':')[0] == b.Of.Split(':')[0]
        && (a.Of.EndsWith("there", StringComparison.Ordinal) || b.Of.EndsWith("there", StringComparison.Ordinal));

    /// <summary>Layers stand at even numbers, so that another can stand between any two.</summary>
    private static Job Doubled(Job job) => job with
    {
        Parts = [.. job.Parts.Select(part => part.Part.Kind.Many == Many.Ordered && part.Part.Index is { } index
            ? part with { Part = new Part(part.Part.Kind, part.Part.Above, part.Part.Place, index * 2) }
            : part)],
    };
}
