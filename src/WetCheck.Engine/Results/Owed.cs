using WetCheck.Model;

namespace WetCheck.Engine;

/// <summary>Of an open check: what is owed. The first that holds of the facts it hangs on.</summary>
internal static class Owed
{
    public static Result Of(Job job, Vocabulary vocabulary, IReadOnlyList<Hang> hangs) =>
        hangs.Any(hang => CanBeAsked(job, vocabulary, hang)) ? Result.ToCheck
        : hangs.Any(hang => hang.Near && hang.Fact!.Sight != Sight.Hidden) ? Result.ReadAgain
        : hangs.Any(hang => SightOf(job, vocabulary, hang) == Sight.NotBegun) ? Result.Later
        : Result.HiddenNow;

    /// <summary>It can be seen, measured or asked now, and nobody has.</summary>
    public static bool CanBeAsked(Job job, Vocabulary vocabulary, Hang hang) =>
        !hang.Near && hang.Fact is not { SaidHidden: true } && SightOf(job, vocabulary, hang) == Sight.ToBeSeen;

    /// <summary>
    /// A code, the method, and whether a part is there can always be asked. Whether all of a list have been seen can't be
    /// while the list is not begun.
    /// </summary>
    public static Sight SightOf(Job job, Vocabulary vocabulary, Hang hang)
    {
        if (hang.Fact is { } fact)
        {
            return fact.Sight;
        }

        if (hang.Id.Reading != FactId.Whole
            || vocabulary.Kind(hang.Id.Part[..hang.Id.Part.LastIndexOf('/')]) is not { Main: { } main } kind)
        {
            return Sight.ToBeSeen;
        }

        return job.SightOf(kind.Find(main)?.Layer) == Sight.NotBegun ? Sight.NotBegun : Sight.ToBeSeen;
    }
}
