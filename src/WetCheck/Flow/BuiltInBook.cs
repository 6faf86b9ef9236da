using WetCheck.Model;
using WetCheck.Pressed;

namespace WetCheck.Flow;

/// <summary>The rule book that the program was built with. Read and made ready once: it can't change while the program runs.</summary>
internal static class BuiltInBook
{
    private static readonly Lazy<ReadyBook> s_ready = new(() => new ReadyBook(PressedBook.Read(Embedded("book"))));
    private static readonly Lazy<IReadOnlyList<RuleCase>> s_cases = new(() => PressedBook.ReadCases(Embedded("cases")));

    public static ReadyBook Ready => s_ready.Value;

    /// <summary>Which only a proof and a count of the book read.</summary>
    public static IReadOnlyList<RuleCase> Cases => s_cases.Value;

    public static bool Is(RuleBook book) => s_ready.IsValueCreated && ReferenceEquals(s_ready.Value.Book, book);

    private static byte[] Embedded(string name)
    {
        using var stream = typeof(BuiltInBook).Assembly.GetManifestResourceStream(name)!;
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
