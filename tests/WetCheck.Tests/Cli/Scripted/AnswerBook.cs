using WetCheck.Asking;
using WetCheck.Model;

namespace WetCheck.Tests.Cli.Scripted;

/// <summary>What a setter would answer on a sound job: that of a job file where all has been seen.</summary>
/// <param name="computed">What that job leaves to arithmetic, as a tape would read it: <c>curb: above drain</c>.</param>
internal sealed class AnswerBook(Job sound, IReadOnlyDictionary<string, string> computed)
{
    /// <summary>Null: the sound job does not say.</summary>
    public string? To(Question question, Job now)
    {
        var (fact, parts) = (question.Look.Fact, question.Look.Parts);
        var code = TheBook.Book.Vocabulary.Disciplines.FirstOrDefault(discipline => FactId.Code(discipline.Name) == fact);
        return code is not null ? sound.Codes.GetValueOrDefault(code.Name)?.Typed
            : parts.Count == 0 ? Read(fact)
            : fact.Reading == FactId.Whole ? List(parts[0].Kind, now)
            : fact.Reading == FactId.Presence ? Find(fact.Part)?.Said == Tri.Yes ? "yes" : "none"
            : Read(fact);
    }

    /// <summary>First its members, then that these are all.</summary>
    private string List(PartKind kind, Job now)
    {
        var members = sound.Parts.Where(part => part.Part.Kind == kind && part.Part.Index is not null).ToList();
        return members.Count == 0 ? "none"
            : now.Parts.Any(part => part.Part.Kind == kind && part.Part.Index is not null) ? "all"
            : string.Join(", ",
                members.Select(member =>
                $"{member.Part.Place?.Name} {string.Join(' ', member.Readings.Values.Select(readings => readings[0].Typed))}".Trim()));
    }

    private string? Read(FactId fact) =>
        Find(fact.Part)?.Of(fact.Reading) is [var reading, ..] ? reading.Typed
        : computed.GetValueOrDefault(fact.ToString());

    private JobPart? Find(string part) => sound.Parts.FirstOrDefault(one => one.Part.Id == part);
}
