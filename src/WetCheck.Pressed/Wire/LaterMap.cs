using System.Collections;
using System.Diagnostics.CodeAnalysis;

namespace WetCheck.Pressed;

/// <summary>Entries that are read when one is first asked for; from any thread.</summary>
internal sealed class LaterMap<T>(Func<IReadOnlyDictionary<string, T>> read) : IReadOnlyDictionary<string, T>
{
    private readonly Lazy<IReadOnlyDictionary<string, T>> _entries = new(read);

    public T this[string key] => _entries.Value[key];

    public IEnumerable<string> Keys => _entries.Value.Keys;

    public IEnumerable<T> Values => _entries.Value.Values;

    public int Count => _entries.Value.Count;

    public bool ContainsKey(string key) => _entries.Value.ContainsKey(key);

    public bool TryGetValue(string key, [MaybeNullWhen(false)] out T value) => _entries.Value.TryGetValue(key, out value);

    public IEnumerator<KeyValuePair<string, T>> GetEnumerator() => _entries.Value.GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
