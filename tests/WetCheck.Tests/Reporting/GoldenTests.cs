using WetCheck.Model;
using WetCheck.Reporting;
using WetCheck.Tests.Conventions;

namespace WetCheck.Tests.Reporting;

/// <summary>
/// The lists of every example as they are printed, to be read as a setter would. After a change that is meant:
/// <c>WETCHECK_REGENERATE=1 dotnet test --project tests/WetCheck.Tests -- --filter-class '*GoldenTests'</c>, then read the difference.
/// </summary>
public sealed class GoldenTests
{
    private static readonly IReadOnlyDictionary<string, Func<Walk, string>> s_forms = new Dictionary<string, Func<Walk, string>>
    {
        ["txt"] = walk => ScreenText.Of(Listing.Of(walk, "en", Walks.When)),
        ["message.txt"] = walk => PunchPage.Message(walk, "en", Walks.When),
        ["md"] = walk => PunchPage.Markdown(walk, "en", Walks.When),
        ["html"] = walk => PunchPage.Html(walk, "en", Walks.When),
        ["json"] = walk => JsonList.Of(walk, "en", Walks.When),
        ["owner.md"] = walk => PunchPage.Markdown(walk, "en", Walks.When, Reader.Owner),
        ["owner.message.txt"] = walk => PunchPage.Message(walk, "en", Walks.When, Reader.Owner),
        ["helper.txt"] = walk => PunchPage.Message(walk, "both", Walks.When, Reader.Helper),
        ["helper.md"] = walk => PunchPage.Markdown(walk, "both", Walks.When, Reader.Helper),
        ["why.txt"] = walk => string.Join('\n', walk.ToFix.Select(entry => WhyText.Of(walk, entry, "en", Walks.When))),
    };

    /// <summary>Screen and Markdown of each example; of the faulty one every form; the owner's list also where nothing was read.</summary>
    public static TheoryData<string> Lists =>
        [.. Walks.Names.SelectMany(name =>
            s_forms.Keys.Where(form => name == "juniper" || form is "txt" or "md"
            || (name == "five-answers" && form.StartsWith("owner", StringComparison.Ordinal)))
            .Select(form => $"{name}.expected.{form}"))];

    [Theory]
    [MemberData(nameof(Lists))]
    public void A_list_is_as_it_was_read(string file)
    {
        var (name, form) =
            (file[..file.IndexOf('.')],
            file[(file.IndexOf(".expected.", StringComparison.Ordinal) + ".expected.".Length)..]);
        var made = s_forms[form](Walks.Example(name));
        made.Should().Be(KeptFile.Of($"tests/jobs/{file}", made));
    }

    [Fact]
    public void No_list_of_an_example_that_is_gone_is_left() =>
        Repository.In("tests/jobs/", "").Where(file => file.Contains(".expected.", StringComparison.Ordinal))
            .Where(file => !Lists.Any(list => $"tests/jobs/{list.Data}" == file))
            .Should().BeEmpty();
}
