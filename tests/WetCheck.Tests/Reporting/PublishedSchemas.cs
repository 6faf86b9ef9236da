using System.Text.Json.Serialization.Metadata;
using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck.Tests.Reporting;

/// <summary>The published schemas are those of the types that are written. <c>WETCHECK_REGENERATE=1</c> writes them anew.</summary>
public sealed class PublishedSchemas
{
    [Fact]
    public void The_schema_of_a_walk_is_that_of_its_shape() =>
        IsPublished("walk", JsonShapes.Default.WalkShape, "One walk of a wet-area job, as written by wetcheck walk --format json");

    [Fact]
    public void The_schema_of_a_floor_is_that_of_its_shape() =>
        IsPublished("pan", JsonShapes.Default.PanShape, "The sheets of one shower floor, as written by wetcheck pan --format json");

    [Fact]
    public void The_schema_of_old_work_is_that_of_its_shape() =>
        IsPublished("tearout", JsonShapes.Default.TearoutShape,
            "What old work's look accounts for, as written by wetcheck tearout --format json");

    /// <summary>A word that the program writes and the schema lacks would be found only by a job that has it.</summary>
    [Fact]
    public void Every_word_that_is_written_is_in_the_schema()
    {
        var walk = ShapeSchema.Written(JsonShapes.Default.WalkShape, "");
        var words = Enum.GetValues<Severity>().Select(Keys.Of).Concat(Enum.GetValues<Verdict>().Select(Keys.Of))
            .Concat(Enum.GetValues<Paper>().Select(Keys.Of)).Concat(Enum.GetValues<SourceStatus>().Select(Keys.Of))
            .Concat(Enum.GetValues<Result>().Except([Result.Caution, Result.Note]).Select(Keys.Of));
        words.Should().OnlyContain(word => walk.Contains($"\"{word}\"", StringComparison.Ordinal));
    }

    private static void IsPublished(string name, JsonTypeInfo shape, string title)
    {
        var made = ShapeSchema.Written(shape, title);
        made.Should().Be(KeptFile.Of($"docs/schemas/{name}.schema.json", made));
    }
}
