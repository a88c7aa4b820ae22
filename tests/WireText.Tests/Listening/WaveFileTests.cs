using System.Buffers.Binary;
using System.Text;
using WireText.Listening;
using WireText.Output;
using WireText.Testing;

namespace WireText.Tests.Listening;

/// <summary>The file beside the layout in the Multimedia Programming Interface and Data Specifications 1.0 (1991), "Waveform Audio File Format".</summary>
public class WaveFileTests
{
    /// <summary>RIFF, size, WAVE; fmt with 16 bytes: tag, channels, rate, bytes a second, bytes of a sample, bits; data with its size.</summary>
    [Theory]
    [InlineData(16, 3, 6, 0)]
    [InlineData(24, 3, 9, 1)]
    [InlineData(24, 4, 12, 0)]
    public void File_HasTheHeaderOfTheFormat(int bits, int samples, int dataBytes, int pad)
    {
        var file = WaveWriter.Write(new Recording(44_100, new double[samples]), bits);

        Assert.Equal(44 + dataBytes + pad, file.Length);
        Assert.Equal("RIFF", Text(0));
        Assert.Equal(file.Length - 8, Number(4));
        Assert.Equal("WAVEfmt ", Encoding.ASCII.GetString(file, 8, 8));
        Assert.Equal(16, Number(16));
        Assert.Equal((1, 1), (Half(20), Half(22)));
        Assert.Equal((44_100, 44_100 * bits / 8), (Number(24), Number(28)));
        Assert.Equal((bits / 8, bits), (Half(32), Half(34)));
        Assert.Equal("data", Text(36));
        Assert.Equal(dataBytes, Number(40));

        string Text(int at) => Encoding.ASCII.GetString(file, at, 4);
        int Number(int at) => BinaryPrimitives.ReadInt32LittleEndian(file.AsSpan(at));
        int Half(int at) => BinaryPrimitives.ReadUInt16LittleEndian(file.AsSpan(at));
    }

    /// <summary>Two's complement, the lowest byte first: 0x4000 is half of 0x7FFF rounded.</summary>
    [Fact]
    public void Samples_AreTwosComplementLowestByteFirst()
    {
        var sound = new Recording(8000, new[] { 0, 0.5, -0.5, 1, -1 });

        Assert.Equal(
            new byte[] { 0, 0, 0x00, 0x40, 0x00, 0xC0, 0xFF, 0x7F, 0x01, 0x80 },
            WaveWriter.Write(sound, 16)[44..]
        );
        Assert.Equal(
            new byte[] { 0, 0, 0, 0x00, 0x00, 0x40, 0x00, 0x00, 0xC0, 0xFF, 0xFF, 0x7F, 0x01, 0x00, 0x80, 0 },
            WaveWriter.Write(sound, 24)[44..]
        );
    }

    [Theory]
    [InlineData(1, 16, "0000 FF7F 0080", new[] { 0, 0.999969, -1 })]
    [InlineData(1, 24, "000000 FFFF7F 000080 000040", new[] { 0, 1, -1, 0.5 })]
    [InlineData(1, 32, "00000000 00000040 00000080", new[] { 0, 0.5, -1 })]
    [InlineData(3, 32, "00000000 0000003F 000080BF", new[] { 0, 0.5, -1 })]
    [InlineData(0xFFFE, 24, "000040", new[] { 0.5 })]
    public void Reader_TakesEachForm(int tag, int bits, string data, double[] samples)
    {
        var read = WaveReader.Read(File(tag, 1, 48_000, bits, data)).Value!;

        Assert.Equal(48_000, read.Rate);
        Assert.Equal(samples.Length, read.Samples.Length);
        Every.Item(samples, (sample, i) => Assert.Equal(sample, read.Samples.Span[i], 1e-6));
    }

    /// <summary>Other parts before the samples are passed over, one of an odd number of bytes with its one more.</summary>
    [Fact]
    public void Reader_PassesOverOtherParts()
    {
        var file = File(1, 1, 48_000, 16, "0040");
        byte[] odd = [.. "LIST"u8, 3, 0, 0, 0, 1, 2, 3, 0];

        Assert.Equal(0.5, WaveReader.Read([.. file[..12], .. odd, .. file[12..]]).Value!.Samples.Span[0]);
    }

    [Theory]
    [InlineData(1, 2, 48_000, 16, "0000", "it has 2 channels; save it with one")]
    [InlineData(1, 1, 4000, 16, "0000", "4000 samples a second")]
    [InlineData(1, 1, 48_000, 8, "00", "save it as one")]
    [InlineData(85, 1, 48_000, 16, "0000", "save it as one")]
    [InlineData(3, 1, 48_000, 32, "0000C07F", "its sample 1 is no number")]
    [InlineData(1, 1, 48_000, 16, "", "it has no samples")]
    public void Reader_TellsWhatItCannotTake(int tag, int channels, int rate, int bits, string data, string problem) =>
        Assert.Contains(
            problem,
            WaveReader.Read(File(tag, channels, rate, bits, data)).Problem,
            StringComparison.Ordinal
        );

    /// <summary>No beginning of a file, and no file with one byte changed, is more than told.</summary>
    [Fact]
    public void Reader_OfAnyBrokenFile_TellsAndEnds()
    {
        var file = File(1, 1, 48_000, 16, "0040 0040");
        Every.Item(
            Enumerable.Range(0, file.Length - 1),
            length => Assert.NotNull(WaveReader.Read(file.AsSpan(0, length)).Problem)
        );
        Every.Item(
            Enumerable.Range(0, file.Length * 256),
            i =>
            {
                var changed = (byte[])file.Clone();
                changed[i / 256] = (byte)i;
                var read = WaveReader.Read(changed);
                Assert.True(read.Value is null != read.Problem is null);
            }
        );
    }

    private static byte[] File(int tag, int channels, int rate, int bits, string data)
    {
        var samples = Convert.FromHexString(data.Replace(" ", "", StringComparison.Ordinal));
        byte[] more = tag == 0xFFFE ? [22, 0, 24, 0, 4, 0, 0, 0, 1, 0, .. new byte[14]] : [];
        var format = new byte[16];
        BinaryPrimitives.WriteUInt16LittleEndian(format, (ushort)tag);
        BinaryPrimitives.WriteUInt16LittleEndian(format.AsSpan(2), (ushort)channels);
        BinaryPrimitives.WriteInt32LittleEndian(format.AsSpan(4), rate);
        BinaryPrimitives.WriteUInt16LittleEndian(format.AsSpan(14), (ushort)bits);
        byte[] chunks =
        [
            .. "WAVEfmt "u8,
            .. Size(16 + more.Length),
            .. format,
            .. more,
            .. "data"u8,
            .. Size(samples.Length),
            .. samples,
        ];
        return [.. "RIFF"u8, .. Size(chunks.Length), .. chunks];
    }

    private static byte[] Size(int size) => BitConverter.GetBytes(size);
}
