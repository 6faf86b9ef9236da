namespace WetCheck.Model;

/// <summary>One rule held against one part, with its result.</summary>
/// <param name="Paper">What the plan makes of an open check.</param>
/// <param name="Hold">The value of a planned reading to keep, or that would also do.</param>
public sealed record Check(Rule Rule, PartState State, Judgement Judgement, Result Result, Paper Paper, IReadOnlyList<Hold> Hold)
{
    public Part Part => State.Part;

    /// <summary>Open, and its only way out is an exception: short, unless that can be shown.</summary>
    public bool IsShortUnless => Judgement is { Now: Outcome.Open } && Judgement.Sides.All(side =>
        side.Outcome == Outcome.Correction || (side.Outcome == Outcome.Open && side.Tests.Any(test => test.Answer == Tri.No)));

    /// <summary>The sides to print: on paper where the plan decides.</summary>
    public IReadOnlyList<Side> Sides => Paper == Paper.None ? Judgement.Sides : Judgement.SidesOnPaper;
}

/// <summary>Every result a check can have. OK means this check is met, never that the shower is good.</summary>
public enum Result { Correction, ReadAgain, ToCheck, HiddenNow, Later, Ok, NotHere, Caution, Note }

/// <summary>Correction: on paper. Short, Good: marks on an open check.</summary>
public enum Paper { None, Correction, Short, Good }

/// <summary>A planned reading and the bound within which the check is met, the others as planned.</summary>
public sealed record Hold(Fact Fact, Comparison By, Rational Bound);

/// <summary>What stands on a list under one number: a rule at a place, with all its parts there.</summary>
/// <param name="Number">Rule and place: <c>214-D</c>. The same on every run, job, language and list.</param>
/// <param name="Checks">Its members, worst first.</param>
/// <param name="Also">Entries of rules that yield to this one here.</param>
public sealed record Entry(string Number, Rule Rule, string Letters, IReadOnlyList<Check> Checks, IReadOnlyList<Entry> Also)
{
    public Check Worst => Checks[0];

    public Result Result => Worst.Result;

    public Paper Paper => Worst.Paper;

    public Severity Severity => Rule.Severity;

    /// <summary>The members that have the entry's own result.</summary>
    public IEnumerable<Check> Same => Checks.Where(check => check.Result == Result && check.Paper == Paper);
}

/// <summary>One thing to go and see, measure or ask.</summary>
/// <param name="Number">Of the first check it settles or bears on.</param>
/// <param name="Fact">What is asked. Of several parts of one kind the first; <see cref="Parts"/> has all.</param>
/// <param name="Reading">Null for a code, the method, presence or completeness.</param>
/// <param name="Settles">Entries that hang on it alone.</param>
/// <param name="Bears">Entries that hang on it among others.</param>
/// <param name="At">Where its answer would stand in the job file.</param>
public sealed record Look(
    string Number,
    FactId Fact,
    IReadOnlyList<Part> Parts,
    ReadingKind? Reading,
    Paper Paper,
    IReadOnlyList<Entry> Settles,
    IReadOnlyList<Entry> Bears,
    At At);
