using System.Collections.Concurrent;
using WetCheck.Engine;
using WetCheck.Model;

namespace WetCheck.Flow;

/// <summary>A rule book made ready to hold jobs against. Make it once; it may be used from several threads.</summary>
internal sealed class ReadyBook(RuleBook book)
{
    private readonly Lazy<CompiledBook> _compiled = new(() => new CompiledBook(book));
    private readonly ConcurrentDictionary<string, ReadyBook> _alone = new(StringComparer.Ordinal);

    public RuleBook Book { get; } = book;

    public CompiledBook Compiled => _compiled.Value;

    /// <summary>With no rule but this one and those that conclude: what it says is the same, and is found sooner.</summary>
    public ReadyBook Alone(Rule rule) => _alone.GetOrAdd(rule.Id,
        _ => new ReadyBook(Book with { Rules = [.. Book.Rules.Where(one => one == rule || one.Body is RuleBody.Conclude)] }));
}
