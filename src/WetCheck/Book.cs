using WetCheck.Asking;
using WetCheck.Flow;
using WetCheck.Intake;
using WetCheck.Model;
using WetCheck.Proving;
using WetCheck.Reporting;

namespace WetCheck;

/// <summary>A rule book, made ready to hold rooms against. It doesn't change, and may be used from several threads.</summary>
public sealed class Book
{
    private readonly string _folder;
    private readonly Lazy<IReadOnlyList<RuleCase>> _cases;

    internal Book(ReadyBook ready, string folder, Lazy<IReadOnlyList<RuleCase>> cases)
    {
        (Ready, _folder, _cases) = (ready, folder, cases);
    }

    /// <summary>The one that the program was built with.</summary>
    public static Book BuiltIn { get; } = new(BuiltInBook.Ready, "rules", new(() => BuiltInBook.Cases));

    internal ReadyBook Ready { get; }

    internal RuleBook Rules => Ready.Book;

    /// <summary>Reads the files of a folder that is a rule book.</summary>
    /// <param name="files">With their paths within it, <c>liner/turn-up.yaml</c>, and their texts.</param>
    /// <param name="folder">Its name, for places in messages.</param>
    /// <param name="tell">Hears what can't be read.</param>
    /// <exception cref="RefusedException">There is no book in it that can be used.</exception>
    public static Book Read(IReadOnlyList<(string Path, string Text)> files, string folder, Action<Told> tell)
    {
        var (book, cases, problems) = RuleBookReader.Read(files);
        foreach (var problem in problems)
        {
            tell(Told.About(problem with { At = In(folder, problem.At) }));
        }

        return book is not null ? new Book(new ReadyBook(book), folder, new(() => cases))
            : throw new RefusedException(RefusedAs.Unreadable, "The rule book can't be used as it stands. Nothing checked.");
    }

    /// <summary>The rules by chapter, with how sure their sources are.</summary>
    public string List() => RuleList.Of(Rules, _cases.Value);

    /// <summary>Every rule with its limits and sources, in Markdown.</summary>
    public string Page() => RulePage.Of(Rules);

    /// <summary>The codes that the book knows.</summary>
    public string Codes() => CodeList.Of(Rules);

    /// <summary>What differs between two code families, <c>IRC</c> and <c>UPC</c>.</summary>
    /// <exception cref="RefusedException">The book knows no such code.</exception>
    public string Compare(string code, string other) => CodeList.Compare(Rules, Family(code), Family(other));

    /// <summary>What local changes did to this book.</summary>
    public string Changes(Book local) => CodeList.Local(Rules, local.Rules);

    /// <summary>What stands behind a rule.</summary>
    /// <param name="rule">Its name or its number: <c>liner/turn-up</c>, <c>214</c>.</param>
    /// <exception cref="RefusedException">There is none.</exception>
    public string Why(string rule) => WhyText.Of(Rules, Named.Rule(Rules, rule), Languages.English);

    /// <summary>The JSON Schema of a job file, for editors.</summary>
    public string Schema() => JobSchema.Of(Rules.Vocabulary);

    /// <summary>Holds rules to all that a rule must be.</summary>
    /// <param name="which">A chapter or a rule; null: every rule.</param>
    /// <exception cref="RefusedException">The book has no such rule.</exception>
    public (string Text, bool Holds) Prove(string? which)
    {
        var chosen = which is null ? Rules.Rules : [.. Rules.Rules.Where(rule => rule.Id == which || rule.Chapter == which)];
        return chosen.Count == 0 ? throw Named.NoCases(which ?? "any rule", Rules)
            : ProofText.Of(chosen.Select(new BookProof(Ready, _cases.Value).Prove), _folder);
    }

    /// <summary>The two files that a new rule starts with: the rule, and its cases.</summary>
    /// <param name="rule">Its chapter and its name: <c>local/curb-width</c>.</param>
    /// <exception cref="RefusedException">The name is none, or the book has no such chapter.</exception>
    public (int Number, string Rule, string Cases) NewRule(string rule)
    {
        var number = Named.NewRule(Rules, rule);
        var (text, cases) = RuleStart.Files(Rules, rule, number);
        return (number, text, cases);
    }

    /// <summary>Two books are told apart by what they are, not by when they were opened.</summary>
    internal Book With(RuleBook changed) => ReferenceEquals(changed, Rules) ? this : new Book(new ReadyBook(changed), _folder, _cases);

    internal static At In(string folder, At at) => at with { File = $"{folder.TrimEnd('/')}/{at.File}" };

    private string Family(string typed)
    {
        var families =
            Rules.Vocabulary.Disciplines.SelectMany(discipline => discipline.Families).Select(family => family.Name)
            .Distinct().ToList();
        return families.Find(family => string.Equals(family, typed, StringComparison.OrdinalIgnoreCase))
            ?? throw Named.NoCode(typed, families);
    }
}
