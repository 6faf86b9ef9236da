using System.Runtime.InteropServices;
using System.Text;

namespace WetCheck.Cli.Files;

/// <summary>
/// What Linux tells of files and streams and .NET does not. Elsewhere each is taken for what it should be.
/// </summary>
internal static partial class SystemCalls
{
    private const int HereIsTheFolder = -100;
    private const uint Kind = 1;
    private const int KindAt = 28;
    private const int KindMask = 0xF000;
    private const int Plain = 0x8000;
    private const int Flags = 1;

    /// <summary>
    /// Opening a pipe waits for its other end, and a device may have none: only a plain file is opened. True where
    /// nothing is.
    /// </summary>
    public static bool IsPlainFile(string path)
    {
        if (!OperatingSystem.IsLinux())
        {
            return true;
        }

        var told = new byte[256];
        return Statx(HereIsTheFolder, Encoding.UTF8.GetBytes(path + '\0'), 0, Kind, told) != 0
            || (BitConverter.ToUInt16(told, KindAt) & KindMask) == Plain;
    }

    /// <summary>
    /// A stream (0 to 2) that was open when the program began. In the place of one that was closed the system puts a
    /// file of the program's own,
    /// which closes when another program starts; one that was handed down never does.
    /// </summary>
    public static bool IsHandedDown(int stream) => !OperatingSystem.IsLinux() || Fcntl(stream, Flags) == 0;

    [LibraryImport("libc", EntryPoint = "statx")]
    private static partial int Statx(int folder, byte[] path, int flags, uint mask, byte[] told);

    [LibraryImport("libc", EntryPoint = "fcntl")]
    private static partial int Fcntl(int stream, int asked);
}
