namespace WetCheck.Engine;

/// <summary>Every set of as few causes as can be that accounts for all signs any of them accounts for.</summary>
public static class SmallestSets
{
    /// <param name="of">Of each cause the signs it accounts for, counted from 0.</param>
    /// <param name="signs">How many there are; each is accounted for by some cause.</param>
    /// <returns>By index, each in order; none where there is no sign.</returns>
    public static IReadOnlyList<IReadOnlyList<int>> Of(IReadOnlyList<IReadOnlyList<int>> of, int signs)
    {
        var covering =
            Enumerable.Range(0, signs)
            .Select(sign => Enumerable.Range(0, of.Count).Where(cause => of[cause].Contains(sign)).ToList()).ToList();
        for (var size = 1; size <= of.Count && signs > 0; size++)
        {
            var found = new List<IReadOnlyList<int>>();
            Add([], new int[signs], size, found);
            if (found.Count > 0)
            {
                return [.. found.DistinctBy(set => string.Join(',', set))
                    .OrderBy(set =>
                    string.Join(',',
                    set.Select(at => at.ToString("D4", System.Globalization.CultureInfo.InvariantCulture))),
                    StringComparer.Ordinal)];
            }
        }

        return [];

        void Add(List<int> taken, int[] times, int left, List<IReadOnlyList<int>> found)
        {
            if (!Array.Exists(times, one => one == 0))
            {
                found.Add([.. taken.Order()]);
                return;
            }

            // The sign with the fewest ways to account for it has to be met by one of them.
            var open = Enumerable.Range(0, signs).Where(sign => times[sign] == 0).MinBy(sign => covering[sign].Count);
            foreach (var cause in left == 0 ? [] : covering[open])
            {
                foreach (var sign in of[cause].Distinct())
                {
                    times[sign]++;
                }

                taken.Add(cause);
                Add(taken, times, left - 1, found);
                taken.RemoveAt(taken.Count - 1);
                foreach (var sign in of[cause].Distinct())
                {
                    times[sign]--;
                }
            }
        }
    }
}
