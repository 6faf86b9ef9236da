using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>Heights at the entry: curb, room floor, what one steps over from either side, and the door above it.</summary>
internal static class EntryHeights
{
    public static IEnumerable<HeightLine> Of(Standing told, IReadOnlyList<PartState> known)
    {
        var (rough, finished, room) = (told.Above("rough curb"), told.Above("finished threshold"), told.Above("room floor"));
        // The curb stands before the drain has its top: then its height is read from the liner.
        var zero = told.IsHere("liner") && told.Above(Standing.LinerZero) is not { Is.AsRead.IsPoint: true }
            ? Standing.LinerZero : Standing.Zero;
        if (rough is not null && finished is not null)
        {
            yield return new(HeightGroup.Entry, "rough-curb", "", told.Between(zero, "rough curb")!, zero);
            yield return new(HeightGroup.Entry, "finished-curb", "", told.Between(zero, "finished threshold")!, zero);
        }

        if (room is not null)
        {
            yield return new(HeightGroup.Entry, "room-floor", "", room, Standing.Zero);
        }

        // Where there may be no curb, one steps from floor to floor.
        var over = finished ?? room;
        var inside = over is null ? null : over - told.Rim("entry");
        if (inside is not null)
        {
            yield return Line("step-inside", inside);
        }

        if (finished is not null && room is not null)
        {
            yield return Line("step-outside", finished - room);
        }

        var pane = known.FirstOrDefault(part => part.Kind == "pane" && part.Exists == Tri.Yes)?.Facts;
        if (inside is not null && pane?.GetValueOrDefault("stands")?.OnPaper is Known.OneOf { Choice: "enclosing the shower" }
            && Standing.Told(pane.GetValueOrDefault("bottom edge")) is { Is.IsUnknown: false } edge)
        {
            yield return Line("door-gap", edge - inside);
        }
    }

    private static HeightLine Line(string key, HeightTold height) => new(HeightGroup.Entry, key, "", height, null);
}
