namespace WetCheck.Intake;

/// <summary>Finds a named thing of the book; one that is not there is a problem with the nearest name.</summary>
internal static class Lookup
{
    public static T? In<T>(IEnumerable<T> known, ScalarNode? name, Func<T, string> nameOf, string what, ProblemList problems)
        where T : class
    {
        if (name is null)
        {
            return null;
        }

        var all = known as IReadOnlyCollection<T> ?? [.. known];
        var found = all.FirstOrDefault(thing => Names.Same(nameOf(thing), name.Text));
        if (found is null)
        {
            problems.Add(name.At, Messages.UnknownName(what, name.Text, [.. all.Select(nameOf)]));
        }

        return found;
    }

    public static T? Enum<T>(ScalarNode? name, IReadOnlyList<(string Word, T Value)> words, string what, ProblemList problems)
        where T : struct
    {
        if (name is null)
        {
            return null;
        }

        foreach (var (word, value) in words)
        {
            if (Names.Same(word, name.Text))
            {
                return value;
            }
        }

        problems.Add(name.At, Messages.UnknownName(what, name.Text, [.. words.Select(w => w.Word)]));
        return null;
    }
}
