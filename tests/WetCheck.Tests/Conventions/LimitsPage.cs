using System.Globalization;
using System.Reflection;
using System.Text.RegularExpressions;
using WetCheck.Model;

namespace WetCheck.Tests.Conventions;

/// <summary><c>docs/limits.md</c> has every limit with its number.</summary>
public sealed partial class LimitsPage
{
    [Fact]
    public void Has_every_limit_with_its_number()
    {
        var told = Row().Matches(Repository.Read("docs/limits.md"))
            .ToDictionary(row => row.Groups["name"].Value,
                row => int.Parse(row.Groups["number"].Value, NumberStyles.AllowThousands,
                CultureInfo.InvariantCulture));
        told.Should()
            .BeEquivalentTo(typeof(Limits).GetFields(BindingFlags.Public | BindingFlags.Static)
            .ToDictionary(field => field.Name, field => (int)field.GetRawConstantValue()!));
    }

    [GeneratedRegex(@"^\| (?<number>[\d,]+)[^|]*\| `(?<name>\w+)`", RegexOptions.Multiline)]
    private static partial Regex Row();
}
