using System.Text.RegularExpressions;
using WetCheck.Model;
using WetCheck.Reporting;
using WetCheck.Tests.Conventions;

namespace WetCheck.Tests.Reporting;

/// <summary>
/// The pages of <c>docs/lists</c>, for those who install nothing. After a change that is meant:
/// <c>WETCHECK_REGENERATE=1 dotnet test --project tests/WetCheck.Tests -- --filter-class '*ReadyPages'</c>.
/// </summary>
public sealed partial class ReadyPages
{
    private const string Folder = "docs/lists/";

    private static readonly IReadOnlyDictionary<string, Func<string>> s_pages = Lists().ToDictionary(page => page.File, page => page.Make);

    public static TheoryData<string> Pages => [.. s_pages.Keys];

    [Theory]
    [MemberData(nameof(Pages))]
    public void A_page_is_as_the_program_writes_it(string file)
    {
        var made = s_pages[file]();
        made.Should().Be(KeptFile.Of(Folder + file, made));
    }

    [Fact]
    public void The_index_leads_to_each_page_once_and_to_nothing_else() =>
        Link().Matches(Repository.Read(Folder + "index.html")).Select(link => link.Groups[1].Value)
            .Should().BeEquivalentTo(s_pages.Keys);

    [Fact]
    public void No_page_is_left_of_what_is_gone() =>
        Repository.In(Folder, "").Select(file => file[Folder.Length..]).Should().BeEquivalentTo([.. s_pages.Keys, "index.html"]);

    private static IEnumerable<(string File, Func<string> Make)> Lists() =>
    [
        .. from example in Walks.Names
           from reader in Readers.Typed
           select ($"{example}.{reader}.html", (Func<string>)(() => Page(Walks.Example(example), Readers.Of(reader)))),
        .. from method in TheBook.Book.Vocabulary.Methods
           select ($"ask-to-see.{Named(method)}.html",
               (Func<string>)(() =>
               Page(TheBook.Walk($"job: Any bath\nmethod: {method.Name}\nunits: inches\n"), Reader.Owner))),
        .. from method in TheBook.Book.Vocabulary.Methods
           from language in new[] { "en", "es" }
           select ($"answers.{Named(method)}.{language}.html", (Func<string>)(() => AnswerSheet.Html(TheBook.Book, method, language))),
    ];

    private static string Named(Method method) => method.Name.Replace(' ', '-');

    private static string Page(Walk walk, Reader reader) => PunchPage.Html(walk, Readers.Language(reader), Walks.When, reader);

    [GeneratedRegex("href=\"([^\"#]+)\"")]
    private static partial Regex Link();
}
