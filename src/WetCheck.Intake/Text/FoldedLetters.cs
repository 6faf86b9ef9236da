using System.Globalization;

namespace WetCheck.Intake;

/// <summary>The letters of a name in its one form, one after the other: small, single spaces, none at the ends.</summary>
internal struct FoldedLetters(string name)
{
    private int _at;

    public char Current { get; private set; }

    public bool MoveNext()
    {
        var start = _at;
        while (_at < name.Length && IsGap(name[_at]))
        {
            _at++;
        }

        if (_at == name.Length)
        {
            return false;
        }

        // A gap before a letter is one space, but for the gap before the first.
        var isSpace = _at > start && start > 0;
        Current = isSpace ? ' ' : char.ToLowerInvariant(name[_at]);
        _at += isSpace ? 0 : 1;
        return true;
    }

    private static bool IsGap(char c) =>
        char.IsWhiteSpace(c) || c is '-' or '_' or '\u2212' || char.GetUnicodeCategory(c) == UnicodeCategory.DashPunctuation;
}
