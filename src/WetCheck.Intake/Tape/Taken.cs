using System.Diagnostics.CodeAnalysis;

namespace WetCheck.Intake;

/// <summary>What a piece of text was taken for: a value, or what is wrong with it. Never both, never neither.</summary>
public sealed record Taken<T>
{
    private Taken(T? value, Fault? fault) => (Value, Fault) = (value, fault);

    public T? Value { get; }

    public Fault? Fault { get; }

    [MemberNotNullWhen(true, nameof(Value))]
    [MemberNotNullWhen(false, nameof(Fault))]
    public bool IsRead => Fault is null;

    public static implicit operator Taken<T>(T value) => new(value, null);

    public static implicit operator Taken<T>(Fault fault) => new(default, fault);
}

/// <summary>Why a text can't be taken as it stands.</summary>
/// <param name="Code">As in <see cref="Model.Problem.Code"/>: <c>unknown-unit</c>.</param>
/// <param name="Offset">Where the caret goes: UTF-16 units from the start of the text, at most its length.</param>
/// <param name="Say">What it is taken for, what to write.</param>
public sealed record Fault(string Code, int Offset, string Say);
