using Cartwright.Images;
using Cartwright.Tests.Oracles;
using Cartwright.Tests.Programs;
using Xunit;

namespace Cartwright.Tests.Images;

/// <summary>Our text formats against GNU objcopy, both ways.</summary>
public sealed class RecordOracleTests
{
    public static TheoryData<int, long> Images => new()
    {
        { 1, 0 },
        { 32768, 0x8000 },
        { 1000, 0xFFF9 },
        { 70001, 0xF8000 },
        { 200000, 0x8000000 },
        { 300, 0xFFFFFED4 },
    };

    [Theory]
    [MemberData(nameof(Images))]
    public void Objcopy_reads_the_Intel_HEX_we_write(int length, long address) =>
        ObjcopyReads("ihex", length, address, (stream, data) => IntelHexWriter.Write(stream, data, address));

    [Theory]
    [MemberData(nameof(Images))]
    public void Objcopy_reads_the_S_records_we_write(int length, long address) =>
        ObjcopyReads("srec", length, address, (stream, data) => SRecordWriter.Write(stream, data, "Lantern Tide", address));

    [Theory]
    [MemberData(nameof(Images))]
    public void We_read_the_Intel_HEX_objcopy_writes(int length, long address) => WeRead("ihex", length, address);

    [Theory]
    [MemberData(nameof(Images))]
    public void We_read_the_S_records_objcopy_writes(int length, long address) => WeRead("srec", length, address);

    private static void ObjcopyReads(string format, int length, long address, Action<Stream, byte[]> write)
    {
        using var folder = new TempFolder();
        var data = Data(length);
        using var stream = new MemoryStream();
        write(stream, data);
        folder.Write("ours.txt", stream.ToArray());
        Tool.Succeed("objcopy", folder.Path, "-I", format, "-O", "binary", "ours.txt", "theirs.bin");
        Assert.True(data.AsSpan().SequenceEqual(folder.Read("theirs.bin")));
        Assert.Contains($"{address:x8}", Tool.Succeed("objdump", folder.Path, "-h", "-b", format, "ours.txt"), StringComparison.Ordinal);
    }

    private static void WeRead(string format, int length, long address)
    {
        using var folder = new TempFolder();
        var data = Data(length);
        folder.Write("ours.bin", data);
        Tool.Succeed("objcopy", folder.Path, "-I", "binary", "-O", format, $"--change-addresses=0x{address:X}", "ours.bin", "theirs.txt");
        var segment = Assert.Single(Reading.Clean("theirs.txt", folder.Read("theirs.txt")));
        Assert.Equal(address, segment.Address);
        Assert.True(data.AsSpan().SequenceEqual(segment.Bytes.Span));
    }

    private static byte[] Data(int length)
    {
        var data = new byte[length];
        new Random(length).NextBytes(data);
        return data;
    }
}
