using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>A typed quantity, read piece by piece. The first thing that is wrong is kept.</summary>
internal sealed class TapeText
{
    private readonly IReadOnlyList<Token> _tokens;

    private TapeText(string typed, Unit? lone)
    {
        Typed = typed;
        Lone = lone?.Measure == Measure.Length ? lone : null;
        _tokens = typed.Length > Notation.LongestText ? [new Token(Sign.End, "", default, 0, false)] : Scan.Of(typed);
        Fault = typed.Length > Notation.LongestText ? Faults.TooLong(Notation.LongestText)
            : _tokens.Where(token => token.Sign == Sign.Number && token.Text.Count(char.IsAsciiDigit) > Notation.MostDigits)
                .Select(Faults.TooManyDigits).FirstOrDefault();
    }

    public string Typed { get; }

    /// <summary>The unit of a length without one; null: it is asked.</summary>
    public Unit? Lone { get; }

    public Fault? Fault { get; private set; }

    public int At { get; private set; }

    public Token Now => Ahead(0);

    public static TapeText Of(string typed, Unit? lone) => new(typed, lone);

    public Token Ahead(int pieces) => _tokens[Math.Min(At + pieces, _tokens.Count - 1)];

    public void Take(int pieces = 1) => At += pieces;

    public bool Take(Sign sign)
    {
        var found = Now.Sign == sign;
        At += found ? 1 : 0;
        return found;
    }

    public bool Take(string word)
    {
        var found = Now.Is(word);
        At += found ? 1 : 0;
        return found;
    }

    public void Rewind(int to) => At = to;

    public void Fail(Fault fault) => Fault ??= fault;

    /// <summary>What was made of the whole text, or what is wrong with it.</summary>
    public Taken<T> Whole<T>(T? value, string wanted)
        where T : class
    {
        if (Fault is null && (value is null || Now.Sign != Sign.End))
        {
            Fail(value is null ? Faults.NoNumber(this, wanted) : Faults.LeftOver(this));
        }

        return Fault is { } fault ? fault : value!;
    }
}
