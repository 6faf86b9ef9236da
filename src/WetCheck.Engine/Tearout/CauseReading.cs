using WetCheck.Model;

namespace WetCheck.Engine;

/// <summary>Holds the causes of a book against what was seen of old work.</summary>
public static class CauseReading
{
    /// <summary>The kind whose parts below hold everything seen.</summary>
    public const string Root = "old work";

    private const string Wet = "wet";

    /// <param name="known">All parts of the job.</param>
    public static TearoutReport Of(RuleBook book, IReadOnlyList<PartState> known)
    {
        if (known.FirstOrDefault(state => state.Kind == Root) is not { } root)
        {
            return new TearoutReport([], [], [], [], [], [], []);
        }

        var look = new OldWork(root, known);
        var causes = book.Causes.Select(cause => Seen(cause, look)).ToList();
        var signs = causes.SelectMany(cause => cause.Signs).DistinctBy(sign => sign.Fact.Id)
            .OrderBy(sign => sign.Fact.Counted?.At.Line ?? 0).ToList();
        var fitting = causes.Where(cause => cause.Fit == Fit.Fits).ToList();
        var covered = fitting.SelectMany(cause => cause.Signs).Select(sign => sign.Fact.Id).ToHashSet();
        var ids = covered.ToList();
        var sets = SmallestSets.Of([.. fitting.Select(cause =>
            (IReadOnlyList<int>)[.. cause.Signs.Select(sign => ids.IndexOf(sign.Fact.Id))])], ids.Count);
        return new TearoutReport(
            signs,
            causes,
            [.. sets.Select(set => (IReadOnlyList<CauseSeen>)[.. set.Select(at => fitting[at])])],
            [.. signs.Where(sign => !covered.Contains(sign.Fact.Id))],
            [.. book.Opening.Gate.Select(book.Rule).OfType<Rule>().Where(rule => MayStand(rule, known))],
            [.. book.Opening.Expected.Where(one => one.When is null || look.Of(one.When).Value != Tri.No)],
            [.. Tests(book.Opening.Tests, look)]);
    }

    /// <summary>Unknown warns: only what is ruled out is silent.</summary>
    private static bool MayStand(Rule caution, IReadOnlyList<PartState> known) =>
        caution.When is not { } when
            || known.Where(state => state.Kind == caution.Part.Name)
            .Any(state => new OldWork(state, known).Of(when).Value != Tri.No);

    private static CauseSeen Seen(Cause cause, OldWork look)
    {
        var asked = cause.Given.Concat(cause.Needs).Select(need => (Need: need, Answer: look.Of(need))).ToList();
        var against = cause.Contradicts.Select(look.Of).Where(answer => answer.Value == Tri.Yes).ToList();
        var supports = cause.Supports.Select(look.Of).Where(answer => answer.Value == Tri.Yes).ToList();
        var signs = asked.Skip(cause.Given.Count).Select(need => need.Answer).Where(answer => answer.Value == Tri.Yes)
            .Concat(supports).SelectMany(OldWork.SignsOf).DistinctBy(sign => sign.Fact.Id).ToList();
        var failed = asked.Where(need => need.Answer.Value == Tri.No).SelectMany(need => OldWork.TestsOf(need.Answer, Tri.No));
        var fit = against.Count > 0 || asked.Exists(need => need.Answer.Value == Tri.No) ? Fit.RuledOut
            : asked.TrueForAll(need => need.Answer.Value == Tri.Yes) ? Fit.Fits
            : supports.Count > 0 ? Fit.MayBe
            : Fit.Unseen;
        return new CauseSeen(cause, fit, signs, [.. asked.Where(need => need.Answer.Value == Tri.Unknown).Select(need => need.Need)],
            [.. against.SelectMany(OldWork.SignsOf).Concat(failed).DistinctBy(sign => sign.Fact.Id)]);
    }

    private static IEnumerable<TestSeen> Tests(IEnumerable<LeakTest> tests, OldWork look)
    {
        foreach (var test in tests)
        {
            var sign = look.Find(test.Result);
            var result = (sign?.Fact.Now as Known.OneOf)?.Choice;
            if (result is not null || look.Symptom is null || test.Symptoms.Contains(look.Symptom))
            {
                yield return new TestSeen(test, result is null ? null : sign,
                    result is null ? Tri.Unknown : result == Wet ? Tri.Yes : Tri.No);
            }
        }
    }
}
