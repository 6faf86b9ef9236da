namespace WetCheck.Model;

/// <summary>All that a job file and a rule may speak of. Data under <c>rules/vocabulary</c> and <c>rules/methods</c>.</summary>
public sealed class Vocabulary
{
    private readonly Dictionary<string, PartKind> _kinds;

    public Vocabulary(
        IReadOnlyList<PartKind> kinds,
        IReadOnlyList<Datum> datums,
        IReadOnlyList<Tool> tools,
        IReadOnlyList<Place> places,
        IReadOnlyList<Discipline> disciplines,
        IReadOnlyList<Method> methods,
        IReadOnlyList<DatumStep>? steps = null)
    {
        Kinds = kinds;
        Datums = datums;
        Tools = tools;
        Places = places;
        Disciplines = disciplines;
        Methods = methods;
        Steps = steps ?? [];
        _kinds = kinds.ToDictionary(kind => kind.Name, StringComparer.Ordinal);
    }

    /// <summary>In walking order. The first is <c>job</c>, the part above all.</summary>
    public IReadOnlyList<PartKind> Kinds { get; }

    public IReadOnlyList<Datum> Datums { get; }

    public IReadOnlyList<Tool> Tools { get; }

    public IReadOnlyList<Place> Places { get; }

    public IReadOnlyList<Discipline> Disciplines { get; }

    public IReadOnlyList<Method> Methods { get; }

    /// <summary>Steps between datums that hold on every job.</summary>
    public IReadOnlyList<DatumStep> Steps { get; }

    public PartKind? Kind(string name) => _kinds.GetValueOrDefault(name);

    public Datum? Datum(string name) => Datums.FirstOrDefault(datum => datum.Name == name);

    public Method? Method(string name) => Methods.FirstOrDefault(method => method.Name == name);

    public Tool? Tool(string name) => Tools.FirstOrDefault(tool => tool.Name == name);

    public Discipline? Discipline(string name) => Disciplines.FirstOrDefault(discipline => discipline.Name == name);
}
