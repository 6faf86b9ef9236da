using System.Xml.Linq;

namespace WetCheck.Tests.Conventions;

/// <summary>Which project may know which, and which package is used where. Model knows nobody; only the pipeline knows all.</summary>
public sealed class ProjectArrows
{
    private static readonly Dictionary<string, (string[] Projects, string[] Packages)> Allowed = new()
    {
        ["WetCheck.Model"] = ([], []),
        ["WetCheck.Intake"] = (["WetCheck.Model"], ["YamlDotNet"]),
        ["WetCheck.Geometry"] = (["WetCheck.Model"], []),
        ["WetCheck.Engine"] = (["WetCheck.Model"], ["NRules.Runtime"]),
        ["WetCheck.Keys"] = ([], ["Microsoft.CodeAnalysis.CSharp"]),
        ["WetCheck.Reporting"] = (["WetCheck.Model", "WetCheck.Keys"], ["Scriban.Signed", "Markdig"]),
        ["WetCheck.Pressed"] = (["WetCheck.Model"], []),
        ["WetCheck.Press"] = (["WetCheck.Intake", "WetCheck.Pressed"], []),
        ["WetCheck"] = (
            ["WetCheck.Model", "WetCheck.Intake", "WetCheck.Geometry", "WetCheck.Engine", "WetCheck.Reporting",
                "WetCheck.Pressed", "WetCheck.Press"], []),
        ["WetCheck.Cli"] = (["WetCheck"], ["System.CommandLine"]),
    };

    private static readonly string[] Projects = [.. Repository.Files.Where(file => file.EndsWith(".csproj", StringComparison.Ordinal))];

    [Fact]
    public void Each_project_under_src_knows_only_what_it_may()
    {
        foreach (var file in Projects.Where(file => file.StartsWith("src/", StringComparison.Ordinal)))
        {
            var name = Path.GetFileNameWithoutExtension(file);
            Allowed.Should().ContainKey(name, "a new project has its arrows written down here");
            References(file, "ProjectReference").Select(path => Path.GetFileNameWithoutExtension(path)!)
                .Should().BeSubsetOf(Allowed[name].Projects, $"of the arrows of {name}");
            References(file, "PackageReference").Should().BeSubsetOf(Allowed[name].Packages, $"of the packages of {name}");
        }
    }

    [Fact]
    public void Package_versions_stand_in_one_file_and_each_is_used()
    {
        var central = XDocument.Load(Path.Combine(Repository.Root, "Directory.Packages.props"))
            .Descendants("PackageVersion").Select(e => e.Attribute("Include")!.Value).ToList();
        var used = Projects.Append("tests/Directory.Build.props").SelectMany(file => References(file, "PackageReference")).Distinct();
        central.Should().BeEquivalentTo(used);
        Projects.Where(file => Repository.Read(file).Contains(" Version=", StringComparison.Ordinal)).Should().BeEmpty();
    }

    [Fact]
    public void The_solution_has_every_project()
    {
        var solution = Repository.Read("WetCheck.sln").Replace('\\', '/');
        Projects.Where(file => !solution.Contains(file, StringComparison.Ordinal)).Should().BeEmpty();
    }

    [Fact]
    public void Every_library_is_made_to_be_trimmed_and_compiled_natively()
    {
        var shared = Repository.Read("src/Directory.Build.props");
        shared.Should().Contain("<IsTrimmable>true</IsTrimmable>").And.Contain("<IsAotCompatible>true</IsAotCompatible>");
        Projects.Where(file => file.StartsWith("src/", StringComparison.Ordinal))
            .Where(file => Repository.Read(file) is var text
                && (text.Contains("<IsTrimmable>", StringComparison.Ordinal)
                || text.Contains("<IsAotCompatible>", StringComparison.Ordinal)))
            .Should().BeEmpty("no project takes itself out");
    }

    private static IEnumerable<string> References(string file, string element) =>
        XDocument.Load(Path.Combine(Repository.Root, file)).Descendants(element)
            .Select(e => e.Attribute("Include")!.Value.Replace('\\', '/'));
}
