using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using WetCheck.Model;

namespace WetCheck.Tests.Proof;

/// <summary>What the draws ask of a book again and again, worked out once for it. May be used from several threads.</summary>
internal sealed class Studied
{
    private static readonly ConditionalWeakTable<RuleBook, Studied> Books = [];
    private readonly ConcurrentDictionary<Rule, Reads> _reads = [];
    private readonly ConcurrentDictionary<Rule, IReadOnlyList<Limit>> _limits = [];
    private readonly RuleBook _book;

    private Studied(RuleBook book)
    {
        _book = book;
        Limits = Limit.Of(book);
        LimitsOf = Limits.ToLookup(limit => (limit.Kind.Name, limit.Reading.Name));
    }

    public IReadOnlyList<Limit> Limits { get; }

    /// <summary>By kind of part and reading.</summary>
    public ILookup<(string Kind, string Reading), Limit> LimitsOf { get; }

    public static Studied Of(RuleBook book) => Books.GetValue(book, static book => new Studied(book));

    public Reads Reads(Rule rule) => _reads.GetOrAdd(rule, one => new Reads(one, _book));

    public IReadOnlyList<Limit> LimitsIn(Rule rule) => _limits.GetOrAdd(rule, one => [.. Limit.Of(one, _book.Vocabulary)]);
}
