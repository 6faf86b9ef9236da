using WetCheck.Model;

namespace WetCheck.Engine;

/// <summary>
/// One thing to go and see: a reading of all parts of a kind, whether a list is whole, a code, the method, or what is
/// on the job.
/// </summary>
internal readonly record struct Thing(string Kind, string Reading)
{
    public static Thing Of(Hang hang, IReadOnlyDictionary<string, Part> parts) => hang.Id.Reading == FactId.Presence
        ? new Thing("", FactId.Presence)
        : new Thing(parts.TryGetValue(hang.Id.Part, out var part) ? part.Kind.Name : hang.Id.Part, hang.Id.Reading);
}
