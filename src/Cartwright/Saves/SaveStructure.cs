using System.Buffers.Binary;
using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Manifests;

namespace Cartwright.Saves;

/// <summary>Checks a save against what its game's manifest says of its structure.</summary>
/// <param name="settings">What the manifest says.</param>
public sealed class SaveStructure(SaveSettings settings)
{
    /// <summary>Checks a save.</summary>
    /// <param name="bytes">The save, in the order the game sees it.</param>
    /// <param name="place">The file.</param>
    /// <param name="log">Receives what is wrong.</param>
    /// <returns>The save where something of it as a whole is described, and its slots.</returns>
    public ImmutableArray<SavePart> Check(ReadOnlySpan<byte> bytes, SourcePlace place, FindingLog log)
    {
        if (settings.SaysNothing)
        {
            log.Add(StructureFindings.NotDescribed, place, "The manifest says nothing of the save's structure.");
            return [];
        }

        if (IsNew(bytes))
        {
            log.Add(StructureFindings.New, place, $"All {ByteSize.Words(bytes.Length)} are alike.");
            return [new SavePart("save", 0, bytes.Length, SavePartState.New, null, null)];
        }

        var parts = ImmutableArray.CreateBuilder<SavePart>();
        if (!settings.Whole.SaysNothing)
        {
            parts.Add(CheckPart("save", bytes, 0, bytes.Length, settings.Whole, null, place, log));
        }

        if (settings.Slots is { } slots)
        {
            CheckSlots(bytes, slots, parts, place, log);
        }

        return parts.ToImmutable();
    }

    /// <summary>The slot written last; null when no whole slot has a sequence number.</summary>
    /// <param name="parts">What was found.</param>
    public static SavePart? Newest(ImmutableArray<SavePart> parts) =>
        parts.Where(static part => part is { State: SavePartState.Whole, Sequence: not null }).MaxBy(static part => part.Sequence);

    private static void CheckSlots(ReadOnlySpan<byte> bytes, SaveSlots slots, ImmutableArray<SavePart>.Builder parts, SourcePlace place, FindingLog log)
    {
        var before = parts.Count;
        for (var slot = 0; slot < slots.Count; slot++)
        {
            parts.Add(CheckPart(FormattableString.Invariant($"slot {slot}"), bytes, slots.Offset + (slot * slots.Size), slots.Size, slots.Block, slots.Sequence, place, log));
        }

        var found = parts.Skip(before).ToList();
        if (!found.Exists(static part => part.State == SavePartState.Whole) && !found.TrueForAll(static part => part.State == SavePartState.New))
        {
            log.Add(StructureFindings.NoWholeSlot, place, $"None of the {slots.Count} slots is whole.");
        }
    }

    private static SavePart CheckPart(string name, ReadOnlySpan<byte> bytes, long offset, long size, SaveBlock block, SaveNumber? sequence, SourcePlace file, FindingLog log)
    {
        var place = file with { Offset = offset };
        if (offset + size > bytes.Length)
        {
            log.Add(StructureFindings.Outside, place, $"{Subject(name)} would lie at {Number.Hex(offset, 6)} to {Number.Hex(offset + size - 1, 6)}, and the save ends at {Number.Hex(bytes.Length, 6)}.");
            return new SavePart(name, offset, size, SavePartState.Outside, null, null);
        }

        var part = bytes.Slice((int)offset, (int)size);
        var version = block.Version is { } number ? Value(part, number) : null;
        return new SavePart(name, offset, size, State(name, part, block, sequence, version, place, log), version, sequence is null ? null : Value(part, sequence));
    }

    private static SavePartState State(string name, ReadOnlySpan<byte> part, SaveBlock block, SaveNumber? sequence, uint? version, SourcePlace place, FindingLog log)
    {
        if (IsNew(part))
        {
            return SavePartState.New;
        }

        if (Ends(block, sequence).Max() > part.Length)
        {
            log.Add(StructureFindings.Outside, place, $"A value of the {name} would lie behind its end at {ByteSize.Describe(part.Length)}.");
            return SavePartState.Outside;
        }

        if (block.Signature is { } signature && !part[(int)signature.Offset..].StartsWith(signature.Bytes.AsSpan()))
        {
            log.Add(StructureFindings.NoSignature, place with { Offset = place.Offset + signature.Offset },
                $"{Subject(name)} has no signature.", $"the bytes {Convert.ToHexString(signature.Bytes.AsSpan())} at {ByteSize.Describe(signature.Offset)} of it");
            return SavePartState.NoSignature;
        }

        if (block.Check is { } check && Stored(part, check) != Computed(part, check))
        {
            var digits = 2 * check.Value.Width;
            log.Add(StructureFindings.HalfWritten, place with { Offset = place.Offset + check.Value.Offset },
                $"{Subject(name)} is half written or damaged: its {ManifestWords.Word(check.Kind)} is {Number.Hex(Stored(part, check), digits)}, and its bytes give {Number.Hex(Computed(part, check), digits)}.{Blank(part)}");
            return SavePartState.HalfWritten;
        }

        if (version > block.HighestVersion)
        {
            log.Add(StructureFindings.UnknownVersion, place with { Offset = place.Offset + block.Version!.Offset }, $"{Subject(name)} is of version {version}.", $"at most {block.HighestVersion}");
            return SavePartState.UnknownVersion;
        }

        return SavePartState.Whole;
    }

    private static IEnumerable<long> Ends(SaveBlock block, SaveNumber? sequence) =>
    [
        block.Signature is { } signature ? signature.Offset + signature.Bytes.Length : 0,
        End(block.Version), End(sequence), End(block.Check?.Value),
        block.Check is { } check ? check.Start + (check.Length ?? 0) : 0,
    ];

    private static long End(SaveNumber? number) => number is null ? 0 : number.Offset + number.Width;

    private static bool IsNew(ReadOnlySpan<byte> bytes) => !bytes.ContainsAnyExcept((byte)0xFF) || !bytes.ContainsAnyExcept((byte)0x00);

    private static uint Stored(ReadOnlySpan<byte> part, SaveCheckValue check) => Value(part, check.Value)!.Value;

    private static uint Computed(ReadOnlySpan<byte> part, SaveCheckValue check)
    {
        var covered = part.ToArray();
        covered.AsSpan((int)check.Value.Offset, check.Value.Width).Clear();
        var range = covered.AsSpan((int)check.Start);
        return SaveCheckSum.Of(check.Kind, check.Length is { } length ? range[..(int)length] : range);
    }

    private static uint? Value(ReadOnlySpan<byte> part, SaveNumber number)
    {
        if (number.Offset + number.Width > part.Length)
        {
            return null;
        }

        var bytes = part.Slice((int)number.Offset, number.Width);
        return (number.Width, number.LowByteFirst) switch
        {
            (1, _) => bytes[0],
            (2, true) => BinaryPrimitives.ReadUInt16LittleEndian(bytes),
            (2, false) => BinaryPrimitives.ReadUInt16BigEndian(bytes),
            (_, true) => BinaryPrimitives.ReadUInt32LittleEndian(bytes),
            (_, false) => BinaryPrimitives.ReadUInt32BigEndian(bytes),
        };
    }

    // Where writing stopped, the rest is often as it was when the memory was new.
    private static string Blank(ReadOnlySpan<byte> part)
    {
        var written = part.LastIndexOfAnyExcept(part[^1]) + 1;
        return part[^1] is 0xFF or 0x00 && part.Length - written > part.Length / 8
            ? $" From {ByteSize.Describe(written)} of it on there is nothing but 0x{part[^1]:X2}."
            : "";
    }

    // Slots go by their numbers, the whole save has none.
    private static string Subject(string name) => name.StartsWith("slot", StringComparison.Ordinal) ? "S" + name[1..] : "The " + name;
}
