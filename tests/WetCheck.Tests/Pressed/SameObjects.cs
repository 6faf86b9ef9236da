using System.Collections;
using System.Reflection;

namespace WetCheck.Tests.Pressed;

/// <summary>
/// Holds two graphs of objects against each other by all their fields: the same types with the same values, and one object
/// where the other has one. Lists and maps are held by what they hold, in its order, however they are made.
/// </summary>
internal sealed class SameObjects
{
    private readonly Dictionary<object, object> _there = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<object, object> _back = new(ReferenceEqualityComparer.Instance);
    private readonly List<string> _differences = [];

    /// <summary>The types of what was held against each other.</summary>
    public HashSet<Type> Types { get; } = [];

    public int Values { get; private set; }

    /// <returns>Where they differ, by path; empty: nowhere.</returns>
    public IReadOnlyList<string> Differences(object one, object other)
    {
        Hold("", one, other);
        return _differences;
    }

    private void Hold(string path, object? one, object? other)
    {
        Values++;
        switch (one, other)
        {
            case (null, null):
                break;
            case (null, _) or (_, null):
                Differ(path, one, other);
                break;
            case (string or Enum or Type, _):
            case ({ } value, _) when value.GetType().IsPrimitive:
                Check(one.GetType() == other.GetType() && one.Equals(other), path, one, other);
                break;
            case (IDictionary or IEnumerable, IEnumerable items):
                HoldItems(path, [.. ((IEnumerable)one).Cast<object?>()], [.. items.Cast<object?>()]);
                break;
            default:
                HoldFields(path, one, other);
                break;
        }
    }

    private void HoldItems(string path, List<object?> one, List<object?> other)
    {
        Check(one.Count == other.Count, path + ".Count", one.Count, other.Count);
        for (var i = 0; i < Math.Min(one.Count, other.Count); i++)
        {
            Hold($"{path}[{i}]", one[i], other[i]);
        }
    }

    private void HoldFields(string path, object one, object other)
    {
        var type = one.GetType();
        Types.Add(type);
        Check(type == other.GetType(), path, type, other.GetType());
        if (type != other.GetType() || (!type.IsValueType && !IsFirst(path, one, other)))
        {
            return;
        }

        for (var of = type; of is not null && of != typeof(object); of = of.BaseType)
        {
            foreach (var field in of.GetFields(BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic
                | BindingFlags.DeclaredOnly))
            {
                Hold($"{path}.{field.Name}", field.GetValue(one), field.GetValue(other));
            }
        }
    }

    /// <summary>Met before: then both were, and as each other's.</summary>
    private bool IsFirst(string path, object one, object other)
    {
        var isKnown = _there.TryGetValue(one, out var there);
        var isKnownBack = _back.TryGetValue(other, out var back);
        Check(isKnown == isKnownBack && (!isKnown || (there == other && back == one)), path + " (which object it is)", one, other);
        _there.TryAdd(one, other);
        _back.TryAdd(other, one);
        return !isKnown;
    }

    private void Check(bool holds, string path, object? one, object? other)
    {
        if (!holds)
        {
            Differ(path, one, other);
        }
    }

    private void Differ(string path, object? one, object? other) => _differences.Add($"{path}: {one ?? "nothing"} / {other ?? "nothing"}");
}
