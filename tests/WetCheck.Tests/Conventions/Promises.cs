using System.Text.RegularExpressions;

namespace WetCheck.Tests.Conventions;

/// <summary>The table of <c>docs/promises.md</c> names tests that are there.</summary>
public sealed partial class Promises
{
    private static readonly HashSet<string> s_tests = [.. typeof(Promises).Assembly.GetTypes()
        .Where(type => type.GetMethods().Any(method => method.GetCustomAttributes(inherit: false).Any(one => one is FactAttribute)))
        .Select(type => type.Name)];

    [Fact]
    public void Each_is_held_by_a_test()
    {
        var rows = Repository.Lines("docs/promises.md").Where(line => Row().IsMatch(line)).ToList();
        rows.Should().HaveCount(20);
        foreach (var row in rows)
        {
            var named = Named().Matches(row.Split('|')[^2]).Select(name => name.Groups[1].Value).ToList();
            named.Should().NotBeEmpty(row).And.BeSubsetOf(s_tests, row);
        }
    }

    [GeneratedRegex(@"^\| \d+ \|")]
    private static partial Regex Row();

    [GeneratedRegex("`(\\w+)`")]
    private static partial Regex Named();
}
