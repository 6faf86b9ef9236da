using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Numbers without a unit in a job whose units are blank: one message for all of them.</summary>
internal sealed class LoneNumbers
{
    private readonly SortedSet<int> _lines = [];
    private At? _first;

    /// <summary>Whether a fault is of this sort; it is then kept for the one message.</summary>
    public bool Takes(Fault fault, At at)
    {
        if (fault.Code != Messages.LoneNumbersCode)
        {
            return false;
        }

        _first ??= at;
        _lines.Add(at.Line);
        return true;
    }

    /// <param name="units">Where the line of the units stands; null: there is none.</param>
    public void Tell(At? units, ProblemList problems)
    {
        if (_first is { } first)
        {
            problems.Add(units ?? first, Messages.LoneNumbers([.. _lines]));
        }
    }
}
