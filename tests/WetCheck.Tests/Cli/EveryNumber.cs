using System.Text.Json;
using System.Text.RegularExpressions;
using WetCheck.Asking;
using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck.Tests.Cli;

/// <summary><c>why</c> answers each number that a list prints.</summary>
public sealed partial class EveryNumber
{
    [Theory]
    [InlineData("juniper")]
    [InlineData("juniper-made-right")]
    [InlineData("five-answers")]
    [InlineData("banksia")]
    public void Of_the_list_for_programs(string job)
    {
        var walk = TheBook.Walk(TheBook.Example(job));
        using var list = JsonDocument.Parse(JsonList.Of(walk, "en", ""));
        var numbers = Numbers(list.RootElement).Distinct().ToList();
        numbers.Should().NotBeEmpty();
        numbers.Where(number => !IsAnswered(walk, number)).Should().BeEmpty();
    }

    [Theory]
    [InlineData("322-1")]
    [InlineData("221-other")]
    [InlineData("221-OTHER")]
    public void Of_members_too(string number)
    {
        using var desk = new Desk();
        var ran = desk.Run("why", "juniper", number);
        ran.Messages.Should().BeEmpty();
        ran.Results.Should().StartWith(number.Split('-')[0]);
    }

    [Fact]
    public void Of_the_lists_for_people()
    {
        using var desk = new Desk();
        var walk = TheBook.Walk(TheBook.Example("juniper"));
        foreach (var said in new[] { desk.Run("walk", "juniper", "--all"), desk.Run("punch", "juniper"),
            desk.Run("punch", "juniper", "--for", "owner") })
        {
            Number().Matches(said.Results).Select(match => match.Value).Distinct()
                .Where(number => !IsAnswered(walk, number)).Should().BeEmpty();
        }
    }

    private static bool IsAnswered(Walk walk, string number) =>
        Numbered.Find(walk, number) is not null || Numbered.Shown(walk, number) is not null;

    private static IEnumerable<string> Numbers(JsonElement at) => at.ValueKind switch
    {
        JsonValueKind.Object => at.EnumerateObject().SelectMany(one => one.Name is "number" ? [one.Value.GetString()!]
            : one.Name is "also" or "settles" or "bears" or "bears_on" && one.Value.ValueKind == JsonValueKind.Array
                && one.Value.EnumerateArray().All(number => number.ValueKind == JsonValueKind.String)
                ? one.Value.EnumerateArray().Select(number => number.GetString()!) : Numbers(one.Value)),
        JsonValueKind.Array => at.EnumerateArray().SelectMany(Numbers),
        _ => [],
    };

    /// <summary>214-D, 226-CD: a number of a rule and the letters of a place.</summary>
    [GeneratedRegex(@"\b\d{3}-[A-D]{1,4}\d{0,2}\b")]
    private static partial Regex Number();
}
