using System.Collections.Immutable;
using System.Globalization;
using System.Numerics;
using Cartwright.Findings;
using Cartwright.Roms;

namespace Cartwright.Platforms.VirtualBoy;

/// <summary>The checks of a Virtual Boy ROM that need more than one field.</summary>
/// <param name="cart">The finished ROM.</param>
/// <param name="log">Receives what is wrong.</param>
internal sealed class VirtualBoyChecks(CartView cart, FindingLog log)
{
    private static readonly ImmutableArray<string> Naming = ["title", "makerCode", "gameCode"];

    /// <summary>Checks the programs of a cart whose size is not known yet: one that ends with header and handlers must end at a power of two.</summary>
    public static void CheckPrograms(ImmutableArray<PlacedSegment> segments, FindingLog log)
    {
        if (segments.FirstOrDefault(static segment => segment.Offset >= 0 && !BitOperations.IsPow2(segment.End) && Tail(segment) is not null) is { } segment)
        {
            AddTail(segment, "that is no power of two", log);
        }
    }

    public void Run()
    {
        if (!FindTail())
        {
            new HandlerChecks(cart, log).Run();
            CheckFields();
        }
    }

    // Where header and handlers lie elsewhere, what is at the end is not worth a word.
    private bool FindTail()
    {
        var region = cart.Rom[VirtualBoyHeader.Region]!;
        if (region.Coverage.FirstOrDefault(segment => segment.End != region.Length && Tail(segment) is not null) is not { } found)
        {
            return false;
        }

        AddTail(found, string.Create(CultureInfo.InvariantCulture, $"the ROM ends at 0x{region.Length:X6}"), log);
        return true;
    }

    private static RecognitionClaim? Tail(PlacedSegment segment) =>
        segment.Length < VirtualBoyHeader.Length ? null : VirtualBoyRecognition.Claim(segment.Bytes.Span[^VirtualBoyHeader.Length..]);

    private static void AddTail(PlacedSegment segment, string why, FindingLog log) =>
        log.Add(VirtualBoyFindings.TailBeforeEnd, segment.Place, string.Create(CultureInfo.InvariantCulture,
            $"{segment.Program} ends at 0x{segment.End:X6} with {Tail(segment)!.Reason}, and {why}; its last 544 bytes begin at 0x{segment.Length - VirtualBoyHeader.Length:X6} of the file."));

    private void CheckFields()
    {
        var rom = cart.Bytes(VirtualBoyHeader.Region);
        if (IsHeader(rom) && rom.Length > VirtualBoyHeader.Length)
        {
            log.Add(VirtualBoyFindings.HeaderAtStart, cart.Place("programs"), $"The first 20 bytes are the text `{System.Text.Encoding.Latin1.GetString(rom[..VirtualBoyHeader.TitleLength]).TrimEnd('\0', ' ')}`, and letters follow where a header has them.");
        }

        var header = rom[^VirtualBoyHeader.Length..];
        if (header.Slice(VirtualBoyHeader.TitleLength, VirtualBoyHeader.ReservedLength).ContainsAnyExcept((byte)0))
        {
            log.Add(VirtualBoyFindings.ReservedUsed, cart.Place("header:reserved"), $"The five bytes behind the title hold {cart["reserved"]}.");
        }

        string[] empty = [.. Naming.Where(name => cart[name]!.Trim().Length == 0)];
        if (empty.Length > 0)
        {
            log.Add(VirtualBoyFindings.Unnamed, cart.Place("header:" + empty[0]), $"Nothing is in {string.Join(", ", empty.Select(static name => $"`{name}`"))}.");
        }
    }

    private static bool IsHeader(ReadOnlySpan<byte> start) =>
        !start[..VirtualBoyHeader.TitleLength].TrimEnd((byte)0).ContainsAnyExceptInRange((byte)0x20, (byte)0x7E) && start[0] > 0x20
        && !start.Slice(VirtualBoyHeader.TitleLength, VirtualBoyHeader.ReservedLength).ContainsAnyExcept((byte)0)
        && !start.Slice(0x19, 6).ContainsAnyExceptInRange((byte)0x21, (byte)0x7E);
}
