using WetCheck.Engine;
using WetCheck.Geometry;
using WetCheck.Model;

namespace WetCheck.Flow;

/// <summary>A walk that is kept open: a changed reading revises only what it touches. Not for several threads.</summary>
internal sealed class KeptWalk
{
    private readonly ReadyBook _book;
    private readonly Session _session;
    private readonly DerivedStates _states;

    public KeptWalk(Job job, ReadyBook book)
    {
        _book = book;
        _states = new DerivedStates(job, book.Book.Vocabulary);
        _session = book.Compiled.Open([.. _states.All]);
    }

    public Job Job => _states.Job;

    public IReadOnlyList<Finding> Findings => _session.Findings;

    public IReadOnlyList<Conclusion> Conclusions => _session.Conclusions;

    /// <summary>The walk as it stands now.</summary>
    public Walk Walk(IReadOnlyList<Problem> problems) => Results.Of(Job, _book.Book, Findings, problems) with
    {
        Floor = FloorPlans.Of(Job, _states.All),
    };

    /// <summary>Puts the job as it is now in place of the one before, and revises what the change touches.</summary>
    public void Change(Job job)
    {
        var (gone, come) = _states.Change(job);
        _session.Change(gone, come);
    }
}
