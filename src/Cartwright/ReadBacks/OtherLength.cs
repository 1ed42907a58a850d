namespace Cartwright.ReadBacks;

/// <summary>Read-backs that are not as long as the image.</summary>
internal static class OtherLength
{
    public static Verdict Find(ProofRequest request, WordImage expected)
    {
        var half = request.Expected.Length / 2;
        var isTop = half > 0 && request.Reads.All(read => read.Bytes.AsSpan().SequenceEqual(request.Expected.AsSpan(request.Expected.Length - half)));
        var isBottom = half > 0 && request.Expected.AsSpan(0, half).SequenceEqual(request.Expected.AsSpan(half));
        var fault = Fault.Of(FaultKinds.WrongHalf);
        return new Verdict(Equal: false, isTop && !isBottom ? [fault] : [], isTop && isBottom ? [[fault]] : [])
        {
            Explains = isTop ? new Shares(1, 1) : default,
            Next = isTop && !isBottom ? null : "Read again with the size of the chip set on the reader.",
            WordCount = expected.Count,
        };
    }
}
