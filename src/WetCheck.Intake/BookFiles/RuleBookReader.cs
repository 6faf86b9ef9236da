using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Reads the files of a rule book. Their paths count from the folder of the book: <c>liner/turn-up.yaml</c>.</summary>
public static class RuleBookReader
{
    /// <summary>How the name of a file of cases ends.</summary>
    public const string Cases = ".cases.yaml";

    private const string Yaml = ".yaml";
    private const string Template = ".scriban";

    private static readonly string[] s_folders = ["vocabulary", "methods", "words", "lists", "causes"];

    /// <summary>The book and its cases; no book where there is any problem, which names file, line and column.</summary>
    public static (RuleBook? Book, IReadOnlyList<RuleCase> Cases,
        IReadOnlyList<Problem> Problems) Read(IReadOnlyList<(string Path, string Text)> files)
    {
        var problems = new ProblemList();
        var shelf = new Shelf(files, problems);
        var vocabulary = ReadVocabulary(shelf, problems);
        if (problems.Any)
        {
            return (null, [], problems.InOrder());
        }

        var rules = new List<Rule>();
        var cases = new List<RuleCase>();
        foreach (var path in shelf.Paths.Where(IsOfChapter))
        {
            if (path.Split('/').Length != 2)
            {
                problems.Add(new At(path, 1, 1), Messages.StrayFile(path));
            }
            else if (shelf.Root(path) is not { } root)
            {
                problems.Add(new At(path, 1, 1), Messages.Absent(path));
            }
            else if (path.EndsWith(Cases, StringComparison.Ordinal))
            {
                cases.AddRange(CaseReader.Read(path[..^Cases.Length], shelf.Source(path), root, problems));
            }
            else if (new RuleReader(vocabulary, problems).Read(path[..^Yaml.Length], root) is { } rule)
            {
                rules.Add(rule);
            }
        }

        var book = BookOf(shelf, vocabulary, rules, problems);
        BookChecks.Run(book, cases, hasSources: shelf.Has("sources.yaml"), problems);
        BookChecks.Causes(book, hasSources: shelf.Has("sources.yaml"), problems);
        return (problems.Any ? null : book, cases, problems.InOrder());
    }

    /// <summary>The vocabulary alone: of a book that is not whole yet.</summary>
    public static (Vocabulary Vocabulary, IReadOnlyList<Problem> Problems) ReadVocabulary(IReadOnlyList<(string Path, string Text)> files)
    {
        var problems = new ProblemList();
        var vocabulary = ReadVocabulary(new Shelf(files, problems), problems);
        return (vocabulary, problems.InOrder());
    }

    private static Vocabulary ReadVocabulary(Shelf shelf, ProblemList problems)
    {
        var vocabulary = VocabularyReader.Read(shelf.Roots("vocabulary/"), shelf.Roots("methods/"), problems);
        if (!problems.Any)
        {
            VocabularyChecks.Run(vocabulary, problems);
        }

        return vocabulary;
    }

    private static RuleBook BookOf(Shelf shelf, Vocabulary vocabulary, List<Rule> rules, ProblemList problems)
    {
        var causes = new CauseReader(vocabulary, problems);
        var fields = Fields.Of(shelf.Root("book.yaml"), problems);
        if (fields is null)
        {
            problems.Add(new At("book.yaml", 1, 1), Messages.Absent("book.yaml"));
        }

        var retired =
            fields?.Texts("retired numbers").Select(text => RuleNumber.Read(text, problems)).Where(number => number > 0)
            .ToList() ?? [];
        var words = shelf.Paths.Where(path => path.StartsWith("words/", StringComparison.Ordinal))
            .ToDictionary(path => path["words/".Length..^Yaml.Length],
                path => WordsReader.Read(shelf.Root(path), problems), StringComparer.Ordinal);
        var book = new RuleBook(
            fields?.Need("name") ?? "",
            fields?.Need("date") ?? "",
            vocabulary,
            [.. rules.Select(rule => HelperWords.Fill(rule, words)).OrderBy(rule => rule.Number)],
            SourcesReader.Read(shelf.Root("sources.yaml"), problems),
            retired,
            words,
            shelf.Raw.Where(file => file.Path.StartsWith("lists/", StringComparison.Ordinal))
                .ToDictionary(file => TemplateName(file.Path["lists/".Length..]), file => file.Text, StringComparer.Ordinal))
        {
            Materials = MaterialsReader.Read(shelf.Root("materials.yaml"), problems),
            Causes = [.. shelf.Paths.Where(path => path.StartsWith("causes/", StringComparison.Ordinal))
                .Select(path => causes.Read(path["causes/".Length..^Yaml.Length], shelf.Root(path))).OfType<Cause>()
                    .OrderBy(cause => cause.Number, StringComparer.Ordinal)],
            Opening = causes.Opening(shelf.Root("opening.yaml")),
        };
        fields?.Done();
        return book;
    }

    private static string TemplateName(string path) => path.EndsWith(Template, StringComparison.Ordinal) ? path[..^Template.Length] : path;

    private static bool IsOfChapter(string path) =>
        path is not ("book.yaml" or "sources.yaml" or "materials.yaml" or "opening.yaml")
            && !s_folders.Contains(path.Split('/')[0], StringComparer.Ordinal);
}
