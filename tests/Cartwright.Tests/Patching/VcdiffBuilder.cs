using System.Buffers.Binary;

namespace Cartwright.Tests.Patching;

/// <summary>Builds a VCDIFF patch of random instructions, and what it makes.</summary>
internal sealed class VcdiffBuilder(Random random, byte[] image)
{
    private readonly List<byte> _patch = [0xD6, 0xC3, 0xC4, 0, 0];
    private readonly List<byte> _output = [];
    private readonly List<byte> _data = [];
    private readonly List<byte> _instructions = [];
    private readonly List<byte> _addresses = [];
    private readonly long[] _near = new long[4];
    private readonly long[] _same = new long[768];
    private readonly List<byte> _all = [];
    private int _segment;
    private int _slot;

    public byte[] Output => [.. _output];

    public byte[] Patch => [.. _patch];

    public VcdiffBuilder Text(string text)
    {
        _patch[4] |= 4;
        _patch.AddRange([.. Number(text.Length), .. PatchBench.Ascii(text)]);
        return this;
    }

    /// <summary>A window of some instructions.</summary>
    /// <param name="segment">0 for none, 1 for a part of the base, 2 for a part of the output so far.</param>
    /// <param name="hasAdler">Whether it has an Adler-32.</param>
    public VcdiffBuilder Window(int segment, bool hasAdler)
    {
        byte[] whole = segment switch { 1 => image, 2 => Output, _ => [] };
        var start = random.Next(whole.Length + 1);
        var end = random.Next(start, whole.Length + 1);
        Begin(whole[start..end]);
        for (var left = random.Next(1, 30); left > 0; left--)
        {
            var code = random.Next(256);
            if (!NaiveVcdiff.Table[code].All(CanDo)) code = random.Next(2) == 0 ? 1 : random.Next(2, 19);
            _instructions.Add((byte)code);
            foreach (var step in NaiveVcdiff.Table[code]) Do(step);
        }

        var made = _all[_segment..];
        byte[] sum = hasAdler ? new byte[4] : [];
        if (hasAdler) BinaryPrimitives.WriteUInt32BigEndian(sum, NaiveVcdiff.Adler(made));
        byte[] head = [.. Number(made.Count), 0, .. Number(_data.Count), .. Number(_instructions.Count), .. Number(_addresses.Count), .. sum];
        _patch.Add((byte)(segment | (hasAdler ? 4 : 0)));
        if (segment != 0) _patch.AddRange([.. Number(_segment), .. Number(start)]);
        _patch.AddRange([.. Number(head.Length + _data.Count + _instructions.Count + _addresses.Count), .. head, .. _data, .. _instructions, .. _addresses]);
        _output.AddRange(made);
        return this;
    }

    private void Begin(byte[] segment)
    {
        foreach (var list in (List<byte>[])[_data, _instructions, _addresses, _all]) list.Clear();
        Array.Clear(_near);
        Array.Clear(_same);
        _all.AddRange(segment);
        (_segment, _slot) = (segment.Length, 0);
    }

    // A copy needs at least one byte to copy from; an address cache must hold something that is there and, in the segment, fits before its end.
    private bool CanDo((int Type, int Size, int Mode) step) => step.Type != 3 || (step.Mode switch
    {
        >= 6 => _same.Skip((step.Mode - 6) * 256).Take(256).Any(address => Fits(address, step.Size)),
        >= 2 => Fits(_near[step.Mode - 2], step.Size),
        _ => Enumerable.Range(0, _all.Count).Any(address => Fits(address, step.Size)),
    });

    private bool Fits(long address, int size) => address < _all.Count && (address >= _segment || address + Math.Max(size, 1) <= _segment);

    private void Do((int Type, int Size, int Mode) step)
    {
        if (step.Type == 0) return;
        var size = step.Size;
        if (step.Type != 3)
        {
            if (size == 0) _instructions.AddRange(Number(size = random.Next(40)));
            var bytes = RandomPatches.Bytes(random, step.Type == 2 ? 1 : size);
            _data.AddRange(bytes);
            _all.AddRange(step.Type == 2 ? Enumerable.Repeat(bytes[0], size) : bytes);
            return;
        }

        var address = Address(step.Mode, size);
        if (size == 0) _instructions.AddRange(Number(size = address < _segment ? random.Next(1, _segment - address + 1) : random.Next(1, 60)));
        for (var i = 0; i < size; i++) _all.Add(_all[address + i]);
        _near[_slot] = address;
        _slot = (_slot + 1) % 4;
        _same[address % 768] = address;
    }

    private int Address(int mode, int size)
    {
        if (mode >= 6)
        {
            int[] slots = [.. Enumerable.Range(0, 256).Where(slot => Fits(_same[((mode - 6) * 256) + slot], size))];
            var chosen = slots[random.Next(slots.Length)];
            _addresses.Add((byte)chosen);
            return (int)_same[((mode - 6) * 256) + chosen];
        }

        var least = mode >= 2 ? (int)_near[mode - 2] : 0;
        int[] places = [.. Enumerable.Range(least, _all.Count - least).Where(place => Fits(place, size))];
        var address = places[random.Next(places.Length)];
        _addresses.AddRange(Number(mode switch { 0 => address, 1 => _all.Count - address, _ => address - least }));
        return address;
    }

    /// <summary>A VCDIFF integer.</summary>
    public static byte[] Number(long value)
    {
        var bytes = new List<byte> { (byte)(value & 0x7F) };
        for (value >>= 7; value > 0; value >>= 7) bytes.Insert(0, (byte)(0x80 | (value & 0x7F)));
        return [.. bytes];
    }
}
