using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Reads what a rule asks of a part. The grammar has no negation, no count, no absence and no formula.</summary>
/// <param name="Limit">Whether <c>limit</c> may stand here.</param>
internal sealed record ConditionReader(Vocabulary Vocabulary, ProblemList Problems, bool Limit = false)
{
    public Condition? Read(Node? node, PartKind part)
    {
        if (Fields.Of(node, Problems) is not { } fields)
        {
            return null;
        }

        var read = fields.All().SelectMany(entry => Line(entry, part)).ToList();
        return OneOrAll(read, fields.At);
    }

    private IEnumerable<Condition> Line(NamedNode line, PartKind part) => Names.Fold(line.Key.Text) switch
    {
        "any of" => AnyOf(line, part),
        "some" => Related(line, part, (of, meets) => new Condition.Some(of, meets, line.Key.At)),
        "each" => Related(line, part, (of, meets) => new Condition.Each(of, meets, line.Key.At)),
        "method" => OneOf(line, Vocabulary.Methods.Select(method => method.Name), "method") is { Count: > 0 } methods
            ? [new Condition.MethodIs(methods, line.Key.At)] : [],
        "place" => OneOf(line, part.Places.Select(place => place.Name), $"place of \"{part.Name}\"") is { Count: > 0 } places
            ? [new Condition.PlaceIs(places, line.Key.At)] : [],
        var name when name.StartsWith("code.", StringComparison.Ordinal) => Code(line, name["code.".Length..]),
        _ => new TestReader(this, part).Read(line),
    };

    private IEnumerable<Condition> AnyOf(NamedNode line, PartKind part)
    {
        if (line.Value is not ListNode list)
        {
            Problems.Add(line.Value.At, Messages.ListWanted());
            return [];
        }

        var read = list.Items.Select(item => Read(item, part)).OfType<Condition>().ToList();
        if (read.Count == 0)
        {
            Problems.Add(line.Value.At, Messages.EmptyCondition());
        }

        return read.Count == 0 ? [] : [new Condition.AnyOf(read, line.Key.At)];
    }

    private IEnumerable<Condition> Related(NamedNode line, PartKind part, Func<Relation, Condition, Condition> make)
    {
        if (Fields.Of(line.Value, Problems) is not { } fields || RelationOf(fields, part) is not var (relation, kind))
        {
            return [];
        }

        var read = fields.Rest().SelectMany(entry => Line(entry, kind)).ToList();
        return OneOrAll(read, line.Key.At) is { } meets ? [make(relation, meets)] : [];
    }

    private (Relation, PartKind)? RelationOf(Fields fields, PartKind part)
    {
        if (fields.Scalar("of") is not { } of)
        {
            Problems.Add(fields.At, Messages.RelationMissing());
            return null;
        }

        var side = Names.Fold(of.Text);
        if (side is "behind" or "in front")
        {
            if (part.Many != Many.Ordered)
            {
                Problems.Add(of.At, Messages.NotOrdered(part.Name));
                return null;
            }

            return (new Relation(side == "behind" ? RelationTo.Behind : RelationTo.InFront), part);
        }

        if (Lookup.In(Vocabulary.Kinds, of, kind => kind.Name, "kind of part", Problems) is not { } found)
        {
            return null;
        }

        if (!IsAbove(part, found))
        {
            Problems.Add(of.At, Messages.NotBelow(found.Name, part.Name));
            return null;
        }

        return (new Relation(RelationTo.Below, found.Name), found);
    }

    private bool IsAbove(PartKind part, PartKind below)
    {
        for (var (kind, steps) = (below, 0); kind?.Above is { } above && steps <= Vocabulary.Kinds.Count; steps++)
        {
            if (above == part.Name)
            {
                return true;
            }

            kind = Vocabulary.Kind(above);
        }

        return false;
    }

    private IEnumerable<Condition> Code(NamedNode line, string discipline)
    {
        var name = line.Key with { Text = discipline };
        if (Lookup.In(Vocabulary.Disciplines, name, known => known.Name, "discipline", Problems) is not { } found)
        {
            return [];
        }

        var ranges =
            Fields.Scalars(line.Value, Problems).Select(text => CodeRangeReader.Read(text, found, Problems))
            .OfType<CodeRange>().ToList();
        return ranges.Count == 0 ? [] : [new Condition.CodeIs(found.Name, ranges, line.Key.At)];
    }

    private List<string> OneOf(NamedNode line, IEnumerable<string> known, string what)
    {
        var names = known.ToList();
        return [.. Fields.Scalars(line.Value, Problems)
            .Select(text => Lookup.In(names, text, name => name, what, Problems)).OfType<string>()];
    }

    private Condition? OneOrAll(List<Condition> read, At at)
    {
        if (read.Count == 0 && !Problems.Any)
        {
            Problems.Add(at, Messages.EmptyCondition());
        }

        return read.Count switch { 0 => null, 1 => read[0], _ => new Condition.All(read, at) };
    }
}
