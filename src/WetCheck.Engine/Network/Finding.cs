using WetCheck.Model;

namespace WetCheck.Engine;

/// <summary>What a rule says of a part. Compared by reference.</summary>
public sealed class Finding(Rule rule, PartState state, Judgement judgement)
{
    public Rule Rule { get; } = rule;

    public PartState State { get; } = state;

    public Judgement Judgement { get; } = judgement;
}
