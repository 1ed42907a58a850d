using static Cartwright.ReadBacks.FaultParameter;

namespace Cartwright.ReadBacks;

/// <summary>Explanations by which the cells hold, or the bus shows, something else altogether.</summary>
internal static class ContentFaults
{
    public static IEnumerable<Hypothesis> Propose(ProofCase proof) =>
        [.. Images(proof), .. Constants(proof), .. AddressOnBus(proof), .. OldContent(proof), .. Late(proof), .. Text(proof), .. RecordText.Propose(proof), .. Written(proof)];

    private static IEnumerable<Hypothesis> Images(ProofCase proof) =>
    [
        .. from site in proof.Request.OtherSites
           where proof.ReadBytes.AsSpan().SequenceEqual(site.Bytes)
           select Hypothesis.Making(Fault.Of(FaultKinds.ChipsExchanged, Of("image", site.Name)), _ => site.Bytes),
        .. from release in proof.Request.Releases
           where proof.ReadBytes.AsSpan().SequenceEqual(release.Bytes)
           select Hypothesis.Making(Fault.Of(FaultKinds.OtherImage, Of("image", release.Name)), _ => release.Bytes),
    ];

    private static IEnumerable<Hypothesis> Constants(ProofCase proof)
    {
        var value = proof.ReadBytes[0];
        if (proof.ReadBytes.AsSpan().ContainsAnyExcept(value))
        {
            yield break;
        }

        yield return Hypothesis.Making(Fault.Of(FaultKinds.Blank, Of("value", value)), image => Filled(image.Bytes.Length, value));
        if (value is 0 or 0xFF)
        {
            yield return Hypothesis.Making(Fault.Of(FaultKinds.BusNotDriven, Of("shows", value == 0 ? "zeros" : "ones")), image => Filled(image.Bytes.Length, value));
        }
    }

    private static byte[] Filled(int length, byte value)
    {
        var bytes = new byte[length];
        bytes.AsSpan().Fill(value);
        return bytes;
    }

    private static IEnumerable<Hypothesis> AddressOnBus(ProofCase proof) =>
        from shift in Enumerable.Range(0, Math.Max(1, proof.Expected.AddressLines))
        where IsAddress(proof.Read, shift, proof.Expected.Shape.Ones)
        select new Hypothesis([Fault.Of(FaultKinds.BusNotDriven, Of("shows", "address"), Of("shift", shift))], image => Addresses(image, shift));

    private static bool IsAddress(ushort[] read, int shift, ushort ones)
    {
        for (var a = 0; a < read.Length; a++)
        {
            if (read[a] != (ushort)((a >> shift) & ones))
            {
                return false;
            }
        }

        return true;
    }

    private static ushort[] Addresses(WordImage image, int shift)
    {
        var words = new ushort[image.Count];
        for (var a = 0; a < words.Length; a++)
        {
            words[a] = (ushort)((a >> shift) & image.Shape.Ones);
        }

        return words;
    }

    private static IEnumerable<Hypothesis> OldContent(ProofCase proof)
    {
        if (proof.Request.OldContent is { } old && old.Length == proof.ReadBytes.Length)
        {
            yield return Hypothesis.Making(Fault.Of(FaultKinds.NotErased), image => And(image.Bytes, old));
        }
    }

    internal static byte[] And(byte[] left, byte[] right)
    {
        var both = new byte[left.Length];
        for (var b = 0; b < both.Length; b++)
        {
            both[b] = (byte)(left[b] & right[b]);
        }

        return both;
    }

    // A late line shows what it had in the word before.
    private static IEnumerable<Hypothesis> Late(ProofCase proof)
    {
        var (late, prompt) = LateLines(proof.Expected.Words, proof.Read, proof.Expected.Shape.Ones);
        var lines = late & ~prompt;
        if (lines != 0 && (late | prompt) == proof.Expected.Shape.Ones)
        {
            // A line that never changes may be as late as the others.
            var told = late == proof.Expected.Shape.Ones ? [] : LineFaults.Lines('D', (uint)lines);
            var mask = told.IsEmpty ? late : lines;
            yield return new Hypothesis([Fault.On(FaultKinds.ReadTooEarly, told, Of("share", 1))], image => Delayed(image.Words, mask));
        }
    }

    private static (int Late, int Prompt) LateLines(ushort[] expected, ushort[] read, ushort ones)
    {
        var (late, prompt) = ((int)ones, (int)ones);
        var before = expected[^1];
        for (var a = 0; a < read.Length && (late | prompt) == ones; a++)
        {
            late &= ~(read[a] ^ before);
            prompt &= ~(read[a] ^ expected[a]);
            before = expected[a];
        }

        return (late, prompt);
    }

    private static ushort[] Delayed(ushort[] image, int lines)
    {
        var words = new ushort[image.Length];
        var before = image[^1];
        for (var a = 0; a < words.Length; a++)
        {
            words[a] = (ushort)((before & lines) | (image[a] & ~lines));
            before = image[a];
        }

        return words;
    }

    private static IEnumerable<Hypothesis> Text(ProofCase proof) =>
        from row in TextDamage.Ways
        let damaged = row.Damage(proof.Expected.Bytes)
        where damaged.AsSpan().SequenceEqual(proof.ReadBytes)
        select Hypothesis.Making(Fault.Of(FaultKinds.FileDamagedAsText, Of("how", row.How)), image => row.Damage(image.Bytes));

    // The line did not switch while the chip was written, and does now, or does not.
    private static IEnumerable<Hypothesis> Written(ProofCase proof)
    {
        foreach (var line in Enumerable.Range(0, proof.Expected.AddressLines))
        {
            foreach (var reading in (string[])["dead", "low", "high"])
            {
                if (DeadWhileWriting(proof.Expected.Words, 1 << line, reading, proof.Expected.Shape.Ones, proof.Read) is not null)
                {
                    yield return new Hypothesis(
                        [Fault.On(FaultKinds.AddressDeadWhileWriting, [LineFaults.Line('A', line)], Of("reading", reading))],
                        image => DeadWhileWriting(image.Words, 1 << line, reading, image.Shape.Ones, null));
                }
            }
        }
    }

    private static ushort[]? DeadWhileWriting(ushort[] image, int line, string reading, ushort ones, ushort[]? read)
    {
        var words = read is null ? new ushort[image.Length] : [];
        for (var a = 0; a < image.Length; a++)
        {
            var other = (a ^ line) < image.Length ? image[a ^ line] : ones;
            var isErased = reading == "low" ? (a & line) != 0 : reading == "high" && (a & line) == 0;
            var word = isErased ? ones : (ushort)(image[a] & other);
            if (read is null)
            {
                words[a] = word;
            }
            else if (read[a] != word)
            {
                return null;
            }
        }

        return words;
    }
}
