using WetCheck.Engine;
using WetCheck.Geometry;
using WetCheck.Model;

namespace WetCheck.Tests.Proof;

/// <summary>Every quantity of the rule book shows: moved by its smallest step, up or down, some case of its rule comes out otherwise.</summary>
public sealed class NoLimitIsIdle
{
    private static readonly Vocabulary Vocabulary = TheBook.Book.Vocabulary;
    private static readonly IReadOnlyList<Rule> Concluding = [.. TheBook.Book.Rules.Where(rule => rule.Body is RuleBody.Conclude)];

    /// <summary>The jobs of the cases, read and derived once: a moved limit changes neither.</summary>
    private static readonly Lazy<ILookup<string, Read>> Cases = new(() => TheBook.Cases.Select(Read.Of).ToLookup(one => one.Case.Rule, StringComparer.Ordinal));

    [Fact]
    public void Moved_up_it_shows() => string.Join("\n", Idle(limit => limit.Up)).Should().BeEmpty();

    [Fact]
    public void Moved_down_it_shows() => string.Join("\n", Idle(limit => limit.Down)).Should().BeEmpty();

    private static List<string> Idle(Func<MovedLimit, Rule> moved) => [.. TheBook.Book.Rules.SelectMany(MovedLimit.Of)
        .Where(limit => !Shows(moved(limit)))
        .Select(limit => $"{limit.At}: {limit.Number.Typed.FromBase(limit.Number.Value)} {limit.Number.Typed.Key}")];

    /// <summary>Some case misses what it expects.</summary>
    private static bool Shows(Rule moved)
    {
        var plain = new PlainEvaluator([moved, .. Concluding.Where(rule => rule.Id != moved.Id)]);
        return Cases.Value[moved.Id].Any(one => !Proven(one, moved, plain).Holds);
    }

    private static WetCheck.Proof Proven(Read one, Rule moved, PlainEvaluator plain)
    {
        var conclusions = plain.Conclude(one.States);
        return WetCheck.Proof.Of(one.Case, moved, one.Job, Vocabulary,
            moved.Body is RuleBody.Conclude ? [] : [.. PlainEvaluator.Judged(new RulePlan(moved), one.States, conclusions)], conclusions);
    }

    private sealed record Read(RuleCase Case, Job Job, IReadOnlyList<PartState> States)
    {
        public static Read Of(RuleCase one)
        {
            var job = WetCheck.Proof.Read(one, Vocabulary).Job!;
            return new Read(one, job, Derive.From(job, Vocabulary));
        }
    }
}
