using System.Buffers.Binary;
using WireText.Text;

namespace WireText.Listening;

/// <summary>Reads a recording: RIFF/WAVE with one channel of 16, 24 or 32 bit integers, or of 32 bit floating point numbers.</summary>
/// <remarks>
/// The chunks are those of the Multimedia Programming Interface and Data Specifications 1.0 (1991), and the extensible form of
/// the format chunk that came later: its first two bytes behind the mask of speakers are the plain format.
/// </remarks>
public static class WaveReader
{
    /// <summary>Bytes of a recording that are read. Chosen.</summary>
    public const int MostBytes = 64 * 1024 * 1024;

    /// <summary>Sample rates that are taken, in hertz. Chosen: what recorders write.</summary>
    public const int LeastRate = 8000;
    public const int MostRate = 192_000;

    private const int Integers = 1;
    private const int Floats = 3;
    private const int Extensible = 0xFFFE;

    public static Read<Recording> Read(ReadOnlySpan<byte> file)
    {
        if (file.Length < 12 || !file[..4].SequenceEqual("RIFF"u8) || !file[8..12].SequenceEqual("WAVE"u8))
        {
            return Bad("it is no WAV file: it does not begin with RIFF and WAVE");
        }

        Format? format = null;
        for (var at = 12; at + 8 <= file.Length; )
        {
            var id = file.Slice(at, 4);
            var size = BinaryPrimitives.ReadUInt32LittleEndian(file[(at + 4)..]);
            if (size > file.Length - at - 8)
            {
                return Bad(
                    $"it is cut off: a part of it says that it has {size} bytes, and {file.Length - at - 8} are left"
                );
            }

            var content = file.Slice(at + 8, (int)size);
            if (id.SequenceEqual("fmt "u8))
            {
                format = FormatOf(content);
            }
            else if (id.SequenceEqual("data"u8))
            {
                return format is null ? Bad("its samples come before their format") : Samples(content, format.Value);
            }

            // A part of an odd number of bytes has one more, which counts for nothing.
            at = (int)Math.Min(file.Length, at + 8L + size + (size & 1));
        }

        return Bad("it has no samples");
    }

    private static Format? FormatOf(ReadOnlySpan<byte> chunk)
    {
        if (chunk.Length < 16)
        {
            return null;
        }

        int tag = BinaryPrimitives.ReadUInt16LittleEndian(chunk);
        if (tag == Extensible && chunk.Length >= 26)
        {
            tag = BinaryPrimitives.ReadUInt16LittleEndian(chunk[24..]);
        }

        return new Format(
            tag,
            BinaryPrimitives.ReadUInt16LittleEndian(chunk[2..]),
            BinaryPrimitives.ReadUInt32LittleEndian(chunk[4..]),
            BinaryPrimitives.ReadUInt16LittleEndian(chunk[14..])
        );
    }

    private static Read<Recording> Samples(ReadOnlySpan<byte> data, Format format)
    {
        if (format.Channels != 1)
        {
            return Bad($"it has {format.Channels} channels; save it with one");
        }

        if (format.Rate is < LeastRate or > MostRate)
        {
            return Bad($"it has {format.Rate} samples a second; save it with {LeastRate} to {MostRate}");
        }

        if ((format.Tag, format.Bits) is not ((Integers, 16 or 24 or 32) or (Floats, 32)))
        {
            return Bad(
                "it is neither of 16, 24 or 32 bits without compression nor of 32 bit floating point; save it as one"
            );
        }

        var width = format.Bits / 8;
        var samples = new double[data.Length / width];
        for (var i = 0; i < samples.Length; i++)
        {
            samples[i] = SampleOf(data.Slice(i * width, width), format.Tag);
            if (!double.IsFinite(samples[i]))
            {
                return Bad($"its sample {i + 1} is no number");
            }
        }

        return samples.Length == 0
            ? Bad("it has no samples")
            : new Read<Recording>(new Recording((int)format.Rate, samples), null);
    }

    private static double SampleOf(ReadOnlySpan<byte> bytes, int tag) =>
        bytes.Length switch
        {
            2 => BinaryPrimitives.ReadInt16LittleEndian(bytes) / 32768.0,
            3 => ((bytes[0] << 8 | bytes[1] << 16 | bytes[2] << 24) >> 8) / 8388608.0,
            _ when tag == Floats => BinaryPrimitives.ReadSingleLittleEndian(bytes),
            _ => BinaryPrimitives.ReadInt32LittleEndian(bytes) / 2147483648.0,
        };

    private static Read<Recording> Bad(string problem) => new(null, problem);

    private readonly record struct Format(int Tag, int Channels, uint Rate, int Bits);
}
