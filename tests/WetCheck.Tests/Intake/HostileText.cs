using System.Text;
using WetCheck.Intake;
using WetCheck.Model;
using WetCheck.Tests.Conventions;

namespace WetCheck.Tests.Intake;

/// <summary>Any text in: a job or located messages, never a crash, never a wait.</summary>
public sealed class HostileText
{
    private static readonly string Whole = Repository.Read("docs/examples/juniper.job.yaml");

    [Fact]
    public void A_file_cut_off_after_any_character()
    {
        for (var length = 0; length <= Whole.Length; length += Depth.Of(daily: 5, deep: 1, night: 1))
        {
            Read(Whole[..length]);
        }
    }

    [Fact]
    public void A_file_without_one_of_its_characters()
    {
        for (var at = 0; at < Whole.Length; at += Depth.Of(daily: 7, deep: 2, night: 1))
        {
            Read(Whole.Remove(at, 1));
        }
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void A_file_with_signs_thrown_in(int seed)
    {
        var random = new Random(seed);
        const string signs = ":#-?|>&*!%@`'\"{}[],\t\n\r \u00a0\u2028\u0085\ufeff\ud800½″−0/+";
        for (var i = 0; i < 400; i++)
        {
            var text = new StringBuilder(Whole);
            for (var n = random.Next(1, 6); n > 0; n--)
            {
                text.Insert(random.Next(text.Length), signs[random.Next(signs.Length)]);
            }

            Read(text.ToString());
        }
    }

    [Theory]
    [InlineData(4)]
    [InlineData(5)]
    public void Random_bytes(int seed)
    {
        var random = new Random(seed);
        for (var i = 0; i < 400; i++)
        {
            var bytes = new byte[random.Next(1, 3000)];
            random.NextBytes(bytes);
            Read(i % 2 == 0 ? Encoding.UTF8.GetString(bytes) : Encoding.Latin1.GetString(bytes));
        }
    }

    [Theory]
    [InlineData("[", 500_000)]
    [InlineData("{a: ", 200_000)]
    [InlineData("- ", 400_000)]
    [InlineData("a:\n ", 200_000)]
    [InlineData("a: {b: 1}\n", 90_000)]
    [InlineData("- {a: 1}\n", 99_000)]
    [InlineData("\"", 900_000)]
    [InlineData("\t", 900_000)]
    [InlineData("x:y\n", 200_000)]
    [InlineData("curb: {\n", 100_000)]
    [InlineData("&a *a ", 150_000)]
    [InlineData("? ", 400_000)]
    [InlineData("\u0001", 900_000)]
    [InlineData("liner:\n  left: 1\n   right: 2\n", 30_000)]
    [InlineData("nails: 1, ", 90_000)]
    [InlineData("x", 10_000_000)]
    public void Much_of_one_thing_is_answered_soon(string text, int times)
    {
        var watch = System.Diagnostics.Stopwatch.StartNew();
        var problems = Read(string.Concat(Enumerable.Repeat(text, times)));
        problems.Should().NotBeEmpty();
        watch.Elapsed.Should().BeLessThan(TimeSpan.FromSeconds(20), "the limits hold on a slow machine too");
    }

    [Fact]
    public void One_line_of_a_hundred_thousand_items_is_answered_soon() =>
        Read("units: inches\nnails:\n  left: " + string.Join(", ", Enumerable.Repeat("3 above", 60_000))).Count.Should()
            .BeLessThanOrEqualTo(101);

    [Fact]
    public void A_book_of_broken_files_has_problems_and_no_book()
    {
        foreach (var text in new[] { "", "[", "rule: [", "a: b: c", "- 1", "\u0000", "rule: floor/x\nnumber: 1\npart: curb\nwhen: [1]" })
        {
            var (book, _, problems) = BookText.With([("floor/x.yaml", text)]);
            book.Should().BeNull(text);
            problems.Should().NotBeEmpty(text);
        }
    }

    [Theory]
    [InlineData("vocabulary/kinds/4-liner.yaml")]
    [InlineData("vocabulary/codes.yaml")]
    [InlineData("methods/liner-under-mortar.yaml")]
    [InlineData("liner/turn-up.yaml")]
    [InlineData("liner/turn-up.cases.yaml")]
    [InlineData("words/en.yaml")]
    public void A_book_with_a_file_cut_off(string path)
    {
        var text = BookText.Files.Single(file => file.Path == path).Text;
        for (var length = 0; length < text.Length; length += 1 + (text.Length / Depth.Of(daily: 6, deep: 25, night: 400)))
        {
            var (book, _, problems) = BookText.With([(path, text[..length])]);
            Assert.True(book is not null || problems.Count > 0);
        }
    }

    /// <summary>Each problem has its place within the file, the line as typed there, and something to say.</summary>
    private static IReadOnlyList<Problem> Read(string text)
    {
        var (job, problems) = JobReader.Read("hostile.job.yaml", text, BookText.Vocabulary);
        var lines = text.TrimStart('\uFEFF').Split(["\r\n", "\n", "\r"], StringSplitOptions.None);
        var lost = problems.Where(problem => problem.Say.Length == 0 || problem.At.Line < 1
            || problem.At.Line > lines.Length || problem.At.Column < 1
            || problem.At.Column > lines[problem.At.Line - 1].Length + 2
                || !VisibleText.Of(lines[problem.At.Line - 1]).StartsWith(problem.Typed, StringComparison.Ordinal));
        Assert.Empty(lost);
        Assert.Equal(job is null, problems.Any(problem => problem.Effect == Effect.Stops));
        return problems;
    }
}
