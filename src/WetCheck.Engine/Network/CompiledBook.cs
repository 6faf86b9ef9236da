using NRules;
using WetCheck.Model;

namespace WetCheck.Engine;

/// <summary>A rule book as a network. Made once for a book; sessions may be opened from several threads.</summary>
public sealed class CompiledBook
{
    private readonly ISessionFactory _factory;
    private readonly Cut _cut;

    public CompiledBook(RuleBook book)
        : this(book.Rules, Cut.Nothing)
    {
    }

    internal CompiledBook(IReadOnlyList<Rule> rules, Cut cut)
    {
        _cut = cut;
        var climbs = rules.Select(rule => rule.Body).OfType<RuleBody.Conclude>()
            .SelectMany(conclude => conclude.Climbs.Select(kind => (conclude.Reading.Name, Kind: kind)))
            .Distinct();
        var compiler = new RuleCompiler(new RuleCompilerOptions
        {
            UnsupportedExpressionHandling = RuleCompilerUnsupportedExpressionsHandling.TreatAsNotEqual,
        })
        {
            ExpressionCompiler = new InterpretedExpressions(),
        };
        _factory = compiler.Compile(
        [
            .. cut.What == CutWhat.Rules ? []
                : PlanGroup.Gather(rules.Select(rule => new RulePlan(rule)))
                .Select(group => RuleProduction.Build(group, cut)),
            .. cut.What == CutWhat.Climbs ? [] : climbs.Select(climb => ClimbProduction.Build(climb.Name, climb.Kind)),
        ]);
    }

    /// <summary>Opens a session on a job and judges it whole.</summary>
    public Session Open(IReadOnlyList<PartState> states)
    {
        _cut.First = _cut.What == CutWhat.Nothing ? [] : states;
        return new Session(_factory.CreateSession(), states);
    }
}
