namespace WetCheck;

/// <summary>Whoever answers: a terminal, a phone, a test.</summary>
public interface ITalk
{
    /// <summary>A hand types, so that an answer that can't be read may be asked once more; else its line is the next answer's.</summary>
    bool IsHand { get; }

    /// <summary>The time of an answer that is kept now.</summary>
    DateTimeOffset Now { get; }

    /// <summary>The next answer; null: there are no more.</summary>
    string? Hear();

    void Say(string line);

    /// <summary>What is wrong with an answer.</summary>
    void Warn(string text);
}
