using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using WetCheck.Flow;
using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck.Tests.Drawings;

/// <summary>A drawing of a job, read back as the file that it is.</summary>
internal sealed partial class Drawn
{
    public Drawn(string text)
    {
        (Text, Root) = (text, XDocument.Parse(text).Root!);
    }

    public string Text { get; }

    public XElement Root { get; }

    public string Title => Named("title").Single().Value;

    /// <summary>For who can't see it.</summary>
    public string Told => Named("desc").Single().Value;

    public IReadOnlyList<string> Texts => [.. Named("text").Select(text => text.Value)];

    /// <summary>Each straight line of a weight, in millimetres.</summary>
    public IReadOnlyList<(double X1, double Y1, double X2, double Y2)> Lines(string pen) => [.. Named("path")
        .Where(path => path.Attribute("class")!.Value.Split(' ')[0] == pen)
            .Select(path => Straight().Match(path.Attribute("d")!.Value)).Where(match => match.Success)
        .Select(match => (Number(match, 1), Number(match, 2), Number(match, 3), Number(match, 4)))];

    public static Drawn Plan(string job) => new(PlanOf(TheBook.Walk(job))!);

    public static string? PlanOf(Walk walk, string language = "en") => PlanDrawing.Of(FloorSheets.Of(walk.Job, walk.Book), walk, language);

    /// <summary>In a page a drawing has no name space.</summary>
    private IEnumerable<XElement> Named(string name) => Root.Elements().Where(one => one.Name.LocalName == name);

    private static double Number(Match match, int group) => double.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^M(\S+) (\S+)L(\S+) (\S+)$")]
    private static partial Regex Straight();
}
