using System.Collections.Immutable;

namespace Cartwright.Patching;

/// <summary>The default code table. Source: RFC 3284, section 5.6.</summary>
internal static class VcdiffCodeTable
{
    private const byte Modes = 9;
    private const byte FirstSameMode = 6;

    /// <summary>Two steps a code, in order of code.</summary>
    public static ImmutableArray<VcdiffStep> Steps { get; } = Build();

    private static ImmutableArray<VcdiffStep> Build()
    {
        var steps = ImmutableArray.CreateBuilder<VcdiffStep>(512);
        Put(steps, new VcdiffStep(VcdiffKind.Run));
        for (byte size = 0; size <= 17; size++) Put(steps, Add(size));
        for (byte mode = 0; mode < Modes; mode++)
        {
            Put(steps, Copy(0, mode));
            for (byte size = 4; size <= 18; size++) Put(steps, Copy(size, mode));
        }

        for (byte mode = 0; mode < Modes; mode++)
        {
            var largest = mode < FirstSameMode ? 6 : 4;
            for (byte added = 1; added <= 4; added++)
            {
                for (byte copied = 4; copied <= largest; copied++) Put(steps, Add(added), Copy(copied, mode));
            }
        }

        for (byte mode = 0; mode < Modes; mode++) Put(steps, Copy(4, mode), Add(1));
        return steps.MoveToImmutable();
    }

    private static VcdiffStep Add(byte size) => new(VcdiffKind.Add, size);

    private static VcdiffStep Copy(byte size, byte mode) => new(VcdiffKind.Copy, size, mode);

    private static void Put(ImmutableArray<VcdiffStep>.Builder steps, VcdiffStep first, VcdiffStep second = default)
    {
        steps.Add(first);
        steps.Add(second);
    }
}
