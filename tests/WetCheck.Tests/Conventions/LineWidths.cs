namespace WetCheck.Tests.Conventions;

/// <summary>
/// A line can be read without moving the page: 140 signs at most, 19 of 20 have 120 at most. Texts between three quotes
/// and patterns stay whole.
/// </summary>
public sealed class LineWidths
{
    private const int Most = 140;
    private const int Wide = 120;

    public static TheoryData<string> Roots => ["src/", "tests/"];

    [Theory]
    [MemberData(nameof(Roots))]
    public void None_is_wider_than_a_page_and_few_are_wide(string root)
    {
        var lines = Repository.In(root, ".cs").SelectMany(Code).ToList();
        lines.Where(line => line.Text.Length > Most && !line.Text.Contains("GeneratedRegex(", StringComparison.Ordinal))
            .Select(line => line.Where).Should().BeEmpty();
        (lines.Count(line => line.Text.Length > Wide) / (double)lines.Count).Should().BeLessThanOrEqualTo(0.05);
    }

    /// <summary>Without texts between three quotes.</summary>
    private static IEnumerable<(string Where, string Text)> Code(string file)
    {
        var isText = false;
        foreach (var (text, number) in Repository.Lines(file).Select((text, at) => (text, at + 1)))
        {
            if (!isText)
            {
                yield return ($"{file}:{number}", text);
            }

            isText ^= (text.Split("\"\"\"").Length - 1) % 2 == 1;
        }
    }
}
