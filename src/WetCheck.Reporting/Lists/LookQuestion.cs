using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>A look as it is asked when the answer is waited for.</summary>
public static class LookQuestion
{
    /// <returns>Lines of at most 78, the number in front; what an answer looks like stands at the end.</returns>
    public static IReadOnlyList<string> Of(Walk walk, Look look, Phrases phrases)
    {
        // Of several that are alike each is asked by its name.
        var ask = look is { Fact.Reading: FactId.Presence, Parts: [{ Place: not null } part] }
            ? phrases.Say("kept.there", ("part", Naming.Part(part, phrases)))
            : Looks.Of(look, new Telling(walk, phrases)).Ask;
        return Column.Wrap($"{ask} ({Answers(look, phrases)})", Column.Numbered(look.Number));
    }

    /// <summary>"like 3-1/4"; "folded, cut, pieced".</summary>
    private static string Answers(Look look, Phrases phrases) => look switch
    {
        { Reading.Choices: { Count: > 0 } choices } => string.Join(", ", choices.Select(choice => choice.Key)),
        { Reading: { } reading } => phrases.Say("kept.like", ("example", reading.Example.Split(',')[0])),
        { Fact.Reading: FactId.Whole } => phrases["kept.whole"],
        { Fact.Reading: FactId.Presence } => phrases["kept.presence"],
        _ => phrases["kept.not-known"],
    };
}
