using System.Text.RegularExpressions;

namespace WetCheck.Tests.Conventions;

/// <summary>A rule is two files: itself and its cases. Its name is its path, its number its chapter's.</summary>
public sealed class TwoFilesARule
{
    private static readonly Dictionary<string, int[]> Series = new()
    {
        ["floor"] = [1],
        ["drain"] = [2],
        ["curb"] = [2],
        ["liner"] = [2],
        ["walls"] = [3],
        ["membranes"] = [4],
        ["setting"] = [5],
        ["joints"] = [5],
        ["structure"] = [1],
        ["fixtures"] = [6],
        ["air"] = [6],
        ["access"] = [6],
        ["power"] = [7],
        ["hazards"] = [8],
        ["local"] = [9],
    };

    [Fact]
    public void Each_rule_has_its_cases_and_each_cases_file_its_rule()
    {
        var cases = Repository.In("rules/", ".cases.yaml").ToList();
        Rules.Files.Select(Rules.CasesOf).Should().BeEquivalentTo(cases);
    }

    [Fact]
    public void Each_rule_is_named_by_its_path_and_numbered_in_its_chapters_series()
    {
        foreach (var file in Rules.Files)
        {
            var text = Repository.Read(file);
            var path = file["rules/".Length..^".yaml".Length];
            Regex.Match(text, @"^rule:\s*(\S+)", RegexOptions.Multiline).Groups[1].Value.Should().Be(path);
            var number =
                int.Parse(Regex.Match(text, @"^number:\s*(\d+)", RegexOptions.Multiline).Groups[1].Value,
                System.Globalization.CultureInfo.InvariantCulture);
            Series.Should().ContainKey(path.Split('/')[0]);
            Series[path.Split('/')[0]].Should().Contain(number / 100, $"of {file}");
        }
    }
}
