using Cartwright.FaultSimulator;
using Cartwright.ReadBacks;
using Cartwright.TestImages;

namespace Cartwright.FaultExperiments;

/// <summary>Signature images of the library.</summary>
internal static class SignatureSource
{
    public static byte[] Make(int bytes, ChipShape shape, uint seed) => SignatureImage.Make(bytes, new WordShape(shape.Width, shape.HighByteFirst), seed);
}
