using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>A sentence of <see cref="Messages"/> with its code, before it has a place.</summary>
internal sealed record Message(string Code, Effect Effect, string Say)
{
    public static Message Asks(string code, string say) => new(code, Effect.Asked, say);

    public static Message Blanks(string code, string say) => new(code, Effect.Blank, say);

    public static Message Stops(string code, string say) => new(code, Effect.Stops, say);
}
