namespace WetCheck.Tests.Conventions;

/// <summary>A warning that is turned off says why, where it is turned off.</summary>
public sealed class Suppressions
{
    [Fact]
    public void In_project_files_a_comment_stands_on_the_line_or_above_it()
    {
        foreach (var file in Repository.Files.Where(file => Path.GetExtension(file) is ".csproj" or ".props"))
        {
            var lines = Repository.Lines(file);
            var bare = lines.Where((line, i) => line.Contains("<NoWarn>", StringComparison.Ordinal)
                && !line.Contains("<!--", StringComparison.Ordinal) && (i == 0 || !lines[i - 1].Contains("-->", StringComparison.Ordinal)));
            bare.Should().BeEmpty($"of {file}");
        }
    }

    [Fact]
    public void In_code_the_reason_stands_on_the_line()
    {
        var code = Repository.Files.Where(file => file.EndsWith(".cs", StringComparison.Ordinal)
            && !file.EndsWith("Suppressions.cs", StringComparison.Ordinal));
        Repository.LinesWhere(code, line =>
            (line.Contains("#pragma warning disable", StringComparison.Ordinal) && !line.Contains("//", StringComparison.Ordinal))
            || (line.Contains("SuppressMessage(", StringComparison.Ordinal) && !line.Contains("Justification", StringComparison.Ordinal)))
            .Should().BeEmpty();
    }
}
