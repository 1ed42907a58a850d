namespace Cartwright.Cli.Tests.Mutations;

/// <summary>Spoils a program file: damaged, cut, grown, or of another kind.</summary>
internal static class ProgramMutation
{
    public static byte[] Spoil(byte[] program, Random random)
    {
        var spoilt = program.ToArray();
        switch (random.Next(8))
        {
            case 0:
                return spoilt[..random.Next(spoilt.Length)];
            case 1:
                return [.. spoilt, .. Noise(random, random.Next(1, 70000))];
            case 2:
                return Noise(random, random.Next(3000));
            case 3:
                return [0x7F, .. "ELF"u8, 1, (byte)random.Next(3), 1, .. Noise(random, random.Next(200))];
            case 4:
                return [.. ":10"u8, .. spoilt];
            case 5:
                return [.. "S1"u8, .. spoilt];
            default:
                for (var i = random.Next(1, 20); i > 0; i--)
                {
                    spoilt[random.Next(spoilt.Length)] = (byte)random.Next(256);
                }

                return spoilt;
        }
    }

    private static byte[] Noise(Random random, int length)
    {
        var bytes = new byte[length];
        random.NextBytes(bytes);
        return bytes;
    }
}
