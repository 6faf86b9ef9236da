using System.Text;
using WetCheck.Model;

namespace WetCheck;

/// <summary>What becomes of a line about which something is told.</summary>
public enum TakenAs
{
    /// <summary>It is taken as it stands, and asked about.</summary>
    ItStands,

    /// <summary>It counts as blank.</summary>
    Blank,

    /// <summary>Nothing can be read before it is mended.</summary>
    Nothing,
}

/// <summary>Something about one place of a text: the line as typed, what it is taken for and what to write.</summary>
/// <param name="Place"><c>juniper.job.yaml:36:12</c>.</param>
/// <param name="Column">In the line as typed, from 1.</param>
/// <param name="Code">What it is about, the same in every language: <c>not-a-tape-fraction</c>.</param>
public sealed record Told(string Place, int Column, string Code, string Typed, string Say, TakenAs Taken)
{
    private const string Indent = "    ";

    /// <summary>As it is met on a screen: the place, the line, a caret, what to write. Without an end of line.</summary>
    public override string ToString()
    {
        var text = new StringBuilder().Append(Place).Append('\n').Append(Indent);
        if (Typed.Length > 0)
        {
            text.Append(Typed.Replace('\t', '→')).Append('\n').Append(Indent)
                .Append(' ', Math.Clamp(Column - 1, 0, Typed.Length)).Append("^ ");
        }

        return text.Append(Say).ToString();
    }

    internal static Told About(Problem problem) => new(
        problem.At.ToString(), problem.At.Column, problem.Code, problem.Typed, problem.Say, problem.Effect switch
        {
            Effect.Asked => TakenAs.ItStands,
            Effect.Blank => TakenAs.Blank,
            _ => TakenAs.Nothing,
        });
}
