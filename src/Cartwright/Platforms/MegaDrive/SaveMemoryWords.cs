using System.Globalization;
using Cartwright.Manifests;

namespace Cartwright.Platforms.MegaDrive;

/// <summary>Reads save memory as people state it: size, kind, lane and place, in any order.</summary>
internal sealed class SaveMemoryWords
{
    private long? _size;
    private SaveKind? _kind;
    private SaveLane? _lane;
    private long? _start;

    /// <summary>Reads the words.</summary>
    /// <param name="text">The words, such as <c>8KiB battery odd at $200001</c>.</param>
    /// <param name="memory">What they state; null when something is wrong.</param>
    /// <returns>What is wrong, as a clause; null when nothing is.</returns>
    public static string? Read(string text, out SaveMemory? memory)
    {
        var words = new SaveMemoryWords();
        memory = null;
        return words.Take(text) ?? words.Settle(out memory);
    }

    private string? Take(string text)
    {
        var words = text.Split([' ', ','], StringSplitOptions.RemoveEmptyEntries);
        for (var i = 0; i < words.Length; i++)
        {
            if (string.Equals(words[i], "at", StringComparison.OrdinalIgnoreCase))
            {
                i++;
                if (i >= words.Length || !Number.TryParse(words[i], out long start))
                {
                    return "an address such as `$200001` is missing behind `at`";
                }

                _start = start;
            }
            else if (!Take(words[i].ToLowerInvariant(), words[i]))
            {
                return $"`{words[i]}` is no word of it, or is said twice";
            }
        }

        return null;
    }

    private bool Take(string word, string written) => word switch
    {
        "battery" => Once(ref _kind, SaveKind.Battery),
        "volatile" => Once(ref _kind, SaveKind.Volatile),
        "eeprom" => Once(ref _kind, SaveKind.Eeprom),
        "flash" => Once(ref _kind, SaveKind.Flash),
        "odd" => Once(ref _lane, SaveLane.Odd),
        "even" => Once(ref _lane, SaveLane.Even),
        "word" => Once(ref _lane, SaveLane.Word),
        _ => ByteSize.TryParse(written, out var size) && Once(ref _size, size),
    };

    private static bool Once<T>(ref T? field, T value)
        where T : struct
    {
        var free = field is null;
        field ??= value;
        return free;
    }

    private string? Settle(out SaveMemory? memory)
    {
        memory = null;
        if (_kind is not { } kind)
        {
            return "one of `battery`, `volatile`, `eeprom` and `flash` is missing";
        }

        var ram = kind is SaveKind.Battery or SaveKind.Volatile;
        if (ram && _lane is null)
        {
            return "one of `odd`, `even` and `word` is missing: the bytes of the bus the chip is on";
        }

        if (!ram && _lane is not null)
        {
            return "a lane belongs to RAM only";
        }

        return kind == SaveKind.Eeprom ? SettleEeprom(out memory) : SettleRange(kind, _lane ?? SaveLane.Word, out memory);
    }

    // The block of an EEPROM names one address and no size.
    private string? SettleEeprom(out SaveMemory? memory)
    {
        var at = _start ?? (SaveMemory.UsualStart | 1);
        memory = at < SaveMemory.SpaceEnd ? new SaveMemory(SaveKind.Eeprom, SaveLane.Odd, (uint)at | 1, (uint)at | 1) : null;
        return _size is not null ? "the header has no place for an EEPROM's size" : memory is null ? Outside(at) : null;
    }

    private string? SettleRange(SaveKind kind, SaveLane lane, out SaveMemory? memory)
    {
        memory = null;
        if (_size is not { } size || size <= 0 || size > SaveMemory.SpaceEnd)
        {
            return "a size such as `8KiB` is missing, or is none that the cartridge has room for";
        }

        if (lane == SaveLane.Word && (size | (_start ?? 0)) % 2 != 0)
        {
            return "memory on both bytes of the bus begins at an even address and has an even size";
        }

        var first = _start ?? SaveMemory.UsualStart;
        if (first >= SaveMemory.SpaceEnd)
        {
            return Outside(first);
        }

        var start = SaveMemory.ForceOnto(lane, (uint)first);
        var end = start + (lane == SaveLane.Word ? size - 1 : (size - 1) * 2);
        if (end >= SaveMemory.SpaceEnd)
        {
            return Outside(end);
        }

        memory = new SaveMemory(kind, lane, start, (uint)end);
        return null;
    }

    private static string Outside(long address) =>
        string.Create(CultureInfo.InvariantCulture, $"it reaches ${address:X6}, and the cartridge's space ends at $3FFFFF");
}
