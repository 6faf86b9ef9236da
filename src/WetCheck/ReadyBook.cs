using WetCheck.Engine;
using WetCheck.Model;

namespace WetCheck;

/// <summary>A rule book made ready to hold jobs against. Make it once; it may be used from several threads.</summary>
public sealed class ReadyBook(RuleBook book)
{
    public RuleBook Book { get; } = book;

    public CompiledBook Compiled { get; } = new(book);
}
