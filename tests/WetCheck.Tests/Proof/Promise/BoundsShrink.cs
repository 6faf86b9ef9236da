using WetCheck.Geometry;
using WetCheck.Model;

namespace WetCheck.Tests.Proof;

/// <summary>
/// What is worked out from other readings only gets narrower as facts arrive: falls by rim, corners and outline,
/// finished sizes, coverage, and
/// the difference of every two levels (so rim, turn-up, spill level). By every way to each of them, as read and within the tools' bands.
/// </summary>
public sealed class BoundsShrink(ITestOutputHelper output)
{
    [Fact]
    public void No_loss_narrows_what_is_worked_out()
    {
        var (faults, seen) = (new List<string>(), new HashSet<string>());
        var narrowed = 0;
        for (var number = 0; number < Depth.Jobs; number++)
        {
            var job = Drawn.Of(number, TheBook.Book).Job;
            var with = Told(job, levelsToo: true);
            // A part that is not there, as said or by the method, has no levels: nothing stands on them.
            foreach (var loss in Losses.Of(job, TheBook.Book.Vocabulary, new Dice(number))
                .Where(loss => loss is { IsMethod: false, IsPresence: false }))
            {
                // Levels stand on heights and on nothing else.
                foreach (var (name, without) in Told(loss.After(),
                    levelsToo: loss.Kind is null or { Is: Form.Height } or { Lifts: not null }))
                {
                    if (with.TryGetValue(name, out var before) && !before.Band.IsEmpty && !before.AsRead.IsEmpty)
                    {
                        seen.Add(name.Split('/', ' ')[0]);
                        narrowed += before != without ? 1 : 0;
                        if (!without.Band.Contains(before.Band) || !without.AsRead.Contains(before.AsRead))
                        {
                            faults.Add($"job {number}, lost {loss.Of}: {name} was {before}, is {without}");
                        }
                    }
                }
            }
        }

        output.WriteLine($"{narrowed} got wider; of {string.Join(", ", seen.Order())}");
        faults.Should().BeEmpty();
        narrowed.Should().BeGreaterThan(Depth.Jobs, "else nothing was lost that anything stands on");
    }

    private static Dictionary<string, Spread> Told(Job job, bool levelsToo)
    {
        var states = Derive.From(job, TheBook.Book.Vocabulary);
        var told = new Dictionary<string, Spread>();
        foreach (var fact in states.SelectMany(state => state.Facts.Values))
        {
            foreach (var (way, at) in Ways(fact).Where(way => way.From.Count > 0).Select((way, at) => (way, at)))
            {
                told[$"{fact.Id} by way {at}: {way.Explained}"] = Spread(way);
            }
        }

        if (!levelsToo)
        {
            return told;
        }

        var levels = states.Select(state => state.Surroundings).OfType<Surroundings>().Single().Levels;
        var here = levels.Owners.Where(owner => owner.Value.Exists != Tri.No).Select(owner => owner.Key).ToList();
        foreach (var (from, to) in here.SelectMany(from => here.Where(to => to != from).Select(to => (from, to))))
        {
            var ways = levels.Between(from, to).Select(way => way.Given(onPaper: false)).ToList();
            told[$"level {from} to {to}"] = new Spread(All(ways.Select(way => way.AsRead)), All(ways.Select(way => way.Band)));
        }

        return told;
    }

    private static IEnumerable<Fact> Ways(Fact fact)
    {
        for (var one = fact; one is not null; one = one.Also)
        {
            yield return one;
        }
    }

    private static Spread Spread(Fact fact) => fact.Now is Known.Number number ? number.Spread : Model.Spread.Everything;

    private static Interval All(IEnumerable<Interval> ways) => ways.Aggregate(Interval.Everything, (all, way) => all.Intersect(way));
}
