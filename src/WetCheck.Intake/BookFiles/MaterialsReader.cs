using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Reads <c>materials.yaml</c>: weights, yields of bags and mixes, each with its row of the sources.</summary>
internal static class MaterialsReader
{
    private static readonly string[] s_weight = ["pounds", "on", "deep"];

    public static Materials Read(Node? root, ProblemList problems)
    {
        if (Fields.Of(root, problems) is not { } fields)
        {
            return Materials.None;
        }

        var read = new Materials(
            Weight(fields.Map("water")),
            Weight(fields.Map("mortar")),
            Figure(fields.Map("flood test"), "depth", Measure.Length),
            Figure(fields.Map("waste"), "adds", Measure.Percent),
            [.. fields.Maps("bags").Select(Bag).OfType<MortarBag>()],
            [.. fields.Maps("mixes").Select(Mix)])
        {
            LippageNarrow = Figure(fields.Map("lippage beside narrow joints"), "most", Measure.Length),
            LippageWide = Figure(fields.Map("lippage beside wide joints"), "most", Measure.Length),
            JointFrom = Figure(fields.Map("wide joint"), "from", Measure.Length),
        };
        fields.Done();
        return read;
    }

    /// <summary>So many pounds on an area, so deep: to pounds on a square foot for each inch.</summary>
    private static MaterialFigure? Weight(Fields? fields)
    {
        if (fields is null)
        {
            return null;
        }

        foreach (var name in s_weight)
        {
            fields.Demand(name);
        }

        var (pounds, on, deep, row) =
            (fields.Quantity("pounds", Measure.Count), fields.Quantity("on", Measure.Area),
            fields.Quantity("deep", Measure.Length), fields.Need("row"));
        fields.Done();
        return pounds is null || on is not { Value.Sign: > 0 } || deep is not { Value.Sign: > 0 } ? null
            : new MaterialFigure(pounds.Value.Value * Unit.SquareFoot.Factor / on.Value.Value / deep.Value.Value, row, fields.At);
    }

    private static MaterialFigure? Figure(Fields? fields, string name, Measure measure)
    {
        if (fields is null)
        {
            return null;
        }

        fields.Demand(name);
        var (number, row) = (fields.Quantity(name, measure), fields.Need("row"));
        fields.Done();
        return number is null ? null : new MaterialFigure(number.Value.Value, row, fields.At);
    }

    private static MortarBag? Bag(Fields fields)
    {
        fields.Demand("pounds");
        fields.Demand("yield");
        var (pounds, yields, row) =
            (fields.Quantity("pounds", Measure.Count), fields.Quantity("yield", Measure.Volume), fields.Need("row"));
        fields.Done();
        return pounds is null || yields is not { Value.Sign: > 0 } ? null
            : new MortarBag(pounds.Value.Value, yields.Value.Value, row, fields.At);
    }

    private static MortarMix Mix(Fields fields)
    {
        fields.Demand("use");
        fields.Demand("sand");
        var mix = new MortarMix(fields.Words("use"), fields.Words("sand"), fields.Need("row"), fields.At);
        fields.Done();
        return mix;
    }
}
