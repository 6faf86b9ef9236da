using System.Reflection;
using WetCheck.Intake;
using WetCheck.Model;

namespace WetCheck.Fuzz;

/// <summary>Sound texts that inputs are made from, read once.</summary>
internal static class Seeds
{
    public static IReadOnlyList<(string Path, string Text)> BookFiles { get; } =
        [.. Names("rules/").Select(name => (name["rules/".Length..].Replace('\\', '/'), Text(name)))];

    public static RuleBook Book { get; } =
        RuleBookReader.Read(BookFiles).Book ?? throw new InvalidOperationException("The built-in book can't be read.");

    public static string[] Jobs { get; } = Texts("example/");

    public static string[] Locals { get; } = Texts("local/");

    public static string[] Logs { get; } =
    [
        "{\"at\":\"2026-11-25T16:05:00.000-06:00\",\"path\":\"liner.right\",\"read\":\"3\","
            + "\"by\":\"Ana\",\"replaces\":\"juniper.job.yaml:36:10\"}\n"
            + "{\"at\":\"2026-11-25T16:06:00Z\",\"path\":\"nails.left 2\",\"read\":\"none\"}\n",
        "{\"at\":\"2026-11-25T16:05:00Z\",\"path\":\"stage\",\"read\":\"before "
        + "bed\"}\n{\"at\":\"2026-11-25T16:05:01Z\",\"path\":\"floor.levels\",\"read\":\"0,0 3/4  30,18 0\",\"tool\":\"laser\"}\n",
    ];

    public static string[] Levels { get; } =
        ["from left,from entry,up\n0,0,3/4\n60,0,\"0.75\"\n30,18,-1/4\n",
        "from left,from entry,down\n0 mm,0 mm,12 mm\n1500 mm,0 mm,13.5 mm\n"];

    public static string[] Answers { get; } =
    [
        "3-1/4", "3'-6 1/4\"", "60 x 36 finished", "30, 18", "all folded", "none", "left 2 below, 3 above",
            "1/4 per ft", "0,0 60,0 60,36 0,36",
        "60 x 60 less 24 x 24 at right-back", "plan 3 above bed", "over 3", "2 %", "24 h", "IRC 2021",
            "0,0 3/4  60,0 3/4  30,18 0", "42-1/2 strong", "?", "hidden", "film, felt, tile",
    ];

    /// <summary>Names of lines that a log may have.</summary>
    public static string[] Paths { get; } =
        ["liner.right", "nails.left", "nails.seen", "seams.seen", "shower.size", "shower.outline", "shower.drain at",
        "floor.levels", "walls.layers", "stage", "method", "plumbing code", "curb", "nails.left 2", "drain.weeps"];

    /// <summary>A job to answer questions of.</summary>
    public static Job Job { get; } =
        JobReader.Read("fuzz.job.yaml", Jobs[0], Book.Vocabulary).Job
        ?? throw new InvalidOperationException("The example can't be read.");

    private static string[] Texts(string folder) => [.. Names(folder).Select(Text)];

    private static IEnumerable<string> Names(string folder) => Assembly.GetExecutingAssembly().GetManifestResourceNames()
        .Where(name => name.StartsWith(folder, StringComparison.Ordinal)).Order(StringComparer.Ordinal);

    private static string Text(string name)
    {
        using var reader = new StreamReader(Assembly.GetExecutingAssembly().GetManifestResourceStream(name)!);
        return reader.ReadToEnd();
    }
}
