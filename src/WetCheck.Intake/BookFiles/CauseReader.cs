using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>
/// Reads the files below <c>causes/</c>, and <c>opening.yaml</c>: how old work fails, and what to do before it is
/// opened.
/// </summary>
internal sealed class CauseReader(Vocabulary vocabulary, ProblemList problems)
{
    private const string OldWork = "old work";

    private readonly ConditionReader _conditions = new(vocabulary, problems);

    public Cause? Read(string path, Node? root)
    {
        if (Fields.Of(root, problems) is not { } fields)
        {
            return null;
        }

        if (fields.Need("cause") is { Length: > 0 } id && id != path)
        {
            problems.Add(fields.AtOf("cause"), Messages.PathDiffers(id, path));
        }

        fields.Demand("needs");
        var cause = new Cause(
            path,
            fields.Need("number"),
            Conditions(fields, "given"),
            Conditions(fields, "needs"),
            Conditions(fields, "supports"),
            Conditions(fields, "contradicts"),
            Texts(fields, "guards"),
            Texts(fields, "danger"),
            Texts(fields, "row"),
            fields.Words("name"),
            fields.Words("how"),
            fields.Words("open next"),
            fields.At);
        fields.Done();
        return cause;
    }

    public Opening Opening(Node? root)
    {
        if (Fields.Of(root, problems) is not { } fields)
        {
            return Model.Opening.None;
        }

        var opening = new Opening(
            Texts(fields, "gate"),
            [.. fields.Maps("expect").Select(Expected)],
            [.. fields.Maps("tests").Select(Test).OfType<LeakTest>()],
            Sentences(fields, "before"),
            Sentences(fields, "how far"),
            Sentences(fields, "no cures"));
        fields.Done();
        return opening;
    }

    private Expected Expected(Fields fields)
    {
        var expected =
            new Expected(fields.Has("when") && Part(fields.At) is { } part ? _conditions.Read(fields.Take("when"), part)
            : null, fields.Words("say"), Texts(fields, "row"), fields.At);
        fields.Done();
        return expected;
    }

    private LeakTest? Test(Fields fields)
    {
        fields.Demand("reads");
        var result =
            Part(fields.At) is { } part && fields.Scalar("reads") is { } reads
            ? PathReader.Read(reads, part, vocabulary, problems) : null;
        var test = result is null ? null : new LeakTest(
            fields.Need("test"), result, Texts(fields, "symptoms"), fields.Words("do"), fields.Words("takes"),
                fields.Words("clears"), Texts(fields, "points to"), fields.Words("caution"), Texts(fields, "row"),
                fields.At);
        fields.Done();
        return test;
    }

    private static List<Words> Sentences(Fields fields, string name)
    {
        var read = new List<Words>();
        foreach (var one in fields.Maps(name))
        {
            read.Add(one.Words("say"));
            one.Done();
        }

        return read;
    }

    private List<Condition> Conditions(Fields fields, string name) =>
        Part(fields.At) is { } part && fields.Take(name) is { } node
            ? [.. (node is ListNode list ? list.Items : [node]).Select(item => _conditions.Read(item, part)).OfType<Condition>()]
            : [];

    private PartKind? Part(At at)
    {
        var part = vocabulary.Kind(OldWork);
        if (part is null)
        {
            problems.Add(at, Messages.UnknownName("kind of part", OldWork, [.. vocabulary.Kinds.Select(kind => kind.Name)]));
        }

        return part;
    }

    private static List<string> Texts(Fields fields, string name) => [.. fields.Texts(name).Select(text => text.Text)];
}
