using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>By when: the cover of the layer that the failing reading belongs to.</summary>
internal static class Before
{
    /// <summary>A whole sentence: "Before the boards."</summary>
    public static string When(Rule rule, Fact? fact, Part part, Telling telling) => rule.Severity switch
    {
        Severity.Stop => telling.Phrases["before.stop"],
        Severity.BeforeSignOff => telling.Phrases["before.before-sign-off"],
        Severity.TouchUp => telling.Phrases["before.touch-up"],
        _ when fact?.Sight == Sight.Hidden => telling.Phrases["before.hidden"],
        _ => Cover(fact?.Kind, part, telling) is { Length: > 0 } cover
            ? Sentence.Closed(Sentence.Capital(cover))
            : telling.Phrases["before.next-cover"],
    };

    /// <summary>"before the boards"; empty where the layer, or the method, is not known.</summary>
    public static string Cover(ReadingKind? reading, Part part, Telling telling) =>
        reading?.LayerOf(part.Place) is { } name && telling.Job.Method?.Layers.FirstOrDefault(layer => layer.Name == name) is { } layer
            ? telling.Phrases.Of(layer.Cover)
            : "";
}
