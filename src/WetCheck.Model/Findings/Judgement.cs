namespace WetCheck.Model;

/// <summary>What one rule says of one part, before stage and folding.</summary>
/// <param name="Now">Plans not known.</param>
/// <param name="OnPaper">Plans counted.</param>
/// <param name="Hangs">Of an open one: the facts it hangs on. Empty otherwise.</param>
/// <param name="HangsOnPaper">Of one that is open with plans counted.</param>
/// <param name="Sides">One for each set of versions that may be in force, with what it would come to. Plans not known.</param>
/// <param name="SidesOnPaper">The same with plans counted.</param>
public sealed record Judgement(
    Outcome Now,
    Outcome OnPaper,
    IReadOnlyList<Hang> Hangs,
    IReadOnlyList<Hang> HangsOnPaper,
    IReadOnlyList<Side> Sides,
    IReadOnlyList<Side> SidesOnPaper);

public enum Outcome { NotHere, Ok, Correction, Open }

/// <summary>A fact that would settle something.</summary>
/// <param name="Fact">Null for a code, the method, presence or completeness.</param>
/// <param name="Phase">Where in the rule it is asked; presence is asked first.</param>
/// <param name="Near">It was read, on the wrong side by less than its tool can tell, or its readings contradict.</param>
public sealed record Hang(FactId Id, Fact? Fact, Phase Phase, bool Near)
{
    /// <summary>By what is asked alone: a fact is long, and those of one name are few.</summary>
    public override int GetHashCode() => Id.GetHashCode();
}

public enum Phase { Presence, When, Version, Require }

/// <summary>What the versions in force in some worlds come to.</summary>
/// <param name="Versions">Those in force, in the order of the rule; empty for a rule without versions.</param>
/// <param name="Codes">The codes of these worlds, where the versions look at a code.</param>
/// <param name="Tests">The comparisons of the requirement that were made, the one that decides first.</param>
public sealed record Side(IReadOnlyList<RuleVersion> Versions, IReadOnlyList<CodeRange> Codes, Outcome Outcome,
    IReadOnlyList<Measured> Tests);

/// <summary>One test of a requirement, as it was made.</summary>
/// <param name="Condition">A <see cref="Condition.Compare"/> or <see cref="Condition.Is"/>.</param>
/// <param name="Of">The part whose reading was tested.</param>
/// <param name="Answer">Of this test alone.</param>
/// <param name="Fact">The reading tested; null for a conclusion.</param>
/// <param name="Limit">Of a comparison with a number: it, as the rule writes it, above <paramref name="LimitDatum"/>.</param>
/// <param name="LimitSpread">What it was held against, in the reading's own datum: the limit "on your tape".</param>
/// <param name="Slack">How far it is on the good side; below zero it is short. In base units.</param>
/// <param name="Counted">The facts that moved the limit from its datum to the reading's, and those compared with.</param>
public sealed record Measured(
    Condition Condition,
    Part Of,
    Tri Answer,
    Fact? Fact,
    Quantity? Limit,
    string? LimitDatum,
    Spread LimitSpread,
    Spread Slack,
    IReadOnlyList<CountedFact> Counted);

/// <summary>A fact that a sum counted, once up (1) or down (-1) in the slack of a test.</summary>
public sealed record CountedFact(Fact Fact, int Sign);
