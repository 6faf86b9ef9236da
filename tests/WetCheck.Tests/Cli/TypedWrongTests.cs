namespace WetCheck.Tests.Cli;

/// <summary>What was typed wrong is named, with what to type; nothing goes to standard output.</summary>
public sealed class TypedWrongTests
{
    [Theory]
    [InlineData("wlak juniper", "Nearest: walk.")]
    [InlineData("walk juniper --stgae x", "wetcheck walk has no --stgae. Nearest: --stage.")]
    [InlineData("walk --all -z", "wetcheck walk has no -z.")]
    [InlineData("walk hall bath", "\"bath\" is one word too many. A name with spaces goes in quotes.")]
    [InlineData("walk --stage", "--stage needs STOP after it.")]
    [InlineData("walk --format xml", "--format takes text, json, md, html; \"xml\" is none of them.")]
    [InlineData("job", "wetcheck job needs one more word: new, sample, schema.")]
    [InlineData("rules prve", "Nearest: prove.")]
    [InlineData("why", "wetcheck why needs JOB.")]
    [InlineData("why liner/turnup", "Nearest: liner/turn-up.")]
    [InlineData("why juniper 214-X", "Of rule 214 it has")]
    [InlineData("walk junpier", "Nearest: juniper.job.yaml.", 4)]
    [InlineData("why juniper 2141-D", "Nearest: 214-D.")]
    [InlineData("look juniper 2141-D", "Nearest: 214-D.")]
    [InlineData("why 2149", "Nearest: 214.")]
    [InlineData("punch juniper --lnag es", "Nearest: --lang.")]
    [InlineData("job nwe", "Nearest: new.")]
    [InlineData("rules prove lner", "Nearest: liner.")]
    [InlineData("rules prove nothing", "nothing")]
    public void It_is_named_with_what_to_type(string line, string says, int code = 2)
    {
        using var desk = new Desk();
        var ran = desk.Run(line.Split(' '));
        ran.Code.Should().Be(code);
        ran.Results.Should().BeEmpty();
        ran.Messages.Should().Contain(says).And.NotContainAny("Error", "error", "invalid", "Required", "Unrecognized");
    }

    [Fact]
    public void A_name_that_starts_with_an_at_sign_is_a_name()
    {
        using var desk = new Desk();
        desk.Run("walk", "@juniper").Messages.Should()
            .Contain("There is no file @juniper.job.yaml here. Nearest: juniper.job.yaml.\n    wetcheck walk juniper");
    }
}
