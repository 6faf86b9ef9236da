namespace WetCheck.Reporting;

/// <summary>One look as JSON.</summary>
internal static class JsonLook
{
    public static LookShape Shape(LookItem look) => new()
    {
        Number = look.Number,
        Paper = Keys.Of(look.Look.Paper),
        Parts = [.. look.Look.Parts.Select(part => part.Id)],
        Asks = look.Look.Reading?.Name ?? look.Look.Fact.Reading,
        Ask = look.Ask,
        Known = Sentence.Joined(look.Title, look.Detail),
        How = look.How,
        Tool = look.Look.Reading?.Tool?.Name,
        Settles = [.. look.Look.Settles.Select(entry => entry.Number)],
        Bears = [.. look.Look.Bears.Select(entry => entry.Number)],
        At = look.Look.At.ToString(),
    };
}
