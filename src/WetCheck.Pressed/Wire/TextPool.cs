using System.Text;

namespace WetCheck.Pressed;

/// <summary>Texts that are being written, each once.</summary>
internal sealed class TextPool
{
    private static readonly UTF8Encoding s_strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    private readonly Dictionary<string, int> _places = new(StringComparer.Ordinal);
    private readonly List<byte[]> _texts = [];

    public int Place(string text)
    {
        if (!_places.TryGetValue(text, out var place))
        {
            _places[text] = place = _texts.Count;
            _texts.Add(s_strict.GetBytes(text));
        }

        return place;
    }

    /// <summary>How many, the length of each, then their bytes (UTF-8).</summary>
    public IEnumerable<byte> Bytes()
    {
        var head = new List<byte>();
        Ink.Number(head, _texts.Count);
        _texts.ForEach(text => Ink.Number(head, text.Length));
        return head.Concat(_texts.SelectMany(text => text));
    }
}
