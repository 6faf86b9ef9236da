using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>Says what a condition asks, without a job.</summary>
internal static class Conditions
{
    public static string Say(Condition condition, Quantity? limit, RuleBook book, Phrases phrases) => condition switch
    {
        Condition.All all =>
            string.Join($" {phrases[Phrase.Say.And]} ",
            all.Of.Select(of => of is Condition.AnyOf ? $"({Say(of, limit, book, phrases)})"
            : Say(of, limit, book, phrases))),
        Condition.AnyOf any => string.Join($"; {phrases[Phrase.Say.Or]} ", any.Of.Select(of => Say(of, limit, book, phrases))),
        Condition.Some some =>
            phrases.Say(Phrase.Rule.Some, ("of", Related(some.Of, book, phrases)),
            ("meets", Say(some.Meets, limit, book, phrases))),
        Condition.Each each =>
            phrases.Say(Phrase.Rule.Each, ("of", Related(each.Of, book, phrases)),
            ("meets", Say(each.Meets, limit, book, phrases))),
        Condition.Is choice => $"{Reading(choice.Path, book, phrases)}: {Choices(choice, phrases)}",
        Condition.CodeIs code => phrases.List([.. code.OneOf.Select(range => Naming.Code(range, phrases))], Phrase.Say.Or),
        Condition.MethodIs method =>
            phrases.List([.. method.OneOf.Select(name => book.Vocabulary.Method(name) is { } m ? phrases.Of(m.Say)
            : name)], Phrase.Say.Or),
        Condition.PlaceIs place => phrases.List([.. place.OneOf.Select(name => Place(name, book, phrases))], Phrase.Say.Or),
        Condition.Compare compare => $"{Reading(compare.Path, book, phrases)} {Bound(compare, limit, book, phrases)}",
        _ => "",
    };

    private static string Bound(Condition.Compare compare, Quantity? limit, RuleBook book, Phrases phrases)
    {
        var amount = compare.To is Operand.Fixed held ? held.Quantity : compare.To is Operand.Limit ? limit : null;
        if (amount is { } number && compare.To.Datum is { } datum)
        {
            var level = book.Vocabulary.Datum(datum) is { } found ? phrases.Of(found.Say) : datum;
            return Limit.Height(compare.By, number, level, phrases);
        }

        return amount is { } plain ? phrases.Show.Limit(plain.Value, plain.Typed, compare.By)
            : compare.To is Operand.Of { Path.Reading: var other }
                ? phrases.Say(compare.By is Comparison.AtLeast or Comparison.Over ? Phrase.Limit.AsMuchOrMore
                    : Phrase.Limit.AsMuchOrLess, ("reading", Limit.As(other, phrases)))
            : Limit.Bounded(compare.By, phrases[Phrase.Slot.Limit], phrases);
    }

    /// <summary>"curb, facing" for a reading of another part, its own word for one of the part itself.</summary>
    private static string Reading(Model.Path path, RuleBook book, Phrases phrases) => path.Kind is { } kind
        ? $"{Kind(kind, book, phrases)}, {Naming.Reading(path.Reading)}"
        : Naming.Reading(path.Reading);

    private static string Choices(Condition.Is choice, Phrases phrases) =>
        phrases.List([.. choice.OneOf.Select(key => Found.Choice(key, choice.Path.Reading, phrases))], Phrase.Say.Or);

    private static string Related(Relation relation, RuleBook book, Phrases phrases) => relation.To switch
    {
        RelationTo.Behind => phrases[Phrase.Rule.Behind],
        RelationTo.InFront => phrases[Phrase.Rule.InFront],
        _ => Kind(relation.Kind ?? "", book, phrases),
    };

    private static string Kind(string name, RuleBook book, Phrases phrases) =>
        book.Vocabulary.Kind(name) is { } kind && phrases.Of(kind.One) is { Length: > 0 } one
            ? Slots.Fill(one, ("place", "")).Trim().TrimEnd(',') : name;

    private static string Place(string name, RuleBook book, Phrases phrases) =>
        book.Vocabulary.Places.FirstOrDefault(place => place.Name == name) is { } place ? phrases.Of(place.Say) : name;
}
