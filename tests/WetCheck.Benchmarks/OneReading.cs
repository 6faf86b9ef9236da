using BenchmarkDotNet.Attributes;
using WetCheck.Flow;
using WetCheck.Model;

namespace WetCheck.Benchmarks;

/// <summary>One reading changes: a walk afresh against a walk that is kept.</summary>
[MemoryDiagnoser]
public class OneReading
{
    private ReadyBook _book = null!;
    private Model.Job _job = null!;
    private Model.Job _changed = null!;
    private KeptWalk _kept = null!;
    private bool _isChanged;

    [Params(0, 1000)]
    public int Nails { get; set; }

    /// <summary>A nail touches its own checks; the curb's height touches every height that is held against the finished curb.</summary>
    [Params("nails.left: 2-1/2 above, 3-1/8 above", "curb.height: 5-1/2 above liner at drain")]
    public string Changed { get; set; } = "";

    [GlobalSetup]
    public void Open()
    {
        _book = Bench.Book();
        _job = Bench.Juniper(Nails, _book.Book.Vocabulary);
        _changed = Bench.With(_job, Changed, _book.Book.Vocabulary);
        _kept = new KeptWalk(_job, _book);
    }

    /// <summary>Facts, findings and the list from a job that is read.</summary>
    [Benchmark(Baseline = true)]
    public Walk Fresh() => Inspection.Of(Toggled(), [], _book);

    [Benchmark]
    public Walk Kept()
    {
        _kept.Change(Toggled());
        return _kept.Walk([]);
    }

    /// <summary>Only the findings revised, before they are folded into a list.</summary>
    [Benchmark]
    public void KeptWithoutTheList() => _kept.Change(Toggled());

    private Model.Job Toggled() => (_isChanged = !_isChanged) ? _changed : _job;
}
