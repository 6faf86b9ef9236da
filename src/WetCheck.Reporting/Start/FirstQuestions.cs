using System.Globalization;
using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>What is asked before there is a job file, in lines of at most 78.</summary>
public sealed class FirstQuestions(RuleBook book, string language)
{
    private readonly Phrases _phrases = new(book, language);

    public string Before => _phrases["start.five"];

    public string Name => _phrases["start.name"];

    public string Method => Numbered("start.method", book.Vocabulary.Methods.Select(method => (method.Name, method.Say)));

    public string Size => _phrases["start.size"];

    public string Codes => $"{_phrases["start.codes"]}\n   {string.Join(", ", book.Vocabulary.Disciplines.SelectMany(discipline => discipline.Families).Where(family => family.Name != "none").Select(family => family.Name).Distinct())}";

    /// <summary>Said once a question is answered with what can't be read.</summary>
    public string DontKnow => _phrases["start.until-then"];

    /// <param name="method">Null: not known; the stops of all.</param>
    public string Stage(Method? method) =>
        Numbered("start.stage", (method is null ? book.Vocabulary.Methods : [method]).SelectMany(one => one.Stops).DistinctBy(stop => stop.Name).Select(stop => (stop.Name, stop.Say)));

    public string Written(string file, string sheet) => _phrases.Say("start.written", ("file", file), ("sheet", sheet));

    private string Numbered(string question, IEnumerable<(string Name, Words Say)> words) => string.Join('\n', words
        .Select((word, i) => string.Create(CultureInfo.InvariantCulture, $"   {i + 1}  {word.Name}") + (language == Languages.English ? "" : $" ({_phrases.Of(word.Say)})"))
        .Prepend(_phrases[question]));
}
