namespace Cartwright.Tests.Oracles;

/// <summary>A folder of its own for one test, removed afterwards.</summary>
internal sealed class TempFolder : IDisposable
{
    /// <summary>Its full path.</summary>
    public string Path { get; } = Directory.CreateTempSubdirectory("cartwright-test-").FullName;

    /// <summary>Writes a file.</summary>
    public void Write(string name, ReadOnlySpan<byte> bytes) => File.WriteAllBytes(System.IO.Path.Combine(Path, name), bytes);

    /// <summary>Reads a file.</summary>
    public byte[] Read(string name) => File.ReadAllBytes(System.IO.Path.Combine(Path, name));

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
