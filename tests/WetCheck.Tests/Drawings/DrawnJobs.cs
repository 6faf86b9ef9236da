namespace WetCheck.Tests.Drawings;

/// <summary>Invented jobs that tell all that a drawing can show.</summary>
internal static class DrawnJobs
{
    public const string Whole = """
        method: liner under mortar
        units: inches
        plumbing code: IRC 2021
        shower:
          size: 60 x 36 finished
          drain at: 30, 18
          room floor: 1/2
        liner falls: { left: 3/4 over 30, back: 1/2 over 18, entry: 1/2 over 18 }
        drain: { top: 2-1/8, above substrate: 3-1/8, grate: 4-1/4, grate shape: square }
        curb: { height: 5, cap adds: plan 1, width: 5, rough width: 4-1/2 }
        bed: { thickness: plan 1-1/2 }
        walls: { adds: plan 7/8 }
        liner: { outside: 3, left: 8-1/4, back: 3, right: 2-1/2 }
        nails:
          seen: all
          left: 3 above, 1/2 above, 2-1/2 above
          back: 2-3/4 above
          curb inside: 1-1/4 below
          curb outside: 2 below
        board: { bottom: back plan 3/8 above bed }
        """;

    /// <summary>Read on a grid of 12 in, with a low place by the left wall.</summary>
    public const string Read = """
        method: liner under mortar
        units: inches
        plumbing code: IRC 2021
        readings by: MR, tape, 2026-11-25
        shower:
          size: 60 x 36 finished
          drain at: 30, 18
        drain: { form: point, grate: 4-1/4, grate shape: square }
        floor:
          levels: 0,0 3/4  12,0 3/4  24,0 3/4  36,0 3/4  48,0 3/4  60,0 3/4  0,12 3/4  12,12 1/8  24,12 3/8  36,12 3/8  48,12 1/2  60,12 3/4  0,24 3/4  12,24 1/2  24,24 3/8  36,24 3/8  48,24 1/2  60,24 3/4  0,36 3/4  12,36 3/4  24,36 3/4  36,36 3/4  48,36 3/4  60,36 3/4  30,18 0
        """;
}
