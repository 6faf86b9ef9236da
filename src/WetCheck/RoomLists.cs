using System.Globalization;
using WetCheck.Asking;
using WetCheck.Flow;
using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck;

/// <summary>Lists, sheets and drawings of a room.</summary>
public sealed partial class Room
{
    private const string English = Languages.English;

    private static readonly (string Name, Func<FloorReport, Model.Walk, string, string?> Draw, string Missing)[] s_drawings =
    [
        ("plan", PlanDrawing.Of, "draw.no-floor"),
        ("section", SectionDrawing.Of, "draw.no-section"),
        ("nails", NailDrawing.Of, "draw.no-nails"),
        ("liner", LinerDrawing.Of, "draw.no-liner"),
        ("contours", ContourDrawing.Of, "draw.no-contours"),
    ];

    /// <summary>What can be drawn.</summary>
    public static IReadOnlyList<string> Drawings { get; } = [.. s_drawings.Select(one => one.Name)];

    /// <summary>The sheets of a floor.</summary>
    public static IReadOnlyList<string> FloorSheets { get; } = [.. PanSheet.All.Select(one => one.Name)];

    /// <summary>The sheets of old work: what accounts for what was found, and what to test before anything is opened.</summary>
    public static IReadOnlyList<string> OldWorkSheets { get; } = ["causes", "tests"];

    /// <summary>The languages of a list: English, Spanish, both on one page.</summary>
    public static IReadOnlyList<string> ListLanguages => Languages.Typed;

    /// <summary>The languages of a question.</summary>
    public static IReadOnlyList<string> AskedLanguages { get; } = [English, Languages.Spanish];

    /// <summary>The list as a screen shows it: what to fix, what to look at next.</summary>
    /// <param name="all">Also what is OK, what comes later, and every look.</param>
    public string Screen(string language, DateTimeOffset at, bool all = false) =>
        ScreenText.Of(Listing.Of(Walk, language, Clock(at, language)), all);

    /// <summary>The list to keep or to give.</summary>
    /// <param name="language">Null: the reader's own; a helper's has both.</param>
    /// <exception cref="RefusedException">A template of the book can't be filled.</exception>
    public string List(ListForm form, ForWhom whom, string? language, DateTimeOffset at)
    {
        var reader = (Reader)whom;
        language ??= Readers.Language(reader);
        var now = Clock(at, language);
        return Filled(() => form switch
        {
            ListForm.Html => PunchPage.Html(Walk, language, now, reader),
            ListForm.Markdown => PunchPage.Markdown(Walk, language, now, reader),
            ListForm.Json => JsonList.Of(Walk, English, Clock(at, English)),
            _ => PunchPage.Message(Walk, language, now, reader),
        });
    }

    /// <summary>What stands behind one line of the list, a caution, a note, or a cause of old work.</summary>
    /// <param name="number">Any that a list prints: <c>214-D</c>, <c>221-A2</c>, <c>322-1</c>, <c>M-01</c>.</param>
    /// <exception cref="RefusedException">The list has none.</exception>
    public string Why(string number, string language, DateTimeOffset at)
    {
        var now = Clock(at, language);
        return Numbered.Find(Walk, number) is { } entry ? WhyText.Of(Walk, entry, language, now)
            : Numbered.Shown(Walk, number) is { } shown ? WhyText.Of(Walk, shown, language, now)
            : Numbered.Cause(Walk, number) is { } cause ? WhyCause.Of(cause, Walk, language, now)
            : throw new RefusedException(RefusedAs.TypedWrong, Numbered.NotFound(Walk, number));
    }

    /// <summary>A sheet of the floor, and whether it can be built so.</summary>
    /// <param name="sheet">One of <see cref="FloorSheets"/>; null: the first.</param>
    /// <param name="json">For programs: all sheets in one.</param>
    public (string Text, RoomState State) Floor(string? sheet, bool json, string language, DateTimeOffset at)
    {
        var (floor, asked, now) = (Flow.FloorSheets.Of(Walk.Job, Walk.Book), PanSheet.Named(sheet), Clock(at, language));
        return (json ? PanJson.Of(floor, Walk, language, now) : asked.Text(floor, Walk, language, now), asked.Code(floor));
    }

    /// <summary>A drawing as SVG; or none, and what the job has to tell first.</summary>
    /// <param name="drawing">One of <see cref="Drawings"/>; null: the first.</param>
    public (string? Svg, string? Missing) Draw(string? drawing, string language)
    {
        var one = s_drawings.FirstOrDefault(drawn => drawn.Name == drawing, s_drawings[0]);
        return one.Draw(Flow.FloorSheets.Of(Walk.Job, Walk.Book), Walk, language) is { } svg ? (svg, null)
            : (null, new Phrases(Walk.Book, language)[one.Missing]);
    }

    /// <summary>What old work's look accounts for, and what to test and open.</summary>
    /// <param name="sheet">One of <see cref="OldWorkSheets"/>; null: the first.</param>
    public string OldWork(string? sheet, bool json, string language, DateTimeOffset at)
    {
        var (report, now) = (OldWorkReading.Of(Walk.Job, Walk.Book), Clock(at, language));
        return json ? TearoutJson.Of(report, Walk, language, now)
            : sheet == OldWorkSheets[1] ? TestsText.Of(report, Walk, language, now)
            : TearoutText.Of(report, Walk, language, now);
    }

    /// <summary>A text is a list or a drawing that was written before: it begins or ends as only they do.</summary>
    public bool IsList(string text) =>
        text.StartsWith("<svg class=\"drawing\" ", StringComparison.Ordinal)
            || text.StartsWith("{\n  \"format\": \"wetcheck ", StringComparison.Ordinal)
            || AskedLanguages.Any(language =>
                text.Contains(new Phrases(Walk.Book, language)["close.record"].Split('.')[0],
                StringComparison.Ordinal));

    /// <summary>"Wed Nov 25, 4:05 pm", the same on every machine; "2026-11-25, 16:05" beside other words than English.</summary>
    private static string Clock(DateTimeOffset at, string language) =>
        language != English ? at.ToString("yyyy-MM-dd, HH:mm", CultureInfo.InvariantCulture)
        : at.ToString("ddd MMM d, h:mm ", CultureInfo.InvariantCulture) + (at.Hour < 12 ? "am" : "pm");

    internal static string Filled(Func<string> text)
    {
        try
        {
            return text();
        }
        catch (TemplateException fault)
        {
            throw new RefusedException(RefusedAs.Unreadable, fault.Message);
        }
    }
}
