using NRules.RuleModel;

namespace WetCheck.Engine;

/// <summary>The facts that an activation keeps, each under its own key.</summary>
internal static class Linked
{
    /// <summary>Inserts each, or puts it in place of what stood under its key where it says something else.</summary>
    public static void Keep(IContext context, IEnumerable<(object Key, object Fact)> facts)
    {
        var (come, changed) = (new List<KeyValuePair<object, object>>(), new List<KeyValuePair<object, object>>());
        foreach (var (key, fact) in facts)
        {
            var earlier = context.GetLinked(key);
            if (earlier is null)
            {
                come.Add(new(key, fact));
            }
            else if (earlier is not Conclusion before || fact is not Conclusion now || !before.SameAs(now))
            {
                changed.Add(new(key, fact));
            }
        }

        if (come.Count > 0)
        {
            context.InsertAllLinked(come);
        }

        if (changed.Count > 0)
        {
            context.UpdateAllLinked(changed);
        }
    }
}
