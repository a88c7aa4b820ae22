using System.Runtime.InteropServices;

namespace WireText.Cli.Storage;

/// <summary>Asks Linux what a path leads to: <c>statx(2)</c>, whose record is laid out alike on every processor.</summary>
internal static partial class LinuxStatus
{
    /// <summary>Paths that are not whole are taken from the working folder (<c>AT_FDCWD</c>).</summary>
    private const int WorkingFolder = -100;

    /// <summary>The type and the number of the file (<c>STATX_TYPE | STATX_INO</c>).</summary>
    private const uint TypeAndNumber = 0x001 | 0x100;

    /// <summary>The part of the mode that holds the type (<c>S_IFMT</c>, inode(7)).</summary>
    private const int TypeBits = 0xF000;

    public static FileStatus Of(string path)
    {
        if (StatX(WorkingFolder, path, flags: 0, TypeAndNumber, out var record) != 0)
        {
            return new FileStatus(FileKind.Missing, null);
        }

        var device = ((ulong)record.DeviceMajor << 32) | record.DeviceMinor;
        return new FileStatus(KindOf(record.Mode), new FileIdentity(device, record.Number, ""));
    }

    private static FileKind KindOf(ushort mode) =>
        (mode & TypeBits) switch
        {
            0x1000 => FileKind.Pipe,
            0x2000 => FileKind.CharacterDevice,
            0x4000 => FileKind.Folder,
            0x6000 => FileKind.BlockDevice,
            0xC000 => FileKind.Socket,
            _ => FileKind.Regular,
        };

    [LibraryImport("libc", EntryPoint = "statx", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int StatX(int folder, string path, int flags, uint mask, out StatXRecord record);

    /// <summary>The fields of <c>struct statx</c> that are read, at their places in its 256 bytes.</summary>
    [StructLayout(LayoutKind.Explicit, Size = 256)]
    private readonly struct StatXRecord
    {
        [FieldOffset(28)]
        public readonly ushort Mode;

        [FieldOffset(32)]
        public readonly ulong Number;

        [FieldOffset(136)]
        public readonly uint DeviceMajor;

        [FieldOffset(140)]
        public readonly uint DeviceMinor;
    }
}
