namespace WetCheck;

/// <summary>Why something that was asked for can't be given.</summary>
public enum RefusedAs
{
    /// <summary>It was asked in words that say nothing here: an unknown number, a line that is none.</summary>
    TypedWrong,

    /// <summary>A text can't be read.</summary>
    Unreadable,

    /// <summary>Something can't be kept.</summary>
    Unwritable,
}

/// <summary>What was asked for can't be given. The message is for the person who asked: what is wrong, what to write.</summary>
public class RefusedException(RefusedAs how, string say) : Exception(say)
{
    public RefusedAs How { get; } = how;
}
