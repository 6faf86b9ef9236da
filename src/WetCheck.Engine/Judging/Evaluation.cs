using WetCheck.Model;

namespace WetCheck.Engine;

/// <summary>Evaluates the conditions of one rule on one part, in one world. Total: never throws on a checked rule.</summary>
/// <param name="onPaper">Plans count as readings.</param>
/// <param name="asRead">The tool's band is left out, as where a version is chosen.</param>
internal sealed class Evaluation(Scene scene, World world, bool onPaper, bool asRead = false, Quantity? limit = null)
{
    public World World => world;

    public bool OnPaper => onPaper;

    public bool AsRead => asRead;

    public Quantity? Limit => limit;

    public Scene Scene => scene;

    /// <param name="phase">In <see cref="Phase.Require"/> a test of what is not on this job falls away; elsewhere it is No.</param>
    public Answer Of(Condition condition, PartState self, Phase phase)
    {
        if (world.Test(condition, self.Part) is { } settled)
        {
            return Answer.Of(settled == Tri.Yes);
        }

        return condition switch
        {
            Condition.All all => Answer.Least(all.Of.Select(one => Of(one, self, phase))),
            Condition.AnyOf any => Answer.Greatest(any.Of.Select(one => Of(one, self, phase))),
            Condition.Some some => Related(some.Of, some.Meets, phase, every: false),
            Condition.Each each => Related(each.Of, each.Meets, phase, every: true),
            Condition.Is test => Choice(test, self, phase),
            Condition.CodeIs test => Code(test, phase),
            Condition.MethodIs test => Method(test, phase),
            Condition.PlaceIs test => Place(test, self, phase),
            Condition.Compare test => new Comparing(this, test, phase).Of(self),
            _ => throw new InvalidOperationException(condition.ToString()),
        };
    }

    /// <summary>The answer of something that is not on this job.</summary>
    public static Answer NotThere(Phase phase) => phase == Phase.Require ? Answer.Fell : Answer.No;

    /// <summary>An Unknown that hangs on whether a part is there.</summary>
    public static Answer MayBeThere(PartState state, Phase phase) =>
        Answer.Unknown(new Hang(state.Presence, null, phase, Near: false));

    public static Hang HangOn(Fact fact, Phase phase, bool near) => new(fact.Id, fact, phase, near);

    private Answer Related(Relation relation, Condition meets, Phase phase, bool every)
    {
        var members = scene.RelatedBy(relation).Where(member => world.Presence(member) != Tri.No).ToList();
        if (members.Count == 0)
        {
            // Nothing behind or in front is an answer; a list that is not on this job is none.
            return phase == Phase.Require && relation.To == RelationTo.Below ? Answer.Fell : Answer.Of(every);
        }

        // A member that may not be there can neither break an each nor make a some.
        var answers = members.Select(member => world.Presence(member) == Tri.Yes ? Met(member) : MayBeThere(member, phase));
        return every ? Answer.Least(answers) : Answer.Greatest(answers);

        Answer Met(PartState member) => Of(meets, member, Phase.When) is { Value: not null } answer ? Rephrase(answer, phase) : Answer.No;
    }

    private static Answer Rephrase(Answer answer, Phase phase) => answer with
    {
        Hangs = [.. answer.Hangs.Select(hang => hang with { Phase = phase })],
    };

    private Answer Choice(Condition.Is test, PartState self, Phase phase)
    {
        var state = scene.Find(test.Path, self);
        if (world.Presence(state) != Tri.Yes)
        {
            return world.Presence(state) == Tri.No ? NotThere(phase) : MayBeThere(state, phase);
        }

        if (test.Path.Reading.Is == Form.Conclusion)
        {
            return Concluded(test, state, phase);
        }

        var fact = state.Facts[test.Path.Reading.Name];
        return world.Of(fact, onPaper) switch
        {
            Known.Absent => NotThere(phase),
            Known.OneOf known => Tested(test, state, fact, Answer.Of(test.OneOf.Contains(known.Choice))),
            _ => Tested(test, state, fact, Answer.Unknown(HangOn(fact, phase, near: fact.Clash))),
        };
    }

    private static Answer Tested(Condition.Is test, PartState state, Fact fact, Answer answer) =>
        answer with
        {
            Tests = [new Measured(test, state.Part, answer.Value!.Value, fact, null, null, Spread.Everything, Spread.Everything, [])],
        };

    private Answer Concluded(Condition.Is test, PartState state, Phase phase)
    {
        var all = scene.Conclusions.Where(one => one.Part == state.Part && one.Reading == test.Path.Reading.Name).ToList();
        var value = all.Count == 0 ? Tri.No : all.Max(one => one.Given(onPaper));
        var wanted = test.OneOf.Contains("yes");
        var hangs = all.Where(one => one.Given(onPaper) == Tri.Unknown).SelectMany(one => onPaper ? one.HangsOnPaper : one.Hangs);
        return value == Tri.Unknown
            ? Rephrase(Answer.Unknown([.. hangs]), phase)
            : Answer.Of((value == Tri.Yes) == wanted);
    }

    private Answer Code(Condition.CodeIs test, Phase phase)
    {
        var possible = world.CodesOf(test.Discipline) ?? scene.Surroundings!.Codes[test.Discipline].Tried;
        if (possible.Count > 0 && possible.All(code => test.OneOf.Any(range => range.Covers(code))))
        {
            return Answer.Yes;
        }

        return possible.Any(code => test.OneOf.Any(range => range.Touches(code)))
            ? Answer.Unknown(new Hang(FactId.Code(test.Discipline), null, phase, Near: false))
            : Answer.No;
    }

    private Answer Method(Condition.MethodIs test, Phase phase)
    {
        var possible = scene.Surroundings!.Methods;
        return possible.All(method => test.OneOf.Contains(method.Name)) ? Answer.Yes
            : possible.Any(method => test.OneOf.Contains(method.Name)) ? Answer.Unknown(new Hang(FactId.Method, null, phase, Near: false))
            : Answer.No;
    }

    private static Answer Place(Condition.PlaceIs test, PartState self, Phase phase) =>
        self.Part.Place is { } place ? Answer.Of(test.OneOf.Contains(place.Name))
        : self.Part.IsOther ? MayBeThere(self, phase)
        : Answer.No;
}
