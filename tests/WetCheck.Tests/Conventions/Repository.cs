namespace WetCheck.Tests.Conventions;

/// <summary>The files this project is made of, without what a build leaves behind.</summary>
internal static class Repository
{
    private static readonly string[] LeftByBuilds =
        ["bin", "obj", ".git", ".vs", ".idea", "TestResults", "BenchmarkDotNet.Artifacts", "out"];

    public static string Root { get; } = Find();

    /// <summary>Paths from the top, with slashes, in order.</summary>
    public static IReadOnlyList<string> Files { get; } = [.. Under(Root).Select(Name).Order(StringComparer.Ordinal)];

    public static IEnumerable<string> In(string folder, string ending) =>
        Files.Where(file => file.StartsWith(folder, StringComparison.Ordinal) && file.EndsWith(ending, StringComparison.Ordinal));

    public static string Read(string file) => File.ReadAllText(Path.Combine(Root, file));

    public static string[] Lines(string file) => File.ReadAllLines(Path.Combine(Root, file));

    /// <summary><c>file:line: text</c> of each line that a test finds fault with.</summary>
    public static IEnumerable<string> LinesWhere(IEnumerable<string> files, Func<string, bool> fault) =>
        from file in files
        from line in Lines(file).Select((text, index) => (text, number: index + 1))
        where fault(line.text)
        select $"{file}:{line.number}: {line.text.Trim()}";

    private static IEnumerable<string> Under(string folder) => Directory.EnumerateFiles(folder)
        .Concat(Directory.EnumerateDirectories(folder).Where(sub => !LeftByBuilds.Contains(Path.GetFileName(sub))).SelectMany(Under));

    private static string Name(string path) => Path.GetRelativePath(Root, path).Replace('\\', '/');

    private static string Find()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "WetCheck.sln")))
        {
            folder = folder.Parent ?? throw new InvalidOperationException("WetCheck.sln is in none of the folders above the tests.");
        }

        return folder.FullName;
    }
}
