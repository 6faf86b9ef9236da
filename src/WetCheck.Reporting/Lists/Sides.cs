using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>Both sides of a check that comes out differently by the code, or by a fact nobody has looked at.</summary>
internal static class Sides
{
    /// <summary>True where at least two sides come to different ends, or ask for different limits.</summary>
    public static bool Differ(Check check, Telling telling) => Grouped(check, telling).Count > 1;

    /// <summary>"IRC and IPC: OK. UPC asks 1024 sq in or more."</summary>
    public static string Say(Check check, Telling telling)
    {
        var groups = Grouped(check, telling);
        return string.Join(' ', groups.Select(group => group.Outcome switch
        {
            Outcome.Ok => telling.Phrases.Say("look.side-ok", ("codes", Label(group))),
            Outcome.NotHere => telling.Phrases.Say("look.side-none", ("codes", Label(group))),
            _ => telling.Phrases.Say(group.Labels.Count > 1 ? "look.sides-ask" : "look.side-asks", ("codes", Label(group)), ("limit", group.Limit)),
        }).Select(Sentence.Closed).Select(Sentence.Capital));

        string Label(Group group) => telling.Phrases.List(group.Labels);
    }

    private static List<Group> Grouped(Check check, Telling telling)
    {
        var groups = new List<Group>();
        foreach (var side in check.Sides)
        {
            var outcome = side.Outcome == Outcome.Open ? Outcome.Correction : side.Outcome;
            var test = side.Tests.FirstOrDefault(t => t.Answer != Tri.Yes);
            var limit = outcome is Outcome.Ok or Outcome.NotHere || test is null ? "" : Limit.Own(test, telling);
            var group = groups.Find(g => g.Outcome == outcome && g.Limit == limit);
            if (group is null)
            {
                groups.Add(group = new Group(outcome, limit, []));
            }

            foreach (var label in Labels(side, telling).Where(label => !group.Labels.Contains(label)))
            {
                group.Labels.Add(label);
            }
        }

        return groups;
    }

    private static List<string> Labels(Side side, Telling telling)
    {
        var codes = side.Codes.Select(code => Naming.Code(code, telling.Phrases)).ToList();
        if (codes.Count > 0)
        {
            return codes;
        }

        var whens = side.Versions.Select(version => version.When).OfType<Condition>()
            .Select(when => Conditions.Say(when, null, telling.Walk.Book, telling.Phrases))
            .ToList();
        return whens.Count > 0 ? whens : [telling.Phrases["look.otherwise"]];
    }

    private sealed record Group(Outcome Outcome, string Limit, List<string> Labels);
}
