using System.Collections.Immutable;

namespace Cartwright.ReadBacks;

/// <summary>What an image could not show, of every wiring fault of one cause.</summary>
/// <param name="Tried">How many faults were tried: each line stuck or inverted, each pair exchanged or joined, each bus turned round, each data line joined to an address line.</param>
/// <param name="Invisible">Faults that leave the image as it is.</param>
/// <param name="Weak">Faults that show in too few words to be named.</param>
/// <param name="Alike">Groups of faults that leave the same read-back of this image, and not of every image.</param>
public sealed record ImageDiagnosis(int Tried, ImmutableArray<Fault> Invisible, ImmutableArray<WeakFault> Weak, ImmutableArray<ImmutableArray<Fault>> Alike)
{
    /// <summary>True when the image would show every one of the faults, each as itself.</summary>
    public bool ShowsAll => Invisible.IsEmpty && Weak.IsEmpty && Alike.IsEmpty;

    /// <summary>Finds out.</summary>
    /// <param name="image">The bytes of the chip.</param>
    /// <param name="shape">Width of the chip and order of the bytes of a word.</param>
    /// <param name="world">How the chip is to be written.</param>
    /// <param name="cancel">Ends the search early.</param>
    /// <exception cref="OperationCanceledException">The search was ended.</exception>
    public static ImageDiagnosis Of(byte[] image, WordShape shape, WritingWorld world, CancellationToken cancel = default) =>
        new DiagnosisSearch(new WordImage(image, shape), world, cancel).Run();
}
