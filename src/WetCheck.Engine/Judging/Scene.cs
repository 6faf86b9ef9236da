using WetCheck.Model;

namespace WetCheck.Engine;

/// <summary>All that a rule sees when it is held against one part. Nothing is reached by walking from here.</summary>
/// <param name="Nearest">The states of <see cref="RulePlan.Nearest"/>, in that order.</param>
/// <param name="Related">Every part that one of the rule's relations names.</param>
/// <param name="Conclusions">Every conclusion whose reading the rule looks at.</param>
public sealed record Scene(
    RulePlan Plan,
    PartState Self,
    IReadOnlyList<PartState> Nearest,
    IReadOnlyList<PartState> Related,
    IReadOnlyList<Conclusion> Conclusions)
{
    public Rule Rule => Plan.Rule;

    /// <summary>What holds for the whole job; null where the rule does not look at it.</summary>
    public Surroundings? Surroundings => Self.Surroundings ?? Nearest.FirstOrDefault(state => state.Surroundings is not null)?.Surroundings;

    /// <summary>The part that a path speaks of: <paramref name="of"/> itself, or the nearest of a kind.</summary>
    public PartState Find(Model.Path path, PartState of) =>
        path.Kind is not { } kind || kind == of.Kind ? of
        : kind == Self.Kind ? Self
        : Nearest[Plan.Nearest.IndexOf(kind)];

    public IEnumerable<PartState> RelatedBy(Relation relation) => Related.Where(state => Relations.Holds(relation, Self.Part, state.Part));
}
