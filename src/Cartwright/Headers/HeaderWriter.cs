using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Headers;

/// <summary>Writes one header table into its region, or into a container.</summary>
/// <param name="settings">What the manifest states and keeps.</param>
/// <param name="context">What is known of the cart; receives each field as it is settled.</param>
/// <param name="place">Where the manifest's <c>header</c> stands, for fields it does not have.</param>
/// <param name="log">Receives what is wrong.</param>
public sealed class HeaderWriter(HeaderSettings settings, HeaderContext context, SourcePlace place, FindingLog log)
{
    /// <summary>Writes the fields and then the checksums.</summary>
    /// <param name="table">The table.</param>
    /// <param name="region">Its region; null for a container.</param>
    /// <returns>Null when the region has no room for the header.</returns>
    public HeaderImage? Write(HeaderTable table, RegionImage? region)
    {
        var start = table.Anchor.In(region?.Length ?? table.Length);
        if (region is not null && (start < 0 || start + table.Length > region.Length))
        {
            log.Add(HeaderFindings.NoRoom, place, $"The {table.Title} needs a region of {ByteSize.Describe(table.Anchor.Needs(table.Length))} or more, and the region `{region.Name}` has {ByteSize.Describe(region.Length)}.");
            return null;
        }

        context.SetAll(settings);

        var target = region is null ? new byte[table.Length] : region.Writable.Slice(start, table.Length);
        var before = target.ToArray();
        context.Hold(Covered(region, start, before));
        var entries = ImmutableArray.CreateBuilder<HeaderEntry>();
        foreach (var field in table.Fields)
        {
            if (field.When?.Invoke(context) != false)
            {
                var bytes = target.Slice(field.Offset, field.Length);
                var origin = Settle(field, region, start, bytes, before.AsSpan(field.Offset, field.Length));
                var entry = new HeaderEntry(field, start + field.Offset, [.. bytes], field.Codec.Read(bytes), origin);
                context.Set(field.Name, entry.Text);
                entries.Add(entry);
            }
        }

        TellAbsent(table, entries);
        // Fields may share a byte, so each shows its bytes as they stand in the end.
        for (var i = 0; i < entries.Count; i++)
        {
            entries[i] = entries[i] with { Raw = [.. target.Slice(entries[i].Offset - start, entries[i].Field.Length)] };
        }

        var checksums = region is null ? WriteChecksums(table, target) : WriteChecksums(table, region, start, before);
        return new HeaderImage(table, entries.ToImmutable(), checksums, region is null ? [.. target] : []);
    }

    // Rows of one name may stand for each other, so that the name counts and not the row.
    private void TellAbsent(HeaderTable table, ImmutableArray<HeaderEntry>.Builder entries)
    {
        foreach (var name in table.Fields.Where(static field => field.When is not null).Select(static field => field.Name).Distinct())
        {
            if (settings[name] is { } stated && !entries.Any(entry => entry.Field.Name == name))
            {
                log.Add(HeaderFindings.NotHere, stated.Place, $"With the other values of this header there is no field `{name}`.");
            }
        }
    }

    // What the program itself holds in a field; empty when no program covers it or what it holds says nothing.
    private static ReadOnlySpan<byte> Held(RegionImage? region, int start, int offset, ReadOnlySpan<byte> bytes, FieldCodec codec) =>
        region?.CoveringSegment(start + offset, bytes.Length) is null || codec.IsBlank(bytes, region.Fill) ? [] : bytes;

    // The bytes of the header that programs hold, and zero between them.
    private static byte[] Covered(RegionImage? region, int start, byte[] before)
    {
        var covered = new byte[before.Length];
        foreach (var segment in region?.Coverage ?? [])
        {
            var first = (int)Math.Clamp(segment.Offset - start, 0, before.Length);
            var end = (int)Math.Clamp(segment.End - start, first, before.Length);
            before.AsSpan(first, end - first).CopyTo(covered.AsSpan(first));
        }

        return covered;
    }

    private EntryOrigin Settle(HeaderField field, RegionImage? region, int start, Span<byte> bytes, ReadOnlySpan<byte> before)
    {
        var theirs = Held(region, start, field.Offset, before, field.Codec);
        var (value, origin) = Choose(field);
        if (value is null)
        {
            if (field.Required && theirs.IsEmpty)
            {
                log.Add(HeaderFindings.MissingField, place with { Key = "header:" + field.Name }, $"The header has no `{field.Name}`: {field.Meaning}", field.Codec.Expected);
            }

            return EntryOrigin.Image;
        }

        var ours = bytes.ToArray();
        if (field.Codec.Write(value.Text, ours) is { } problem)
        {
            log.Add(HeaderFindings.BadValue, value.Place, $"`{value.Text}` cannot be the header's `{field.Name}`: {problem}.", field.Codec.Expected,
                NearestName.Question(value.Text, field.Codec.Names.Select(static row => row.Name)));
            return origin;
        }

        var truth = Truth(field, ours);
        if (origin == EntryOrigin.Manifest && truth is not null)
        {
            CompareWithTruth(field, value, ours, truth);
        }

        // What lies behind a value that ends itself is the program's.
        theirs = Held(region, start, field.Offset, before[..field.Codec.Reach(ours)], field.Codec);
        if (theirs.IsEmpty || Equal(field, ours, theirs))
        {
            ours.CopyTo(bytes);
            return origin;
        }

        var isWrong = truth is not null && !Equal(field, truth, theirs);
        // Nobody asked for a default, so it gives way to what the program's author wrote, unless the program's bytes are not to be kept.
        if ((origin == EntryOrigin.Default && settings.Keep.All != false) || ProgramWins(field, start, origin, (field.Codec.Read(ours), field.Codec.Read(before)), isWrong, value.Place))
        {
            return EntryOrigin.Image;
        }

        ours.CopyTo(bytes);
        return origin;
    }

    // The field's bytes as they follow from the cart; null when nothing is worked out.
    private byte[]? Truth(HeaderField field, byte[] ours)
    {
        var bytes = ours.ToArray();
        return field.WorkOut?.Invoke(context) is { } text && field.Codec.Write(text, bytes) is null ? bytes : null;
    }

    private (ManifestValue? Value, EntryOrigin Origin) Choose(HeaderField field)
    {
        if (settings[field.Name] is { } stated)
        {
            return (stated, EntryOrigin.Manifest);
        }

        if (field.FromCart is { } key && context.Cart(key) is { } given)
        {
            return (given, EntryOrigin.Cart);
        }

        var worked = field.WorkOut?.Invoke(context);
        var text = worked ?? field.DefaultFrom?.Invoke(context) ?? field.Default;
        return (text is null ? null : new ManifestValue(text, place with { Key = "header:" + field.Name }), worked is null ? EntryOrigin.Default : EntryOrigin.WorkedOut);
    }

    // A stated value of a field that can be worked out is held against the truth; raw values are the way out, with a warning.
    private void CompareWithTruth(HeaderField field, ManifestValue stated, byte[] ours, byte[] truth)
    {
        if (!truth.AsSpan().SequenceEqual(ours))
        {
            log.Add(field.Codec.IsRaw(stated.Text) ? HeaderFindings.KeptWrong : HeaderFindings.StatedWrong, stated.Place,
                $"The header's `{field.Name}` is stated as `{stated.Text}`, and it is `{field.Codec.Read(truth)}`.");
        }
    }

    private bool ProgramWins(HeaderField field, int start, EntryOrigin origin, (string Ours, string Theirs) text, bool isWrong, SourcePlace where)
    {
        var both = $"The program holds `{text.Theirs}` at 0x{start + field.Offset:X6}, where the header's `{field.Name}` is `{text.Ours}`";
        var keep = settings.Keep;
        if (keep.All == true || keep.Names(field.Name))
        {
            log.Add(isWrong ? HeaderFindings.KeptWrong : HeaderFindings.KeptOther, where, both + "; the program's bytes are kept.");
            return true;
        }

        var told = keep.All == false || origin == EntryOrigin.WorkedOut;
        log.Add(told ? HeaderFindings.WrittenOver : HeaderFindings.Clash, where, both + (told ? "; it was written over." : "."));
        return false;
    }

    private static bool Equal(HeaderField field, ReadOnlySpan<byte> ours, ReadOnlySpan<byte> theirs)
    {
        var mask = new byte[field.Length];
        field.Codec.Mask(mask);
        for (var i = 0; i < theirs.Length; i++)
        {
            if (((ours[i] ^ theirs[i]) & mask[i]) != 0)
            {
                return false;
            }
        }

        return true;
    }

    private ImmutableArray<ChecksumEntry> WriteChecksums(HeaderTable table, RegionImage region, int start, byte[] before) =>
        [.. table.Checksums.Select(row => WriteChecksum(row, region, start + row.Offset, before.AsSpan(row.Offset, row.Length)))];

    // A container's checksums are of the regions behind it.
    private ImmutableArray<ChecksumEntry> WriteChecksums(HeaderTable table, Span<byte> container)
    {
        var entries = ImmutableArray.CreateBuilder<ChecksumEntry>();
        foreach (var row in table.Checksums)
        {
            if (row.Over is { } region)
            {
                var computed = row.Compute(context.RegionBytes(region).Span);
                row.Placement.Write(container.Slice(row.Offset, row.Length), computed);
                CompareStated(row, computed);
                entries.Add(new ChecksumEntry(row, row.Offset, computed, computed));
            }
        }

        return entries.ToImmutable();
    }

    private ChecksumEntry WriteChecksum(ChecksumRow row, RegionImage region, int offset, ReadOnlySpan<byte> program)
    {
        var computed = row.Compute(region.Bytes.Span);
        var covered = region.CoveringSegment(offset, row.Length) is not null;
        // A checksum that is kept by its name is kept even where it was never filled in: an existing image may be so.
        var kept = covered && settings.Keep.Names(row.Name);
        var field = region.Writable.Slice(offset, row.Length);
        if (!kept)
        {
            row.Placement.Write(field, computed);
        }

        var held = row.Placement.Read(program);
        if (covered && (kept || !Blank.Is(program, region.Fill)) && held != computed)
        {
            log.Add(kept ? HeaderFindings.KeptWrong : HeaderFindings.WrittenOver, place with { Key = "header:" + row.Name },
                $"The program holds {row.Format(held)} as `{row.Name}`, and the checksum is {row.Format(computed)}; {(kept ? "the program's is kept" : "it was written over")}.");
        }

        CompareStated(row, computed);
        return new ChecksumEntry(row, offset, row.Placement.Read(field), computed);
    }

    private void CompareStated(ChecksumRow row, ulong computed)
    {
        if (settings[row.Name] is { } stated && (!Number.TryParse(stated.Text, out ulong number) || number != computed))
        {
            log.Add(HeaderFindings.StatedWrong, stated.Place, $"The checksum `{row.Name}` is stated as `{stated.Text}`, and it is {row.Format(computed)}.");
        }
    }
}
