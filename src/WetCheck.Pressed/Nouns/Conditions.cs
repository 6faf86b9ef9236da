using WetCheck.Model;

namespace WetCheck.Pressed;

internal static partial class Carry
{
    private static readonly Type[] s_conditions =
    [
        typeof(Condition.All), typeof(Condition.AnyOf), typeof(Condition.Some), typeof(Condition.Each), typeof(Condition.Is),
        typeof(Condition.CodeIs), typeof(Condition.MethodIs), typeof(Condition.PlaceIs), typeof(Condition.Compare),
    ];

    private static readonly Type[] s_operands = [typeof(Operand.Fixed), typeof(Operand.Limit), typeof(Operand.Of)];

    private static Condition Condition(Wire wire, Condition? condition) => wire.Same<Condition>(condition, static (wire, condition) =>
        Form(wire, condition, s_conditions) switch
        {
            0 => All(wire, condition as Condition.All),
            1 => AnyOf(wire, condition as Condition.AnyOf),
            2 => Some(wire, condition as Condition.Some),
            3 => Each(wire, condition as Condition.Each),
            4 => Is(wire, condition as Condition.Is),
            5 => CodeIs(wire, condition as Condition.CodeIs),
            6 => MethodIs(wire, condition as Condition.MethodIs),
            7 => PlaceIs(wire, condition as Condition.PlaceIs),
            _ => Compare(wire, condition as Condition.Compare),
        });

    private static Condition.All All(Wire wire, Condition.All? all) => new(wire.List(all?.Of, Condition), At(wire, all?.At));

    private static Condition.AnyOf AnyOf(Wire wire, Condition.AnyOf? any) => new(wire.List(any?.Of, Condition), At(wire, any?.At));

    private static Condition.Some Some(Wire wire, Condition.Some? some) =>
        new(Relation(wire, some?.Of), Condition(wire, some?.Meets), At(wire, some?.At));

    private static Condition.Each Each(Wire wire, Condition.Each? each) =>
        new(Relation(wire, each?.Of), Condition(wire, each?.Meets), At(wire, each?.At));

    private static Condition.Is Is(Wire wire, Condition.Is? test) =>
        new(Path(wire, test?.Path), wire.Texts(test?.OneOf), At(wire, test?.At));

    private static Condition.CodeIs CodeIs(Wire wire, Condition.CodeIs? test) =>
        new(wire.Text(test?.Discipline), wire.List(test?.OneOf, CodeRange), At(wire, test?.At));

    private static Condition.MethodIs MethodIs(Wire wire, Condition.MethodIs? test) => new(wire.Texts(test?.OneOf), At(wire, test?.At));

    private static Condition.PlaceIs PlaceIs(Wire wire, Condition.PlaceIs? test) => new(wire.Texts(test?.OneOf), At(wire, test?.At));

    private static Condition.Compare Compare(Wire wire, Condition.Compare? test) =>
        new(Path(wire, test?.Path), wire.Choice(test?.By ?? default), Operand(wire, test?.To), At(wire, test?.At));

    private static Model.Path Path(Wire wire, Model.Path? path) => wire.Same(path, static (wire, path) =>
        new Model.Path(wire.MaybeText(path?.Kind), ReadingKind(wire, path?.Reading)));

    private static Relation Relation(Wire wire, Relation? relation) => wire.Same(relation, static (wire, relation) =>
        new Relation(wire.Choice(relation?.To ?? default), wire.MaybeText(relation?.Kind)));

    private static Operand Operand(Wire wire, Operand? operand) => wire.Same<Operand>(operand, static (wire, operand) =>
        Form(wire, operand, s_operands) switch
        {
            0 => new Operand.Fixed(Quantity(wire, (operand as Operand.Fixed)?.Quantity ?? default), wire.MaybeText(operand?.Datum)),
            1 => new Operand.Limit(wire.MaybeText(operand?.Datum)),
            _ => new Operand.Of(Path(wire, (operand as Operand.Of)?.Path)),
        });

    /// <summary>Which of the forms it has.</summary>
    private static int Form(Wire wire, object? value, Type[] forms)
    {
        var place = value is null ? 0 : Array.IndexOf(forms, value.GetType());
        return place < 0 ? throw new ArgumentException($"{value} has no place in the pressed book", nameof(value)) : wire.Number(place);
    }
}
