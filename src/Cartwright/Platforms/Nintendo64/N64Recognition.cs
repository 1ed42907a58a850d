using System.Collections.Immutable;
using Cartwright.Ordering;

namespace Cartwright.Platforms.Nintendo64;

/// <summary>Knows a Nintendo 64 image by its bytes, in any of four orders.</summary>
/// <param name="chips">The lock chips there are.</param>
internal sealed class N64Recognition(ImmutableArray<BootChip> chips)
{
    // The customary first word, as each order shows it.
    private const int FirstWord = 4;

    private static readonly ImmutableArray<ImageOrder> Orders = [ImageOrder.Console, ImageOrder.ByteSwapped, ImageOrder.WordSwapped, ImageOrder.HalfwordSwapped];

    private static ReadOnlySpan<byte> Customary => [0x80, 0x37, 0x12, 0x40];

    public RecognitionClaim? Recognise(ReadOnlySpan<byte> file)
    {
        if (file.Length < BootCode.End || Order(file) is not { } order)
        {
            return null;
        }

        var code = BootCode.Identify(Reordered(file[..BootCode.End], order).AsSpan(BootCode.Start), chips);
        var reason = code is null ? "the customary first word of a header"
            : code.IsStock ? $"the stock boot code of the {code.Chip.Name}"
            : $"an open boot code that starts with the {code.Chip.Name}";
        return new RecognitionClaim(Certainty.Exact, reason + (order == ImageOrder.Console ? "" : ", once the bytes are in the console's order"))
        {
            Order = order,
            Variant = code is null ? N64Layouts.None : code.IsStock ? code.Chip.Name : N64Layouts.Open,
        };
    }

    public ImageOrder OrderOf(ReadOnlySpan<byte> program) =>
        (program.Length >= BootCode.End ? Order(program) : program.Length == BootCode.Length ? OrderOfBootCode(program) : null) ?? ImageOrder.Console;

    private ImageOrder? Order(ReadOnlySpan<byte> file)
    {
        foreach (var order in Orders)
        {
            if (Reordered(file[..FirstWord], order).AsSpan().SequenceEqual(Customary))
            {
                return order;
            }
        }

        foreach (var order in Orders)
        {
            // The entry address lies in RAM, which spares most files the longer check.
            var head = Reordered(file[..BootCode.End], order);
            if (head[N64Header.EntryAt] is 0x80 or 0xA0 && BootCode.Identify(head.AsSpan(BootCode.Start), chips) is not null)
            {
                return order;
            }
        }

        return null;
    }

    private ImageOrder? OrderOfBootCode(ReadOnlySpan<byte> code)
    {
        foreach (var order in Orders)
        {
            if (BootCode.Identify(Reordered(code, order), chips) is not null)
            {
                return order;
            }
        }

        return null;
    }

    private static byte[] Reordered(ReadOnlySpan<byte> bytes, ImageOrder order)
    {
        var console = new byte[bytes.Length];
        ImageOrders.ToConsole(order, bytes, console);
        return console;
    }
}
