using NRules;
using WetCheck.Model;

namespace WetCheck.Engine;

/// <summary>A job held against a book, kept so that a changed reading revises only what it touches. Not for several threads.</summary>
public sealed class Session
{
    private const int MostFirings = 5_000_000;
    private readonly ISession _session;

    internal Session(ISession session, IReadOnlyList<PartState> states)
    {
        _session = session;
        _session.InsertAll(states);
        Fire();
    }

    /// <summary>In order of rule, then of part.</summary>
    public IReadOnlyList<Finding> Findings => [.. _session.Query<PartFindings>().AsEnumerable()
        .OrderBy(of => of.State.Part.Kind.Order)
        .ThenBy(of => of.State.Part.PlaceOrder)
        .ThenBy(of => of.State.Part.IsOther)
        .ThenBy(of => of.State.Part.Index ?? 0)
        .SelectMany(of => of.Findings)
        .OrderBy(finding => finding.Rule.Number)];

    public IReadOnlyList<Conclusion> Conclusions => [.. _session.Query<Conclusion>().AsEnumerable()
        .OrderBy(one => one.Part.Id, StringComparer.Ordinal)
        .ThenBy(one => one.Reading, StringComparer.Ordinal)
        .ThenBy(one => one.Rule?.Number ?? 0)];

    /// <summary>Takes states out and puts others in, then revises.</summary>
    public void Change(IReadOnlyList<PartState> gone, IReadOnlyList<PartState> come)
    {
        _session.RetractAll(gone);
        _session.InsertAll(come);
        Fire();
    }

    private void Fire()
    {
        _session.Fire(MostFirings);
        if (!_session.Agenda.IsEmpty)
        {
            throw new InvalidOperationException("the rules did not come to rest: two conclusions feed each other");
        }
    }
}
