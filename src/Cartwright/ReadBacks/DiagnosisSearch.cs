using System.Collections.Immutable;
using System.IO.Hashing;
using System.Runtime.InteropServices;
using Cartwright.Ordering;

namespace Cartwright.ReadBacks;

/// <summary>Tries every wiring fault of one cause on an image. Samples settle most; only what they leave open is rebuilt in full.</summary>
internal sealed class DiagnosisSearch(WordImage image, WritingWorld world, CancellationToken cancel)
{
    // Fewer telling words than this a verdict leaves open.
    private const int FewestTelling = 4;
    private const int Sampled = 16384;
    private const int PlentyOfSamples = 64;
    private const uint SampleStream = 0xD1A6;

    private readonly uint[] _samples = Samples(image.Count);
    private readonly WordImage _other = image.With(Chance(image.Bytes.Length));

    public ImageDiagnosis Run()
    {
        var models = Models().ToImmutableArray();
        var (invisible, weak, seen) = (new List<Fault>(), new List<WeakFault>(), new List<(LineModel Model, ulong Hash)>());
        foreach (var model in models)
        {
            cancel.ThrowIfCancellationRequested();
            var (hash, telling) = Sample(model);
            telling = telling < PlentyOfSamples ? Telling(model) : telling;
            if (telling == 0)
            {
                invisible.Add(Name(model));
                continue;
            }

            seen.Add((model, hash));
            if (telling < FewestTelling)
            {
                weak.Add(new WeakFault(Name(model), telling));
            }
        }

        return new ImageDiagnosis(models.Length, [.. invisible], [.. weak], [.. Alike(seen)]);
    }

    private IEnumerable<LineModel> Models() =>
        LineFaults.Address(image.AddressLines).Select(op => new LineModel([op], [], world))
            .Concat(LineFaults.Data(image.Shape.Width, image.AddressLines).Select(op => new LineModel([], [op], world)));

    private (ulong Hash, int Telling) Sample(LineModel model)
    {
        var words = new int[_samples.Length];
        var telling = 0;
        for (var s = 0; s < words.Length; s++)
        {
            words[s] = model.At(image.Words, image.Shape.Ones, _samples[s]);
            telling += words[s] != image.Words[_samples[s]] ? 1 : 0;
        }

        return (XxHash3.HashToUInt64(MemoryMarshal.AsBytes(words.AsSpan())), telling);
    }

    // A fault that leads outside an image that is no power of two cannot be rebuilt, and shows.
    private int Telling(LineModel model) => model.Rebuild(image.Words, image.Shape.Ones) is { } words ? WordCompare.CountDifferences(image.Words, words) : PlentyOfSamples;

    private IEnumerable<ImmutableArray<Fault>> Alike(List<(LineModel Model, ulong Hash)> seen)
    {
        foreach (var near in seen.GroupBy(static row => row.Hash).Where(static group => group.Count() > 1))
        {
            foreach (var same in near.Select(static row => row.Model).GroupBy(model => Fingerprint(model, image)).Where(static group => group.Count() > 1))
            {
                cancel.ThrowIfCancellationRequested();
                // Faults that are one and the same whatever the image holds need no telling apart.
                var told = same.DistinctBy(model => Fingerprint(model, _other)).ToImmutableArray();
                if (told.Length > 1)
                {
                    yield return [.. told.Select(Name)];
                }
            }
        }
    }

    private static ulong Fingerprint(LineModel model, WordImage image) => Hypothesis.Of(model).Fingerprint(image);

    private static Fault Name(LineModel model) => Hypothesis.Of(model).Faults[0];

    private static uint[] Samples(int count)
    {
        var samples = new uint[Math.Min(count, Sampled)];
        for (var s = 0; s < samples.Length; s++)
        {
            samples[s] = count <= Sampled ? (uint)s : (uint)(((ulong)Mixing.Of((uint)s, SampleStream) * (uint)count) >> 32);
        }

        return samples;
    }

    private static byte[] Chance(int length)
    {
        var bytes = new byte[length];
        for (var b = 0; b < length; b++)
        {
            bytes[b] = (byte)Mixing.Of((uint)b, SampleStream);
        }

        return bytes;
    }
}
