using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>Makes the lines of a job file that ask for a part or a reading.</summary>
internal sealed class StartQuestions(Job job, Vocabulary vocabulary, Phrases phrases)
{
    private readonly StartExamples _examples = new(job, phrases);
    private readonly StartRank _rank = new(job);

    /// <param name="ask">A section, or a line of one: <c>nails</c>, <c>drain.pipe</c>.</param>
    public IEnumerable<AskedLines> Of(string ask)
    {
        var dot = ask.IndexOf('.', StringComparison.Ordinal);
        var (section, word) = dot < 0 ? (ask, "") : (ask[..dot], ask[(dot + 1)..]);
        var kinds = vocabulary.Kinds.Where(kind => kind.Stands.Split('.')[0] == section).ToList();
        var part = kinds.Find(kind => kind.Stands == section && kind.Many == Many.One);
        if (word.Length > 0)
        {
            return part?.Find(word) is { } reading ? OfReading(section, part, reading)
                : kinds.Where(kind => kind.Stands == ask).SelectMany(kind => OfLine(section, word, kind));
        }

        var placed = kinds.Where(kind => kind.Stands == section + ".<place>").ToList();
        return placed.Count > 0 ? placed.SelectMany(kind => OfPlaces(section, kind))
            : kinds.Find(kind => kind.Stands == section && kind.IsList) is { } list ? OfLine(section, "", list)
            : part?.Readings.Where(IsTyped).SelectMany(reading => OfReading(section, part, reading)) ?? [];
    }

    private IEnumerable<AskedLines> OfReading(string section, PartKind part, ReadingKind reading)
    {
        var line = _examples.Of(reading.Name, phrases.Of(reading.Brief), part, reading) with { Answer = Answered(part, reading) };
        var isAlone = part.Main == reading.Name && part.Readings.Count(one => IsTyped(one) && one.AskedBy is null) == 1;
        return Asked(isAlone ? new(section, OrNone(line, part) with { Name = "", Said = SaidOf(part) }, [])
            : new(section, HeadOf(part), [line]), null, part, reading);
    }

    /// <summary>Parts that share one line: <c>walls.layers</c>, <c>lifted tiles</c>.</summary>
    private IEnumerable<AskedLines> OfLine(string section, string word, PartKind kind)
    {
        var main = MainOf(kind);
        var ask = AskOf(kind, main);
        var line = OrNone(_examples.Of(word, ask, kind, main), kind);
        return Asked(word.Length == 0 ? new(section, line with { Said = SaidOf(kind) }, [])
            : new(section, HeadOf(kind), [line]), null, kind, main);
    }

    /// <summary>What is measured has a line for each place; what is only looked at has one for all.</summary>
    private IEnumerable<AskedLines> OfPlaces(string section, PartKind kind)
    {
        var main = MainOf(kind);
        var ask = AskOf(kind, main);
        var places =
            kind.Places.Where(IsThere)
            .Select(place =>
            new StartLine(place.Name, "",
            [])
            { Said = phrases.Language == Languages.English ? "" : phrases.Of(place.Say) }).ToList();
        var all = new StartSection(section,
            OrNone(_examples.Alone("", ask, kind, main, places[^1].Name + " "), kind) with { Said = SaidOf(kind) }, []);
        if (main.Is == Form.Choice)
        {
            return Asked(all, null, kind, main);
        }

        var seen = new StartLine("seen", phrases.Of(kind.AskWhole), ["all", "some"]);
        return Asked(new(section, _examples.Alone("", ask, kind, main) with { Said = SaidOf(kind) },
            kind.IsList ? [seen, .. places] : places), all, kind, main);
    }

    /// <summary>
    /// What only a command works with, it asks for itself, with the line to write: the page has room for what the rules
    /// ask.
    /// </summary>
    private IEnumerable<AskedLines> Asked(StartSection way, StartSection? brief, PartKind kind, ReadingKind reading) =>
        reading.AskedBy is null && _rank.Of(kind, reading) is { } rank ? [new AskedLines(way, brief, rank)] : [];

    /// <summary>No line for the curb's faces where the method has no curb.</summary>
    private bool IsThere(Place place) => job.Method?.Never(place) != true;

    /// <summary>Of what may be absent, unless the method always has it.</summary>
    private StartLine OrNone(StartLine line, PartKind kind) =>
        kind.MayBeAbsent && job.Method?.Has.Contains(kind.Name) != true ? line.OrNone() : line;

    private StartLine HeadOf(PartKind kind) => StartLine.Nothing with { Said = SaidOf(kind) };

    private string SaidOf(PartKind kind) => phrases.Language == Languages.English ? ""
        : phrases.Of(vocabulary.Kinds.FirstOrDefault(one => one.Stands == kind.Stands.Split('.')[0]
            && one.Many == Many.One)?.One ?? kind.Several);

    private string Answered(PartKind part, ReadingKind reading) =>
        job.Parts.FirstOrDefault(one => one.Part.Kind == part)?.Of(reading.Name) is [.., var last]
            ? (last.Planned ? "plan " : "") + last.Typed : "";

    /// <summary>Of a list whether there are any, unless the question about one is short.</summary>
    private string AskOf(PartKind kind, ReadingKind main) =>
        phrases.Of(kind.IsList && main.Brief == main.Ask ? kind.AskPresence : main.Brief);

    private static ReadingKind MainOf(PartKind kind) => kind.Find(kind.Main ?? "") ?? kind.Readings.First(IsTyped);

    private static bool IsTyped(ReadingKind reading) => !reading.Derived && reading.Is != Form.Conclusion;
}
