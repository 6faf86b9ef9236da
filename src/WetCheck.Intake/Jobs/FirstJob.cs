using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>A job made of the first answers, before there is a file of it. What is not known is left blank.</summary>
public sealed class FirstJob(string name, Vocabulary vocabulary)
{
    private readonly List<string> _lines =
        [$"job: \"{OneLine(name).Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\""];
    private (string Typed, bool Metric)? _size;

    /// <summary>The job as far as it is answered. Its units are those of the size, else of the codes, else inches.</summary>
    public Job Job =>
        Read([.. _lines, Units(_size?.Metric ?? HasMetricCodes()),
        .. (string[])(_size is { } size ? [SizeLine(size.Typed)] : [])]).Job!;

    /// <param name="answer">The method's name, one or some words of it, or its number in the order of the book.</param>
    /// <returns>What to write instead, where it can't be read; null: it was read, or is don't know.</returns>
    public string? Method(string answer) => OneOf("method", answer, [.. vocabulary.Methods.Select(method => method.Name)]);

    /// <param name="answer">Likewise, of the method's stops; method unknown: of all.</param>
    /// <returns>As for the method.</returns>
    public string? Stage(string answer) =>
        OneOf("stage", answer,
            [.. (Job.Method?.Stops ?? vocabulary.Methods.SelectMany(method => method.Stops)).Select(stop => stop.Name)
            .Distinct()]);

    /// <summary>A lone number is in inches if that can be believed, else in millimetres if that can.</summary>
    /// <returns>As for the method.</returns>
    public string? Size(string answer)
    {
        var one = OneLine(answer);
        if (DontKnow.Is(one))
        {
            return null;
        }

        var (inches, millimetres) = (OfSize(one, metric: false), OfSize(one, metric: true));
        var metric = FirstJobUnits.SaysMetric(one) || (inches.Count > 0 && millimetres.Count == 0);
        if ((metric ? millimetres : inches).FirstOrDefault(problem => problem.Effect != Effect.Asked) is { } first)
        {
            return first.Say;
        }

        _size = (one, metric);
        return null;
    }

    /// <param name="answer">Any number, with commas; each goes to the disciplines that know its family.</param>
    /// <returns>As for the method, of the first that can't be read.</returns>
    public string? Codes(string answer)
    {
        string? unread = null;
        foreach (var code in OneLine(answer).Split(',').Select(code => code.Trim()).Where(code => !DontKnow.Is(code)))
        {
            var own = vocabulary.Disciplines
                .Select(discipline => (discipline.Name, Line: $"{HeaderReader.KeyOf(discipline)}: {code}"))
                .Where(one => Read([one.Line]) is { Problems.Count: 0, Job: { } alone }
                    && alone.Codes.GetValueOrDefault(one.Name) is { InBook: true })
                .ToList();
            _lines.AddRange(own.Where(one => !Job.Codes.ContainsKey(one.Name)).Select(one => one.Line));
            unread ??= own.Count == 0
                ? $"The book has no code \"{code}\". Write family and year, like IRC 2021, with commas between." : null;
        }

        return unread;
    }

    private string? OneOf(string key, string answer, IReadOnlyList<string> known)
    {
        var one = OneLine(answer);
        if (DontKnow.Is(one))
        {
            return null;
        }

        var line = $"{key}: {(known.ElementAtOrDefault(Number(one) - 1) ?? ByWords(one, known) ?? one)}";
        if (Read([.. _lines, line]).Problems is [var first, ..])
        {
            return first.Say;
        }

        _lines.Add(line);
        return null;
    }

    /// <summary>"curbless" is the one method with this word; "bonded" would be two.</summary>
    private static string? ByWords(string typed, IReadOnlyList<string> known)
    {
        var words = Names.Fold(typed).Split(' ');
        return Names.Find(typed, known)
            ?? (known.Where(name => words.All(Names.Fold(name).Split(' ').Contains))
            .ToList() is [var only] ? only : null);
    }

    private static int Number(string typed) =>
        typed.Length < 4 && typed.All(char.IsAsciiDigit)
        ? int.Parse(typed, System.Globalization.CultureInfo.InvariantCulture) : 0;

    private IReadOnlyList<Problem> OfSize(string size, bool metric) => Read([Units(metric), SizeLine(size)]).Problems;

    private bool HasMetricCodes() => FirstJobUnits.AreMetric(Read(_lines).Job!.Codes, vocabulary);

    private static string Units(bool metric) => metric ? "units: millimetres" : "units: inches";

    private static string SizeLine(string size) => $"shower:\n  size: {size}";

    private (Job? Job, IReadOnlyList<Problem> Problems) Read(IReadOnlyList<string> lines) =>
        JobReader.Read("", string.Join('\n', lines) + "\n", vocabulary);

    private static string OneLine(string text) => VisibleText.Line(text).Trim();
}
