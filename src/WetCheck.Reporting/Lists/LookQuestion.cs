using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>A look as it is asked when the answer is waited for.</summary>
public static class LookQuestion
{
    /// <param name="line">Of the job file; asked by its name where no question of the list is about it.</param>
    /// <returns>Lines of at most 78, the number in front; what an answer looks like stands at the end.</returns>
    public static IReadOnlyList<string> Of(Walk walk, Look look, Phrases phrases, string line)
    {
        if (look.Number.Length == 0)
        {
            return Column.Wrap(phrases.Say(Phrase.Kept.ByLine, ("line", line)));
        }

        // Of several that are alike each is asked by its name.
        var ask = look is { Fact.Reading: FactId.Presence, Parts: [{ Place: not null } part] }
            ? phrases.Say(Phrase.Kept.There, ("part", Naming.Part(part, phrases)))
            : Looks.Of(look, new Telling(walk, phrases)).Ask;
        return Column.Wrap($"{ask} ({Answers(look, phrases)})", Column.Numbered(look.Number));
    }

    /// <summary>What the command line takes for the job of a walk.</summary>
    public static string Command(Walk walk) => Naming.Job(walk.Job);

    /// <summary>"like 3-1/4"; "folded, cut, pieced".</summary>
    private static string Answers(Look look, Phrases phrases) => look switch
    {
        { Reading.Choices: { Count: > 0 } choices } =>
            string.Join(", ",
            choices.Select(choice => phrases.Language == Languages.English ? choice.Key : phrases.Of(choice.Say))),
        { Reading: { } reading } => phrases.Say(Phrase.Kept.Like, ("example", reading.Example.Split(',')[0])),
        { Fact.Reading: FactId.Whole, Parts: [{ Kind: { WholeWhenGiven: true } kind }] } =>
            phrases.Say(Phrase.Kept.Members, ("example", Example(kind))),
        { Fact.Reading: FactId.Whole, Parts: [{ Kind: { Places: [var place, ..] } kind }] } =>
            phrases.Say(Phrase.Kept.Whole, ("example", $"{place.Name} {Example(kind)}")),
        { Fact.Reading: FactId.Presence } => phrases[Phrase.Kept.Presence],
        _ => phrases[Phrase.Kept.NotKnown],
    };

    private static string Example(PartKind kind) => kind.Main is { } main && kind.Find(main) is { } reading ? reading.Example : "";
}
