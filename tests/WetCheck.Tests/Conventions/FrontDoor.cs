using System.Reflection;
using System.Text.RegularExpressions;
using WetCheck.Cli;

namespace WetCheck.Tests.Conventions;

/// <summary>Every program comes in by one door: few public types, and none of what lies behind them.</summary>
public sealed partial class FrontDoor
{
    private static readonly string[] Behind = ["Model", "Intake", "Engine", "Geometry", "Reporting", "Pressed"];

    private static readonly Assembly Library = typeof(Room).Assembly;

    [Fact]
    public void It_has_few_public_types() => Library.GetExportedTypes().Length.Should().BeLessThanOrEqualTo(40);

    [Fact]
    public void Nothing_behind_it_shows_in_what_is_public() => Library.GetExportedTypes()
        .SelectMany(type => type.GetMembers(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly))
        .SelectMany(member => Types(member).Select(type => $"{member.DeclaringType!.Name}.{member.Name}: {type.FullName}"))
        .Where(said => Behind.Any(name => said.Contains($": WetCheck.{name}.", StringComparison.Ordinal))).Should().BeEmpty();

    [Fact]
    public void The_command_line_is_built_against_it_alone() => typeof(Terminal).Assembly.GetReferencedAssemblies()
        .Select(name => name.Name!).Where(name => name.StartsWith("WetCheck", StringComparison.Ordinal)).Should()
            .Equal("WetCheck.Pipeline");

    [Fact]
    public void The_command_line_names_nothing_behind_it() =>
        Repository.LinesWhere(Repository.In("src/WetCheck.Cli/", ".cs"), line => Named().IsMatch(line)).Should().BeEmpty();

    /// <summary>Thirty lines of a program that has no files and no command line, shown in the README as they stand.</summary>
    [Fact]
    public void A_program_of_thirty_lines_uses_nothing_else()
    {
        Repository.Lines("tests/WetCheck.Sample/Program.cs").Length.Should().BeLessThanOrEqualTo(31);
        Assembly.Load("WetCheck.Sample").GetReferencedAssemblies().Select(name => name.Name!)
            .Where(name => name.StartsWith("WetCheck", StringComparison.Ordinal)).Should().Equal("WetCheck.Pipeline");
        var shown = Shown().Match(Repository.Read("README.md")).Groups[1].Value;
        shown.Split('\n', StringSplitOptions.RemoveEmptyEntries).Should().NotBeEmpty()
            .And.BeSubsetOf(Repository.Lines("tests/WetCheck.Sample/Program.cs"));
    }

    private static IEnumerable<Type> Types(MemberInfo member) => (member switch
    {
        MethodInfo method => method.GetParameters().Select(parameter => parameter.ParameterType).Append(method.ReturnType),
        ConstructorInfo made => made.GetParameters().Select(parameter => parameter.ParameterType),
        PropertyInfo property => [property.PropertyType],
        FieldInfo field => [field.FieldType],
        _ => [],
    }).SelectMany(Parts);

    private static IEnumerable<Type> Parts(Type type) => type.GetGenericArguments().SelectMany(Parts).Append(type);

    [GeneratedRegex(@"\bWetCheck\.(Model|Intake|Engine|Geometry|Reporting|Pressed)\b|\b(Model|Intake|Reporting)\.[A-Z]")]
    private static partial Regex Named();

    [GeneratedRegex("```csharp\n(.*?)```", RegexOptions.Singleline)]
    private static partial Regex Shown();
}
