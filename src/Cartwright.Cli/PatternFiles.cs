using System.Collections.Immutable;
using Cartwright.Images;
using Cartwright.TestImages;

namespace Cartwright.Cli;

/// <summary>A test image and its files.</summary>
internal sealed record PatternFiles(TestImageSet Set, ImmutableArray<OutputFile> Files);
