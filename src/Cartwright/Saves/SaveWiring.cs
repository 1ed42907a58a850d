using System.Globalization;
using System.Numerics;
using Cartwright.Ordering;

namespace Cartwright.Saves;

/// <summary>
/// Lines of a board that meet other lines of its save memory. In the cartridge nobody sees it; on a board with other lines the same chip
/// contents look like noise.
/// </summary>
/// <param name="Address">For each address line of the bus, from the lowest, the chip's; null where they run straight.</param>
/// <param name="Data">For each data line of the bus, from the lowest, the chip's: 8 or 16; null where they run straight.</param>
public sealed record SaveWiring(LineOrder? Address, LineOrder? Data)
{
    private const int Byte = 8;
    private const int Word = 16;

    /// <summary>How lines are written.</summary>
    public const string Words = "the chip's line for each line of the bus from the lowest, each once, as 0,2,1";

    /// <summary>Bytes that are addressed together.</summary>
    public int WordBytes => Data?.Count == Word ? sizeof(ushort) : 1;

    /// <summary>Reads lines; null where they are no order.</summary>
    /// <param name="text">Numbers with commas or blanks between.</param>
    public static LineOrder? Lines(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var lines = text.Split([',', ' '], StringSplitOptions.RemoveEmptyEntries)
            .Select(static word => int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out var line) ? line : -1)
            .ToArray();
        return lines.Length > 0 && LineOrder.IsOrder(lines) ? new LineOrder(lines) : null;
    }

    /// <summary>Why these lines cannot belong to a memory; null where they can.</summary>
    /// <param name="size">Bytes of the memory.</param>
    public string? Misfit(long size) => this switch
    {
        { Data.Count: not (Byte or Word) } => string.Create(CultureInfo.InvariantCulture, $"There are {Data.Count} data lines."),
        _ when size % WordBytes != 0 => $"{size} bytes are no whole words of 16 bits.",
        { Address.Count: var lines } when !BitOperations.IsPow2(size / WordBytes) || BitOperations.Log2((ulong)(size / WordBytes)) != lines =>
            string.Create(CultureInfo.InvariantCulture, $"{lines} address lines reach {1L << lines} words of {WordBytes * Byte} bits, and the memory has {size / WordBytes}."),
        _ => null,
    };

    /// <summary>What the chip holds so that the console sees the memory.</summary>
    /// <param name="memory">The memory as the console sees it.</param>
    public byte[] ToChip(ReadOnlySpan<byte> memory) => Apply(memory, Address, Data);

    /// <summary>What the console sees of a chip's contents.</summary>
    /// <param name="chip">The chip's bytes.</param>
    public byte[] ToConsole(ReadOnlySpan<byte> chip) => Apply(chip, Address?.Inverse(), Data?.Inverse());

    private byte[] Apply(ReadOnlySpan<byte> from, LineOrder? address, LineOrder? data)
    {
        var to = from.ToArray();
        if (address is not null)
            new AddressLineMap(address).Apply(from, WordBytes, to);

        if (data is not null)
            new DataLineMap(data).Apply(to, lowByteFirst: false);

        return to;
    }
}
