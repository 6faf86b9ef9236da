namespace WetCheck.Tests.Conventions;

/// <summary>Small files, one idea each. Lines as they stand, blank ones too.</summary>
public sealed class FileSizes
{
    [Fact]
    public void Source_files_are_small()
    {
        var sizes = Sizes(Repository.In("src/", ".cs"));
        Middle(sizes).Should().BeLessThanOrEqualTo(60);
        At(sizes, 0.95).Should().BeLessThanOrEqualTo(220);
        sizes.Where(size => size.Lines > 350).Should().BeEmpty();
    }

    [Fact]
    public void Test_files_are_not_long() =>
        Sizes(Repository.In("tests/", ".cs")).Where(size => size.Lines > 350).Should().BeEmpty();

    [Fact]
    public void Rule_files_are_small()
    {
        var sizes = Sizes(Rules.Files);
        Middle(sizes).Should().BeLessThanOrEqualTo(40);
        sizes.Where(size => size.Lines > 90).Should().BeEmpty();
    }

    private static List<(string File, int Lines)> Sizes(IEnumerable<string> files) =>
        [.. files.Select(file => (file, Repository.Lines(file).Length)).OrderBy(size => size.Length)];

    private static int Middle(List<(string File, int Lines)> sizes) => At(sizes, 0.5);

    private static int At(List<(string File, int Lines)> sizes, double share) => sizes[(int)Math.Ceiling(share * sizes.Count) - 1].Lines;
}
