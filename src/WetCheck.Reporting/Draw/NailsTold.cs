using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>Nails, staples and screws of a drawing in words.</summary>
internal static class NailsTold
{
    public static IEnumerable<string> Of(FloorSection cut, DrawSays says) => cut.Nails.Select(nail =>
        says.Phrases.Say(IsUnderWater(nail, cut) ? Phrase.Draw.NailToldUnder : Phrase.Draw.NailTold,
            ("place", says.Pan.Side(nail.Place)), ("height", says.Pan.Length(nail.Height))));

    public static bool IsUnderWater(SectionNail nail, FloorSection cut) =>
        nail.Place != "curb outside" && (cut.FinishedCurb ?? cut.RoughCurb) is { } water && nail.Height <= water;
}
