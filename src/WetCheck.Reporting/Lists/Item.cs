using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>One entry of a list, in pieces. A text that has nothing to say is empty. Every list puts the same pieces together.</summary>
/// <param name="Place">"Right wall".</param>
/// <param name="Subject">What is held against the rule, where nothing is wrong with it: "Liner, right wall".</param>
/// <param name="What">"liner too low".</param>
/// <param name="Work">Whose work, where it is not the setter's: "ELECTRICIAN'S WORK".</param>
/// <param name="Found">As typed: "2-1/2" above the rough curb". Of several parts the worst first.</param>
/// <param name="Planned">What was found is a plan.</param>
/// <param name="Counted">What else went into it: "cap adds 1" planned".</param>
/// <param name="Should">On the same tape.</param>
/// <param name="Brief">The same where there is little room.</param>
/// <param name="Tape">The limit in the datum and the units that were read, where the rule's are others; else empty.</param>
/// <param name="Do">The fix.</param>
/// <param name="Before">A sentence.</param>
/// <param name="SaysBrief">Who says so, where there is little room.</param>
/// <param name="Also">Numbers of rules that yield to this one here.</param>
/// <param name="Line">Of the job file: "line 35".</param>
public sealed record Item(
    string Number,
    Mark Mark,
    bool OnPaper,
    string Place,
    string Subject,
    string What,
    string Work,
    string Found,
    bool Planned,
    string Counted,
    string Should,
    string Brief,
    string Tape,
    string Short,
    bool IsOver,
    string Why,
    string Do,
    string Before,
    string Says,
    string SaysBrief,
    IReadOnlyList<string> Also,
    string Line,
    Entry Entry);

/// <summary>A word and a shape that survive a photocopier.</summary>
public enum Mark { Stop, Correction, ToCheck, ReadAgain, HiddenNow, None }
