using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>By when: the cover of the layer that the failing reading belongs to.</summary>
internal static class Before
{
    /// <summary>A whole sentence: "Before the boards."</summary>
    public static string When(Rule rule, Fact? fact, Part part, Telling telling) => rule.Severity switch
    {
        Severity.Stop => telling.Phrases[Phrase.Before.Stop],
        Severity.BeforeSignOff => telling.Phrases[Phrase.Before.BeforeSignOff],
        Severity.TouchUp => telling.Phrases[Phrase.Before.TouchUp],
        _ when fact?.Sight == Sight.Hidden => telling.Phrases[Phrase.Before.Hidden],
        _ => Cover(fact?.Kind, part, telling) is { Length: > 0 } cover
            ? Sentence.Closed(Sentence.Capital(cover))
            : telling.Phrases[Phrase.Before.NextCover],
    };

    /// <summary>"before the boards"; empty where the layer, or the method, is not known.</summary>
    public static string Cover(ReadingKind? reading, Part part, Telling telling) =>
        reading?.LayerOf(part.Place) is { } name && telling.Job.Method?.Layers.FirstOrDefault(layer => layer.Name == name) is { } layer
            ? telling.Phrases.Of(layer.Cover)
            : "";
}
