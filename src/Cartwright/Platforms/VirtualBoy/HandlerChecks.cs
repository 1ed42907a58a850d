using System.Buffers.Binary;
using System.Globalization;
using Cartwright.Findings;
using Cartwright.Roms;

namespace Cartwright.Platforms.VirtualBoy;

/// <summary>The checks of the handlers' code.</summary>
/// <param name="cart">The finished ROM.</param>
/// <param name="log">Receives what is wrong.</param>
internal sealed class HandlerChecks(CartView cart, FindingLog log)
{
    private const uint RomBits = 0x07000000;
    private const int PushLength = 6;

    private readonly RegionImage _region = cart.Rom[VirtualBoyHeader.Region]!;

    // A stub may save its register first: add -4, r3; st.w r1, 0[r3].
    private static ReadOnlySpan<byte> Push => [0x7C, 0x44, 0x23, 0xDC, 0x00, 0x00];

    private static ReadOnlySpan<byte> SwappedReturn => [0x64, 0x00];

    public void Run()
    {
        CheckReset(Code(Handler.Reset));
        foreach (var handler in Handler.Others)
        {
            CheckOther(handler, Code(handler));
        }
    }

    private void CheckReset(ReadOnlySpan<byte> code)
    {
        if (IsBlank(code))
        {
            Add(VirtualBoyFindings.NoReset, Handler.Reset, $"The last 16 bytes hold {code[0]:X2} throughout.");
        }
        else if (Target(Handler.Reset, code) is { } target)
        {
            CheckTarget(VirtualBoyFindings.ResetNowhere, Handler.Reset, target);
        }
        else if (IsAddress(code))
        {
            AddAddress(Handler.Reset, code);
        }
        else
        {
            Add(VirtualBoyFindings.OtherReset, Handler.Reset, $"The reset code is {Convert.ToHexString(code)}.");
        }
    }

    private void CheckOther(Handler handler, ReadOnlySpan<byte> code)
    {
        if (Target(handler, code) is { } target)
        {
            // Handlers in RAM are put there by the program.
            if (IsInRom(target))
            {
                CheckTarget(VirtualBoyFindings.HandlerNowhere, handler, target);
            }
        }
        else if (!IsBlank(code) && IsAddress(code))
        {
            AddAddress(handler, code);
        }
        else if (code.StartsWith(SwappedReturn) && !code[2..].ContainsAnyExcept((byte)0))
        {
            Add(VirtualBoyFindings.SwappedReturn, handler, $"The code of `{handler.Name}` is {Convert.ToHexString(code)}.");
        }
    }

    private void CheckTarget(FindingRule rule, Handler handler, uint target)
    {
        if (!IsProgram(target))
        {
            Add(rule, handler, $"The code of `{handler.Name}` jumps to {Describe(target)}.");
        }
    }

    // The address code goes to; null when it is no plain jump. A relative jump counts from its own place, which repeats with the ROM.
    private static uint? Target(Handler handler, ReadOnlySpan<byte> code) =>
        V810Jump.StubTarget(code) ?? (code.StartsWith(Push) ? V810Jump.StubTarget(code[PushLength..]) : null)
        ?? (V810Jump.RelativeDistance(code) is { } distance ? (uint)(distance - handler.FromEnd) : null);

    private bool IsProgram(uint target) =>
        target % 2 == 0 && IsInRom(target) && _region.CoveringSegment(target % (uint)_region.Length, 2) is not null;

    private static bool IsInRom(uint target) => (target & RomBits) == RomBits;

    private string Describe(uint target) =>
        target % 2 != 0 ? string.Create(CultureInfo.InvariantCulture, $"${target:X8}, an odd address")
        : !IsInRom(target) ? string.Create(CultureInfo.InvariantCulture, $"${target:X8}, which is not in the ROM")
        : string.Create(CultureInfo.InvariantCulture, $"${target:X8}, 0x{target % (uint)_region.Length:X6} of the ROM, and no program is there");

    private bool IsBlank(ReadOnlySpan<byte> code) => Blank.Is(code, _region.Fill) || Blank.Is(code);

    // Four bytes that are an address in the ROM, in whatever order, and nothing behind them.
    private bool IsAddress(ReadOnlySpan<byte> code) =>
        IsBlank(code[4..]) && (IsRomAddress(BinaryPrimitives.ReadUInt32LittleEndian(code)) || IsRomAddress(BinaryPrimitives.ReadUInt32BigEndian(code)));

    private static bool IsRomAddress(uint value) => value >> 24 is 0x07 or 0xFF && value % 2 == 0;

    private void AddAddress(Handler handler, ReadOnlySpan<byte> code) =>
        Add(VirtualBoyFindings.AddressForCode, handler, $"The slot `{handler.Name}` holds {Convert.ToHexString(code[..4])} and nothing behind it, which is an address and no code.");

    private ReadOnlySpan<byte> Code(Handler handler) => _region.Bytes.Span[^handler.FromEnd..][..HandlerCodec.Length];

    private void Add(FindingRule rule, Handler handler, string message) => log.Add(rule, cart.Place("header:" + handler.Name), message);
}
