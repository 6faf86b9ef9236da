using WetCheck.Intake;
using WetCheck.Tests.Conventions;

namespace WetCheck.Tests.Mud;

/// <summary>Figures on mortar and water are data of the book: each has its row, and what can't be read is named with its place.</summary>
public sealed class MaterialsFile
{
    [Fact]
    public void Each_figure_has_its_row_of_the_sources() =>
        TheBook.Book.Materials.Rows.Select(one => one.Row).Distinct().Should()
            .Equal("TS-10", "MB-07", "TS-01", "MB-90", "TL-09", "MB-14", "MB-10", "MB-08")
            .And.BeSubsetOf(TheBook.Book.Sources.Keys);

    /// <summary>What nobody has published is called what it is.</summary>
    [Fact]
    public void Waste_is_trade_practice() =>
        TheBook.Book.Sources[TheBook.Book.Materials.Waste!.Row].Should().OnlyContain(entry => entry.Status == Model.SourceStatus.Practice);

    [Theory]
    [InlineData("waste: { adds: 10 %, row: XX-99 }\n", 1, "not in sources.yaml")]
    [InlineData("\nwaste: { adds: 10 % }\n", 2, "row")]
    [InlineData("bags:\n  - { pounds: 80, row: MB-14 }\n", 2, "yield")]
    [InlineData("bags:\n  - { pounds: 80, yield: 0.6, row: MB-14 }\n", 2, "")]
    [InlineData("water: { pounds: 519, on: 100 sq ft, row: TS-10 }\n", 1, "deep")]
    [InlineData("morter: { pounds: 3 }\n", 1, "mortar")]
    public void What_is_wrong_is_named_with_its_place(string text, int line, string says)
    {
        var files = Repository.In("rules/", "").Select(file => file["rules/".Length..])
            .Select(file => (file, file == "materials.yaml" ? text : Repository.Read("rules/" + file))).ToList();
        var (book, _, problems) = RuleBookReader.Read(files);
        book.Should().BeNull();
        problems.Should()
            .Contain(problem => problem.At.File == "materials.yaml" && problem.At.Line == line
            && problem.Say.Contains(says, StringComparison.Ordinal));
    }

    [Fact]
    public void Without_the_file_there_are_no_figures()
    {
        var files = Repository.In("rules/", "").Where(file => file != "rules/materials.yaml")
            .Select(file => (file["rules/".Length..], Repository.Read(file))).ToList();
        RuleBookReader.Read(files).Book!.Materials.Should().BeSameAs(Model.Materials.None);
    }
}
