using WetCheck.Model;

namespace WetCheck.Engine;

/// <summary>One thing that decides which versions are in force, and the ways it may stand.</summary>
/// <param name="Hang">What would settle it; one for each of the facts it is made of.</param>
/// <param name="Cells">One: it is settled.</param>
internal sealed record Axis(IReadOnlyList<Hang> Hang, IReadOnlyList<Func<World, World>> Cells)
{
    private static readonly Axis Settled = new([], [world => world]);

    /// <summary>The axes of a scene: the codes, facts and tests that its versions look at.</summary>
    /// <param name="cutBand">As <see cref="FactAxis.Of"/> takes it.</param>
    public static IReadOnlyList<Axis> Of(Scene scene, bool onPaper, bool cutBand)
    {
        if (scene.Rule.Versions.Count == 0)
        {
            return [];
        }

        var leaves = scene.Rule.Versions.Select(version => version.When).OfType<Condition>().SelectMany(Deciding).ToList();
        var codes = leaves.OfType<Condition.CodeIs>().Select(test => test.Discipline).Distinct(StringComparer.Ordinal);
        var facts = leaves.Select(PathOf).OfType<Model.Path>().Distinct();
        var tests = leaves.Where(leaf => leaf is not Condition.CodeIs && PathOf(leaf) is null).Distinct();
        return [.. codes.Select(discipline => CodeAxis.Of(scene, discipline)),
            .. facts.Select(path => FactAxis.Of(scene, path, onPaper, cutBand)),
            .. tests.Select(test => OfTest(scene, test, onPaper))];
    }

    /// <summary>Conditions that are decided as one: leaves, and all that runs over a list.</summary>
    private static IEnumerable<Condition> Deciding(Condition condition) => condition switch
    {
        Condition.All all => all.Of.SelectMany(Deciding),
        Condition.AnyOf any => any.Of.SelectMany(Deciding),
        _ => [condition],
    };

    /// <summary>The fact of a test that holds it against fixed values; null where the test is decided as a whole.</summary>
    internal static Model.Path? PathOf(Condition condition) => condition switch
    {
        Condition.Is { Path.Reading.Is: Form.Choice } test => test.Path,
        Condition.Compare { Path.Reading.Is: not Form.Height, To: Operand.Fixed or Operand.Limit } test => test.Path,
        _ => null,
    };

    private static Axis OfTest(Scene scene, Condition test, bool onPaper)
    {
        var answer = new Evaluation(scene, World.Real, onPaper, asRead: true).Of(test, scene.Self, Phase.When);
        return answer.Value != Tri.Unknown
            ? Settled
            : new Axis([.. answer.Hangs.Select(hang => hang with { Phase = Phase.Version })],
                [world => world.WithTest(test, scene.Self.Part, Tri.No), world => world.WithTest(test, scene.Self.Part, Tri.Yes)]);
    }
}
