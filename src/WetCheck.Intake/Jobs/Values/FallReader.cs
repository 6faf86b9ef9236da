using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Reads a fall, or a bound of one: <c>over 1/4 per ft</c>.</summary>
internal static class FallReader
{
    public static Taken<ReadingValue> Read(string text, Unit? lone)
    {
        var bound = Words.Bound(text);
        if (bound == Words.None)
        {
            var fall = Notation.ReadFall(text, lone);
            return fall.IsRead ? fall.Value : fall.Fault;
        }

        var rest = Notation.ReadFall(text[bound.Length..], lone);
        if (!rest.IsRead)
        {
            return rest.Fault with { Offset = rest.Fault.Offset + bound.Length };
        }

        var slope = rest.Value.Rise / rest.Value.Run;
        return new ReadingValue.OfAmount(
            bound == Words.Over ? new Interval(slope, null, LoOpen: true) : new Interval(null, slope, HiOpen: true),
            rest.Value.ByRatio ? rest.Value.Unit : Unit.InchPerFoot,
            Exact: true);
    }

    private static class Words
    {
        public const string None = "";
        public const string Over = "over ";
        public const string Under = "under ";

        public static string Bound(string text) =>
            text.StartsWith(Over, StringComparison.OrdinalIgnoreCase) ? Over
                : text.StartsWith(Under, StringComparison.OrdinalIgnoreCase) ? Under : None;
    }
}
