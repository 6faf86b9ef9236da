using System.Globalization;
using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>What is asked before there is a job file, in lines of at most 78.</summary>
public sealed class FirstQuestions(RuleBook book, string language)
{
    private readonly Phrases _phrases = new(book, language);

    public string Before => _phrases[Phrase.Start.Five];

    public string Name => _phrases[Phrase.Start.Name];

    public string Method => Numbered(Phrase.Start.Method, book.Vocabulary.Methods.Select(method => (method.Name, method.Say)));

    public string Size => _phrases[Phrase.Start.Size];

    public string Codes =>
        $"{_phrases[Phrase.Start.Codes]}\n   "
        + string.Join(", ", book.Vocabulary.Disciplines.SelectMany(discipline => discipline.Families)
            .Where(family => family.Name != "none").Select(family => family.Name).Distinct());

    /// <summary>Said once a question is answered with what can't be read.</summary>
    public string DontKnow => _phrases[Phrase.Start.UntilThen];

    /// <param name="method">Null: not known; the stops of all.</param>
    public string Stage(Method? method) =>
        Numbered(Phrase.Start.Stage,
            (method is null ? book.Vocabulary.Methods : [method]).SelectMany(one => one.Stops)
            .DistinctBy(stop => stop.Name).Select(stop => (stop.Name, stop.Say)));

    public string Written(string file, string sheet) => _phrases.Say(Phrase.Start.Written, ("file", file), ("sheet", sheet));

    private string Numbered(string question, IEnumerable<(string Name, Words Say)> words) => string.Join('\n', words
        .Select((word, i) => string.Create(CultureInfo.InvariantCulture, $"   {i + 1}  {word.Name}")
            + (language == Languages.English ? "" : $" ({_phrases.Of(word.Say)})"))
        .Prepend(_phrases[question]));
}
