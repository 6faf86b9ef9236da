using System.Globalization;
using WetCheck.Model;
using WetCheck.Tests.Conventions;
using WetCheck.Tests.Reporting;

namespace WetCheck.Tests.Proof;

/// <summary>
/// The few turns of each rule that together made it say all it can, as a search found them: <c>tests/proof/seeds.txt</c>. They are
/// tried first; what they no longer show is searched for again.
/// </summary>
internal static class Seeds
{
    private const string Place = "tests/proof/seeds.txt";

    private static readonly Lazy<IReadOnlyDictionary<string, IReadOnlyList<int>>> Kept = new(() => Repository.Files.Contains(Place)
        ? Repository.Lines(Place).Where(line => line.Length > 0 && line[0] != '#')
            .Select(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries)).ToDictionary(
            words => words[0], words =>
                (IReadOnlyList<int>)[.. words.Skip(1).Select(turn => int.Parse(turn, CultureInfo.InvariantCulture))],
                StringComparer.Ordinal)
        : new Dictionary<string, IReadOnlyList<int>>(StringComparer.Ordinal));

    public static bool IsToBeMade => KeptFile.IsToBeMade;

    public static IReadOnlyList<int> Of(Rule rule) => Kept.Value.GetValueOrDefault(rule.Id, []);

    /// <returns>The file, written anew where WETCHECK_REGENERATE asks it.</returns>
    public static string Keep(IEnumerable<(Rule Rule, IReadOnlyList<int> Turns)> found) => KeptFile.Of(Place,
        "# Rule, and the turns of the draw that bring it to say all it can. Made by a search: see Seeds.cs.\n"
        + string.Concat(found.OrderBy(one => one.Rule.Id, StringComparer.Ordinal)
            .Select(one =>
            $"{string.Join(' ', one.Turns.Select(turn => turn.ToString(CultureInfo.InvariantCulture)).Prepend(one.Rule.Id))}\n")));
}
