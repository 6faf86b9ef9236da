using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>The file can't be read past a place. Thrown and caught within the reading of one file.</summary>
internal sealed class ShapeFault(At at, Message message) : Exception(message.Say)
{
    public At At { get; } = at;

    public Message Reason { get; } = message;
}
