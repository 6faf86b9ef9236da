using WetCheck.Engine;
using WetCheck.Model;
using Path = WetCheck.Model.Path;

namespace WetCheck.Benchmarks.Peers;

/// <summary>The drawn checks as rules of the model, in the network that every walk runs in.</summary>
internal sealed class ByEngine
{
    private static readonly ReadingKind s_drop = Amount("drop"), s_gap = Amount("gap"), s_run = Amount("run");
    private static readonly ReadingKind s_stuff = Kind("stuff", Form.Choice, null,
        [.. Drawn.Stuffs.Select(stuff => new Choice(stuff, new Words(stuff)))]);
    private static readonly PartKind s_piece = new("piece", "pieces", Many.List, null, [], false, true, null,
        [s_drop, s_gap, s_run, s_stuff],
        Words.None, Words.None, Words.None, Words.None, Words.None, 0, At.Nowhere);

    private readonly CompiledBook _book;
    private readonly PartState[] _states;

    public ByEngine(Drawn drawn)
    {
        var none = new Vocabulary([s_piece], [], [], [], [], []);
        _book = new CompiledBook(new RuleBook("drawn", "", none, [.. drawn.Checks.Select(Written)],
            new Dictionary<string, IReadOnlyList<SourceEntry>>(), [],
            new Dictionary<string, IReadOnlyDictionary<string, string>>(), new Dictionary<string, string>()));
        _states = [.. drawn.Pieces.Select(Known)];
    }

    public IReadOnlyList<Finding> Run() => _book.Open(_states).Findings;

    public static IEnumerable<Verdict> Read(IReadOnlyList<Finding> findings) => findings.Select(finding => new Verdict(
        finding.Rule.Number, finding.State.Part.Index!.Value, finding.Judgement.Now,
        finding.Judgement.Sides[0].Tests[0] is { Condition: Condition.Compare, Slack.AsRead.Lo: var slack } ? slack : null));

    private static Rule Written(Check check)
    {
        var (first, second) = (Fixed(check.First), Fixed(check.Second));
        Condition holds = check.Shape switch
        {
            Shape.AtLeast => Compare(s_drop, Comparison.AtLeast, first),
            Shape.AtMost => Compare(s_gap, Comparison.AtMost, first),
            Shape.Between => new Condition.All(
                [Compare(s_run, Comparison.Over, first), Compare(s_run, Comparison.Under, second)], At.Nowhere),
            Shape.ChoiceOr => new Condition.AnyOf(
                [new Condition.Is(new Path(null, s_stuff), ["board", "foam"], At.Nowhere),
                    Compare(s_drop, Comparison.AtLeast, first)], At.Nowhere),
            _ => Compare(s_drop, Comparison.AtLeast, new Operand.Of(new Path(null, s_gap))),
        };
        return new Rule($"drawn/{check.Number}", check.Number, s_piece, null, new RuleBody.Require(holds), [], [], null,
            Severity.Stop, "", new Dictionary<string, RuleTexts>(), At.Nowhere);
    }

    private static PartState Known(Piece piece)
    {
        var part = new Part(s_piece, null, index: piece.Number);
        var facts = new[]
        {
            Read(part, s_drop, Number(piece.Drop)), Read(part, s_gap, Number(piece.Gap)),
            Read(part, s_run, Number(piece.Run)),
            Read(part, s_stuff, piece.Stuff is { } stuff ? new Known.OneOf(stuff) : Model.Known.Nothing.Instance),
        };
        return new PartState(part, Tri.Yes, new FactId(part.Id, FactId.Presence),
            facts.ToDictionary(fact => fact.Id.Reading, StringComparer.Ordinal));
    }

    private static Known Number(Rational? value) =>
        value is { } read ? new Known.Number(Spread.Exactly(read)) : Model.Known.Nothing.Instance;

    private static Fact Read(Part part, ReadingKind kind, Known known) =>
        new(new FactId(part.Id, kind.Name), kind, known, known, false, false, false, true, Sight.ToBeSeen, null, [], "");

    private static Condition.Compare Compare(ReadingKind reading, Comparison by, Operand to) =>
        new(new Path(null, reading), by, to, At.Nowhere);

    private static Operand.Fixed Fixed(int sixteenths) => new(Quantity.Of(Drawn.Inches(sixteenths), Unit.Inch));

    private static ReadingKind Amount(string name) => Kind(name, Form.Amount, Measure.Length, []);

    private static ReadingKind Kind(string name, Form form, Measure? measure, IReadOnlyList<Choice> choices) => new(
        name, form, measure, choices, null, null, null, null, new Dictionary<string, string>(), false, null, Effort.Measure, null,
        Words.None, Words.None, Words.None, Words.None, "", At.Nowhere);
}
