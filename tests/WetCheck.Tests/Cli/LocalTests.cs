using WetCheck.Tests.Conventions;

namespace WetCheck.Tests.Cli;

/// <summary>
/// A town with rules of its own: docs/examples/local, as docs/local-changes.md tells it. The town and its figures are
/// invented.
/// </summary>
public sealed class LocalTests : IDisposable
{
    private const string Town = "springfield.local.yaml";

    private readonly Desk _desk = new(
        ("maple.job.yaml", Repository.Read("docs/examples/local/maple.job.yaml")),
        (Town, Repository.Read("docs/examples/local/" + Town)));

    public void Dispose() => _desk.Dispose();

    [Fact]
    public void The_town_counts_and_is_named()
    {
        var walk = _desk.Run("walk", "maple");
        walk.Code.Should().Be(1);
        walk.Messages.Should().BeEmpty();
        walk.Results.Should().Contain("Local changes apply: 4. Springfield (invented) 2026-03-01, as given in");

        // 5 in above the rough curb, the cap takes 1: enough for the code's 2 in, not for the town's 6.
        var why = _desk.Run("why", "maple", "214-D").Results;
        why.Should().Contain("CORRECTION").And.Contain("Local: Springfield (invented) table 7, as given in");
        walk.Results.Should().Contain(" 214-D ").And.NotContain(" 214-B ");
        walk.Results.Should().Contain(" 414 ").And.Contain(" 901 ").And.NotContain(" 612 ");
    }

    [Fact]
    public void Without_the_line_the_book_is_as_it_was()
    {
        _desk.Write("maple.job.yaml",
            Repository.Read("docs/examples/local/maple.job.yaml")
            .Replace("local: ", "notes: ", StringComparison.Ordinal));
        var walk = _desk.Run("walk", "maple", "--all");
        walk.Results.Should().NotContain("Local changes").And.NotContain(" 901 ").And.NotContain("TO FIX");
        _desk.Run("why", "maple", "214-D").Results.Should().NotContain("CORRECTION");
    }

    [Fact]
    public void A_file_that_is_not_there_stops_the_walk()
    {
        File.Delete(_desk.PathOf(Town));
        var walk = _desk.Run("walk", "maple");
        walk.Code.Should().Be(4);
        walk.Messages.Should().Contain("maple.job.yaml:7:8").And.Contain($"There is no file \"{Town}\"");
    }

    [Fact]
    public void A_change_that_can_not_be_read_stops_it_too()
    {
        _desk.Write(Town,
            Repository.Read("docs/examples/local/" + Town)
            .Replace("liner/turn-up", "liner/turn-out", StringComparison.Ordinal));
        var walk = _desk.Run("walk", "maple");
        walk.Code.Should().Be(4);
        walk.Messages.Should().Contain($"{Town}:5:11").And.Contain("liner/turn-up");
    }

    [Fact]
    public void Rules_prove_proves_the_book_itself() => _desk.Run("rules", "prove", "liner/turn-up").Code.Should().Be(0);
}
