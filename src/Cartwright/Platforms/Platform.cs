using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Ordering;
using Cartwright.Roms;

namespace Cartwright.Platforms;

/// <summary>A console or computer with a cartridge slot: its tables, and the checks that need more than one field.</summary>
public abstract class Platform
{
    /// <summary>What its page says.</summary>
    public abstract PlatformFacts Facts { get; }

    /// <summary>What its own checks may have to say, in order of code.</summary>
    public virtual ImmutableArray<FindingRule> Findings => [];

    /// <summary>The settings that choose the layout; empty for most.</summary>
    public virtual ImmutableArray<PlatformOption> Options => [];

    /// <summary>One layout for every combination of options that differs, for documents, schema and tests.</summary>
    public abstract ImmutableArray<PlatformLayout> Layouts { get; }

    /// <summary>Settles the options.</summary>
    /// <param name="settings">The manifest's <c>header</c>. Values that are no words of an option have been reported already: take the default.</param>
    public abstract PlatformLayout Layout(HeaderSettings settings);

    /// <summary>Settles what only the programs' bytes decide; the layout as it is, for most.</summary>
    /// <param name="layout">The layout for the settings.</param>
    /// <param name="segments">The programs' bytes at their places.</param>
    public virtual PlatformLayout Settle(PlatformLayout layout, ImmutableArray<PlacedSegment> segments) => layout;

    /// <summary>Ending of the exchange file, without the dot.</summary>
    /// <param name="cart">The finished ROM.</param>
    public abstract string Extension(CartView cart);

    /// <summary>Checks of the programs before regions are made of them, such as a container header left in front: it would push the region past every size.</summary>
    /// <param name="segments">The programs' bytes at their places.</param>
    /// <param name="log">Receives what is wrong.</param>
    public virtual void CheckPrograms(ImmutableArray<PlacedSegment> segments, FindingLog log)
    {
    }

    /// <summary>Checks that need more than one field: vectors, traps the bytes can show.</summary>
    /// <param name="cart">The finished ROM.</param>
    /// <param name="log">Receives what is wrong.</param>
    public virtual void Check(CartView cart, FindingLog log)
    {
    }

    /// <summary>Bytes of the save memory that a cart's header declares.</summary>
    /// <param name="cart">The finished ROM.</param>
    /// <returns>Null where the header declares none, or does not say how large it is.</returns>
    public virtual long? SaveSize(CartView cart) => SizeIn(cart["saveRam"]);

    /// <summary>The size a header field's text ends in, such as <c>8KiB</c> or <c>eeprom-2KiB</c>; null where there is none.</summary>
    /// <param name="text">The field's text.</param>
    protected static long? SizeIn(string? text) =>
        text is not null && ByteSize.TryParse(text[(text.LastIndexOf('-') + 1)..], out var size) && size > 0 ? size : null;

    /// <summary>The ROM in the platform's customary exchange form, as parts of one file: containers, then the regions, unless the platform says otherwise.</summary>
    /// <param name="cart">The finished ROM.</param>
    public virtual ImmutableArray<ReadOnlyMemory<byte>> Exchange(CartView cart) =>
    [
        .. cart.Headers.Where(static header => !header.Container.IsEmpty).Select(static header => (ReadOnlyMemory<byte>)header.Container.AsMemory()),
        .. cart.Rom.Regions.Select(static region => region.Bytes),
    ];

    /// <summary>The order a raw program is in, where the platform's programs are found in several and the bytes show which.</summary>
    /// <param name="program">The program's bytes.</param>
    public virtual ImageOrder OrderOf(ReadOnlySpan<byte> program) => ImageOrder.Console;

    /// <summary>Whether a file may be an image of this platform.</summary>
    /// <param name="file">The whole file; of any length, down to none.</param>
    /// <returns>Null when nothing speaks for it.</returns>
    public virtual RecognitionClaim? Recognise(ReadOnlySpan<byte> file) => null;

    /// <summary>Checks of an exchange file that its regions and headers no longer show, such as bytes that no size in a container covers.</summary>
    /// <param name="file">The whole file.</param>
    /// <param name="place">Where it is.</param>
    /// <param name="log">Receives what is wrong.</param>
    public virtual void CheckFile(ReadOnlySpan<byte> file, SourcePlace place, FindingLog log)
    {
    }

    /// <summary>Where containers and regions lie in an exchange file: the way back from <see cref="Exchange"/>.</summary>
    /// <param name="file">The whole file.</param>
    /// <param name="claim">What <see cref="Recognise"/> says of it.</param>
    /// <param name="layout">The layout the claim leads to.</param>
    /// <returns>The containers first, in the order of the layout's headers; what no part covers belongs to no cart.</returns>
    public virtual ImmutableArray<ImagePart> Parts(ReadOnlySpan<byte> file, RecognitionClaim claim, PlatformLayout layout)
    {
        var lengths = layout.Headers.Where(static header => header.Region is null).Select(static header => header.Length).ToList();
        var start = claim.PrefixLength;
        var at = start - lengths.Sum();
        var parts = ImmutableArray.CreateBuilder<ImagePart>();
        foreach (var length in at < 0 ? [] : lengths)
        {
            parts.Add(new ImagePart(null, 0, at, length));
            at += length;
        }

        parts.Add(new ImagePart(layout.Regions[0].Name, 0, start, file.Length - start));
        return parts.ToImmutable();
    }

    /// <summary>The word of the option of a name; null when there is no such option.</summary>
    /// <param name="settings">The manifest's <c>header</c>.</param>
    /// <param name="name">The option's name.</param>
    public string? Word(HeaderSettings settings, string name) =>
        Options.FirstOrDefault(option => string.Equals(option.Name, name, StringComparison.OrdinalIgnoreCase)) is { } option ? Word(settings, option) : null;

    /// <summary>The word an option has in the settings, or its default.</summary>
    /// <param name="settings">The manifest's <c>header</c>.</param>
    /// <param name="option">The option.</param>
    protected static string Word(HeaderSettings settings, PlatformOption option) =>
        option.Values.FirstOrDefault(value => string.Equals(value.Name, settings[option.Name]?.Text, StringComparison.OrdinalIgnoreCase))?.Name ?? option.Default;
}
