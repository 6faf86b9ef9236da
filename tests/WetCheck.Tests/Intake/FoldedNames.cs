using WetCheck.Intake;

namespace WetCheck.Tests.Intake;

/// <summary>Requirement 5: names take space, dash and underscore for one, and any case; sides may be written by their letters.</summary>
[Trait("Requirement", "5")]
public sealed class FoldedNames
{
    private const string Text = """
        plumbing code: IRC 2021
        units: inches
        method: liner under mortar
        stage: before bed
        readings by: JM
        curb:
          cap adds: plan 1
          facing: plan lath and mortar
        liner:
          past jambs: 3
          corners: left-back cut, right jamb pieced
        nails:
          curb inside: 2 below rough curb
        flood test:
          filled to: rough threshold
        """;

    [Fact]
    public void Any_way_to_write_a_name_is_the_name()
    {
        var expected = JobPage.Of(BookText.Job(Text));
        string[] names =
        [
            "plumbing code", "units", "method", "liner under mortar", "stage", "before bed", "readings by", "curb",
                "cap adds", "facing", "lath and mortar", "liner",
            "past jambs", "corners", "left-back", "right jamb", "nails", "curb inside", "flood test", "filled to",
                "rough threshold", "rough curb",
        ];
        var random = new Random(7);
        for (var i = 0; i < 300; i++)
        {
            var text = Text;
            foreach (var name in names.Where(_ => random.Next(2) == 0))
            {
                text = text.Replace(name, Otherwise(name, random), StringComparison.Ordinal);
            }

            JobPage.Of(BookText.Job(text)).Should().Be(expected, text);
        }
    }

    [Theory]
    [InlineData("Left-Back", "left back", true)]
    [InlineData("  left _ back -", "LEFT\u2013BACK", true)]
    [InlineData("left", "lef", false)]
    [InlineData("lef", "left", false)]
    [InlineData("leftback", "left back", false)]
    [InlineData("left ", "left b", false)]
    [InlineData("", " - ", true)]
    [InlineData("\u2212", "a", false)]
    public void Names_are_the_same_that_have_one_form(string one, string other, bool same)
    {
        Names.Same(one, other).Should().Be(same);
        (Names.Fold(one) == Names.Fold(other)).Should().Be(same);
        Names.Find(one, ["nothing of it", other]).Should().Be(same ? other : null);
    }

    [Fact]
    public void A_letter_is_its_side()
    {
        var read = JobPage.Of(BookText.Job("units: inches\nliner:\n  left: 3\n  back: 3-1/8\n  right: 3-1/4\n  "
            + "corners: left-back cut\nliner falls:\n  entry: 3/4 over 36"));
        JobPage.Of(BookText.Job("units: inches\nliner:\n  B: 3\n  C: 3-1/8\n  d: 3-1/4\n  corners: BC cut\nliner "
            + "falls:\n  A: 3/4 over 36")).Should().Be(read);
    }

    [Fact]
    public void Any_side_of_any_section_may_be_its_letter_in_any_case()
    {
        const string Sides =
            "units: inches\nliner falls:\n  <left>: 3/4 over 36\n  <entry>: 1/2 over 24\nliner:\n  <left>: 3\n  "
            + "<back>: 3-1/8\n  <right>: 3-1/4\n  corners: <left-back> cut, <right-back> pieced\n"
            + "nails:\n  <back>: 3 above\n  <right>: 2 below\nboard:\n  bottom: <left> plan 1/4 above bed, <right> in "
            + "bed, rest 1/2 above bed\nfloor falls:\n  <back>: 1 over 30\n  <right>: 2 %\n";
        (string Name, string Letters)[] sides =
            [("left", "B"), ("back", "C"), ("right", "D"), ("entry", "A"), ("left-back", "BC"), ("right-back", "CD")];
        var plain = JobPage.Of(BookText.Job(sides.Aggregate(Sides,
            (text, side) => text.Replace($"<{side.Name}>", side.Name, StringComparison.Ordinal))));
        var random = new Random(5);
        for (var i = 0; i < 300; i++)
        {
            var text = sides.Aggregate(Sides,
                (now, side) =>
                string.Join(null,
                now.Split($"<{side.Name}>")
                .SelectMany((piece, n) => n == 0 ? [piece]
                : new[] { Otherwise(random.Next(2) == 0 ? side.Letters : side.Name, random), piece })));
            JobPage.Of(BookText.Job(text)).Should().Be(plain, text);
        }
    }

    [Fact]
    public void A_side_by_name_and_by_letter_is_one_line_twice() =>
        BookText.ProblemsOf("units: inches\nliner:\n  left: 3\n  B: 3").Should()
            .ContainSingle(problem => problem.Code == "twice" && problem.At.Line == 4);

    [Theory]
    [InlineData("weaps", "weeps")]
    [InlineData("wepes", "weeps")]
    [InlineData("hieght", "height")]
    [InlineData("capadds", "cap adds")]
    [InlineData("ring", "ring")]
    public void The_nearest_name(string typed, string meant) =>
        Names.Nearest(typed, ["weeps", "pipe", "ring", "height", "cap adds"]).Should().Be(meant);

    [Fact]
    public void Nothing_is_near_to_something_else_altogether() => Names.Nearest("roof truss", ["weeps", "pipe", "ring"]).Should().BeNull();

    [Fact]
    public void No_two_names_of_the_vocabulary_fold_to_one()
    {
        var sections =
            new JobLayout(BookText.Vocabulary).Sections.Select(section => section.Name)
            .Concat(HeaderReader.Keys(BookText.Vocabulary)).Select(Names.Fold).ToList();
        sections.Should().OnlyHaveUniqueItems();
    }

    private static string Otherwise(string name, Random random) =>
        string.Concat(name.Select(c => c is ' ' or '-' ? " -_"[random.Next(3)] : random.Next(2) == 0 ? char.ToUpperInvariant(c) : c));
}
