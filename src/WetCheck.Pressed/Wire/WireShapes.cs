namespace WetCheck.Pressed;

/// <summary>Shapes made of several values.</summary>
internal sealed partial class Wire
{
    /// <summary>One object stays one: met again, it is named by its place among those carried before.</summary>
    public T Same<T>(T? value, Func<Wire, T?, T> carry)
        where T : class
    {
        if (_page is not null)
        {
            var known = _page.Number();
            return known > 0 ? (T)_page.Carried[known - 1] : Remembered(carry(this, null), _page.Carried);
        }

        ArgumentNullException.ThrowIfNull(value);
        var before = _ink!.Carried.GetValueOrDefault(value);
        _ink.Number(before);
        if (before == 0)
        {
            carry(this, value);
            _ink.Carried.Add(value, _ink.Carried.Count + 1);
        }

        return value;
    }

    public T? Maybe<T>(T? value, Func<Wire, T?, T> carry)
        where T : class => Yes(value is not null) ? carry(this, value) : null;

    public T? MaybeAmount<T>(T? value, Func<Wire, T, T> carry)
        where T : struct => Yes(value is not null) ? carry(this, value.GetValueOrDefault()) : null;

    public IReadOnlyList<T> List<T>(IReadOnlyList<T>? value, Func<Wire, T?, T> carry)
    {
        var items = new T[Count(value)];
        for (var i = 0; i < items.Length; i++)
        {
            items[i] = carry(this, value is null ? default : value[i]);
        }

        return value ?? items;
    }

    public IReadOnlyList<string> Texts(IReadOnlyList<string>? value) => List(value, static (wire, text) => wire.Text(text));

    /// <summary>In the order of its entries.</summary>
    public IReadOnlyDictionary<TKey, T> Map<TKey,
        T>(IReadOnlyDictionary<TKey, T>? value, Func<Wire, TKey?, TKey> key, Func<Wire, T?, T> carry)
        where TKey : notnull
    {
        var read = new Dictionary<TKey, T>();
        var count = Count(value);
        using var entries = value?.GetEnumerator();
        for (var i = 0; i < count; i++)
        {
            var (name, entry) = entries is not null && entries.MoveNext() ? entries.Current : default;
            read.Add(key(this, name), carry(this, entry));
        }

        return value ?? read;
    }

    /// <summary>The same with names for keys, read when it is first asked for. Nothing in it is named from elsewhere.</summary>
    public IReadOnlyDictionary<string, T> Later<T>(IReadOnlyDictionary<string, T>? value, Func<Wire, T?, T> carry)
    {
        if (_page is not null)
        {
            var leaf = _page.Leaf();
            return new LaterMap<T>(() => new Wire(leaf).Map<string, T>(null, Named, carry));
        }

        var ink = new Ink(_ink!.Texts);
        new Wire(ink).Map(value, Named, carry);
        _ink.Leaf(ink);
        return value!;
    }

    private static string Named(Wire wire, string? name) => wire.Text(name);

    private int Count<T>(IReadOnlyCollection<T>? value) =>
        Number(_page is null && value is null ? throw new ArgumentNullException(nameof(value)) : value?.Count ?? 0);

    private static T Remembered<T>(T read, List<object> carried)
        where T : class
    {
        carried.Add(read);
        return read;
    }
}
