namespace WetCheck.Tests.Conventions;

/// <summary>The guide for developers stays one page.</summary>
public sealed class OnePage
{
    [Fact]
    public void The_guide_is_at_most_120_lines() => Repository.Lines("DEVELOPERS.md").Should().HaveCountLessThanOrEqualTo(120);

    [Fact]
    public void Each_path_the_documents_name_is_there()
    {
        var documents =
            Repository.Files.Where(file => file.EndsWith(".md", StringComparison.Ordinal)
            && !file.StartsWith("tests/", StringComparison.Ordinal));
        var gone = from file in documents
                   from System.Text.RegularExpressions.Match link in
                       System.Text.RegularExpressions.Regex.Matches(Repository.Read(file), @"\]\(([^)#:]+)\)")
                   let path = Path.GetFullPath(Path.Combine(Repository.Root, Path.GetDirectoryName(file)!, link.Groups[1].Value))
                   where !Path.Exists(path)
                   select $"{file}: {link.Groups[1].Value}";
        gone.Should().BeEmpty();
    }
}
