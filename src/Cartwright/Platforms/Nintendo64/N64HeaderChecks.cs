using System.Globalization;
using Cartwright.Findings;
using Cartwright.Headers;

namespace Cartwright.Platforms.Nintendo64;

/// <summary>The checks of the header's own fields.</summary>
/// <param name="cart">The finished ROM.</param>
/// <param name="chip">The chip the layout is for; null when its boot code reads no header.</param>
/// <param name="log">Receives what is wrong.</param>
internal sealed class N64HeaderChecks(CartView cart, BootChip? chip, FindingLog log)
{
    // Words of the extension are never written in hexadecimal, so a value that is has none.
    private const string RawMark = "0x";

    public void Run()
    {
        if (Entry("titleEnd") is { } end && end.Raw.AsSpan().ContainsAnyExcept((byte)0, (byte)' '))
        {
            Add(N64Findings.TitleRunsOn, "titleEnd", $"0x34-0x3A hold `{end.Text}`.");
        }

        foreach (var name in N64Header.Extension)
        {
            if (Entry(name) is { } entry && entry.Text.StartsWith(RawMark, StringComparison.Ordinal))
            {
                Add(N64Findings.ExtensionValue, name, $"`{name}` is {entry.Text}.");
            }
        }

        foreach (var name in (string[])["reserved38", "reserved3F"])
        {
            if (Entry(name) is { } entry && entry.Text.AsSpan().ContainsAnyExcept('0', 'x'))
            {
                Add(N64Findings.ExtensionValue, name, $"The reserved `{name}` is {entry.Text}.");
            }
        }

        CheckRegion();
    }

    private void CheckRegion()
    {
        var letter = Entry("destination")!.Raw[0];
        var variant = cart.Layout.Variant;
        var isNtscOnly = chip is not null && variant == chip.Ntsc;
        var isPalOnly = chip is not null && variant == chip.Pal;
        if ((isNtscOnly && N64Values.PalLetters.Contains(letter)) || (isPalOnly && N64Values.NtscLetters.Contains(letter)))
        {
            Add(N64Findings.ChipRegion, "destination", string.Create(CultureInfo.InvariantCulture,
                $"The {variant} is for {(isNtscOnly ? "NTSC" : "PAL")} consoles, and the destination is {cart["destination"]}."));
        }
    }

    private HeaderEntry? Entry(string name) => cart.Headers[0].Entries.FirstOrDefault(entry => entry.Field.Name == name);

    private void Add(FindingRule rule, string field, string message) => log.Add(rule, cart.Place("header:" + field), message);
}
