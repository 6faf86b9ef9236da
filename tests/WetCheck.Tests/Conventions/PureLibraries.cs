using System.Text.RegularExpressions;

namespace WetCheck.Tests.Conventions;

/// <summary>
/// Clock, culture, console, files and network belong to the command line, and to the press, which runs in a build;
/// everything below gives the
/// same answer anywhere.
/// </summary>
public sealed partial class PureLibraries
{
    private static readonly string[] Below =
    [
        .. Repository.In("src/", ".cs").Where(file =>
            !file.StartsWith("src/WetCheck.Cli/", StringComparison.Ordinal)
                && !file.StartsWith("src/WetCheck.Press/", StringComparison.Ordinal)),
    ];

    [Fact]
    public void Nothing_below_the_command_line_asks_the_machine() =>
        Repository.LinesWhere(Below, line => Machine().IsMatch(line)).Should().BeEmpty();

    [Fact]
    public void Yes_no_and_unknown_is_never_a_bool_that_may_be_missing() =>
        Repository.LinesWhere(Below, line => Regex.IsMatch(line, @"\bbool\?") && !Regex.IsMatch(line, "Metric|UnitsOf"))
            .Should().BeEmpty("unknown is Tri.Unknown, not a missing bool; the units line alone may be blank");

    [Fact]
    public void No_type_is_a_drawer_for_odds_and_ends() =>
        Repository.LinesWhere(Repository.In("src/", ".cs"), line => OddsAndEnds().IsMatch(line)).Should().BeEmpty();

    [GeneratedRegex(@"\b(DateTime(Offset)?\.(Now|UtcNow|Today)|TimeProvider\.System|Console\.|CultureInfo\.(Current|Default)|Environment\.|System\.IO\b|File\.(Read|Write|Open|Exists|Append|Create|Delete|Move|Copy)|Directory\.(Get|Enumerate|Exists|Create|Delete)|FileInfo|DirectoryInfo|FileStream|Process\.|HttpClient)")]
    private static partial Regex Machine();

    [GeneratedRegex(@"\b(class|struct|record|interface|enum)\s+\w*(Utils?|Utilities|Helpers?|Manager|Misc|Common)\b")]
    private static partial Regex OddsAndEnds();
}
