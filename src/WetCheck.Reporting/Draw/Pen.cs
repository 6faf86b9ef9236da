namespace WetCheck.Reporting;

/// <summary>Three weights of line, each about twice the next: what is cut, what is seen beyond, dimensions and hatches.</summary>
internal enum Pen { Cut, Seen, Thin }

/// <summary>Whole; short dashes for what is hidden or only planned; long and short for a middle line.</summary>
internal enum Dash { Whole, Short, Middle }

internal static class Pens
{
    /// <summary>Millimetres on the paper at full size.</summary>
    public static double Width(this Pen pen) => pen switch
    {
        Pen.Cut => 0.70,
        Pen.Seen => 0.35,
        _ => 0.25,
    };

    public static string Key(this Pen pen) => pen switch
    {
        Pen.Cut => "cut",
        Pen.Seen => "seen",
        _ => "thin",
    };
}
