using WetCheck.Model;

namespace WetCheck.Pressed;

internal static partial class Carry
{
    private static readonly Type[] s_bodies =
        [typeof(RuleBody.Require), typeof(RuleBody.Conclude), typeof(RuleBody.Caution), typeof(RuleBody.Note)];

    private static Rule Rule(Wire wire, Rule? rule) => wire.Same(rule, static (wire, rule) => new Rule(
        wire.Text(rule?.Id),
        wire.Number(rule?.Number ?? 0),
        PartKind(wire, rule?.Part),
        wire.Maybe(rule?.When, Condition),
        RuleBody(wire, rule?.Body),
        wire.List(rule?.Versions, RuleVersion),
        wire.Texts(rule?.Rows),
        wire.MaybeText(rule?.YieldsTo),
        wire.Choice(rule?.Severity ?? default),
        wire.Text(rule?.WorkOf),
        wire.Later(rule?.Texts, RuleTexts),
        At(wire, rule?.At)));

    private static RuleVersion RuleVersion(Wire wire, RuleVersion? version) => wire.Same(version, static (wire, version) => new RuleVersion(
        wire.Maybe(version?.When, Condition),
        wire.MaybeAmount(version?.Limit, Quantity),
        wire.Maybe(version?.Require, Condition),
        wire.Texts(version?.Rows),
        At(wire, version?.At)));

    private static RuleBody RuleBody(Wire wire, RuleBody? body) => wire.Same<RuleBody>(body, static (wire, body) =>
        Form(wire, body, s_bodies) switch
        {
            0 => new RuleBody.Require(wire.Maybe((body as RuleBody.Require)?.Holds, Condition)),
            1 => Conclude(wire, body as RuleBody.Conclude),
            2 => Caution(wire, body as RuleBody.Caution),
            _ => new RuleBody.Note(),
        });

    private static RuleBody.Conclude Conclude(Wire wire, RuleBody.Conclude? body) =>
        new(ReadingKind(wire, body?.Reading), wire.Texts(body?.Climbs));

    private static RuleBody.Caution Caution(Wire wire, RuleBody.Caution? body) => new(wire.MaybeText(body?.From), wire.Text(body?.Until));
}
