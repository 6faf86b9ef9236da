using WetCheck.Engine;

namespace WetCheck.Tests.Tearout;

/// <summary>The smallest sets against every subset there is.</summary>
public sealed class SetsByBruteForce
{
    [Fact]
    public void They_are_the_same_on_200_random_sets_of_findings()
    {
        var random = new Random(41);
        var several = 0;
        for (var trial = 0; trial < 200; trial++)
        {
            var (causes, signs) = (random.Next(1, 13), random.Next(1, 13));
            var of = Enumerable.Range(0, causes)
                .Select(_ => (IReadOnlyList<int>)[.. Enumerable.Range(0, signs).Where(_ => random.Next(4) == 0)])
                .ToList();
            var met = of.SelectMany(one => one).Distinct().Order().ToList();
            of = [.. of.Select(one => (IReadOnlyList<int>)[.. one.Select(sign => met.IndexOf(sign))])];
            var found = SmallestSets.Of(of, met.Count).Select(set => string.Join(',', set)).ToList();
            found.Should().BeEquivalentTo(ByEverySubset(of, met.Count));
            several += found.Count > 1 ? 1 : 0;
        }

        several.Should().BeGreaterThan(20, "else no two ever fitted alike");
    }

    private static List<string> ByEverySubset(List<IReadOnlyList<int>> of, int signs)
    {
        var all = Enumerable.Range(0, 1 << of.Count)
            .Where(subset => signs > 0 && Enumerable.Range(0, signs)
                .All(sign => Enumerable.Range(0, of.Count)
                .Any(cause => (subset >> cause & 1) == 1 && of[cause].Contains(sign))))
            .Select(subset => Enumerable.Range(0, of.Count).Where(cause => (subset >> cause & 1) == 1).ToList()).ToList();
        return [.. all.Where(set => set.Count == all.Min(one => one.Count)).Select(set => string.Join(',', set))];
    }
}
