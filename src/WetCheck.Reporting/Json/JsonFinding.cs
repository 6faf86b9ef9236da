using System.Globalization;
using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>One entry as JSON. Every key is always there; what has nothing to say is empty, what there is none of is null.</summary>
internal static class JsonFinding
{
    public static FindingShape Shape(Entry entry, Telling telling)
    {
        var item = Items.Of(entry, telling);
        var evidence = Evidence.Of(entry.Worst);
        return new()
        {
            Number = entry.Number,
            Rule = entry.Rule.Id,
            Result = Keys.Of(entry.Result),
            Paper = Keys.Of(entry.Paper),
            Severity = Keys.Of(entry.Severity),
            Area = Area(entry.Worst.Part, telling.Phrases),
            Part = entry.Worst.Part.Id,
            Found = item.Found,
            Limit = item.Should,
            Short = item.Short,
            Say = item.What,
            Why = RuleText.For(entry, telling).Why,
            Fix = item.Do,
            Before = item.Before,
            WorkOf = entry.Rule.WorkOf,
            Also = [.. item.Also],
            Sources = [.. Says.Of(entry.Rule, evidence.Side, telling).Select(Source)],
            At = At(evidence.Test, telling),
            Basis = Basis(evidence.Test),
            Hold = [.. entry.Worst.Hold.Select(hold => Lines.Bound(hold, telling))],
            Members = [.. entry.Checks.Select(check => Member(entry, check, telling))],
        };
    }

    private static MemberShape Member(Entry entry, Check check, Telling telling)
    {
        var test = Evidence.Of(check).Test;
        return new()
        {
            Number = Naming.Member(entry, check),
            Part = check.Part.Id,
            Result = Keys.Of(check.Result),
            Paper = Keys.Of(check.Paper),
            Found = test is null ? "" : Tested.Found(test, telling),
            At = At(test, telling),
        };
    }

    private static SourceShape Source(Cited source) => new()
    {
        Row = source.Entry.Row,
        Publisher = source.Entry.Publisher,
        Document = source.Entry.Document,
        Section = source.Entry.Section,
        Edition = source.Edition?.ToString(CultureInfo.InvariantCulture),
        Editions = source.Entry.Editions,
        Status = Keys.Of(source.Entry.Status),
    };

    /// <summary>"right wall (D)".</summary>
    private static string Area(Part part, Phrases phrases) => part.Place is { } place
        ? place.Letters.Length > 0 ? $"{phrases.Of(place.Say)} ({place.Letters})" : phrases.Of(place.Say)
        : Naming.Part(part, phrases);

    private static string? At(Measured? test, Telling telling) => test is null ? null : Tested.At(test, telling)?.ToString();

    private static string? Basis(Measured? test) => test switch
    {
        null => null,
        _ when Tested.IsPlanned(test) => "plan",
        { Fact: null } or { Fact.Counted: null } => "computed",
        _ => "read",
    };
}
