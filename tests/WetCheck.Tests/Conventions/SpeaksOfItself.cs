using System.Text.RegularExpressions;

namespace WetCheck.Tests.Conventions;

/// <summary>The project speaks of wet areas and of itself; nothing in it points at a machine or a tool it was written with.</summary>
public sealed partial class SpeaksOfItself
{
    private static readonly string[] Texts =
        [".md", ".yaml", ".cs", ".html", ".json", ".csproj", ".props", ".sln", ".txt", ".jsonl", ".svg"];

    private static readonly IReadOnlyList<string> Files =
    [
        .. Repository.Files.Where(file =>
            (Texts.Any(ending => file.EndsWith(ending, StringComparison.Ordinal))
            || file.StartsWith(".ci/", StringComparison.Ordinal))
            && Path.GetFileName(file) != "SpeaksOfItself.cs"),
    ];

    [Fact]
    public void No_file_names_a_machine_path_a_registry_or_how_it_was_written() =>
        Repository.LinesWhere(Files, line => Elsewhere().IsMatch(line)).Should().BeEmpty();

    /// <summary>In code a session is what the rules run in.</summary>
    [Fact]
    public void No_text_for_people_speaks_of_sessions() =>
        Repository.LinesWhere(Files.Where(file => !file.EndsWith(".cs", StringComparison.Ordinal)),
            line => Sessions().IsMatch(line)).Should().BeEmpty();

    [Fact]
    public void Text_files_end_their_lines_alike() =>
        Files.Where(file => !file.EndsWith(".sln", StringComparison.Ordinal) && Repository.Read(file)
            .Contains('\r', StringComparison.Ordinal))
            .Where(file => !file.StartsWith("tests/errors/", StringComparison.Ordinal)).Should().BeEmpty();

    [Fact]
    public void The_top_level_holds_only_what_it_should()
    {
        string[] allowed =
            ["README.md", "DEVELOPERS.md", "WetCheck.sln", "Directory.Build.props", "Directory.Packages.props",
            "global.json", "rules", "src", "tests", "docs"];
        Repository.Files.Select(file => file.Split('/')[0]).Distinct().Where(name => !name.StartsWith('.'))
            .Should().BeSubsetOf(allowed);
    }

    [GeneratedRegex(@"/work/|/tmp/|/root/|/home/|[A-Z]:\\Users|\bagents?\b|\bassistant\b|\blanguage model|\bLLM\b|\bworkplace\b|\bpull request|\bissue #|\bthe issue\b|\btickets?\b|nuget\.org|npmjs|pypi\.org|github\.com|localhost:", RegexOptions.IgnoreCase)]
    private static partial Regex Elsewhere();

    [GeneratedRegex(@"\bsessions?\b", RegexOptions.IgnoreCase)]
    private static partial Regex Sessions();
}
