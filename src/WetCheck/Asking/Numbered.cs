using System.Text.RegularExpressions;
using WetCheck.Flow;
using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck.Asking;

/// <summary>Finds what stands under a number on a list.</summary>
internal static partial class Numbered
{
    /// <param name="asked">Of an entry, <c>214-D</c>, or of a member of one, <c>221-A2</c>; in any case.</param>
    public static Entry? Find(Walk walk, string asked)
    {
        var entries = walk.Entries.SelectMany(entry => entry.Also.Prepend(entry)).ToList();
        return entries.FirstOrDefault(entry => IsAsked(entry, asked))
            ?? entries.FirstOrDefault(entry => CheckOf(entry, asked) is not null)
            ?? entries.FirstOrDefault(entry => IsAsked(entry, Member().Replace(asked, "")));
    }

    /// <summary>A note or a caution of the list; null where it shows none of that number.</summary>
    public static Check? Shown(Walk walk, string asked) =>
        walk.Notes.Concat(walk.Cautions)
        .FirstOrDefault(check =>
        Is(check.Rule.Number.ToString(System.Globalization.CultureInfo.InvariantCulture), asked));

    /// <summary>2, where 221-A2 was typed and the list has a 221-A; null where an entry was asked.</summary>
    public static int? MemberOf(Entry entry, string asked) => IsAsked(entry, asked) ? null
        : CheckOf(entry, asked) is { } check ? check.Part.Index
        : int.Parse(Member().Match(asked).Value, System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>A cause of old work that accounts for what was found; null: none of that number does.</summary>
    public static CauseSeen? Cause(Walk walk, string asked) => walk.Book.Causes.Any(cause => Is(cause.Number, asked))
        ? OldWorkReading.Of(walk.Job, walk.Book).Causes.FirstOrDefault(found => Is(found.Cause.Number, asked))
        : null;

    public static string NotFound(Walk walk, string asked)
    {
        var number = Digits().Match(asked).Value;
        var same = walk.Entries.Select(entry => entry.Number)
            .Where(entry => number.Length > 0 && Digits().Match(entry).Value == number).ToList();
        var near = same.Count > 0 ? null : Nearest.Of(asked, walk.Entries.Select(entry => entry.Number));
        return $"The list of {walk.Job.File} has no {asked}."
            + (near is null ? "" : $" Nearest: {near}.")
            + (same.Count == 0 ? "" : $" Of rule {number} it has {string.Join(", ", same)}.")
            + "\n    wetcheck walk JOB --all   shows every number.";
    }

    public static bool Is(string number, string asked) => string.Equals(number, asked, StringComparison.OrdinalIgnoreCase);

    /// <summary>One member of an entry by the number that lists for programs give it: 322-1, 221-other.</summary>
    private static Check? CheckOf(Entry entry, string asked) =>
        entry.Checks.FirstOrDefault(check => Is(MemberNumber.Printed(entry, check), asked));

    private static bool IsAsked(Entry entry, string asked) => Is(entry.Number, asked);

    [GeneratedRegex(@"(?<=^\d+-[A-Z]+)\d{1,4}$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Member();

    [GeneratedRegex(@"^\d+")]
    private static partial Regex Digits();
}
