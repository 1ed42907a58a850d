using System.Collections.Immutable;

namespace Cartwright.Inspection;

/// <summary>How full one bank is.</summary>
/// <param name="Number">The bank, from 0.</param>
/// <param name="Offset">Its first byte in the region.</param>
/// <param name="Length">Bytes.</param>
/// <param name="Used">Bytes up to the end of what is no fill.</param>
public sealed record BankUse(int Number, int Offset, int Length, int Used)
{
    private const int Parts = 16;

    /// <summary>The banks of a region; sixteenths of it where the platform has no banks.</summary>
    /// <param name="region">Its bytes.</param>
    /// <param name="bankSize">Bytes of a bank; 0 for none.</param>
    public static ImmutableArray<BankUse> Of(ReadOnlySpan<byte> region, int bankSize)
    {
        var size = bankSize > 0 ? bankSize : Math.Max(1, (region.Length + Parts - 1) / Parts);
        var banks = ImmutableArray.CreateBuilder<BankUse>();
        for (var at = 0; at < region.Length; at += size)
        {
            var bank = region.Slice(at, Math.Min(size, region.Length - at));
            var used = bank[^1] is 0x00 or 0xFF ? bank.LastIndexOfAnyExcept(bank[^1]) + 1 : bank.Length;
            banks.Add(new BankUse(at / size, at, bank.Length, used));
        }

        return banks.ToImmutable();
    }
}
