using WetCheck.Reporting;

namespace WetCheck.Tests.Reporting;

/// <summary>A template of a rule book may come from anywhere: it can read its list, and nothing it does is silent or endless.</summary>
public sealed class TemplateTests
{
    [Theory]
    [InlineData("{{ jbo }}", "punch.txt.scriban(1,")]
    [InlineData("{{ words.nothing }}", "punch.txt.scriban(1,")]
    [InlineData("\n{{ for x in }}", "punch.txt.scriban(2,")]
    [InlineData("{{ for x in 1..100000000 }}x{{ end }}", "loop")]
    [InlineData("{{ while true }}{{ end }}", "loop")]
    [InlineData("{{ func f; f; end; f }}", "readonly")]
    [InlineData("{{ include 'x' }}", "punch.txt.scriban(1,")]
    [InlineData("{{ date.now }}", "date")]
    [InlineData("{{ object.eval '1' }}", "object")]
    [InlineData("{{ items = 1 }}", "punch.txt.scriban(1,")]
    public void A_fault_is_told_with_its_place(string template, string told)
    {
        var walk = Walks.Example("juniper");
        var book = walk.Book with { Lists = new Dictionary<string, string> { ["punch.txt"] = template } };
        var fill = () => PunchPage.Message(walk with { Book = book }, "en", "");
        fill.Should().Throw<TemplateException>().Which.Message.ToLowerInvariant().Should().Contain(told);
    }

    [Fact]
    public void A_book_without_the_template_says_so()
    {
        var walk = Walks.Example("juniper");
        var fill = () => PunchPage.Html(walk with { Book = walk.Book with { Lists = new Dictionary<string, string>() } }, "en", "");
        fill.Should().Throw<TemplateException>().WithMessage("rules/lists has no punch.html.scriban.");
    }
}
