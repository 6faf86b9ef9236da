using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>Marks and ribs of a floor in words, in one language and the units of the job.</summary>
internal sealed record MarkSays(PanSays Pan)
{
    private Phrases Phrases => Pan.Phrases;

    /// <summary>Where zero is, where the tape begins, and why the rim is as it is.</summary>
    public IEnumerable<string> Start(MarkPlan plan, (double Least, double Most)? window)
    {
        yield return Phrases[Phrase.Marks.Zero];
        yield return plan.Taken switch
        {
            DrainTaken.Point => Phrases[Phrase.Marks.FromMiddle],
            DrainTaken.ChannelAtWall => Phrases[Phrase.Marks.FromChannel],
            _ => Phrases[Phrase.Marks.FromGrate],
        };
        if (plan.GivenRim)
        {
            yield return Phrases[Phrase.Marks.GivenRim];
        }
        else if (!plan.IsLevel && plan.Taken != DrainTaken.ChannelAtWall && window is var (least, most))
        {
            yield return Phrases.Say(Phrase.Marks.Dipped, ("least", Pan.Length(least, Rounding.Up)),
                ("most", Pan.Length(most, Rounding.Down)));
        }
    }

    public IEnumerable<string> Walls(MarkPlan plan)
    {
        yield return plan switch
        {
            { Taken: DrainTaken.ChannelAtWall } => Phrases.Say(Phrase.Marks.Plane, ("high", Pan.Length(plan.Highest))),
            { IsLevel: true } => Phrases.Say(Phrase.Marks.Level, ("rim", Pan.Length(plan.Highest))),
            _ => Phrases.Say(Phrase.Marks.NotLevel, ("low", Pan.Length(plan.Lowest)), ("high", Pan.Length(plan.Highest))),
        };
        if (!plan.OnTape)
        {
            yield return Phrases[Phrase.Marks.OffTape];
        }
    }

    /// <summary>"Corner left-back, 35": 1/4" at 11-11/16", 1/2" at 23-5/16", 3/4" at the wall."</summary>
    public string Rib(MarkRib rib)
    {
        var marks = rib.Marks.Select(mark => Phrases.Say(Phrase.Marks.Mark, ("height", Pan.Length(mark.Height)),
            ("far", Pan.Length(mark.Far))));
        return Phrases.Say(Phrase.Marks.Rib,
            ("where", Sentence.Capital(Where(rib))),
            ("length", Pan.Length(rib.Length)),
            ("marks", string.Join("; ", marks.Append(Phrases.Say(Phrase.Marks.AtWall, ("height", Pan.Length(rib.Height)))))));
    }

    public IEnumerable<string> Strings(MarkPlan plan) => plan.Ribs.Any(rib => rib.Kind == "plane") ? [Phrases[Phrase.Marks.Strings]] : [];

    /// <summary>What the floor that the marks make keeps to, and with how much to spare.</summary>
    public IEnumerable<string> Comes(MarkPlan plan)
    {
        // A hundred millionth is rounding of the machine.
        var steep = plan.Held.Any(held => !held.Kept) ? Pan.Fall(plan.Steepest - 1e-8, Rounding.Up) : Pan.Fall(plan.Steepest);
        yield return Phrases.Say(Phrase.Marks.Falls, ("flattest", Pan.Fall(plan.Flattest)), ("steepest", steep));
        foreach (var held in plan.Held)
        {
            yield return Phrases.Say(!held.Kept ? Phrase.Marks.Broken : held.Tight ? Phrase.Marks.Tight : Phrase.Marks.Kept,
                ("limits", Pan.Limits(held.Limits)), ("measure", Measure(held.Limits)),
                    ("off", Pan.Length(Pan.Metric ? 0.5 / 25.4 : 1 / 32d)));
        }

        if (plan.Dropped > 0)
        {
            yield return Phrases.Count(Phrase.Marks.Dropped, plan.Dropped);
        }
    }

    public IEnumerable<string> Below(MarkBelow layer, MarkPlan plan)
    {
        yield return Phrases.Say(Phrase.Marks.Layer, ("layer", Sentence.Capital(Phrases[$"mud.{layer.Layer}"])),
            ("down", Pan.Length(layer.Down)),
            ("rim", plan.IsLevel ? Height(plan.Highest - layer.Down)
                : Phrases.Say(Phrase.Bound.Between, ("from", Height(plan.Lowest - layer.Down)),
                ("to", Height(plan.Highest - layer.Down)))));
    }

    public string None(MarkReport marks) => marks switch
    {
        { Why: "" } => Phrases[Phrase.Marks.NotYet],
        { Why: "no-mark", Window: var (least, most) } when least > most =>
            Phrases.Say(Phrase.Marks.NoRim, ("least", Pan.Length(least)), ("most", Pan.Length(most))),
        { Why: "no-mark", Window: var (least, most) } =>
            Phrases.Say(Phrase.Marks.NoMark, ("least", Pan.Length(least)), ("most", Pan.Length(most))),
        { Why: "not-seen" } => Phrases[Phrase.Marks.NotSeen],
        { Why: "short-channel" } => Phrases[Phrase.Marks.ShortChannel],
        { Why: "no-mark" } => Phrases[Phrase.Marks.NoPlane],
        _ => Phrases[Phrase.Marks.NotDrawn],
    };

    private string Measure(PanLimits limits) =>
        limits.Disputed ? Phrases.Say(Phrase.Marks.Disputed, ("measure", Pan.Measure(limits))) : Pan.Measure(limits);

    private string Where(MarkRib rib) => rib switch
    {
        { Name: "" } => Phrases.Say(Phrase.Pan.Corner, ("at", Pan.Place(rib.From))),
        { Kind: "wall", Name: "left" or "right" } =>
            Phrases.Say(Phrase.Marks.FromEntry, ("side", Pan.Side(rib.Name)), ("far", Pan.Length(rib.From.Y))),
        { Kind: "wall", Name: "entry" or "back" } =>
            Phrases.Say(Phrase.Marks.FromLeft, ("side", Pan.Side(rib.Name)), ("far", Pan.Length(rib.From.X))),
        { Kind: "wall" } => Phrases.Say(Phrase.Marks.OnWall, ("side", Pan.Side(rib.Name)), ("at", Pan.Place(rib.From))),
        _ => Pan.Side(rib.Name),
    };

    private string Height(double height) => height < -1e-9
        ? Phrases.Say(Phrase.Marks.Under, ("height", Pan.Length(-height)))
        : Phrases.Say(Phrase.Marks.Over, ("height", Pan.Length(height)));
}
