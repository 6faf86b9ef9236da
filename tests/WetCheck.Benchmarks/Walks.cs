using System.Globalization;
using WetCheck.Flow;
using WetCheck.Geometry;
using WetCheck.Model;

namespace WetCheck.Benchmarks;

/// <summary>The job juniper as it is and with two, four and eight times its parts: walks afresh, a changed reading, memory.</summary>
internal static class Walks
{
    private const string Changed = "nails.left: 2-1/2 above, 3-1/8 above";

    public static void Print()
    {
        var before = GC.GetTotalMemory(forceFullCollection: true);
        var book = BuiltInBook.Ready;
        _ = book.Compiled;
        var held = GC.GetTotalMemory(forceFullCollection: true) - before;
        Line($"the ready book holds {held / 1024.0 / 1024:F1} MB of heap; {book.Book.Rules.Count} rules");

        Console.WriteLine("parts  checks   fresh ms  changed ms   list ms  fresh/changed   us/part   fresh kB  changed kB");
        var own = PartsOf(Bench.Juniper(0, book.Book.Vocabulary), book);
        var bare = PartsOf(Bench.Juniper(1, book.Book.Vocabulary), book) - 1;
        foreach (var times in new[] { 1, 2, 4, 8 })
        {
            Print(Bench.Juniper(times == 1 ? 0 : (times * own) - bare, book.Book.Vocabulary), book);
        }
    }

    private static void Print(Job job, ReadyBook book)
    {
        var jobs = new[] { Bench.With(job, Changed, book.Book.Vocabulary), job };
        var (kept, turn) = (new KeptWalk(job, book), 0);
        void Fresh() => Inspection.Of(job, [], book);
        void Change() => kept.Change(jobs[turn++ % 2]);
        void List() => kept.Walk([]);

        var times = Rounds.Time(9, Fresh, Change, List);
        var (parts, checks) = (PartsOf(job, book), kept.Findings.Count);
        var (fresh, changed, list) = (1e3 * times[0].Min(), 1e3 * times[1].Min(), 1e3 * times[2].Min());
        var ratio = Rounds.Ratio(times[0], times[1]);
        var (most, least) = (Allocated(Fresh), Allocated(Change));
        var each = 1e3 * fresh / parts;
        Line($"{parts,5}  {checks,6}   {fresh,8:F3}  {changed,10:F3}  {list,8:F3}  {ratio,13:F1}  {each,8:F1}  {most,9:F0}  {least,10:F0}");
    }

    private static int PartsOf(Job job, ReadyBook book) => Derive.From(job, book.Book.Vocabulary).Count;

    /// <returns>Thousands of bytes of one run.</returns>
    private static double Allocated(Action run)
    {
        var before = GC.GetAllocatedBytesForCurrentThread();
        run();
        return (GC.GetAllocatedBytesForCurrentThread() - before) / 1e3;
    }

    private static void Line(FormattableString text) =>
        Console.WriteLine(text.ToString(CultureInfo.InvariantCulture));
}
