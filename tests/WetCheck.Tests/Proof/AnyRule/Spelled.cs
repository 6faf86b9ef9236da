using WetCheck.Model;

namespace WetCheck.Tests.Proof;

/// <summary>A rule on one line, so that a fault can be read without the seed.</summary>
internal static class Spelled
{
    public static string Of(Rule rule) =>
        $"{rule.Part.Name} when {Of(rule.When)} {Body(rule.Body)} "
        + $"{string.Join(" ", rule.Versions.Select(version => $"[{Of(version.When)} -> {version.Limit?.Value} {Of(version.Require)}]"))}";

    private static string Body(RuleBody body) => body is RuleBody.Require require ? $"require {Of(require.Holds)}" : body.ToString();

    private static string Of(Condition? condition) => condition switch
    {
        null => "-",
        Condition.All all => $"({string.Join(" and ", all.Of.Select(Of))})",
        Condition.AnyOf any => $"({string.Join(" or ", any.Of.Select(Of))})",
        Condition.Some some => $"some {some.Of.To} {some.Of.Kind} {Of(some.Meets)}",
        Condition.Each each => $"each {each.Of.To} {each.Of.Kind} {Of(each.Meets)}",
        Condition.Is test => $"{Of(test.Path)} is {string.Join('|', test.OneOf)}",
        Condition.CodeIs test =>
            $"{test.Discipline} {string.Join('|', test.OneOf.Select(range => $"{range.Family} {range.From}..{range.To}"))}",
        Condition.MethodIs test => $"method {string.Join('|', test.OneOf)}",
        Condition.PlaceIs test => $"place {string.Join('|', test.OneOf)}",
        Condition.Compare test => $"{Of(test.Path)} {test.By} {Of(test.To)}",
        _ => condition.ToString(),
    };

    private static string Of(Model.Path path) => $"{path.Kind}.{path.Reading.Name}";

    private static string Of(Operand operand) => operand switch
    {
        Operand.Fixed number => $"{number.Quantity.Value} above {number.Datum}",
        Operand.Limit limit => $"limit above {limit.Datum}",
        Operand.Of other => Of(other.Path),
        _ => "",
    };
}
