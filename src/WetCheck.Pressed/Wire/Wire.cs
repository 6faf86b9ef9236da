using System.Numerics;
using System.Runtime.CompilerServices;

namespace WetCheck.Pressed;

/// <summary>
/// Carries objects to bytes and back by one description for both ways: each call writes its argument and gives it back, or,
/// when reading, takes no notice of it and gives what stands there.
/// </summary>
internal sealed partial class Wire
{
    private readonly Ink? _ink;
    private readonly Page? _page;

    private Wire(Ink ink) => _ink = ink;

    private Wire(Page page) => _page = page;

    public static byte[] Write<T>(T value, Func<Wire, T?, T> carry)
        where T : class
    {
        var texts = new TextPool();
        var ink = new Ink(texts);
        carry(new Wire(ink), value);
        return [.. texts.Bytes(), .. ink.Bytes];
    }

    public static T Read<T>(byte[] bytes, Func<Wire, T?, T> carry)
        where T : class
    {
        var page = Page.Open(bytes);
        var read = carry(new Wire(page), null);
        return page.IsAtEnd ? read : throw new InvalidDataException("the pressed book goes on behind its end");
    }

    /// <summary>Small numbers take one byte.</summary>
    public int Number(int value)
    {
        if (_page is not null)
        {
            return _page.Number();
        }

        _ink!.Number(value);
        return value;
    }

    public bool Yes(bool value) => Number(value ? 1 : 0) == 1;

    public int? MaybeNumber(int? value) => Yes(value is not null) ? Number(value.GetValueOrDefault()) : null;

    /// <summary>A member of an enumeration that counts from 0 in whole numbers.</summary>
    public T Choice<T>(T value)
        where T : struct, Enum => Unsafe.BitCast<int, T>(Number(Unsafe.BitCast<T, int>(value)));

    /// <exception cref="ArgumentNullException">When writing, there is none.</exception>
    public string Text(string? value)
    {
        if (_page is not null)
        {
            return _page.Text();
        }

        ArgumentNullException.ThrowIfNull(value);
        _ink!.Text(value);
        return value;
    }

    public string? MaybeText(string? value) => Yes(value is not null) ? Text(value) : null;

    /// <summary>However large.</summary>
    public BigInteger Whole(BigInteger value)
    {
        if (_page is not null)
        {
            return new BigInteger(_page.Raw());
        }

        _ink!.Raw(value.ToByteArray());
        return value;
    }
}
