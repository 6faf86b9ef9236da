namespace WetCheck;

/// <summary>Whom a list is for.</summary>
public enum ForWhom
{
    /// <summary>Who does the work.</summary>
    Setter,

    /// <summary>Who has it done.</summary>
    Owner,

    /// <summary>Who works along.</summary>
    Helper,
}

/// <summary>How a list is written.</summary>
public enum ListForm
{
    /// <summary>Short lines, for a message.</summary>
    Message,

    /// <summary>A page to print.</summary>
    Html,

    Markdown,

    /// <summary>For programs.</summary>
    Json,
}

/// <summary>What a room comes to at its stop.</summary>
public enum RoomState
{
    /// <summary>Something is to be fixed, also on paper.</summary>
    NotReady,

    /// <summary>Something is to be looked at, or read again.</summary>
    Unfinished,

    /// <summary>Nothing is owed that anyone can see now.</summary>
    NothingOwed,
}
