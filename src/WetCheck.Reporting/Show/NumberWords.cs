namespace WetCheck.Reporting;

/// <summary>The few words that stand between numbers, in one language. Braces are slots.</summary>
public sealed record NumberWords(
    string Over,
    string PerFoot,
    string LessThan,
    string ToNearest,
    string OrMore,
    string OrLess,
    string OrSteeper,
    string OrFlatter,
    string MoreThan,
    string Above,
    string Below,
    string Level)
{
    public static readonly NumberWords English = new(
        "{rise} over {run}",
        "{rise} per ft",
        "less than {number}",
        "{number} to nearest 1/16",
        "{number} or more",
        "{number} or less",
        "{number} or steeper",
        "{number} or flatter",
        "over {number}",
        "{number} above {datum}",
        "{number} below {datum}",
        "level with {datum}");

    public static readonly NumberWords Spanish = new(
        "{rise} en {run}",
        "{rise} por pie",
        "menos de {number}",
        "{number} al 1/16 más cercano",
        "{number} o más",
        "{number} o menos",
        "{number} o más caída",
        "{number} o menos caída",
        "más de {number}",
        "{number} arriba de {datum}",
        "{number} debajo de {datum}",
        "a nivel con {datum}");

    public static NumberWords In(string language) => language == "es" ? Spanish : English;
}
