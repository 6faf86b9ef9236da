using WetCheck.Engine;
using WetCheck.Geometry;
using WetCheck.Model;

namespace WetCheck.Tests.Proof;

/// <summary>The drawn jobs say something: each rule is met, not met and open on them; each version and branch decides.</summary>
public sealed class TheDraw(ITestOutputHelper output)
{
    private static readonly Lazy<(Dictionary<(Rule, Outcome), int> Outcomes, Dictionary<RuleVersion, int> Versions, BranchTally Branches)> Tally = new(Count);

    private static IEnumerable<Rule> Required => TheBook.Book.Rules.Where(rule => rule.Body is RuleBody.Require);

    /// <summary>50 of 2,000 jobs, one at least of 200.</summary>
    private static int Least => Math.Max(1, JobCount.Of / 40 * (JobCount.Of >= 2000 ? 1 : 0));

    [Theory]
    [InlineData(Outcome.Ok)]
    [InlineData(Outcome.Correction)]
    [InlineData(Outcome.Open)]
    public void Every_rule_with_a_requirement_comes_out_each_way(object outcome)
    {
        var counts = Required.Select(rule => (Rule: rule.Id, Count: Tally.Value.Outcomes.GetValueOrDefault((rule, (Outcome)outcome)))).OrderBy(one => one.Count).ToList();
        output.WriteLine(string.Join(", ", counts.Take(8).Select(one => $"{one.Rule} {one.Count}")));
        counts.Where(one => one.Count < Least).Should().BeEmpty();
    }

    [Fact]
    public void Every_version_decides_somewhere() => Required.SelectMany(rule => rule.Versions.Select(version => (rule.Id, version)))
        .Where(one => !Tally.Value.Versions.ContainsKey(one.version))
        .Select(one => $"{one.Id}: version at line {one.version.At.Line}")
        .Should().BeEmpty();

    [Fact]
    public void Every_branch_of_an_any_of_decides_somewhere() => Tally.Value.Branches.Never.Should().BeEmpty();

    [Fact]
    public void What_is_told_of_a_room_can_all_be_true()
    {
        var limits = Limit.Of(TheBook.Book);
        var divided = Enumerable.Range(0, JobCount.Of).Count(number => Contradiction.In(Derive.From(Drawn.Of(number, TheBook.Book).Job, TheBook.Book.Vocabulary), limits));

        // True to the mark of the tool; a few pass a limit as read by one way and miss it by another that was read twice.
        output.WriteLine($"{divided} of {JobCount.Of} divided at a limit");
        divided.Should().BeLessThan(JobCount.Of / 20);
    }

    private static (Dictionary<(Rule, Outcome), int>, Dictionary<RuleVersion, int>, BranchTally) Count()
    {
        var (outcomes, versions, branches) = (new Dictionary<(Rule, Outcome), int>(), new Dictionary<RuleVersion, int>(), new BranchTally(TheBook.Book));
        var plans = TheBook.Book.Rules.Select(rule => new RulePlan(rule)).ToList();
        var plain = new PlainEvaluator(TheBook.Book.Rules);
        for (var number = 0; number < JobCount.Of; number++)
        {
            var states = Derive.From(Drawn.Of(number, TheBook.Book).Job, TheBook.Book.Vocabulary);
            var conclusions = plain.Conclude(states);
            foreach (var scene in plans.SelectMany(plan => PlainEvaluator.Scenes(plan, states, conclusions)))
            {
                branches.Count(scene);
                var judgement = Judge.Of(scene);
                outcomes[(scene.Rule, judgement.Now)] = outcomes.GetValueOrDefault((scene.Rule, judgement.Now)) + 1;
                foreach (var version in judgement.Sides.Where(side => side.Outcome is Outcome.Ok or Outcome.Correction).SelectMany(side => side.Versions))
                {
                    versions[version] = versions.GetValueOrDefault(version) + 1;
                }
            }
        }

        return (outcomes, versions, branches);
    }
}
