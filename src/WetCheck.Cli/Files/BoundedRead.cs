namespace WetCheck.Cli.Files;

/// <summary>
/// Reads a file to its end, or to where it is too large: what a file says of its own length need not be so.
/// </summary>
internal static class BoundedRead
{
    /// <summary>Null: it is larger than <see cref="TooLong.FileBytes"/>.</summary>
    public static byte[]? Bytes(FileStream file)
    {
        var bytes = new byte[Math.Clamp(file.CanSeek ? file.Length : 0, 0, TooLong.FileBytes) + 1];
        var count = 0;
        while (count <= TooLong.FileBytes)
        {
            if (count == bytes.Length)
            {
                Array.Resize(ref bytes, Math.Min(2 * bytes.Length, TooLong.FileBytes + 1));
            }

            var read = file.Read(bytes, count, bytes.Length - count);
            if (read == 0)
            {
                return bytes[..count];
            }

            count += read;
        }

        return null;
    }
}
