using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>One thing to ask to see.</summary>
/// <param name="See">A sentence.</param>
/// <param name="Good">A good answer; empty where the question has none.</param>
internal sealed record SeeLine(string Number, string See, string Good, string Cover)
{
    /// <summary>A look bears the number of the first check it settles: that check's rule tells what to ask to see.</summary>
    public static SeeLine Of(Look look, Telling telling)
    {
        var first = look.Settles.Concat(look.Bears).FirstOrDefault(entry => entry.Number == look.Number);
        return first is null || look.Parts.Count == 0
            ? new SeeLine(look.Number, Looks.Of(look, telling).Ask, "", "")
            : Of(look.Number, first.Worst, telling) is var line && look is { Reading: not null, Parts: [{ Place: not null } part] }
            ? line with { See = $"{Naming.Place(part, telling.Phrases)}. {line.See}" }
            : line;
    }

    public static SeeLine Of(string number, Check check, Telling telling)
    {
        var texts = telling.Texts(check.Rule);
        var see = texts.See.Length > 0 ? texts.See : texts.Ask;
        return new SeeLine(number, Sentence.Capital(Sentence.Closed(see)), OwnerText.GoodIf(check, telling), CoverOf(check, telling));
    }

    private static string CoverOf(Check check, Telling telling)
    {
        var test = Evidence.Of(check).Test;
        var tested = test?.Fact?.Kind is { Derived: false } kind ? kind : OwnReading(check.Rule);
        var cover = tested?.LayerOf(check.Part.Place) is null && check.Judgement.Hangs is [var hang, ..]
            ? OfHang(hang, telling) : Before.Cover(tested, test?.Of ?? check.Part, telling);
        return cover.Length == 0 ? check.Rule.Severity == Severity.BeforeSignOff ? SignOff(telling) : ""
            : IsPast(cover, telling) ? "" : cover;
    }

    /// <summary>What it hangs on: a reading, one that is worked out from parts below, or a part that may not be there yet.</summary>
    private static string OfHang(Hang hang, Telling telling)
    {
        var name = hang.Id.Part.Split('/')[0];
        var reading = hang.Fact is { Kind.Derived: false } fact ? fact.Kind : telling.Walk.Book.Vocabulary.Kinds
            .Where(kind => kind.Name == name || (hang.Fact is not null && kind.Above == name))
            .SelectMany(kind => kind.Readings)
            .FirstOrDefault(one => one.Layer is not null);
        var layer = telling.Job.Method?.Layers.FirstOrDefault(layer => layer.Name == reading?.Layer);
        return layer is null ? "" : telling.Phrases.Of(layer.Cover);
    }

    /// <summary>What goes over it is there, and yet it can be seen: it is to be looked at now.</summary>
    private static bool IsPast(string cover, Telling telling) => telling.Job is { Method: { } method, Stage: { } stage }
        && method.Stops.TakeWhile(stop => stop.Name != stage).Any(stop => telling.Phrases.Of(stop.Say) == cover);

    /// <summary>What belongs to no layer and may wait stands with the last layer.</summary>
    private static string SignOff(Telling telling) => telling.Job.Method is { } method ? telling.Phrases.Of(method.Layers[^1].Cover) : "";

    private static ReadingKind? OwnReading(Rule rule) => rule.Conditions()
        .Select(condition => condition switch
        {
            Condition.Compare { Path: { Kind: null } path } => path.Reading,
            Condition.Is { Path: { Kind: null } path } => path.Reading,
            _ => null,
        })
        .FirstOrDefault(reading => reading?.LayerOf(null) is not null);
}
