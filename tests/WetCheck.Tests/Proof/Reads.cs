using WetCheck.Engine;
using WetCheck.Model;

namespace WetCheck.Tests.Proof;

/// <summary>What a rule reads, through geometry and conclusions too: readings by kind and name, and codes.</summary>
internal sealed class Reads
{
    private readonly RuleBook _book;
    private readonly RulePlan _plan;
    private readonly HashSet<(string Kind, string Reading)> _own = [];
    private readonly HashSet<(string Kind, string Reading)> _anywhere = [];

    public Reads(Rule rule, RuleBook book)
    {
        (_book, _plan) = (book, new RulePlan(rule));
        Add(rule, _own);
        Disciplines = [.. rule.Conditions().OfType<Condition.CodeIs>().Select(test => test.Discipline)];
        Method = rule.Conditions().Any(test => test is Condition.MethodIs);
        Kinds = [.. _own.Concat(_anywhere).Select(one => one.Kind).Append(rule.Part.Name).Distinct()];
    }

    public Rule Rule => _plan.Rule;

    public HashSet<string> Disciplines { get; }

    public bool Method { get; }

    /// <summary>Kinds of part of which it reads anything.</summary>
    public IReadOnlyList<string> Kinds { get; }

    public bool Conclusions => _plan.Conclusions.Count > 0;

    public bool Has(string kind, string reading) => _own.Contains((kind, reading)) || _anywhere.Contains((kind, reading));

    /// <summary>The check of this rule on a part reads another part's reading; null: whether that part is there.</summary>
    public bool On(Part self, Part other, string? reading)
    {
        var key = (other.Kind.Name, reading!);
        return (reading is null ? _anywhere.Any(one => one.Kind == other.Kind.Name) : _anywhere.Contains(key))
            || ((reading is null || _own.Contains(key))
                && (self == other
                    || _plan.Nearest.Exists(kind => Relations.IsNearest(self, other, kind))
                    || _plan.Relations.Any(relation => Relations.Holds(relation, self, other))));
    }

    private void Add(Rule rule, HashSet<(string, string)> own)
    {
        foreach (var leaf in Leaves.Of(rule, _book.Vocabulary))
        {
            var paths = leaf.Condition switch
            {
                Condition.Is test => [test.Path],
                Condition.Compare { To: Operand.Of other } test => [test.Path, other.Path],
                Condition.Compare test => [test.Path],
                _ => (IEnumerable<Model.Path>)[],
            };
            foreach (var path in paths)
            {
                Add(path.Kind ?? leaf.Of.Name, path.Reading, own);
            }
        }
    }

    private void Add(string kind, ReadingKind reading, HashSet<(string, string)> own)
    {
        own.Add((kind, reading.Name));
        if (reading.Is == Form.Conclusion)
        {
            foreach (var rule in _book.Rules.Where(rule => rule.Body is RuleBody.Conclude conclude
                && conclude.Reading.Name == reading.Name))
            {
                Add(rule, _anywhere);
            }
        }

        if (reading.Is == Form.Height)
        {
            _anywhere.UnionWith(_book.Vocabulary.Kinds.SelectMany(one =>
                one.Readings.Where(lift => lift.Lifts is not null).Select(lift => (one.Name, lift.Name))));
        }

        _anywhere.UnionWith((kind, reading.Derived) switch
        {
            ("shower", true) => [("shower", "size"), ("curb", "width")],
            ("floor facet" or "floor valley", _) => [("shower", "size"), ("shower", "drain at"), ("floor", "rim")],
            ("tile", true) => [("lifted tile", "coverage")],
            _ => (IEnumerable<(string, string)>)[],
        });
    }
}
