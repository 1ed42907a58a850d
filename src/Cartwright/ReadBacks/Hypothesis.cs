using System.Collections.Immutable;
using System.IO.Hashing;
using System.Runtime.InteropServices;

namespace Cartwright.ReadBacks;

/// <summary>An explanation that can be tried: what would be wrong, and the read-back it would leave.</summary>
/// <param name="Faults">The faults, in the order of the signal.</param>
/// <param name="Rebuild">The read-back that they make of an image; null where they make none of its size.</param>
internal sealed record Hypothesis(ImmutableArray<Fault> Faults, Func<WordImage, ushort[]?> Rebuild)
{
    /// <summary>Wiring.</summary>
    public static Hypothesis Of(LineModel model) => new(Name(model), image => model.Rebuild(image.Words, image.Shape.Ones)) { Wiring = model };

    /// <summary>The wiring, where it is one.</summary>
    public LineModel? Wiring { get; private init; }

    /// <summary>A fault that moves bytes of the file: byte b comes from byte source(b).</summary>
    public static Hypothesis Moving(Fault fault, Func<int, int> source) => new([fault], image =>
    {
        var bytes = new byte[image.Bytes.Length];
        for (var b = 0; b < bytes.Length; b++)
        {
            bytes[b] = image.Bytes[source(b)];
        }

        return WordImage.ToWords(bytes, image.Shape);
    });

    /// <summary>A fault that makes other bytes of the file.</summary>
    public static Hypothesis Making(Fault fault, Func<WordImage, byte[]?> make) =>
        new([fault], image => make(image) is { } bytes ? WordImage.ToWords(bytes, image.Shape) : null);

    /// <summary>What the faults leave of an image, as a number: alike where the read-back is alike.</summary>
    public ulong Fingerprint(WordImage image) => Rebuild(image) is { } words ? XxHash3.HashToUInt64(MemoryMarshal.AsBytes(words.AsSpan())) : 0;

    /// <summary>How far down the list of names it stands.</summary>
    public int Rank => Faults.Sum(static fault => 100 + FaultKinds.Rank(fault.Kind)) + Detours;

    // A permutation is told before the chip's own lines: for addresses from the reader, for data from the chip.
    private int Detours
    {
        get
        {
            var detours = 0;
            for (var i = 1; i < Faults.Length; i++)
            {
                detours += Moves(Faults[i]) && !Moves(Faults[i - 1]) && Faults[i].Kind.Stage == FaultStage.Address ? 1 : 0;
                detours += !Moves(Faults[i]) && Moves(Faults[i - 1]) && Faults[i].Kind.Stage == FaultStage.Data ? 1 : 0;
            }

            return detours;
        }
    }

    private static bool Moves(Fault fault) =>
        fault.Kind == FaultKinds.AddressSwapped || fault.Kind == FaultKinds.AddressPermuted || fault.Kind == FaultKinds.DataSwapped
        || fault.Kind == FaultKinds.DataPermuted || fault.Kind == FaultKinds.DataReversed;

    private static ImmutableArray<Fault> Name(LineModel model) =>
        [.. model.Address.Select(LineFaults.NameAddress), .. model.Data.Select(LineFaults.NameData)];
}
