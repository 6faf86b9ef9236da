using WetCheck.Model;
using WetCheck.Reporting;
using WetCheck.Tests.Reporting;

namespace WetCheck.Tests.Shows;

/// <summary>
/// A height is asked from something that is there when it is asked, and what it should be is said as the tape would
/// show it.
/// </summary>
public sealed class HeightsOnTheTape
{
    /// <summary>Asked before their datum is made, because the datum hides them: only its plan can tell them.</summary>
    private static readonly string[] s_ahead =
        ["board.bottom", "wall.waterproof to", "drain.top", "drain.above substrate", "shower.room floor"];

    [Fact]
    public void No_height_is_asked_from_a_layer_that_comes_later()
    {
        foreach (var method in TheBook.Book.Vocabulary.Methods)
        {
            var stops = method.Stops.Select(stop => stop.Name).ToList();
            int Made(string? layer) => method.Layers.FirstOrDefault(one => one.Name == layer) is { } found ? stops.IndexOf(found.Made) : -1;
            var late = from kind in TheBook.Book.Vocabulary.Kinds
                       where !method.RulesOut.Contains(kind.Name)
                       from reading in kind.Readings
                       where reading is { Is: Form.Height, From: not null, Derived: false, Layer: not null } && Made(reading.Layer) >= 0
                       let lifter =
                           TheBook.Book.Vocabulary.Kinds.Where(other => !method.RulesOut.Contains(other.Name))
                           .SelectMany(other => other.Readings).FirstOrDefault(other => other.Lifts == reading.From)
                       where lifter is not null && Made(lifter.Layer) > Made(reading.Layer)
                       select $"{kind.Name}.{reading.Name}";
            late.Should().BeSubsetOf(s_ahead, method.Name);
        }
    }

    [Fact]
    public void What_a_height_should_be_stands_in_the_datum_that_was_read()
    {
        var both = 0;
        foreach (var (name, walk) in Walks.All)
        {
            var list = Listing.Of(walk, "en", Walks.When);
            foreach (var item in list.Groups.SelectMany(group => group.Items))
            {
                if (Evidence.Of(item.Entry.Worst)
                    .Test is { Fact.Kind.Is: Form.Height, LimitDatum: { } limit } test
                    && OnTape.DatumOf(test.Fact) is { } read && read != limit && OnTape.Bound(test) is { Sign: not 0 })
                {
                    both++;
                    item.Tape.Should().NotBeEmpty($"{name}, {item.Number}");
                    item.Should.Should().EndWith("on your tape", $"{name}, {item.Number}");
                }
            }
        }

        both.Should().BeGreaterThan(Depth.Of(daily: 5, deep: 10, night: 10));
    }
}
