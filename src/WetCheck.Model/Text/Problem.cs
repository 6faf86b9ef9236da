namespace WetCheck.Model;

/// <summary>Something in a file that can't be taken as it stands.</summary>
/// <param name="Code">Names the pair in tests/errors, and stands in JSON: <c>unknown-unit</c>.</param>
/// <param name="Say">One or two plain sentences: what it is taken for, what to write.</param>
/// <param name="Typed">The line as typed; the caret stands under <see cref="At"/>.</param>
/// <param name="Effect">What it does to the rest of the file.</param>
public sealed record Problem(string Code, At At, string Say, string Typed, Effect Effect);

public enum Effect
{
    /// <summary>A question about something that is taken as it stands.</summary>
    Asked,

    /// <summary>The value counts as blank, the rest is walked.</summary>
    Blank,

    /// <summary>The shape of the file is broken: nothing is walked.</summary>
    Stops,
}
