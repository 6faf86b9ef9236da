using Scriban.Runtime;
using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>The two files that a rule starts with: a line for each thing to say, blank.</summary>
public static class RuleStart
{
    /// <summary>Changes of a town stand in a chapter of their own.</summary>
    private const string Local = "local";
    private const int LocalNumber = 900;

    /// <summary>The next free number of a chapter; null: the book has no such chapter.</summary>
    public static int? NextNumber(RuleBook book, string chapter)
    {
        var own = book.Rules.Where(rule => rule.Chapter == chapter).Select(rule => rule.Number).ToList();
        if (own.Count == 0 && chapter != Local)
        {
            return null;
        }

        var taken = book.Rules.Select(rule => rule.Number).Concat(book.RetiredNumbers).ToHashSet();
        var next = own.Append(LocalNumber * (chapter == Local ? 1 : 0)).Max() + 1;
        while (taken.Contains(next))
        {
            next++;
        }

        return next;
    }

    /// <param name="id">Chapter and name: <c>local/curb-width</c>.</param>
    public static (string Rule, string Cases) Files(RuleBook book, string id, int number)
    {
        var model = new ScriptObject { ["id"] = id, ["number"] = number, ["languages"] = new[] { Languages.English, Languages.Spanish } };
        return (Sheet.Fill(book, "rule.yaml", model), Sheet.Fill(book, "cases.yaml", model));
    }
}
