using System.Collections.Immutable;
using Cartwright.Headers;

namespace Cartwright.Platforms.MegaDrive;

/// <summary>The devices a game reads: one letter a device, in any order; the order is kept.</summary>
internal sealed class DeviceListCodec : WordedTextCodec
{
    /// <summary>The letters and their names, a first. J 0 K R P T B V F C: ROM Cartridge Data; 6 4 L M: common practice; A G D: from memory.</summary>
    public static ImmutableArray<NamedValue> Devices { get; } =
    [
        new('J', "3-button-pad"), new('6', "6-button-pad"), new('0', "master-system-pad"), new('A', "analog-stick"),
        new('4', "multitap"), new('G', "light-gun"), new('L', "body-sensor"), new('M', "mouse"), new('B', "trackball"),
        new('T', "tablet"), new('V', "paddle"), new('K', "keyboard"), new('R', "rs-232"), new('P', "printer"),
        new('C', "cd-rom"), new('F', "floppy-drive"), new('D', "download"),
    ];

    /// <inheritdoc/>
    public override string Expected =>
        $"a list such as `3-button-pad, 6-button-pad`, or its letters such as `J6`; the devices are {string.Join(", ", Devices.Select(static row => $"{row.Name} ({(char)row.Value})"))}";

    /// <inheritdoc/>
    protected override string? Words(ReadOnlySpan<byte> field)
    {
        var names = new List<string>();
        foreach (var letter in field.TrimEnd((byte)' '))
        {
            if (Device(letter) is not { } device)
            {
                return null;
            }

            names.Add(device.Name);
        }

        return string.Join(", ", names);
    }

    /// <inheritdoc/>
    protected override string? WriteWords(string text, Span<byte> field)
    {
        if (text.AsSpan().IndexOfAnyExcept(KnownLetters) < 0)
        {
            return Letters.Write(text, field);
        }

        var letters = "";
        foreach (var word in text.Split([',', ' '], StringSplitOptions.RemoveEmptyEntries))
        {
            if (Devices.FirstOrDefault(row => string.Equals(row.Name, word, StringComparison.OrdinalIgnoreCase)) is not { } device)
            {
                return $"`{word}` is no device";
            }

            letters += (char)device.Value;
        }

        return Letters.Write(letters, field) is null ? null : $"the field holds {field.Length} devices, and the list has {letters.Length}";
    }

    private static NamedValue? Device(byte letter) => Devices.FirstOrDefault(row => row.Value == letter);

    private static readonly System.Buffers.SearchValues<char> KnownLetters =
        System.Buffers.SearchValues.Create([' ', .. Devices.Select(static row => (char)row.Value)]);
}
