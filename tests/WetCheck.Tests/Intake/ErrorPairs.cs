using System.Globalization;
using System.Text.RegularExpressions;
using WetCheck.Intake;
using WetCheck.Model;
using WetCheck.Tests.Conventions;
using WetCheck.Tests.Reporting;
using Path = System.IO.Path;

namespace WetCheck.Tests.Intake;

/// <summary>
/// <c>tests/errors</c>: each code of a problem has a file that has it, and the page that is to come of it. WETCHECK_REGENERATE=1 writes the
/// pages anew; read the difference as the person who typed the file would.
/// </summary>
public sealed partial class ErrorPairs
{
    private const string Folder = "tests/errors/";

    public static TheoryData<string> Typed =>
        [.. Repository.Files.Where(file => file.StartsWith(Folder, StringComparison.Ordinal)
        && !file.EndsWith(".expected.txt", StringComparison.Ordinal))];

    [Theory]
    [MemberData(nameof(Typed))]
    public void A_file_gives_its_page(string file)
    {
        var code = Path.GetFileName(file).Split('.')[0];
        var problems = Read(file);
        var page = ProblemPage.Of(problems);
        problems.Select(problem => problem.Code).Should().Contain(code);
        page.Should().Be(KeptFile.Of($"{Folder}{code}.expected.txt", page));
    }

    [Fact]
    public void Every_code_has_a_pair()
    {
        var sources = Repository.In("src/WetCheck.Intake/Messages/", ".cs").Append("src/WetCheck.Intake/Tape/Faults.cs");
        var codes = sources.SelectMany(file => Code().Matches(Repository.Read(file))).Select(match => match.Groups[1].Value).Distinct();
        codes.Except(Typed.Select(row => Path.GetFileName(row.Data).Split('.')[0])).Should().BeEmpty();
    }

    [Theory]
    [MemberData(nameof(Typed))]
    public void A_message_is_short_and_gives_a_way_out(string file)
    {
        foreach (var problem in Read(file))
        {
            problem.Say.Length.Should().BeLessThanOrEqualTo(280);
            problem.Say.Should().MatchRegex(WayOut().ToString(), problem.Code);
            problem.Say.Should().NotMatchRegex(@"(?i)\b(invalid|please|sorry|error)\b")
                .And.NotMatchRegex(@"(?i)(?<![""\w-])right(?![""\w]|[,:]| jamb| wall)");
        }
    }

    private static IReadOnlyList<Problem> Read(string file)
    {
        var text = Repository.Read(file);
        return Path.GetFileName(file).Split('.')[1] switch
        {
            "job" => JobReader.Read(Path.GetFileName(file), text, BookText.Vocabulary).Problems,
            "local" => LocalBook.Of(TheBook.Book, "maple.job.yaml", $"local: {Path.GetFileName(file)}", _ => text).Problems,
            "nolocal" => LocalBook.Of(TheBook.Book, Path.GetFileName(file), text, _ => null).Problems,
            "change" => JobChange.Apply(BookText.Job("units: inches"), BookText.Vocabulary, text.TrimEnd('\n'))
                .Problem is { } problem ? [problem] : [],
            "log" => LogReader.Read("juniper.log.jsonl", text).Problems,
            "answer" => JobLog.Apply(BookText.Job("units: inches\nnails:\n  left: 3 above\n"), BookText.Vocabulary,
                LogReader.Read("juniper.log.jsonl", text).Answers).Problems,
            "levels" => LevelFile.Apply(BookText.Job("units: inches\nfloor:\n  levels: 0,0 3/4  30,18 0\n"),
                BookText.Vocabulary, Path.GetFileName(file), text).Problems,
            "repeat" => JobReader.Read("long.job.yaml", Repeated(text), BookText.Vocabulary).Problems,
            "manyanswers" => LogReader.Read("juniper.log.jsonl", Repeated(text)).Problems,
            "manylevels" =>
                LevelFile.Apply(BookText.Job("units: inches"), BookText.Vocabulary, "juniper.levels.csv",
                "from left,from entry,up\n" + Repeated(text)).Problems,
            "files" => BookText.With(Parted(text)).Problems,
            var sort => BookText.With([(PathOf(sort), text)]).Problems,
        };
    }

    /// <summary>How often, and what: too long to be kept as it is. In it <c>{n}</c> is how many stand before.</summary>
    private static string Repeated(string text)
    {
        var count = text.IndexOf('\n', StringComparison.Ordinal);
        return string.Concat(Enumerable.Range(0, int.Parse(text[..count], CultureInfo.InvariantCulture))
            .Select(n => text[(count + 1)..].Replace("{n}", $"{n}", StringComparison.Ordinal)));
    }

    /// <summary>Several files in one, each below <c>=== its/path.yaml</c>.</summary>
    private static List<(string, string)> Parted(string text) =>
        [.. text.Split("=== ", StringSplitOptions.RemoveEmptyEntries)
            .Select(part =>
            (part[..part.IndexOf('\n', StringComparison.Ordinal)],
            part[(part.IndexOf('\n', StringComparison.Ordinal) + 1)..]))];

    /// <summary>Where a file of this sort would stand in a rule book.</summary>
    private static string PathOf(string sort) => sort switch
    {
        "rule" => "floor/example.yaml",
        "cases" => "floor/example.cases.yaml",
        "vocabulary" => "vocabulary/kinds/9-example.yaml",
        "method" => "methods/example.yaml",
        "book" => "book.yaml",
        "stray" => "floor/rules/example.yaml",
        _ => throw new ArgumentOutOfRangeException(nameof(sort), sort, "no such sort of file"),
    };

    [GeneratedRegex(@"(?:Stops|Blanks|Asks|HashCode =|new)\(?\s*""([a-z]+(?:-[a-z]+)*)""")]
    private static partial Regex Code();

    [GeneratedRegex(@"[Ww]rite|Use|Put|Line it up|Delete|Close|Leave|Nearest|Known|Mend|Make|Give|Take|Start|Keep|Add|Name|OK\?|meant\?|Which is it\?|good as it is\?|say above what|of these|Rules stand|One |Units:|starts with it")]
    private static partial Regex WayOut();
}
