using System.Buffers.Binary;

namespace WireText.Raster;

/// <summary>Records in a PNG how many dots an inch of paper takes, so that it prints in its true size.</summary>
/// <remarks>The chunk is <c>pHYs</c> of the PNG specification (ISO/IEC 15948), 11.3.5.3: pixels per metre in both directions, unit 1.</remarks>
internal static class PngResolution
{
    /// <summary>The signature, 8 bytes, and the header chunk, 25 bytes: other chunks may follow there.</summary>
    private const int AfterHeader = 33;

    private const double InchesPerMetre = 1 / 0.0254;

    public static byte[] Record(byte[] png, double dpi)
    {
        var chunk = Chunk((uint)Math.Round(dpi * InchesPerMetre, MidpointRounding.AwayFromZero));
        return [.. png.AsSpan(0, AfterHeader), .. chunk, .. png.AsSpan(AfterHeader)];
    }

    private static byte[] Chunk(uint pixelsPerMetre)
    {
        var chunk = new byte[4 + 4 + 9 + 4];
        BinaryPrimitives.WriteUInt32BigEndian(chunk, 9);
        "pHYs"u8.CopyTo(chunk.AsSpan(4));
        BinaryPrimitives.WriteUInt32BigEndian(chunk.AsSpan(8), pixelsPerMetre);
        BinaryPrimitives.WriteUInt32BigEndian(chunk.AsSpan(12), pixelsPerMetre);
        chunk[16] = 1;
        BinaryPrimitives.WriteUInt32BigEndian(chunk.AsSpan(17), Crc(chunk.AsSpan(4, 13)));
        return chunk;
    }

    /// <summary>The checksum of PNG's annex D: CRC-32 with polynomial EDB88320, bit-reversed.</summary>
    private static uint Crc(ReadOnlySpan<byte> bytes)
    {
        var crc = uint.MaxValue;
        foreach (var value in bytes)
        {
            crc ^= value;
            for (var bit = 0; bit < 8; bit++)
            {
                crc = (crc & 1) == 0 ? crc >> 1 : (crc >> 1) ^ 0xEDB88320;
            }
        }

        return ~crc;
    }
}
