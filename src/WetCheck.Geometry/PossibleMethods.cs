using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>The methods that may apply: the stated one, else all that rule out no part that is told to be there.</summary>
internal static class PossibleMethods
{
    public static IReadOnlyList<Method> Of(Job job, Vocabulary vocabulary)
    {
        if (job.Method is { } stated)
        {
            return [stated];
        }

        var there = job.Parts.Where(part => part.Said == Tri.Yes).Select(part => part.Part).ToList();
        var open = vocabulary.Methods.Where(method => !there.Exists(part => method.Never(part.Kind, part.Place))).ToList();
        // Parts that go together in no method: the job contradicts itself, and rules nothing out.
        return open.Count > 0 ? open : vocabulary.Methods;
    }
}
