using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Finds places by what people call them.</summary>
internal static class PlaceNames
{
    /// <summary>
    /// The first place that bears letters: <c>A</c> is the entry, <c>D</c> the right wall, <c>BC</c> the corner
    /// left-back.
    /// </summary>
    public static Place? ByLetter(string letters, Vocabulary vocabulary) =>
        letters.Length is > 0 and <= 2
            ? vocabulary.Places.FirstOrDefault(place =>
            string.Equals(place.Letters, letters.Trim(), StringComparison.OrdinalIgnoreCase)) : null;

    public static Place? Find(string name, IReadOnlyList<Place> among, Vocabulary vocabulary)
    {
        var folded = Names.Fold(name);
        return among.FirstOrDefault(place => Names.Fold(place.Name) == folded)
            ?? (ByLetter(name, vocabulary) is { } lettered ? among.FirstOrDefault(place => place.Name == lettered.Name) : null);
    }
}
