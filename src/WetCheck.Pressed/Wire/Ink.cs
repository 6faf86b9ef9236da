namespace WetCheck.Pressed;

/// <summary>What is being written: bytes, and the objects carried so far with their places from 1.</summary>
internal sealed class Ink(TextPool texts)
{
    private readonly List<byte> _bytes = [];

    public TextPool Texts { get; } = texts;

    public IEnumerable<byte> Bytes => _bytes;

    public Dictionary<object, int> Carried { get; } = new(ReferenceEqualityComparer.Instance);

    /// <summary>Seven bits a byte, lowest first; the eighth says that more follow.</summary>
    public void Number(int value) => Number(_bytes, value);

    public void Text(string text) => Number(Texts.Place(text));

    public void Raw(ReadOnlySpan<byte> bytes)
    {
        Number(bytes.Length);
        _bytes.AddRange(bytes);
    }

    /// <summary>A part that can be passed over.</summary>
    public void Leaf(Ink leaf) => Raw([.. leaf._bytes]);

    public static void Number(List<byte> bytes, int value)
    {
        var rest = (uint)value;
        for (; rest > 0x7F; rest >>= 7)
        {
            bytes.Add((byte)(rest | 0x80));
        }

        bytes.Add((byte)rest);
    }
}
