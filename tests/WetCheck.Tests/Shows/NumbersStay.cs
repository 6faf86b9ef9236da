using WetCheck.Intake;
using WetCheck.Model;
using WetCheck.Reporting;
using WetCheck.Tests.Reporting;

namespace WetCheck.Tests.Shows;

/// <summary>A number belongs to a rule and a place, on every run, job and language, whatever is changed in the file.</summary>
public sealed class NumbersStay
{
    private static readonly int Edits = Depth.Of(daily: 120, deep: 500, night: 5000);

    private static readonly JobLayout s_layout = new(TheBook.Book.Vocabulary);

    [Fact]
    public void Rule_and_part_and_number_go_together_through_any_edit()
    {
        var random = new Random(12);
        var paths = s_layout.Sections.SelectMany(section =>
            section.Lines.Where(line => line is not WetCheck.Intake.Line.Seen).Select(section.PathOf)).ToList();
        var jobs = Walks.Examples.ToDictionary(example => example.Name, example => example.Walk.Job);
        var numbers = new Dictionary<(string Rule, string Place), string>();
        var owners = new Dictionary<string, (string Rule, string Place)>();
        for (var edit = 0; edit < Edits; edit++)
        {
            var name = Walks.Names[random.Next(Walks.Names.Count)];
            var path = paths[random.Next(paths.Count)];
            if (JobChange.Apply(jobs[name], TheBook.Book.Vocabulary, $"{path}: {Written(path, random)}") is not ({ } changed, null))
            {
                continue;
            }

            jobs[name] = changed;
            foreach (var entry in TheBook.Walk(changed).Entries)
            {
                foreach (var part in entry.Checks.Select(check => check.Part))
                {
                    // Members of a list share the number of their place; one without a place has the number of its kind.
                    var place = $"{part.Kind.Name} {part.Place?.Name}";
                    numbers.TryAdd((entry.Rule.Id, place), entry.Number);
                    numbers[(entry.Rule.Id, place)].Should().Be(entry.Number, $"{name}, {path}");
                    owners.TryAdd(entry.Number, (entry.Rule.Id, place));
                    owners[entry.Number].Should().Be((entry.Rule.Id, place), $"{name}, {path}");
                }
            }
        }

        numbers.Count.Should().BeGreaterThan(70);
    }

    [Fact]
    public void Numbers_are_the_same_in_the_other_language()
    {
        foreach (var (name, walk) in Walks.Examples)
        {
            Numbers(Listing.Of(walk, "es", Walks.When)).Should().Equal(Numbers(Listing.Of(walk, "en", Walks.When)), name);
        }

        static IEnumerable<string> Numbers(Listing list) =>
            list.Groups.Concat(list.Rest).SelectMany(group => group.Items.Select(item => item.Number))
            .Concat(list.Looks.Select(look => look.Number));
    }

    [Fact]
    public void No_number_is_used_twice_or_again()
    {
        TheBook.Book.Rules.Select(rule => rule.Number).Should().OnlyHaveUniqueItems().And.NotIntersectWith(TheBook.Book.RetiredNumbers);
    }

    private static string Written(string path, Random random)
    {
        var (_, line) = s_layout.Find(path, out _)!.Value;
        var reading = line is WetCheck.Intake.Line.OfReading own ? own.Reading : line!.Kind.Find(line.Kind.Main!)!;
        return random.Next(4) switch
        {
            0 => "",
            1 => "?",
            2 => "none",
            _ when reading.Choices.Count > 0 => reading.Choices[random.Next(reading.Choices.Count)].Key,
            _ => reading.Example,
        };
    }
}
