using System.Text;
using WetCheck.Model;

namespace WetCheck.Proving;

/// <summary>What does not hold of rules, place by place, and how many cases do.</summary>
internal static class ProofText
{
    /// <param name="folder">Of the book, before each place.</param>
    public static (string Text, bool Holds) Of(IEnumerable<RuleProof> rules, string folder)
    {
        var text = new StringBuilder();
        var (cases, failed, faults) = (0, 0, 0);
        foreach (var proof in rules)
        {
            cases += proof.Cases.Count;
            failed += proof.Cases.Count(one => !one.Holds);
            faults += proof.Faults.Count;
            foreach (var one in proof.Cases.Where(one => !one.Holds))
            {
                Write(one.Case.At, one.Misses.Prepend(one.Case.Name));
            }

            foreach (var at in proof.Faults.GroupBy(fault => fault.At))
            {
                Write(at.Key, at.Select(fault => fault.Says));
            }
        }

        text.AppendLine($"{cases - failed} cases hold, {failed} do not." + (faults > 0 ? $" {faults} wanting in the rules." : ""));
        return (text.ToString(), failed + faults == 0);

        void Write(At at, IEnumerable<string> lines)
        {
            text.AppendLine(Book.In(folder, at).ToString());
            foreach (var line in lines)
            {
                text.AppendLine($"    {line}");
            }
        }
    }
}
