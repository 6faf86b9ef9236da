using System.Text.RegularExpressions;
using WetCheck.Asking;
using WetCheck.Model;
using WetCheck.Tests.Conventions;

namespace WetCheck.Tests.Cli.Scripted;

/// <summary>From five answers to nothing owed, by <c>look</c> alone, stop by stop.</summary>
public sealed partial class FromFiveAnswers(ITestOutputHelper output)
{
    /// <summary>A method, the units it is read in, a sound job from which answers are taken.</summary>
    public static TheoryData<string, string, string> Methods =>
    [
        .. Depth.OneOf<TheoryDataRow<string, string, string>>(2,
        [
            new("bonded membrane with curb", "millimetres", "tests/jobs/acacia.job.yaml"),
            new("liner under mortar", "inches", "docs/examples/juniper-made-right.job.yaml"),
            new("formed tray", "inches", "tests/jobs/hickory.job.yaml"),
            new("curbless bonded", "millimetres", "docs/examples/banksia.job.yaml"),
            new("tub surround", "millimetres", "tests/jobs/quandong.job.yaml"),
        ]),
    ];

    [Theory]
    [MemberData(nameof(Methods))]
    public void Through_every_stop_to_nothing_owed(string method, string units, string sound)
    {
        var five = Repository.Read("docs/examples/five-answers.job.yaml")
            .Replace("liner under mortar", method, StringComparison.Ordinal)
            .Replace("inches", units, StringComparison.Ordinal);
        var book = TheBook.Job(Repository.Read(sound), "sound.job.yaml");
        using var desk = new Desk(("five.job.yaml", five));
        var setter = new Setter(desk, "five", new AnswerBook(book, Computed));
        foreach (var (stop, i) in book.Method!.Stops.Select((stop, i) => (stop.Name, i)))
        {
            MoveOn(desk, stop, byLook: i % 2 == 1);
            setter.Look();
            output.WriteLine($"{method}, {units}, {stop}: {setter.Asked.Count}: {string.Join("; ", setter.Asked)}");
            setter.Fresh().ToFix.Select(entry => entry.Number).Should().BeEmpty(stop);
        }

        var last = setter.Fresh();
        last.Verdict.Should().Be(Verdict.NothingOwed, string.Join("; ", Question.Owed(last).Select(question => question.Line.Path)));
        desk.Run("walk", "five").Results.Should().Contain("NOTHING OWED");
    }

    /// <summary>The stop is moved on in the job file, or by an answer.</summary>
    private static void MoveOn(Desk desk, string stop, bool byLook)
    {
        if (byLook)
        {
            desk.Run("look", "five", "stage", stop).Results.Should().StartWith("Kept.");
        }
        else
        {
            desk.Write("five.job.yaml", Stage().Replace(File.ReadAllText(desk.PathOf("five.job.yaml")), $"stage: {stop}\n"));
        }
    }

    /// <summary>
    /// What the examples leave to arithmetic, as a tape reads it: 3/4 over the diagonal of 30 and 18; 3-1/4 and 3/4; 83
    /// and 20.
    /// </summary>
    private static readonly Dictionary<string, string> Computed = new()
    {
        ["floor valley/left jamb: fall"] = "3/4 over 35",
        ["floor valley/left-back: fall"] = "3/4 over 35",
        ["floor valley/right-back: fall"] = "3/4 over 35",
        ["floor valley/right jamb: fall"] = "3/4 over 35",
        ["curb: above drain"] = "4",
    };

    [GeneratedRegex("stage: .*\n")]
    private static partial Regex Stage();
}
