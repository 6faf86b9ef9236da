using WetCheck.Flow;
using WetCheck.Model;
using WetCheck.Proving;

namespace WetCheck.Tests.Proof;

/// <summary>Every rule of the book has all that a rule must have; and where one thing is taken from a rule, that is told.</summary>
public sealed class TheBookProves
{
    private static readonly BookProof Book = new(TheBook.Ready, TheBook.Cases);

    [Fact]
    public void Nothing_is_wanting_in_any_rule() => TheBook.Book.Rules.Select(Book.Prove)
        .SelectMany(proof => proof.Faults.Select(fault => $"{fault.At}: {fault.Says}")
            .Concat(proof.Cases.SelectMany(one => one.Misses.Select(miss => $"{one.Case.At}: {miss}"))))
        .Should().BeEmpty();

    public static TheoryData<string, string> Wanting => new()
    {
        { "no Spanish", "there is no es" },
        { "no fix", "en: fix is missing" },
        { "only in English", "helper stands in one language only" },
        { "a long question", "en: owner: ask has a sentence of 16 words" },
        { "a long fix", "en: fix has a sentence of more than 12 words" },
        { "hard words", "years of school, 7 at most" },
        { "blame", "the owner reads \"careless\"" },
        { "no source", "nobody says so" },
        { "no silent case", "no case in which it stays silent" },
        { "no case on the limit", " may be less by its smallest step and no case notices" },
    };

    [Theory]
    [MemberData(nameof(Wanting))]
    public void What_is_wanting_is_told(string what, string told)
    {
        var rule = TheBook.Book.Rule("liner/turn-up")!;
        var (changed, cases) = Without(what, rule);
        var book = TheBook.Book with { Rules = [.. TheBook.Book.Rules.Select(one => one == rule ? changed : one)] };
        new BookProof(new ReadyBook(book), cases).Prove(changed).Faults.Select(fault => fault.Says)
            .Should().Contain(says => says.Contains(told, StringComparison.Ordinal));
    }

    private static (Rule Rule, IReadOnlyList<RuleCase> Cases) Without(string what, Rule rule)
    {
        var (english, spanish) = (rule.Texts["en"], rule.Texts["es"]);
        var own = TheBook.Cases.Where(one => one.Rule == rule.Id).ToList();
        return what switch
        {
            "no Spanish" => (rule with { Texts = new Dictionary<string, RuleTexts> { ["en"] = english } }, own),
            "no fix" => (In(english with { Fix = "" }), own),
            "only in English" => (In(english with { Helper = english.Helper.Length > 0 ? "" : "Call the lead." }), own),
            "a long question" => (In(english with { Ask = string.Join(' ', Enumerable.Repeat("so", 16)) + "?" }), own),
            "a long fix" => (In(english with { Helper = "", Fix = string.Join(' ', Enumerable.Repeat("so", 13)) + "." }), own),
            "hard words" =>
                (In(english with
                {
                    Good = "Verification of elevations of waterproofing terminations is recommended "
                    + "prior to installation."
                }), own),
            "blame" => (In(english with { Seen = "A careless cut." }), own),
            "no source" => (rule with { Rows = [], Versions = [.. rule.Versions.Select(version => version with { Rows = [] })] }, own),
            "no silent case" =>
                (rule, [.. own.Where(one =>
                one.Expect.Values.Any(said => said is not ("ok" or "not-here" or "silent" or "no")))]),
            _ => (rule, [.. own.Take(1)]),
        };

        Rule In(RuleTexts texts) => rule with { Texts = new Dictionary<string, RuleTexts> { ["en"] = texts, ["es"] = spanish } };
    }
}
