using WetCheck.Model;

namespace WetCheck.Tests.Tearout;

/// <summary>Each cause of the book on a job with exactly what it needs and what supports it, and on one with a contradiction.</summary>
public sealed class EachCause
{
    public static TheoryData<string> Numbers => [.. TheBook.Book.Causes.Select(cause => cause.Number)];

    [Fact]
    public void There_are_forty_and_more() => TheBook.Book.Causes.Count.Should().BeGreaterThanOrEqualTo(40);

    [Theory]
    [MemberData(nameof(Numbers))]
    public void With_its_needs_and_supports_it_is_named_alone_or_among_equals(string number)
    {
        var report = OldJobs.Read(Fitting(number));
        report.InSome.Select(cause => cause.Cause.Number).Should().Contain(number);
        report.Sets.Should().Contain(set => set.Count == 1 && set[0].Cause.Number == number, "alone it accounts for all");
        report.Leftover.Should().BeEmpty();
    }

    [Theory]
    [MemberData(nameof(Numbers))]
    public void With_any_of_its_contradictions_it_is_not_named(string number)
    {
        foreach (var against in Of(number).Contradicts)
        {
            var lines = Fitting(number);
            OldJobs.Meet(against, lines);
            var report = OldJobs.Read(lines);
            report.InSome.Select(cause => cause.Cause.Number).Should().NotContain(number, against.ToString());
            report.Causes.Single(cause => cause.Cause.Number == number).Fit.Should().Be(Fit.RuledOut);
        }

        Of(number).Contradicts.Should().NotBeEmpty();
    }

    [Theory]
    [MemberData(nameof(Numbers))]
    public void Without_one_of_its_needs_it_only_may_be(string number)
    {
        var cause = Of(number);
        foreach (var left in cause.Needs)
        {
            var lines = new Dictionary<string, string>();
            cause.Given.Concat(cause.Needs.Where(need => need != left)).Concat(cause.Supports).ToList()
                .ForEach(one => OldJobs.Meet(one, lines));
            var without = new Dictionary<string, string>();
            OldJobs.Meet(left, without);
            without.Keys.ToList().ForEach(key => lines.Remove(key));
            if (lines.Count > 0)
            {
                OldJobs.Read(lines).Causes.Single(one => one.Cause.Number == number).Fit.Should()
                    .BeOneOf(Fit.MayBe, Fit.Unseen, AnotherWay(left, lines));
            }
        }
    }

    /// <summary>
    /// Every line of the book on which a cause stands can be typed, and every guard, row and sentence is there in both
    /// languages.
    /// </summary>
    [Fact]
    public void Each_is_whole()
    {
        foreach (var cause in TheBook.Book.Causes)
        {
            new[] { cause.Name, cause.How, cause.Next }.Should()
                .OnlyContain(words => words.En.Length > 0 && words.Es!.Length > 0, cause.Id);
            cause.Guards.Should().NotBeEmpty(cause.Id);
            cause.Rows.Should().NotBeEmpty(cause.Id);
        }

        TheBook.Book.Causes.Select(cause => cause.Number).Should().OnlyHaveUniqueItems();
    }

    /// <summary>A need that names two signs may be met by the other one, which supports tell as well.</summary>
    private static Fit AnotherWay(Condition left, Dictionary<string, string> lines) =>
        left is Condition.AnyOf any
            && any.Of.OfType<Condition.Is>()
            .Any(test => lines.GetValueOrDefault($"{test.Path.Kind ?? "old work"}.{test.Path.Reading.Name}") is { } said
            && test.OneOf.Contains(said)) ? Fit.Fits : Fit.MayBe;

    private static Cause Of(string number) => TheBook.Book.Causes.Single(cause => cause.Number == number);

    private static Dictionary<string, string> Fitting(string number)
    {
        var lines = new Dictionary<string, string>();
        Of(number).Given.Concat(Of(number).Needs).Concat(Of(number).Supports).ToList().ForEach(one => OldJobs.Meet(one, lines));
        return lines;
    }
}
