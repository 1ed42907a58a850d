using Cartwright.Patching;
using Xunit;

namespace Cartwright.Tests.Patching;

/// <summary>Thousands of spoilt patches: each is refused with a finding or makes a file, none throws, none takes much memory.</summary>
public sealed class PatchFuzzTests
{
    private const int Rounds = 4000;
    private const long Room = 0x8_0000;

    private static readonly byte[] Image = TestBytes.L(0x4000);

    public static TheoryData<string> Formats() => ["IPS", "BPS", "VCDIFF"];

    [Theory]
    [MemberData(nameof(Formats))]
    public void Spoilt_patches_do_no_harm(string name)
    {
        var format = PatchFormats.Find(name)!;
        var random = new Random(4);
        var sound = Sound(format, random);
        var codes = new HashSet<string>();
        for (var i = 0; i < Rounds; i++)
        {
            var patch = RandomPatches.Spoil(random, sound, i % 2 == 0 ? format.Magic.Length : 0);
            if (format == PatchFormats.Bps && i % 8 != 0) patch = RandomPatches.Sign(patch, Image, null);
            codes.UnionWith(Try(patch));
        }

        Assert.InRange(codes.Count, 3, 29);
    }

    [Theory]
    [MemberData(nameof(Formats))]
    public void Any_length_of_a_patch_does_no_harm(string name)
    {
        var format = PatchFormats.Find(name)!;
        var sound = Sound(format, new Random(5));
        for (var length = 0; length < sound.Length; length++)
        {
            Try(sound[..length]);
            if (format == PatchFormats.Bps) Try(RandomPatches.Sign(sound[..length], Image, null));
        }
    }

    [Theory]
    [MemberData(nameof(Formats))]
    public void Noise_behind_the_magic_does_no_harm(string name)
    {
        var format = PatchFormats.Find(name)!;
        var random = new Random(6);
        for (var i = 0; i < Rounds; i++)
        {
            byte[] patch = [.. format.Magic, .. RandomPatches.Bytes(random, random.Next(100))];
            if (format == PatchFormats.Vcdiff && patch.Length > 5) (patch[3], patch[4]) = (0, (byte)(4 * random.Next(2)));
            Try(format == PatchFormats.Bps ? RandomPatches.Sign(patch, Image, null) : patch);
        }
    }

    private static IEnumerable<string> Try(byte[] patch)
    {
        var before = GC.GetAllocatedBytesForCurrentThread();
        var run = PatchBench.Apply(Image, patch);
        var allocated = GC.GetAllocatedBytesForCurrentThread() - before;
        Assert.InRange(allocated, 0, Room + (2L * (run.Output?.Length ?? 0)));
        Assert.All(run.Findings, finding => Assert.Equal("fix.patch", finding.Place.File));
        _ = Patch.Describe(patch);
        return run.Codes;
    }

    private static byte[] Sound(PatchFormat format, Random random)
    {
        byte[] target = [.. Image.AsSpan(0x2000), .. RandomPatches.Bytes(random, 50), .. TestBytes.All(0xFF, 0x1000), .. Image.AsSpan(0, 0x1234)];
        if (format == PatchFormats.Ips) return RandomPatches.Ips(random);
        if (format == PatchFormats.Bps) return PatchBench.Make(format, Image, target).Output!;
        return new VcdiffBuilder(random, Image).Text("tide").Window(1, true).Window(0, false).Window(2, true).Patch;
    }
}
