using WetCheck.Model;

namespace WetCheck.Benchmarks.Peers;

/// <summary>The drawn checks as one would write them in C#: a function each, exact numbers, unknown kept apart.</summary>
internal sealed class ByHand(Drawn drawn)
{
    private readonly (int Number, Func<Piece, Answer> Ask)[] _checks = [.. drawn.Checks.Select(check => (check.Number, Written(check)))];

    private readonly record struct Answer(Outcome Outcome, Rational? Slack)
    {
        public static readonly Answer Open = new(Outcome.Open, null);

        /// <param name="strict">Nothing to spare is not enough.</param>
        public static Answer From(Rational? slack, bool strict = false) => slack is not { } by ? Open
            : new(by.Sign > 0 || (by.Sign == 0 && !strict) ? Outcome.Ok : Outcome.Correction, by);
    }

    public List<Verdict> Run()
    {
        var said = new List<Verdict>(_checks.Length * drawn.Pieces.Count);
        foreach (var (number, ask) in _checks)
        {
            foreach (var piece in drawn.Pieces)
            {
                var answer = ask(piece);
                said.Add(new Verdict(number, piece.Number, answer.Outcome, answer.Slack));
            }
        }

        return said;
    }

    private static Func<Piece, Answer> Written(Check check)
    {
        var (first, second) = (Drawn.Inches(check.First), Drawn.Inches(check.Second));
        return check.Shape switch
        {
            Shape.AtLeast => piece => Answer.From(piece.Drop - first),
            Shape.AtMost => piece => Answer.From(first - piece.Gap),
            Shape.Between => piece => Both(Answer.From(piece.Run - first, strict: true), Answer.From(second - piece.Run, strict: true)),
            Shape.ChoiceOr => piece => Either(OfBoardOrFoam(piece.Stuff), Answer.From(piece.Drop - first)),
            _ => piece => Answer.From(piece.Drop - piece.Gap),
        };
    }

    private static Answer OfBoardOrFoam(string? stuff) => stuff is null ? Answer.Open
        : new(stuff is "board" or "foam" ? Outcome.Ok : Outcome.Correction, null);

    private static Answer Both(Answer a, Answer b) =>
        a.Outcome == Outcome.Correction ? a : b.Outcome == Outcome.Correction ? b
        : a.Outcome == Outcome.Open ? a : b.Outcome == Outcome.Open ? b : a;

    private static Answer Either(Answer a, Answer b) =>
        a.Outcome == Outcome.Ok ? a : b.Outcome == Outcome.Ok ? b
        : a.Outcome == Outcome.Open ? a : b.Outcome == Outcome.Open ? b : a;
}
