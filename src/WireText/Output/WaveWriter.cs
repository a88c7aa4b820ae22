using System.Buffers.Binary;
using WireText.Listening;

namespace WireText.Output;

/// <summary>Writes sound as RIFF/WAVE: one channel of 16 or 24 bit integers, the lowest byte first.</summary>
/// <remarks>As the Multimedia Programming Interface and Data Specifications 1.0 (1991) has it. Samples are rounded to the nearest step, without noise added.</remarks>
public static class WaveWriter
{
    private const int HeaderBytes = 44;
    private const int FormatBytes = 16;
    private const ushort Integers = 1;
    private const ushort Channels = 1;

    /// <param name="bits">16 or 24.</param>
    public static byte[] Write(Recording sound, int bits)
    {
        var samples = sound.Samples.Span;
        var width = bits / 8;
        var dataBytes = samples.Length * width;

        // A part of an odd number of bytes has one more, which its size does not count.
        var file = new byte[HeaderBytes + dataBytes + (dataBytes % 2)];
        "RIFF"u8.CopyTo(file);
        BinaryPrimitives.WriteUInt32LittleEndian(file.AsSpan(4), (uint)(file.Length - 8));
        "WAVEfmt "u8.CopyTo(file.AsSpan(8));
        BinaryPrimitives.WriteUInt32LittleEndian(file.AsSpan(16), FormatBytes);
        BinaryPrimitives.WriteUInt16LittleEndian(file.AsSpan(20), Integers);
        BinaryPrimitives.WriteUInt16LittleEndian(file.AsSpan(22), Channels);
        BinaryPrimitives.WriteUInt32LittleEndian(file.AsSpan(24), (uint)sound.Rate);
        BinaryPrimitives.WriteUInt32LittleEndian(file.AsSpan(28), (uint)(sound.Rate * width));
        BinaryPrimitives.WriteUInt16LittleEndian(file.AsSpan(32), (ushort)width);
        BinaryPrimitives.WriteUInt16LittleEndian(file.AsSpan(34), (ushort)bits);
        "data"u8.CopyTo(file.AsSpan(36));
        BinaryPrimitives.WriteUInt32LittleEndian(file.AsSpan(40), (uint)dataBytes);
        var most = (1 << (bits - 1)) - 1;
        for (var i = 0; i < samples.Length; i++)
        {
            var step = (int)Math.Round(Math.Clamp(samples[i], -1, 1) * most);
            var at = HeaderBytes + (i * width);
            for (var part = 0; part < width; part++)
            {
                file[at + part] = (byte)(step >> (8 * part));
            }
        }

        return file;
    }
}
