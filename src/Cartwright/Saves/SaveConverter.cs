using Cartwright.Findings;
using Cartwright.Manifests;

namespace Cartwright.Saves;

/// <summary>Brings a save from one form into another: without a loss, or not at all.</summary>
/// <param name="file">The file as the user wrote it, for findings.</param>
/// <param name="request">What is asked.</param>
/// <param name="log">Receives why it cannot be done.</param>
public sealed class SaveConverter(string file, SaveConversion request, FindingLog log)
{
    private readonly SourcePlace _place = new(file);

    /// <summary>Converts, converts back, and compares.</summary>
    /// <param name="bytes">The file.</param>
    /// <returns>Null when it cannot be done without a loss.</returns>
    public ConvertedSave? Convert(ReadOnlySpan<byte> bytes)
    {
        if (!SaveFileChecks.IsUsable(file, bytes, log) || !IsOfPlatform() || ReadMemory(bytes) is not { } memory || Resize(memory) is not { } resized)
            return null;

        var record = bytes[^request.From.ClockLength..];
        if (WriteFile(resized.Memory, record) is not { } result || !LeadsBack(bytes, result, memory.Length, resized.Cut))
            return null;

        if (!SaveKinds.Of(request.Platform).Any(kind => kind.HasSize(resized.Memory.Length)))
            log.Add(SaveFindings.NoSuchSize, _place, $"The memory has {ByteSize.Describe(resized.Memory.Length)}, which no kind of `{request.Platform}` has.");

        return new ConvertedSave(result, memory.Length, resized.Memory.Length, resized.Cut, request.To.ClockLength == 0 ? request.From.ClockLength : 0);
    }

    private bool IsOfPlatform()
    {
        var kinds = SaveKinds.Of(request.Platform);
        if (kinds.IsEmpty)
        {
            log.Add(SaveFindings.NoMemory, _place, $"No save memory of `{request.Platform}` is known.");
            return false;
        }

        var before = log.Count;
        foreach (var form in new[] { request.From, request.To }.Distinct())
        {
            if (!kinds.Any(kind => SaveLayouts.IsOf(kind, form.Layout) && (form.ClockLength == 0 || kind.HasClock)))
                log.Add(SaveFindings.NotOfPlatform, _place, $"No save of `{request.Platform}` is met in the layout {form}.", string.Join(", ", kinds.SelectMany(static kind => kind.Layouts).Distinct()));
        }

        if (request.From.ClockLength > 0 && request.To.ClockLength == 0 && !request.DropClock)
            log.Add(SaveFindings.ClockLost, _place, $"The {request.From.ClockLength} bytes of the clock are not part of the layout {request.To}.");

        return log.Count == before;
    }

    private byte[]? ReadMemory(ReadOnlySpan<byte> bytes)
    {
        var length = bytes.Length - request.From.ClockLength;
        if (length <= 0 || request.From.Layout.MemorySize(length) is null)
        {
            log.Add(SaveFindings.NotWhole, _place, $"{ByteSize.Describe(bytes.Length)} are no file in the layout {request.From}.", $"a multiple of {request.From.Layout.FileUnit} bytes{(request.From.ClockLength > 0 ? " before the clock" : "")}");
            return null;
        }

        var body = bytes[..length];
        if (request.From.Layout.FirstForeign(body) is >= 0 and var foreign)
        {
            log.Add(SaveFindings.NotInLayout, SourcePlace.At(file, foreign), $"The byte {Number.Hex(body[foreign], 2)} at {Number.Hex(foreign, 6)} cannot be in the layout {request.From}: {request.From.Layout.Meaning}.");
            return null;
        }

        var memory = request.From.Layout.ToMemory(body);
        return IsWired(request.FromWiring, memory.Length) ? request.FromWiring?.ToConsole(memory) ?? memory : null;
    }

    private bool IsWired(SaveWiring? wiring, int size)
    {
        if (wiring?.Misfit(size) is not { } misfit)
            return true;

        log.Add(SaveFindings.Wiring, _place, misfit);
        return false;
    }

    private (byte[] Memory, SavePad? Cut)? Resize(byte[] memory)
    {
        var size = request.Size ?? memory.Length;
        if (size == memory.Length)
            return (memory, null);

        if (size > memory.Length)
        {
            if (size <= SaveFileChecks.LargestFile && request.Pad.Lengthen(memory, size) is { } longer)
                return (longer, null);

            log.Add(SaveFindings.NoRoom, _place, $"{ByteSize.Describe(memory.Length)} cannot be lengthened to {ByteSize.Describe(size)} with {request.Pad}.", $"at most {ByteSize.Describe(SaveFileChecks.LargestFile)}, and with {SavePad.RepeatWord} a multiple of the contents");
            return null;
        }

        if (SavePad.Behind(memory, size) is { } cut)
            return (memory[..size], cut);

        log.Add(SaveFindings.WouldCut, _place, $"The memory has {ByteSize.Describe(memory.Length)}, and what stands from {Number.Hex(size, 6)} on is no filler.");
        return null;
    }

    private byte[]? WriteFile(byte[] memory, ReadOnlySpan<byte> record)
    {
        if (request.To.Layout.FileSize(memory.Length) is null)
        {
            log.Add(SaveFindings.NotWhole, _place, $"A memory of {ByteSize.Describe(memory.Length)} cannot be written in the layout {request.To}.", $"a multiple of {request.To.Layout.MemoryUnit} bytes");
            return null;
        }

        return IsWired(request.ToWiring, memory.Length)
            ? [.. request.To.Layout.ToFile(request.ToWiring?.ToChip(memory) ?? memory), .. SaveClock.Resize(record, request.To.ClockLength)]
            : null;
    }

    // The way back from the result alone, by the inverse of each step: it must give the file that came in.
    private bool LeadsBack(ReadOnlySpan<byte> bytes, ReadOnlySpan<byte> result, int memoryBefore, SavePad? cut)
    {
        var memory = request.To.Layout.ToMemory(result[..^request.To.ClockLength]);
        memory = request.ToWiring?.ToConsole(memory) ?? memory;
        memory = cut is { } pad ? pad.Lengthen(memory, memoryBefore)! : memory[..memoryBefore];
        memory = request.FromWiring?.ToChip(memory) ?? memory;
        var body = request.From.Layout.ToFile(memory);
        var clock = request.To.ClockLength == 0 && request.DropClock ? bytes[body.Length..].ToArray() : SaveClock.Resize(result[^request.To.ClockLength..], request.From.ClockLength);
        byte[] back = [.. body, .. clock];
        var same = bytes.CommonPrefixLength(back);
        if (same == bytes.Length)
            return true;

        log.Add(SaveFindings.NotBack, SourcePlace.At(file, same), $"From {request.To} back to {request.From} the byte at {Number.Hex(same, 6)} would be {Number.Hex(back[same], 2)} and not {Number.Hex(bytes[same], 2)}.");
        return false;
    }
}
