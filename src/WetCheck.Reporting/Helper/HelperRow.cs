namespace WetCheck.Reporting;

/// <summary>One row of the helper's list in one language. The same row of another language has the same number and figures.</summary>
/// <param name="Number">Empty for a row that is no check.</param>
/// <param name="Word">"STOP", for a mark that must be said.</param>
/// <param name="Title">Where, and what: a sentence, or empty.</param>
/// <param name="Lines">Each of whole sentences: found and should be, what to do, before what.</param>
internal sealed record HelperRow(string Number, Mark Mark, string Word, string Title, IReadOnlyList<string> Lines)
{
    public static HelperRow Of(string number, Mark mark, params IEnumerable<string> sentences) => new(number, mark, "", "", [.. sentences]);
}

/// <param name="Key">Says what kind of rows: <c>today</c>, <c>after</c>, <c>not-yours</c>, <c>read-again</c>,
/// <c>look</c>, <c>hidden</c>, <c>care</c>, <c>hold</c>, <c>notes</c>.</param>
/// <param name="More">How many rows are left out; may be empty.</param>
internal sealed record HelperSection(string Key, string Title, IReadOnlyList<HelperRow> Rows, string More = "")
{
    /// <summary>Rows that are something to fix or to read again.</summary>
    public bool HasItems => Key is "today" or "after" or "not-yours" or "read-again";
}
