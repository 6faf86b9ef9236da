using System.Globalization;
using RulesEngine.Models;

namespace WetCheck.Benchmarks.Peers;

/// <summary>The drawn checks in a general rules library: an expression each, compiled once. It says met or not, and no more.</summary>
internal sealed class ByLibrary
{
    private const string Name = "drawn";
    private readonly RulesEngine.RulesEngine _engine;
    private readonly RuleParameter[] _pieces;

    public ByLibrary(Drawn drawn)
    {
        // The messages that it would format are not asked for: without them it is quicker.
        _engine = new RulesEngine.RulesEngine(
            [new Workflow { WorkflowName = Name, Rules = [.. drawn.Checks.Select(Written)] }],
            new ReSettings { EnableFormattedErrorMessage = false });
        _pieces = [.. drawn.Pieces.Select(piece => new RuleParameter("piece", new PlainPiece(
            piece.Number, piece.Drop!.Value.Approximate, piece.Gap!.Value.Approximate, piece.Run!.Value.Approximate, piece.Stuff!)))];
        Hold(_pieces[0]);
    }

    public List<List<RuleResultTree>> Run() => [.. _pieces.Select(Hold)];

    /// <returns>Check, piece, whether it is met.</returns>
    public static IEnumerable<(int Check, int Piece, bool Met)> Read(List<List<RuleResultTree>> results) =>
        results.SelectMany((of, piece) => of.Select(one =>
            (int.Parse(one.Rule.RuleName, CultureInfo.InvariantCulture), piece + 1, one.IsSuccess)));

    private List<RuleResultTree> Hold(RuleParameter piece) => _engine.ExecuteAllRulesAsync(Name, piece).AsTask().GetAwaiter().GetResult();

    private static Rule Written(Check check) => new()
    {
        RuleName = check.Number.ToString(CultureInfo.InvariantCulture),
        RuleExpressionType = RuleExpressionType.LambdaExpression,
        Expression = check.Shape switch
        {
            Shape.AtLeast => $"piece.Drop >= {Number(check.First)}",
            Shape.AtMost => $"piece.Gap <= {Number(check.First)}",
            Shape.Between => $"piece.Run > {Number(check.First)} && piece.Run < {Number(check.Second)}",
            Shape.ChoiceOr => $"piece.Stuff == \"board\" || piece.Stuff == \"foam\" || piece.Drop >= {Number(check.First)}",
            _ => "piece.Drop >= piece.Gap",
        },
    };

    private static string Number(int sixteenths) => (sixteenths / 16d).ToString("0.0000", CultureInfo.InvariantCulture);
}
