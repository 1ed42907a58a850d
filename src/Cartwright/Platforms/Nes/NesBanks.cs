using System.Buffers.Binary;
using System.Globalization;

namespace Cartwright.Platforms.Nes;

/// <summary>What stands at the end of PRG banks, where the CPU's vectors are.</summary>
internal static class NesBanks
{
    /// <summary>The vector of non-maskable interrupts.</summary>
    public static int Nmi(ReadOnlySpan<byte> bank) => BinaryPrimitives.ReadUInt16LittleEndian(bank[^6..]);

    /// <summary>The start address.</summary>
    public static int Reset(ReadOnlySpan<byte> bank) => BinaryPrimitives.ReadUInt16LittleEndian(bank[^4..]);

    /// <summary>The vector of interrupts and BRK.</summary>
    public static int Irq(ReadOnlySpan<byte> bank) => BinaryPrimitives.ReadUInt16LittleEndian(bank[^2..]);

    /// <summary>Why a bank cannot start the console, as a clause that follows its name; null when it can.</summary>
    /// <param name="bank">The bank's bytes, six or more.</param>
    public static string? Fault(ReadOnlySpan<byte> bank)
    {
        var reset = Reset(bank);
        return !bank.ContainsAnyExcept(bank[0]) ? string.Create(CultureInfo.InvariantCulture, $"holds nothing but 0x{bank[0]:X2}")
            : reset > 0xFFF9 ? string.Create(CultureInfo.InvariantCulture, $"has ${reset:X4} as its RESET vector, which is no place for code")
            : reset < 0x8000 ? string.Create(CultureInfo.InvariantCulture, $"has ${reset:X4} as its RESET vector, below $8000")
            : null;
    }

    /// <summary>The faults of all banks of a length, neighbours with the same fault told together: "banks 00-02 hold …".</summary>
    /// <param name="prg">All of PRG.</param>
    /// <param name="length">Bytes of a bank.</param>
    /// <param name="faulty">Number of banks with a fault.</param>
    public static string Faults(ReadOnlySpan<byte> prg, int length, out int faulty)
    {
        var told = new List<string>();
        faulty = 0;
        var count = prg.Length / length;
        for (var bank = 0; bank < count;)
        {
            var first = bank;
            var fault = Fault(prg.Slice(bank * length, length));
            do
            {
                bank++;
            }
            while (bank < count && Fault(prg.Slice(bank * length, length)) == fault);

            if (fault is not null)
            {
                faulty += bank - first;
                told.Add($"{Name(first, bank - 1, length)} {fault}");
            }
        }

        return string.Join("; ", told);
    }

    /// <summary>The first of the banks that could start the console; null when none could.</summary>
    /// <param name="prg">All of PRG.</param>
    /// <param name="length">Bytes of a bank.</param>
    public static string? FirstThatStarts(ReadOnlySpan<byte> prg, int length)
    {
        for (var bank = 0; bank < prg.Length / length; bank++)
        {
            if (Fault(prg.Slice(bank * length, length)) is null)
            {
                return Name(bank, bank, length);
            }
        }

        return null;
    }

    private static string Name(int first, int last, int length) => string.Create(CultureInfo.InvariantCulture,
        $"{(first == last ? $"bank {first:X2}" : $"each of the banks {first:X2}-{last:X2}")} (0x{first * length:X6}-0x{((last + 1) * length) - 1:X6})");
}
