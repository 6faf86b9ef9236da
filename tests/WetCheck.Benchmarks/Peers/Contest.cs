using System.Globalization;
using WetCheck.Model;

namespace WetCheck.Benchmarks.Peers;

/// <summary>The engine, a general library and checks by hand: the same drawn checks and parts, equal findings.</summary>
internal static class Contest
{
    private static readonly (int Checks, int Parts)[] s_sizes =
        [(50, 10), (50, 200), (50, 10_000), (200, 10),
            (200, 200), (1000, 10), (1000, 200)];

    public static void Print()
    {
        Console.WriteLine(
            "rules  parts   engine ms  library ms  by hand ms  engine us/check  library/engine  engine/by hand");
        foreach (var (checks, parts) in s_sizes)
        {
            Print(new Drawn(checks, parts));
        }

        Console.WriteLine("making ready, once for a book:");
        foreach (var checks in s_sizes.Select(size => size.Checks).Distinct())
        {
            var drawn = new Drawn(checks, 1);
            var times = Rounds.Time(3, () => _ = new ByEngine(drawn), () => _ = new ByLibrary(drawn));
            var (own, other) = (1e3 * times[0].Min(), 1e3 * times[1].Min());
            Line($"{checks,5}          {own,8:F2}    {other,8:F2}                {Rounds.Ratio(times[1], times[0]),8:F1}");
        }
    }

    private static void Print(Drawn drawn)
    {
        var (engine, library, hand) = (new ByEngine(drawn), new ByLibrary(drawn), new ByHand(drawn));
        MustAgree(engine, library, hand);
        var times = Rounds.Time(7, () => engine.Run(), () => library.Run(), () => hand.Run());
        var (own, other, plain) = (1e3 * times[0].Min(), 1e3 * times[1].Min(), 1e3 * times[2].Min());
        var (checks, parts) = (drawn.Checks.Count, drawn.Pieces.Count);
        var (faster, slower) = (Rounds.Ratio(times[1], times[0]), Rounds.Ratio(times[0], times[2]));
        var each = 1e3 * own / checks / parts;
        Line($"{checks,5}  {parts,5}   {own,9:F3}   {other,9:F3}   {plain,9:F3}  {each,14:F2}  {faster,14:F2}  {slower,14:F1}");
    }

    /// <exception cref="InvalidOperationException">One says something else than another, or less.</exception>
    private static void MustAgree(ByEngine engine, ByLibrary library, ByHand hand)
    {
        var said = hand.Run();
        var met = said.Select(one => (one.Check, one.Piece, Met: one.Outcome == Outcome.Ok)).ToHashSet();
        var agree = said.ToHashSet().SetEquals(ByEngine.Read(engine.Run())) && met.SetEquals(ByLibrary.Read(library.Run()));
        if (!agree || met.Count != said.Count)
        {
            throw new InvalidOperationException("The three do not find the same.");
        }
    }

    private static void Line(FormattableString text) =>
        Console.WriteLine(text.ToString(CultureInfo.InvariantCulture));
}
